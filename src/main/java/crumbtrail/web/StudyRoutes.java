package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.compare.Comparison;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.study.Kitchen;
import crumbtrail.study.OwnRecord;
import crumbtrail.study.SideBySide;
import crumbtrail.study.Trends;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** The pages that study the log: trends, what was learnt, two bakes side by side. */
final class StudyRoutes {
  static final int LATEST = 200;
  static final int JUDGED = 500;

  private final LogHouse house;

  StudyRoutes(LogHouse house) {
    this.house = house;
  }

  void register(RoutesConfig routes) {
    routes.get("/log/study", this::study);
    routes.get("/log/{id}/since", this::since);
    routes.get("/log/{id}/compare", this::compare);
  }

  private void study(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    Sight sight = house.sight(viewer);
    String whose = asked(ctx, "of");
    String recipe = asked(ctx, "recipe").strip();
    BakeLog log = sight.shelf(whose);
    Catalogue catalogue = catalogue();
    boolean own = whose.equals(Sight.OWN);
    Rendering.page(
        ctx,
        "study.jte",
        Map.of(
            "page",
            StudyPage.of(
                Trends.of(log, recipe.isEmpty() ? null : recipe, LATEST, catalogue),
                own
                    ? Optional.of(Kitchen.of(log, viewer.person().id(), catalogue))
                    : Optional.empty(),
                OwnRecord.of(log, JUDGED),
                new StudyPage.Asked(whose, recipe),
                house.causes(),
                Texts.of(ctx))));
  }

  private void since(Context ctx) {
    Bake bake = bake(ctx, LogHouse.id(ctx, "id"));
    show(ctx, lastGood(ctx, bake), bake);
  }

  /** The one before it is looked for among the bakes of whoever baked it. */
  Optional<Bake> lastGood(Context ctx, Bake bake) {
    return house
        .sight(house.viewer(ctx))
        .sameBaker(bake)
        .flatMap(log -> SideBySide.lastGood(log, bake));
  }

  private void compare(Context ctx) {
    Bake bake = bake(ctx, LogHouse.id(ctx, "id"));
    show(ctx, Optional.of(bake(ctx, better(ctx))), bake);
  }

  /** Which bake it is held against. */
  static long better(Context ctx) {
    return Sight.number(asked(ctx, "better").strip())
        .orElseThrow(
            () ->
                new Refusal(400, "Say which bake it is held against: its number, as ?better=12."));
  }

  private void show(Context ctx, Optional<Bake> before, Bake bake) {
    Texts t = Texts.of(ctx);
    if (before.isEmpty()) {
      Rendering.page(ctx, "sidebyside.jte", Map.of("page", SidePage.none(bake, t)));
      return;
    }
    Comparison found = compared(before.get(), bake);
    Rendering.page(
        ctx,
        "sidebyside.jte",
        Map.of("page", SidePage.of(new SideBySide(before.get(), bake, found), house.causes(), t)));
  }

  /** What of the differences can explain the outcome. */
  Comparison compared(Bake better, Bake bake) {
    Traced<Comparison> traced = house.tracer().compare(better.sheet(), bake.sheet());
    if (traced instanceof Traced.Refused<Comparison> refused) {
      throw new Refusal(
          400,
          "The rules of today cannot read the sheet of one of these bakes.",
          refused.problems());
    }
    return ((Traced.Made<Comparison>) traced).report();
  }

  Bake bake(Context ctx, long id) {
    return house.sight(house.viewer(ctx)).bake(id);
  }

  Catalogue catalogue() {
    return house
        .causes()
        .catalogue()
        .orElseThrow(() -> new Refusal(503, "This server knows no causes to study."))
        .get();
  }

  static String asked(Context ctx, String name) {
    String value = ctx.queryParam(name);
    return value == null ? "" : value;
  }
}
