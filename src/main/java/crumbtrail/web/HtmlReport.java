package crumbtrail.web;

import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Report;
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
    StringOutput output = new StringOutput();
    TemplateEngine.createPrecompiled(ContentType.Html)
        .render(
            "report.jte",
            Map.of("report", ReportViews.of(report, pictures), "t", Texts.english()),
            output);
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
