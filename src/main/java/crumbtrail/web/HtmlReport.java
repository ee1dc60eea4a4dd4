package crumbtrail.web;

import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Report;
import crumbtrail.report.Report.NextBakeSheet;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The report page as one file that needs no server: its stylesheet is in it. */
public final class HtmlReport {
  private static final String LINK = "<link rel=\"stylesheet\" href=\"/assets/crumbtrail.css\">";

  private HtmlReport() {}

  /** The page, without pictures of signs. */
  public static String page(Report report) {
    return page(report, LoafPictures.none());
  }

  /** The page, with pictures of the signs seen. */
  public static String page(Report report, LoafPictures pictures) {
    return rendered(
        "report.jte", Map.of("report", ReportViews.of(report, pictures), "t", Texts.english()));
  }

  /** The next bake as a sheet to print. */
  public static String next(NextBakeSheet next) {
    NextPage page = NextPage.made(AdviceViews.next(next), null);
    return rendered("next.jte", Map.of("page", page, "t", Texts.english()));
  }

  private static String rendered(String template, Map<String, Object> model) {
    StringOutput output = new StringOutput();
    TemplateEngine.createPrecompiled(ContentType.Html).render(template, model, output);
    return alone(output.toString());
  }

  /** A page with its stylesheet in it. */
  static String alone(String page) {
    return page.replace(LINK, "<style>\n" + stylesheet() + "</style>");
  }

  private static String stylesheet() {
    try (InputStream in = HtmlReport.class.getResourceAsStream("/public/crumbtrail.css")) {
      if (in == null) {
        throw new IllegalStateException("the stylesheet is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
