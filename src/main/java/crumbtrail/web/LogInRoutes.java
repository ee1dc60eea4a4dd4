package crumbtrail.web;

import crumbtrail.people.Person;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Logging in and out. Whatever was sent without being logged in is kept until one is. */
public final class LogInRoutes {
  private static final String PATH = "/log/in";
  private static final String HOME = "/log";

  /** Pages to which one is led after a log-in, and forms that are sent on after it. */
  private static final String PAGES = "/log(/[a-z0-9/.]{0,60})?(\\?[^\\s#]{0,2000})?";

  private static final String FORMS = "/log(/\\d{1,18}(/causes)?)?";

  private final PeopleGate gate;
  private final LogForms forms;

  LogInRoutes(PeopleGate gate, LogForms forms) {
    this.gate = gate;
    this.forms = forms;
  }

  /**
   * The page of the log-in.
   *
   * @param name as it was typed
   * @param fault what was wrong, or empty
   * @param to where to go on
   * @param carried the form to be sent on, or empty
   */
  public record Page(String name, String fault, String to, String carried) {}

  /** A form that is sent on after the log-in: where to, and its fields. */
  public record Onward(String to, Map<String, String> fields) {}

  void register(RoutesConfig routes) {
    routes.exception(LoggedOut.class, (fault, ctx) -> turnedAway(ctx));
    routes.get(PATH, ctx -> show(ctx, new Page("", "", to(ctx.queryParam("to")), "")));
    routes.post(PATH, this::logIn);
    routes.post("/log/out", this::logOut);
    routes.post("/log/out/everywhere", this::logOutEverywhere);
  }

  private void turnedAway(Context ctx) {
    if (ctx.path().startsWith("/api/")) {
      ctx.header("WWW-Authenticate", "Bearer");
      Errors.answer(ctx, ProblemDetails.of(401, "Log in first: POST /api/log/session."));
    } else if (ctx.method().equals(HandlerType.POST)) {
      // What was typed is not lost: it is sent on after the log-in.
      boolean carried =
          ctx.path().matches(FORMS) && String.valueOf(ctx.contentType()).startsWith(LogForms.FORM);
      Map<String, String> fields = carried ? forms.unsealed(ctx) : Map.of();
      ctx.status(401);
      show(ctx, new Page("", "", carried ? ctx.path() : HOME, coded(fields)));
    } else {
      String query = ctx.queryString() == null ? "" : "?" + ctx.queryString();
      LogHouse.on(
          ctx, PATH + "?to=" + URLEncoder.encode(ctx.path() + query, StandardCharsets.UTF_8));
    }
  }

  private void logIn(Context ctx) {
    Map<String, String> fields = forms.unsealed(ctx);
    String name = fields.getOrDefault("name", "");
    String to = to(fields.get("to"));
    String carried = fields.getOrDefault("carried", "");
    Optional<Person> person =
        new Accounts(gate).checked(ctx, name, fields.getOrDefault("password", ""));
    if (person.isEmpty()) {
      ctx.status(401);
      show(ctx, new Page(name, Texts.of(ctx).of("people.in.wrong"), to, carried));
      return;
    }
    gate.letIn(ctx, person.get());
    if (!carried.isEmpty() && to.matches(FORMS)) {
      Map<String, String> onward = new LinkedHashMap<>();
      FormBody.read(carried.getBytes(StandardCharsets.UTF_8)).ifPresent(onward::putAll);
      onward.remove(LogForms.SEAL);
      Rendering.page(ctx, "goon.jte", Map.of("onward", new Onward(to, onward)));
    } else {
      LogHouse.on(ctx, to);
    }
  }

  private void logOut(Context ctx) {
    forms.read(ctx);
    gate.letOut(ctx);
    LogHouse.on(ctx, PATH + "?done=out");
  }

  private void logOutEverywhere(Context ctx) {
    Viewer viewer = gate.viewer(ctx);
    forms.read(ctx);
    gate.people().endAll(viewer.person().id(), null);
    gate.forget(ctx);
    LogHouse.on(ctx, PATH + "?done=out");
  }

  private static void show(Context ctx, Page page) {
    Rendering.page(
        ctx,
        "login.jte",
        Map.of("page", page, "done", "out".equals(ctx.queryParam("done")) ? "out" : ""));
  }

  // Nobody is led elsewhere by a link to the log-in.
  private static String to(String asked) {
    return asked != null && asked.matches(PAGES) && !asked.startsWith(PATH) ? asked : HOME;
  }

  private static String coded(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(
            one ->
                URLEncoder.encode(one.getKey(), StandardCharsets.UTF_8)
                    + "="
                    + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
        .collect(Collectors.joining("&"));
  }
}
