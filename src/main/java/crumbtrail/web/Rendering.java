package crumbtrail.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;

/** Fills templates in, each with what every page needs. */
final class Rendering {
  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(ContentType.Html);

  private Rendering() {}

  /** Has the templates at hand, so that a build that lacks them does not start. */
  static void load() {
    if (!TEMPLATES.hasTemplate("error.jte")) {
      throw new IllegalStateException("this build has no templates");
    }
  }

  /** Answers with a page that needs nothing of its own. */
  static void page(Context ctx, String template) {
    page(ctx, template, Map.of());
  }

  /**
   * Answers with a page.
   *
   * @param template name of its file
   * @param model what the template asks for by name
   */
  static void page(Context ctx, String template, Map<String, ?> model) {
    Texts texts = Texts.of(ctx);
    Map<String, Object> whole = new LinkedHashMap<>(model);
    whole.put("t", texts);
    whole.put("seal", Seals.of(ctx));
    whole.put("bar", LogBar.of(ctx));
    // Findings are some 300 kB, which as a text would be written twice over.
    Utf8ByteOutput page = new Utf8ByteOutput();
    TEMPLATES.render(template, whole, page);
    ctx.header("Content-Language", texts.of("page.lang"));
    ctx.header("Vary", "Accept-Encoding, Accept-Language, Cookie");
    ctx.contentType("text/html;charset=utf-8").result(page.toByteArray());
  }
}
