package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.api.BakeEndpoints;
import crumbtrail.api.Classroom;
import crumbtrail.api.Endpoint;
import crumbtrail.api.LookUpEndpoints;
import crumbtrail.api.Mystery;
import crumbtrail.api.OpenApi;
import crumbtrail.api.Outcome;
import crumbtrail.api.Shelf;
import crumbtrail.lessons.School;
import crumbtrail.memory.Once;
import crumbtrail.sheet.SheetReader;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The interface for programs. A route is made from its {@link Endpoint}, so that there is none
 * which the description leaves out.
 */
final class ApiRoutes {
  static final String DOCS = "/api/docs";

  private static final String JSON = "application/json";
  private static final String TEXT = "text/plain";
  private static final int SEEDS = 10_000;

  private final Guards guards;
  private final Map<Endpoint, Handler> bound = new LinkedHashMap<>();
  private final Supplier<ObjectNode> description;

  /**
   * @param school empty where lessons are not served
   * @param shelf empty where nothing can be looked up
   * @param readiness whether the server can work
   * @param measures what it measures of itself
   * @param log binds the addresses of the log, if there is one
   */
  ApiRoutes(
      Tracer tracer,
      Optional<Supplier<School>> school,
      Optional<Supplier<Shelf>> shelf,
      Consumer<Map<Endpoint, Handler>> log,
      Readiness readiness,
      Measures measures,
      Guards guards) {
    this.guards = guards;
    this.description = new Once<>(() -> OpenApi.of(bound.keySet()));
    bound.put(BakeEndpoints.TRACE, ctx -> trace(ctx, tracer));
    sheet(BakeEndpoints.PRECHECK, tracer::precheck);
    bound.put(BakeEndpoints.NEXT, ctx -> next(ctx, tracer));
    bound.put(BakeEndpoints.LAYOUT, ctx -> layout(ctx, tracer));
    log.accept(bound);
    school.map(one -> new Once<>(() -> new Classroom(one.get()))).ifPresent(this::teach);
    shelf.ifPresent(this::bind);
    look(LookUpEndpoints.HEALTH, ctx -> new LookUpEndpoints.Health("up"));
    bound.put(LookUpEndpoints.READY, ctx -> ready(ctx, readiness));
    bound.put(LookUpEndpoints.METRICS, measures::tell);
    look(LookUpEndpoints.OPENAPI, ctx -> description.get());
    look(LookUpEndpoints.SHEET_SCHEMA, ctx -> OpenApi.sheetSchema(description.get()));
    look(LookUpEndpoints.REPORT_SCHEMA, ctx -> OpenApi.reportSchema(description.get()));
  }

  private void teach(Supplier<Classroom> classroom) {
    bound.put(BakeEndpoints.VARY, ctx -> outcome(ctx, classroom.get().vary(json(ctx))));
    look(LookUpEndpoints.LESSONS, ctx -> classroom.get().lessons());
    look(
        LookUpEndpoints.LESSON,
        ctx ->
            classroom
                .get()
                .lesson(ctx.pathParam("number"))
                .orElseThrow(() -> new Refusal(404, "There is no such lesson.")));
    bound.put(LookUpEndpoints.MYSTERY, ctx -> mystery(ctx, classroom.get()));
  }

  private void bind(Supplier<Shelf> shelf) {
    look(LookUpEndpoints.CAUSES, ctx -> shelf.get().causes());
    look(
        LookUpEndpoints.CAUSE,
        ctx ->
            shelf
                .get()
                .cause(ctx.pathParam("key"))
                .orElseThrow(() -> new Refusal(404, "There is no cause of this key.")));
    look(LookUpEndpoints.SIGNS, ctx -> shelf.get().signs());
    look(LookUpEndpoints.STYLES, ctx -> shelf.get().styles());
    look(LookUpEndpoints.KNOBS, ctx -> shelf.get().knobs());
    look(LookUpEndpoints.VERSION, ctx -> shelf.get().version());
  }

  void register(RoutesConfig routes) {
    bound.forEach(
        (endpoint, handler) ->
            routes.addEndpoint(
                new io.javalin.router.Endpoint(
                    HandlerType.findOrCreate(endpoint.method()),
                    endpoint.path(),
                    ctx -> {
                      // What is no JSON is not held to an Accept that asks for it.
                      if (!endpoint.equals(LookUpEndpoints.METRICS)) {
                        guards.checkAccept(ctx);
                      }
                      handler.handle(ctx);
                    })));
    routes.get(
        DOCS,
        ctx ->
            Rendering.page(
                ctx,
                "apidocs.jte",
                Map.of("page", ApiDocsPage.of(List.copyOf(bound.keySet()), description.get()))));
  }

  private static void ready(Context ctx, Readiness readiness) {
    readiness
        .missing()
        .ifPresent(
            what -> {
              throw new Refusal(503, what);
            });
    Freshness.answer(ctx, JSON, ApiJson.text(new LookUpEndpoints.Health("ready")));
  }

  private <T> void sheet(Endpoint endpoint, Function<String, Traced<T>> worked) {
    bound.put(endpoint, ctx -> answer(ctx, worked.apply(json(ctx))));
  }

  private void look(Endpoint endpoint, Function<Context, Object> found) {
    bound.put(endpoint, ctx -> Freshness.answer(ctx, JSON, ApiJson.text(found.apply(ctx))));
  }

  private void trace(Context ctx, Tracer tracer) {
    String only = asked(ctx, "only");
    if (!only.isEmpty() && !only.equals("causes")) {
      throw new Refusal(400, "The query parameter only: write causes, or leave it out.");
    }
    String sheet = json(ctx);
    answer(ctx, only.isEmpty() ? tracer.trace(sheet) : tracer.causes(sheet));
  }

  // The body is the sheet; what is wished stands in the query, under the names of the form.
  private void next(Context ctx, Tracer tracer) {
    String sheet = json(ctx);
    Map<String, String> fields = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, values) -> fields.put(name, values.get(values.size() - 1)));
    WishForm wish = WishForm.of(fields, Texts.english());
    if (!wish.faults().isEmpty()) {
      WishForm.Field fault = wish.faults().get(0);
      throw new Refusal(400, "The query parameter " + fault.name() + ": " + fault.fault());
    }
    answer(ctx, tracer.next(sheet, wish.wish()));
  }

  private void mystery(Context ctx, Classroom classroom) {
    String seed = asked(ctx, "seed");
    if (!seed.matches("\\d{0,9}")) {
      throw new Refusal(400, "The query parameter seed: write a whole number, such as 7.");
    }
    long number =
        seed.isEmpty() ? ThreadLocalRandom.current().nextInt(1, SEEDS) : Long.parseLong(seed);
    Outcome<Mystery> outcome =
        classroom.mystery(number, asked(ctx, "level"), asked(ctx, "asked"), asked(ctx, "named"));
    outcome
        .problems()
        .forEach(
            one -> {
              throw new Refusal(
                  400,
                  "The query parameter %s: %s; %s."
                      .formatted(one.where(), one.what(), one.remedy()));
            });
    String text = ApiJson.text(outcome.answer().orElseThrow());
    if (seed.isEmpty()) {
      ctx.contentType(JSON).result(text);
    } else {
      Freshness.answer(ctx, JSON, text);
    }
  }

  private static String asked(Context ctx, String name) {
    return Optional.ofNullable(ctx.queryParam(name)).orElse("").strip();
  }

  // A recipe in plain text is a sheet with nothing else on it.
  private void layout(Context ctx, Tracer tracer) {
    guards.checkOrigin(ctx);
    String type = guards.checkType(ctx, List.of(JSON, TEXT));
    String body = utf8(ctx);
    JsonNode sheet =
        type.equals(TEXT)
            ? JsonNodeFactory.instance.objectNode().put("recipe", body)
            : ApiJson.tree(body);
    answer(
        ctx,
        sheet.isObject()
            ? new Traced.Made<>(tracer.layout(sheet))
            : new Traced.Refused<>(SheetReader.read(body).problems()));
  }

  /** The body of a request of a program, which must be JSON in UTF-8. */
  private String json(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, JSON);
    return utf8(ctx);
  }

  private static String utf8(Context ctx) {
    byte[] body = ctx.bodyAsBytes();
    return FormBody.text(body, body.length)
        .orElseThrow(() -> new Refusal(400, "The body is not valid UTF-8."));
  }

  private static <T> void answer(Context ctx, Traced<T> traced) {
    outcome(
        ctx,
        traced instanceof Traced.Made<T> made
            ? new Outcome<>(Optional.of(made.report()), List.of())
            : new Outcome<>(Optional.empty(), ((Traced.Refused<T>) traced).problems()));
  }

  private static void outcome(Context ctx, Outcome<?> outcome) {
    int count = outcome.problems().size();
    Object answer =
        outcome
            .answer()
            .orElseThrow(
                () ->
                    new Refusal(
                        400,
                        count == 1 ? "There is one problem." : "There are " + count + " problems.",
                        outcome.problems()));
    ctx.contentType(JSON).result(ApiJson.text(answer));
  }
}
