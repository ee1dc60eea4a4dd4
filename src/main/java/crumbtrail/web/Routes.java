package crumbtrail.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Report;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** The addresses that the server answers. */
final class Routes {

  /** What each address takes, for the answer to a wrong method. */
  static final Map<String, String> METHODS =
      Map.of("/trace", "POST", "/api/trace", "POST", "/", "GET, HEAD");

  private static final String FORM = "application/x-www-form-urlencoded";
  private static final String JSON = "application/json";

  private static final ObjectMapper WRITER = new ObjectMapper();

  private final Tracer tracer;
  private final LoafPictures pictures;
  private final Guards guards;

  Routes(Tracer tracer, LoafPictures pictures, Guards guards) {
    this.tracer = tracer;
    this.pictures = pictures;
    this.guards = guards;
  }

  void register(RoutesConfig routes) {
    routes.before(guards::checkHost);
    routes.get("/", ctx -> showForm(ctx, FormPage.blank()));
    routes.get("/about", ctx -> ctx.render("about.jte"));
    routes.get("/health", ctx -> ctx.contentType(JSON).result("{\"status\":\"up\"}"));
    routes.post("/trace", this::traceForm);
    routes.post("/api/trace", this::traceJson);
  }

  private void traceForm(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, FORM);
    BakeForm form =
        FormBody.read(ctx.bodyAsBytes())
            .map(BakeForm::new)
            .orElseThrow(() -> new Refusal(400, "The form arrived damaged."));
    Traced traced = tracer.trace(form.sheetJson());
    if (traced instanceof Traced.Made made) {
      ctx.render("report.jte", Map.of("report", ReportViews.of(made.report(), pictures)));
    } else if (traced instanceof Traced.Refused refused) {
      ctx.status(400);
      showForm(ctx, FormPage.refused(form, refused.problems()));
    }
  }

  private void traceJson(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, JSON);
    byte[] body = ctx.bodyAsBytes();
    Optional<String> sheet = FormBody.text(body, body.length);
    Traced traced =
        tracer.trace(sheet.orElseThrow(() -> new Refusal(400, "The body is not valid UTF-8.")));
    if (traced instanceof Traced.Made made) {
      ctx.contentType(JSON).result(written(made.report()));
    } else if (traced instanceof Traced.Refused refused) {
      int count = refused.problems().size();
      throw new Refusal(
          400,
          count == 1 ? "There is one problem." : "There are " + count + " problems.",
          refused.problems());
    }
  }

  private static String written(Report report) {
    try {
      return WRITER.writeValueAsString(report);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A report must always be writable", e);
    }
  }

  private static void showForm(Context ctx, FormPage page) {
    ctx.render("form.jte", Map.of("page", page));
  }
}
