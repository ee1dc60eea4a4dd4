package crumbtrail.web;

import crumbtrail.lessons.School;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;

/** The pages that teach: a knob to turn, a mystery loaf, the course. */
final class LessonRoutes {
  private static final String FORM = "application/x-www-form-urlencoded";
  private static final int SEEDS = 10_000;

  private final Supplier<School> school;
  private final Guards guards;

  LessonRoutes(Supplier<School> school, Guards guards) {
    this.school = school;
    this.guards = guards;
  }

  void register(RoutesConfig routes) {
    routes.get("/vary", ctx -> vary(ctx, asked(ctx)));
    routes.post("/vary", this::varyOwn);
    routes.get("/mystery", this::mystery);
    routes.get(
        "/lessons",
        ctx -> Rendering.page(ctx, "lessons.jte", Map.of("lessons", school.get().course().all())));
    routes.get("/lessons/{number}", this::lesson);
  }

  private void varyOwn(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, FORM);
    vary(
        ctx,
        FormBody.read(ctx.bodyAsBytes())
            .orElseThrow(() -> new Refusal(400, "The form arrived damaged.")));
  }

  private void vary(Context ctx, Map<String, String> fields) {
    VaryPage page = VaryPage.of(school.get(), fields, Texts.of(ctx));
    if (!page.faults().isEmpty()) {
      ctx.status(400);
    }
    Rendering.page(ctx, "vary.jte", Map.of("page", page, "teaching", Teaching.of(ctx)));
  }

  // A loaf without a number gets one, so that its address brings it again.
  private void mystery(Context ctx) {
    Map<String, String> fields = asked(ctx);
    String seed = fields.getOrDefault("seed", "");
    if (!seed.matches("\\d{1,9}")) {
      ctx.redirect(
          "/mystery?level="
              + (MysteryPage.levels().contains(fields.get("level")) ? fields.get("level") : "easy")
              + "&seed="
              + ThreadLocalRandom.current().nextInt(1, SEEDS));
      return;
    }
    Rendering.page(
        ctx,
        "mystery.jte",
        Map.of("page", MysteryPage.of(school.get(), Long.parseLong(seed), fields, Texts.of(ctx))));
  }

  private void lesson(Context ctx) {
    String number = ctx.pathParam("number");
    int place = number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0;
    if (place < 1 || place > school.get().course().all().size()) {
      throw new Refusal(404, "There is no such lesson.");
    }
    Rendering.page(
        ctx,
        "lesson.jte",
        Map.of(
            "page",
            LessonPage.of(school.get(), place, Texts.of(ctx)),
            "teaching",
            Teaching.of(ctx)));
  }

  private static Map<String, String> asked(Context ctx) {
    Map<String, String> fields = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, values) -> fields.put(name, values.get(values.size() - 1)));
    return fields;
  }
}
