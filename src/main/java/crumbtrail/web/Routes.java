package crumbtrail.web;

import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Report;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.Function;

/** The addresses that the server answers. */
final class Routes {

  /** Bytes of a body that are kept for what is wished of a next bake. */
  private static final int ROOM_FOR_WISHES = 4096;

  private final Tracer tracer;
  private final LoafPictures pictures;
  private final Guards guards;
  private final FormRoutes forms;

  Routes(Tracer tracer, LoafPictures pictures, Guards guards) {
    this.tracer = tracer;
    this.pictures = pictures;
    this.guards = guards;
    this.forms = new FormRoutes(tracer, pictures, guards);
  }

  void register(RoutesConfig routes) {
    routes.before(guards::checkHost);
    routes.before(Units::remember);
    routes.get("/about", ctx -> ctx.render("about.jte"));
    routes.post("/trace", ctx -> form(ctx, tracer::trace, false));
    routes.post("/precheck", ctx -> form(ctx, tracer::precheck, true));
    forms.register(routes);
    new NextRoutes(tracer, guards).register(routes);
  }

  private void form(Context ctx, Function<String, Traced<Report>> worked, boolean ahead) {
    BakeForm form = forms.read(ctx);
    Traced<Report> traced = worked.apply(form.sheetJson());
    if (traced instanceof Traced.Made<Report> made) {
      WishForm wish = carried(ahead ? form.withoutSigns() : form);
      ctx.render("report.jte", Map.of("report", ReportViews.of(made.report(), pictures, wish)));
    } else if (traced instanceof Traced.Refused<Report> refused) {
      forms.sendBack(ctx, form, refused.problems());
    }
  }

  // A sheet that could not come back through the limit is not sent along.
  private static WishForm carried(BakeForm form) {
    String sheet = form.sheetJson();
    int sent = URLEncoder.encode(sheet, StandardCharsets.UTF_8).length();
    return sent > WebFace.BODY_LIMIT - ROOM_FOR_WISHES ? null : WishForm.blank(sheet);
  }
}
