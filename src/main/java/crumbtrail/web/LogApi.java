package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.api.Endpoint;
import crumbtrail.api.Gone;
import crumbtrail.api.KeptBake;
import crumbtrail.api.KeptBake.KeptCause;
import crumbtrail.api.KeptBake.KeptPhotoLine;
import crumbtrail.api.KeptLine;
import crumbtrail.api.KeptLines;
import crumbtrail.api.KeptPhoto;
import crumbtrail.api.LogEndpoints;
import crumbtrail.api.LogReader;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Digest;
import crumbtrail.bakelog.Digests;
import crumbtrail.bakelog.Page;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.Traced;
import crumbtrail.bakelog.Verdict;
import crumbtrail.report.JsonReport;
import crumbtrail.report.Report;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The log for programs. */
final class LogApi {
  private static final String JSON = "application/json";
  private static final int USUAL = 50;
  private static final int MOST = 200;

  private final LogHouse house;
  private final Classes classes;
  private final LogBodies bodies;

  LogApi(LogHouse house, Classes classes, Guards guards) {
    this.house = house;
    this.classes = classes;
    this.bodies = new LogBodies(guards);
  }

  void bind(Map<Endpoint, Handler> bound) {
    bound.put(LogEndpoints.BAKES, this::list);
    bound.put(LogEndpoints.KEEP, this::keep);
    bound.put(LogEndpoints.BAKE, ctx -> fresh(ctx, written(bake(ctx))));
    bound.put(LogEndpoints.NOTE, this::note);
    bound.put(LogEndpoints.DELETE, this::delete);
    bound.put(LogEndpoints.ADD_PHOTO, this::addPhoto);
    bound.put(LogEndpoints.PHOTO, this::photo);
    bound.put(LogEndpoints.DELETE_PHOTO, this::deletePhoto);
  }

  private Viewer changing(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    bodies.checkOrigin(ctx);
    house.gate().count(ctx, viewer);
    return viewer;
  }

  private Bake bake(Context ctx) {
    return house.sight(house.viewer(ctx)).bake(LogHouse.id(ctx, "id"));
  }

  private void list(Context ctx) {
    Viewer viewer = house.viewer(ctx);
    Map<String, String> asked = new LinkedHashMap<>();
    ctx.queryParamMap().forEach((name, values) -> asked.put(name, values.get(values.size() - 1)));
    for (String day : List.of("since", "until")) {
      if (!asked.getOrDefault(day, "").isBlank() && Days.typed(asked.get(day)).isEmpty()) {
        throw new Refusal(400, "The query parameter " + day + ": write the day as 2026-03-01.");
      }
    }
    if (!asked.getOrDefault("after", "").isBlank() && LogList.after(asked) == null) {
      throw new Refusal(400, "The query parameter after: write what the page before said as next.");
    }
    Page page =
        house
            .sight(viewer)
            .shelf(asked.getOrDefault("of", Sight.OWN))
            .list(LogList.sought(asked), most(asked), LogList.after(asked));
    fresh(
        ctx,
        ApiJson.text(
            new KeptLines(
                page.lines().stream()
                    .map(
                        one ->
                            new KeptLine(
                                one.id(),
                                one.baked().toString(),
                                one.label(),
                                one.recipe(),
                                orNull(KeepForm.typed(one.outcome())),
                                one.firstCause(),
                                one.confirmed(),
                                one.photos()))
                    .toList(),
                page.next().map(LogList::written).orElse(null))));
  }

  private static int most(Map<String, String> asked) {
    String most = asked.getOrDefault("most", "");
    if (most.isEmpty()) {
      return USUAL;
    }
    if (!most.matches("[1-9]\\d{0,2}") || Integer.parseInt(most) > MOST) {
      throw new Refusal(400, "The query parameter most: write a number from 1 to " + MOST + ".");
    }
    return Integer.parseInt(most);
  }

  private void keep(Context ctx) {
    Viewer viewer = changing(ctx);
    LogReader reader =
        new LogReader(
            bodies.json(ctx, LogForms.LONGEST),
            List.of("sheet", "label", "recipe", "baked", "note", "outcome", "schoolClass"));
    Optional<String> label = reader.text("label", Bake.LONGEST_NAME);
    Optional<String> recipe = reader.text("recipe", Bake.LONGEST_NAME);
    Optional<String> note = reader.text("note", Bake.LONGEST_NOTE);
    Optional<LocalDateTime> baked = reader.baked();
    Optional<String> outcome = reader.outcome(false);
    Optional<Long> schoolClass = reader.number("schoolClass");
    Optional<JsonNode> sheet = reader.tree("sheet");
    if (sheet.isEmpty()) {
      reader.add("sheet", "the bake sheet is missing", "write {\"sheet\": {…}}");
    }
    Optional<Report> report = sheet.flatMap(one -> traced(reader, one.toString()));
    bodies.check(reader);
    String title = Optional.ofNullable(report.orElseThrow().title()).orElse("");
    String style = Optional.ofNullable(report.get().style()).orElse("");
    Bake bake =
        Bake.of(
                baked.orElseGet(() -> LocalDateTime.now(ZoneId.systemDefault())),
                label.orElse(title.isEmpty() ? style : title),
                recipe.orElse(title),
                sheet.orElseThrow().toString())
            .withNote(note.orElse(""))
            .withOutcome(KeepForm.outcome(outcome.orElse("")))
            .withTraced(new Traced(JsonReport.line(report.get()), report.get().ruleBase()))
            .of(
                viewer.person().id(),
                classes.given(viewer, schoolClass.map(String::valueOf).orElse("")));
    Sight sight = house.sight(viewer);
    answer(ctx, written(sight.bake(sight.own().add(bake))));
  }

  private Optional<Report> traced(LogReader reader, String sheet) {
    crumbtrail.web.Traced<Report> traced = house.tracer().trace(sheet);
    if (traced instanceof crumbtrail.web.Traced.Refused<Report> refused) {
      reader.addAll("sheet", refused.problems());
      return Optional.empty();
    }
    return Optional.of(((crumbtrail.web.Traced.Made<Report>) traced).report());
  }

  private void note(Context ctx) {
    Viewer viewer = changing(ctx);
    long id = LogHouse.id(ctx, "id");
    LogReader reader =
        new LogReader(
            bodies.json(ctx, LogForms.LONGEST),
            List.of("label", "recipe", "baked", "note", "outcome", "confirmed", "ruledOut"));
    Optional<String> label = reader.text("label", Bake.LONGEST_NAME);
    Optional<String> recipe = reader.text("recipe", Bake.LONGEST_NAME);
    Optional<LocalDateTime> baked = reader.baked();
    Optional<String> note = reader.text("note", Bake.LONGEST_NOTE);
    Optional<String> outcome = reader.outcome(true);
    Optional<List<String>> confirmed = reader.causes("confirmed", house.causes()::known);
    Optional<List<String>> ruledOut = reader.causes("ruledOut", house.causes()::known);
    bodies.check(reader);
    String match = ctx.header("If-Match");
    Bake changed =
        house
            .sight(viewer)
            .change(
                id,
                bake -> {
                  Freshness.check(match, written(bake));
                  Map<String, Verdict> verdicts = new TreeMap<>(bake.verdicts());
                  judged(verdicts, ruledOut, Verdict.RULED_OUT);
                  judged(verdicts, confirmed, Verdict.CONFIRMED);
                  return bake.called(
                          label.orElse(bake.label()),
                          recipe.orElse(bake.recipe()),
                          baked.orElse(bake.baked()))
                      .withNote(note.orElse(bake.note()))
                      .withOutcome(outcome.map(KeepForm::outcome).orElse(bake.outcome()))
                      .withVerdicts(verdicts);
                });
    answer(ctx, written(changed));
  }

  private static void judged(
      Map<String, Verdict> verdicts, Optional<List<String>> said, Verdict verdict) {
    if (said.isPresent()) {
      verdicts.values().removeIf(one -> one == verdict);
      said.get().forEach(cause -> verdicts.put(cause, verdict));
    }
  }

  private void delete(Context ctx) {
    Viewer viewer = changing(ctx);
    long id = LogHouse.id(ctx, "id");
    Sight sight = house.sight(viewer);
    Freshness.check(ctx.header("If-Match"), written(sight.bake(id)));
    sight.delete(id);
    answer(ctx, ApiJson.text(new Gone("bake " + id)));
  }

  private void addPhoto(Context ctx) throws IOException {
    Viewer viewer = changing(ctx);
    long id = LogHouse.id(ctx, "id");
    Sight sight = house.sight(viewer);
    if (sight.bake(id).photos().size() >= PhotoRoutes.MOST) {
      throw new Refusal(400, "A bake has room for " + PhotoRoutes.MOST + " photos.");
    }
    LogReader reader = new LogReader(bodies.json(ctx, LogBodies.PICTURE), List.of("picture"));
    Optional<String> picture = reader.text("picture", LogBodies.PICTURE);
    byte[] file = new byte[0];
    try {
      file = Base64.getDecoder().decode(picture.orElse(""));
    } catch (IllegalArgumentException fault) {
      reader.add("picture", "this is no Base64", "write the file in Base64");
    }
    bodies.check(reader);
    sight.addPhoto(id, PhotoRoutes.made(new ByteArrayInputStream(file)));
    answer(ctx, written(sight.bake(id)));
  }

  private void photo(Context ctx) {
    long id = LogHouse.id(ctx, "id");
    Photo photo = house.sight(house.viewer(ctx)).photo(id);
    fresh(
        ctx,
        ApiJson.text(
            new KeptPhoto(
                id,
                photo.note().kind(),
                photo.note().width(),
                photo.note().height(),
                Base64.getEncoder().encodeToString(photo.picture()))));
  }

  private void deletePhoto(Context ctx) {
    Viewer viewer = changing(ctx);
    long id = LogHouse.id(ctx, "id");
    house.sight(viewer).deletePhoto(id);
    answer(ctx, ApiJson.text(new Gone("photo " + id)));
  }

  private static String written(Bake bake) {
    Traced traced = bake.traced();
    Digest digest = traced == null ? Digest.NONE : Digests.ofReport(traced.report());
    JsonNode sheet = ApiJson.tree(bake.sheet());
    return ApiJson.text(
        new KeptBake(
            bake.id(),
            bake.uid().toString(),
            bake.schoolClass(),
            bake.baked().toString(),
            bake.noted().toString(),
            bake.label(),
            bake.recipe(),
            bake.note(),
            orNull(KeepForm.typed(bake.outcome())),
            digest.ranking().stream()
                .map(one -> new KeptCause(one.cause(), one.probability()))
                .toList(),
            traced == null ? null : traced.ruleBase(),
            List.copyOf(bake.judged(Verdict.CONFIRMED)),
            List.copyOf(bake.judged(Verdict.RULED_OUT)),
            bake.photos().stream()
                .map(
                    one ->
                        new KeptPhotoLine(
                            one.id(), one.kind(), one.width(), one.height(), one.bytes()))
                .toList(),
            sheet.isObject() ? sheet : null));
  }

  private static String orNull(String text) {
    return text.isEmpty() ? null : text;
  }

  // What somebody keeps is theirs: it may be held by their program, and by nothing on the way.
  private static void fresh(Context ctx, String text) {
    Freshness.exact(ctx, JSON, text);
  }

  private static void answer(Context ctx, String text) {
    ctx.header("ETag", Freshness.exactTag(text)).contentType(JSON).result(text);
  }
}
