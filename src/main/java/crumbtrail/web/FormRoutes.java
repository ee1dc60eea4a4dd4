package crumbtrail.web;

import crumbtrail.picture.LoafPictures;
import crumbtrail.sheet.Problem;
import crumbtrail.web.FormPage.Desk;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The bake sheet as a form, what is laid out beside it, and the pictures of signs. */
final class FormRoutes {
  private static final String FORM = "application/x-www-form-urlencoded";

  /** Pictures change only with the rules; a day is as long as a stale one may stand. */
  private static final String A_DAY = "private, max-age=86400";

  private static final String FOR_GOOD = "public, max-age=31536000, immutable";

  private final Tracer tracer;
  private final LoafPictures pictures;
  private final SignShelf signs;
  private final Guards guards;
  private final Library htmx = Library.htmx();
  private final Map<String, String> drawn = new ConcurrentHashMap<>();

  FormRoutes(Tracer tracer, LoafPictures pictures, Guards guards) {
    this.tracer = tracer;
    this.pictures = pictures;
    this.signs = SignShelf.of(pictures);
    this.guards = guards;
  }

  void register(RoutesConfig routes) {
    routes.get("/", ctx -> show(ctx, FormPage.blank(desk(ctx, BakeForm.EMPTY))));
    routes.post("/layout", this::layout);
    routes.get("/pictures/{sign}.svg", this::picture);
    String sheet = signs.styleSheet();
    routes.get(
        "/assets/signs.css",
        ctx ->
            ctx.contentType("text/css; charset=utf-8")
                .header("Cache-Control", "no-cache")
                .result(sheet));
    routes.get(
        htmx.address(),
        ctx ->
            ctx.contentType("text/javascript; charset=utf-8")
                .header("Cache-Control", FOR_GOOD)
                .result(htmx.script()));
  }

  /** The form that a browser sends. */
  BakeForm read(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, FORM);
    return FormBody.read(ctx.bodyAsBytes())
        .map(BakeForm::new)
        .orElseThrow(() -> new Refusal(400, "The form arrived damaged."));
  }

  /** Answers with the form as it was typed and what is wrong with it. */
  void sendBack(Context ctx, BakeForm form, List<Problem> problems) {
    ctx.status(400);
    show(ctx, FormPage.refused(form, desk(ctx, form), problems));
  }

  // A script asks for the panel alone; a button brings the whole form back, with all that is typed.
  private void layout(Context ctx) {
    BakeForm form = read(ctx);
    FormPage page = FormPage.kept(form, desk(ctx, form));
    if (ctx.header("HX-Request") == null) {
      show(ctx, page);
    } else {
      Rendering.page(ctx, "layout.jte", Map.of("laid", page.layout()));
    }
  }

  private void picture(Context ctx) {
    String sign = ctx.pathParam("sign");
    String svg =
        Optional.of(sign)
            .filter(pictures::draws)
            .map(key -> drawn.computeIfAbsent(key, k -> pictures.of(k).orElseThrow().svg()))
            .orElseThrow(() -> new Refusal(404, "There is no such picture."));
    // With a charset behind it the server would not know it for a text that can be compressed.
    ctx.contentType("image/svg+xml").header("Cache-Control", A_DAY).result(svg);
  }

  private Desk desk(Context ctx, BakeForm form) {
    return new Desk(Texts.of(ctx), Units.of(ctx), signs, tracer.layout(form.formula().sheet()));
  }

  private void show(Context ctx, FormPage page) {
    Rendering.page(ctx, "form.jte", Map.of("page", page, "htmx", htmx.address()));
  }
}
