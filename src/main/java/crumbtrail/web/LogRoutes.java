package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Page;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Verdict;
import crumbtrail.bakelog.exchange.LogExport;
import crumbtrail.report.Report;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/** The pages of the log: the list, one bake, what was found out about it. */
final class LogRoutes {
  /** Bakes on a page of the list. */
  static final int MOST = 25;

  private static final int MOST_AT_ONCE = 40;

  private final LogHouse house;
  private final Classes classes;

  LogRoutes(LogHouse house, Classes classes) {
    this.house = house;
    this.classes = classes;
  }

  void register(RoutesConfig routes) {
    routes.get("/log", this::list);
    routes.get("/log/bakes.zip", this::export);
    routes.get("/log/{id}", ctx -> show(ctx, bake(ctx), done(ctx)));
    routes.get("/log/{id}/findings", this::findings);
    routes.get("/log/{id}/delete", this::askBefore);
    routes.post("/log/{id}", this::note);
    routes.post("/log/{id}/causes", this::judge);
    routes.post("/log/{id}/delete", this::delete);
  }

  private void list(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    Map<String, String> asked = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, values) -> asked.put(name, values.get(values.size() - 1)));
    Texts t = Texts.of(ctx);
    Page page =
        house
            .sight(viewer)
            .shelf(asked.getOrDefault("of", Sight.OWN))
            .list(LogList.sought(asked), MOST, LogList.after(asked));
    LogList list = LogList.of(asked, page, house.causes(), classes.shelves(viewer, t), t);
    if (!list.faults().isEmpty()) {
      ctx.status(400);
    }
    Rendering.page(ctx, "log.jte", Map.of("page", list, "done", done(ctx)));
  }

  private Bake bake(Context ctx) {
    return house.sight(house.viewer(ctx)).bake(LogHouse.id(ctx, "id"));
  }

  private void show(Context ctx, Bake bake, String done) {
    Rendering.page(ctx, "bake.jte", Map.of("page", page(ctx, bake, done)));
  }

  private BakePage page(Context ctx, Bake bake, String done) {
    Viewer viewer = house.viewer(ctx);
    Sight sight = house.sight(viewer);
    Texts t = Texts.of(ctx);
    return BakePage.of(
        bake,
        new BakePage.Beside(
            sight.mine(bake) ? "" : classes.baker(bake.owner()),
            sight.mine(bake),
            sight.mayDelete(bake),
            classes.joined(viewer),
            done),
        house.causes(),
        t);
  }

  /** What has just been done; it stands in the address, so that loading it again does nothing. */
  static String done(Context ctx) {
    String done = ctx.queryParam("done");
    return done != null && done.matches("[a-z]{1,20}") ? done : "";
  }

  private void findings(Context ctx) {
    Bake bake = bake(ctx);
    Traced<Report> traced = house.tracer().trace(bake.sheet());
    if (traced instanceof Traced.Refused<Report> refused) {
      throw new Refusal(
          400, "The rules of today cannot read the sheet of this bake.", refused.problems());
    }
    Report report = ((Traced.Made<Report>) traced).report();
    Held held = Held.of(bake.sheet(), false, Units.of(ctx), Texts.of(ctx));
    Rendering.page(
        ctx,
        "report.jte",
        Map.of(
            "report",
            ReportViews.of(report, house.pictures(), held),
            "teaching",
            Teaching.of(ctx),
            "kept",
            bake.id()));
  }

  private void note(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    Map<String, String> fields = house.forms().read(ctx);
    long id = LogHouse.id(ctx, "id");
    Long given = classes.given(viewer, fields.getOrDefault("class", ""));
    Bake kept = bake(ctx);
    KeepForm typed = KeepForm.changed(kept, fields, classes.joined(viewer), Texts.of(ctx));
    if (!typed.faults().isEmpty() && house.sight(viewer).mine(kept)) {
      ctx.status(400);
      Rendering.page(ctx, "bake.jte", Map.of("page", page(ctx, kept, "").refused(typed)));
      return;
    }
    house
        .sight(viewer)
        .change(
            id,
            bake ->
                typed
                    .written(bake)
                    .of(bake.owner(), fields.containsKey("class") ? given : bake.schoolClass()));
    LogHouse.on(ctx, "/log/" + id + "?done=noted");
  }

  private void judge(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    Map<String, String> fields = house.forms().read(ctx);
    long id = LogHouse.id(ctx, "id");
    Map<String, Verdict> said = new LinkedHashMap<>();
    fields.entrySet().stream()
        .filter(field -> field.getKey().startsWith("cause-"))
        .limit(MOST_AT_ONCE)
        .forEach(field -> said.put(field.getKey().substring(6), verdict(field.getValue())));
    String other = fields.getOrDefault("other", "");
    if (house.causes().known(other)) {
      said.put(other, verdict(fields.getOrDefault("other-said", "yes")));
    }
    house
        .sight(viewer)
        .change(
            id,
            bake -> {
              Map<String, Verdict> verdicts = new TreeMap<>(bake.verdicts());
              said.forEach(
                  (cause, verdict) -> {
                    if (verdict == null) {
                      verdicts.remove(cause);
                    } else if (house.causes().known(cause) || verdicts.containsKey(cause)) {
                      verdicts.put(cause, verdict);
                    }
                  });
              return bake.withVerdicts(verdicts);
            });
    LogHouse.on(ctx, "/log/" + id + "?done=judged");
  }

  private static Verdict verdict(String said) {
    return switch (said) {
      case "yes" -> Verdict.CONFIRMED;
      case "no" -> Verdict.RULED_OUT;
      default -> null;
    };
  }

  private void askBefore(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    Bake bake = bake(ctx);
    if (!house.sight(viewer).mayDelete(bake)) {
      throw new Refusal(403, "Only whoever baked it may delete this bake.");
    }
    Rendering.page(ctx, "bakedelete.jte", Map.of("page", page(ctx, bake, "")));
  }

  private void delete(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    house.forms().read(ctx);
    house.sight(viewer).delete(LogHouse.id(ctx, "id"));
    LogHouse.on(ctx, "/log?done=deleted");
  }

  // Written to a file first: a log that breaks on the way is told of, not cut short.
  private void export(Context ctx) throws IOException {
    Scope scope = house.sight(house.viewer(ctx)).ownScope();
    Path folder = Files.createTempDirectory("crumbtrail-export");
    Path file = folder.resolve("bakes.zip");
    try {
      LogExport.write(house.store(), scope, file, done -> {});
      ctx.contentType("application/zip")
          .header("Content-Disposition", "attachment; filename=\"bakes.zip\"")
          .header("Content-Length", String.valueOf(Files.size(file)));
      Files.copy(file, ctx.res().getOutputStream());
    } finally {
      Files.deleteIfExists(file);
      Files.delete(folder);
    }
  }
}
