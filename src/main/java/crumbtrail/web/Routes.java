package crumbtrail.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Report;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The addresses that the server answers. */
final class Routes {

  /** What each address takes, for the answer to a wrong method. */
  static final Map<String, String> METHODS =
      Stream.of(
              "/trace",
              "/precheck",
              "/layout",
              "/next",
              "/next.json",
              "/api/trace",
              "/api/precheck",
              "/api/next")
          .collect(Collectors.toUnmodifiableMap(path -> path, path -> "POST"));

  private static final String JSON = "application/json";

  /** Bytes of a body that are kept for what is wished of a next bake. */
  private static final int ROOM_FOR_WISHES = 4096;

  private static final ObjectMapper WRITER = new ObjectMapper();

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
    routes.get("/health", ctx -> ctx.contentType(JSON).result("{\"status\":\"up\"}"));
    routes.post("/trace", ctx -> form(ctx, tracer::trace, false));
    routes.post("/precheck", ctx -> form(ctx, tracer::precheck, true));
    routes.post("/api/trace", ctx -> answer(ctx, tracer.trace(json(ctx, guards))));
    routes.post("/api/precheck", ctx -> answer(ctx, tracer.precheck(json(ctx, guards))));
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

  /** The body of a request of a program, which must be JSON in UTF-8. */
  static String json(Context ctx, Guards guards) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, JSON);
    byte[] body = ctx.bodyAsBytes();
    return FormBody.text(body, body.length)
        .orElseThrow(() -> new Refusal(400, "The body is not valid UTF-8."));
  }

  /** Answers a program. */
  static <T> void answer(Context ctx, Traced<T> traced) {
    if (traced instanceof Traced.Made<T> made) {
      ctx.contentType(JSON).result(written(made.report()));
    } else if (traced instanceof Traced.Refused<T> refused) {
      int count = refused.problems().size();
      throw new Refusal(
          400,
          count == 1 ? "There is one problem." : "There are " + count + " problems.",
          refused.problems());
    }
  }

  private static String written(Object report) {
    try {
      return WRITER.writeValueAsString(report);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A report must always be writable", e);
    }
  }
}
