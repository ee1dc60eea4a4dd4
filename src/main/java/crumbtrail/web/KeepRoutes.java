package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogFault;
import crumbtrail.report.JsonReport;
import crumbtrail.report.Report;
import crumbtrail.web.KeepForm.Choice;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Puts a bake into the log. */
final class KeepRoutes {
  private static final String NAME = "keeping";

  private final LogHouse house;
  private final Classes classes;

  KeepRoutes(LogHouse house, Classes classes) {
    this.house = house;
    this.classes = classes;
  }

  void register(RoutesConfig routes) {
    routes.before("/trace", this::attend);
    routes.before("/answer", this::attend);
    routes.post("/log", this::keep);
  }

  // Findings can be kept where this is handed to them.
  private void attend(Context ctx) {
    ctx.attribute(NAME, this);
  }

  /** The form below the findings; empty where no log is kept. */
  static Optional<KeepForm> form(Context ctx, String sheet, Report report) {
    KeepRoutes keeping = ctx.attribute(NAME);
    return Optional.ofNullable(keeping)
        .flatMap(one -> KeepForm.blank(sheet, report, one.joined(ctx)));
  }

  // Findings are there whether the log is or not.
  private List<Choice> joined(Context ctx) {
    try {
      return house.gate().known(ctx).map(classes::joined).orElse(List.of());
    } catch (LogFault fault) {
      return List.of();
    }
  }

  private void keep(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    Map<String, String> fields = house.forms().read(ctx);
    KeepForm form = KeepForm.of(fields, classes.joined(viewer), Texts.of(ctx));
    Traced<Report> traced = house.tracer().trace(form.sheet());
    if (traced instanceof Traced.Refused<Report> refused) {
      throw new Refusal(400, "The bake sheet cannot be used.", refused.problems());
    }
    if (!form.faults().isEmpty()) {
      ctx.status(400);
      Rendering.page(ctx, "keep.jte", Map.of("keep", form));
      return;
    }
    long id =
        house.sight(viewer).own().add(bake(form, ((Traced.Made<Report>) traced).report(), viewer));
    LogHouse.on(ctx, "/log/" + id + "?done=kept");
  }

  private static Bake bake(KeepForm form, Report report, Viewer viewer) {
    return Bake.of(
            Days.baked(Days.typed(form.baked()).orElseThrow()),
            form.label(),
            form.recipe(),
            form.sheet())
        .withNote(form.note())
        .withOutcome(KeepForm.outcome(form.outcome()))
        .withTraced(new crumbtrail.bakelog.Traced(JsonReport.line(report), report.ruleBase()))
        .of(viewer.person().id(), form.schoolClassNumber());
  }
}
