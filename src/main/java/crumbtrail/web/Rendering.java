package crumbtrail.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.config.JavalinConfig;
import java.util.LinkedHashMap;
import java.util.Map;

/** Fills templates in, each with what every page needs. */
final class Rendering {
  private Rendering() {}

  static void register(JavalinConfig config) {
    TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    config.fileRenderer(
        (name, model, ctx) -> {
          Texts texts = Texts.of(ctx);
          ctx.header("Content-Language", texts.of("page.lang"));
          ctx.header("Vary", "Accept-Encoding, Accept-Language, Cookie");
          Map<String, Object> whole = new LinkedHashMap<>(model);
          whole.put("t", texts);
          whole.put("seal", Seals.of(ctx));
          whole.put("bar", LogBar.of(ctx));
          StringOutput output = new StringOutput();
          templates.render(name, whole, output);
          return output.toString();
        });
  }
}
