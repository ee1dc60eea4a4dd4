package crumbtrail.web;

import crumbtrail.lessons.Board;
import crumbtrail.lessons.Drawn;
import crumbtrail.lessons.Variation;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.List;
import java.util.Map;

/** What moved as a page of its own that needs no server. */
public final class HtmlLessons {
  private HtmlLessons() {}

  /** One knob. */
  public static String page(Variation variation, List<Drawn> loaves) {
    return page(VaryView.of(variation, loaves, Texts.english()));
  }

  /** Two knobs. */
  public static String page(Board board) {
    return page(VaryView.of(board, Texts.english()));
  }

  private static String page(VaryView view) {
    StringOutput output = new StringOutput();
    TemplateEngine.createPrecompiled(ContentType.Html)
        .render("varied.jte", Map.of("view", view, "t", Texts.english()), output);
    return HtmlReport.alone(output.toString());
  }
}
