package crumbtrail.web;

import crumbtrail.api.Endpoint;
import crumbtrail.api.StudyEndpoints;
import crumbtrail.bakelog.Bake;
import crumbtrail.study.ComparedBakes;
import crumbtrail.study.Kitchen;
import crumbtrail.study.OwnRecord;
import crumbtrail.study.SideBySide;
import crumbtrail.study.Trends;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The study of the log for programs. */
final class StudyApi {
  private static final int MOST = 999;

  private final LogHouse house;
  private final StudyRoutes pages;

  StudyApi(LogHouse house, StudyRoutes pages) {
    this.house = house;
    this.pages = pages;
  }

  void bind(Map<Endpoint, Handler> bound) {
    bound.put(
        StudyEndpoints.SINCE,
        ctx -> {
          Bake bake = pages.bake(ctx, LogHouse.id(ctx, "id"));
          answer(ctx, compared(pages.lastGood(ctx, bake).orElse(null), bake));
        });
    bound.put(
        StudyEndpoints.COMPARE,
        ctx ->
            answer(
                ctx,
                compared(
                    pages.bake(ctx, StudyRoutes.better(ctx)),
                    pages.bake(ctx, LogHouse.id(ctx, "id")))));
    bound.put(
        StudyEndpoints.TRENDS,
        ctx -> {
          String recipe = StudyRoutes.asked(ctx, "recipe").strip();
          answer(
              ctx,
              Trends.of(
                  house.sight(house.viewer(ctx)).shelf(of(ctx)),
                  recipe.isEmpty() ? null : recipe,
                  most(ctx),
                  pages.catalogue()));
        });
    bound.put(
        StudyEndpoints.LEARNT,
        ctx -> {
          Viewer viewer = house.viewer(ctx);
          answer(
              ctx, Kitchen.of(house.sight(viewer).own(), viewer.person().id(), pages.catalogue()));
        });
    bound.put(
        StudyEndpoints.CALIBRATION,
        ctx ->
            answer(
                ctx,
                OwnRecord.of(house.sight(house.viewer(ctx)).shelf(of(ctx)), StudyRoutes.JUDGED)));
  }

  private static String of(Context ctx) {
    String of = StudyRoutes.asked(ctx, "of");
    return of.isBlank() ? Sight.OWN : of;
  }

  private static int most(Context ctx) {
    String most = StudyRoutes.asked(ctx, "most");
    if (most.isEmpty()) {
      return StudyRoutes.LATEST;
    }
    if (!most.matches("[1-9]\\d{0,2}")) {
      throw new Refusal(400, "The query parameter most: write a number from 1 to " + MOST + ".");
    }
    return Integer.parseInt(most);
  }

  private ComparedBakes compared(@Nullable Bake better, Bake bake) {
    return better == null
        ? ComparedBakes.alone(bake)
        : ComparedBakes.of(new SideBySide(better, bake, pages.compared(better, bake)));
  }

  private static void answer(Context ctx, Object found) {
    Freshness.exact(ctx, "application/json", ApiJson.text(found));
  }
}
