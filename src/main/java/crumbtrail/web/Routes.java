package crumbtrail.web;

import crumbtrail.picture.LoafPictures;
import io.javalin.config.RoutesConfig;

/** The addresses that the server answers. */
final class Routes {

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
    routes.get("/about", ctx -> Rendering.page(ctx, "about.jte"));
    forms.register(routes);
    new ReportRoutes(tracer, pictures, guards, forms).register(routes);
    new NextRoutes(tracer, guards).register(routes);
  }
}
