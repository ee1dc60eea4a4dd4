package crumbtrail.web;

import crumbtrail.handbook.Leaf;
import crumbtrail.handbook.Leaves;
import crumbtrail.picture.LoafPictures;
import crumbtrail.web.ReportView.Drawn;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** The handbook, leaf by leaf. */
final class LeafRoutes {
  /** So many signs are drawn beside a cause. */
  private static final int DRAWN = 4;

  private final Supplier<Leaves> leaves;
  private final LoafPictures pictures;

  LeafRoutes(Supplier<Leaves> leaves, LoafPictures pictures) {
    this.leaves = leaves;
    this.pictures = pictures;
  }

  void register(RoutesConfig routes) {
    routes.get("/handbook", ctx -> show(ctx, leaves.get().front(), List.of()));
    routes.get("/handbook/matrix", ctx -> show(ctx, leaves.get().matrix(), List.of()));
    routes.get(
        "/handbook/matrix.csv",
        ctx ->
            ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"matrix.csv\"")
                .result(leaves.get().matrixSheet()));
    routes.get("/causes", ctx -> show(ctx, leaves.get().causes(), List.of()));
    routes.get("/signs", ctx -> ctx.redirect("/handbook#signs-by-place"));
    routes.get(
        "/causes/{key}",
        ctx -> show(ctx, found(ctx, leaves.get()::cause), drawn(ctx), ctx.pathParam("key")));
    routes.get("/signs/{key}", ctx -> show(ctx, found(ctx, leaves.get()::sign), List.of()));
    routes.get("/stages/{key}", ctx -> show(ctx, found(ctx, leaves.get()::stage), List.of()));
  }

  private static Leaf found(Context ctx, Function<String, Optional<Leaf>> shelf) {
    return shelf
        .apply(ctx.pathParam("key"))
        .orElseThrow(() -> new Refusal(404, "The handbook has no such page."));
  }

  private List<Drawn> drawn(Context ctx) {
    return leaves.get().signsOf(ctx.pathParam("key")).stream()
        .filter(sign -> pictures.draws(sign.key()))
        .limit(DRAWN)
        .flatMap(
            sign ->
                pictures.of(sign.key()).stream()
                    .map(picture -> new Drawn(sign.name(), picture.svg())))
        .toList();
  }

  private void show(Context ctx, Leaf leaf, List<Drawn> drawings) {
    show(ctx, leaf, drawings, "");
  }

  private void show(Context ctx, Leaf leaf, List<Drawn> drawings, String cause) {
    Rendering.page(
        ctx,
        "leaf.jte",
        Map.of(
            "view",
            new LeafView(leaf, drawings, pictures),
            "teaching",
            Teaching.of(ctx),
            "cause",
            cause));
  }
}
