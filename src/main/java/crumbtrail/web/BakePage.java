package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Digest;
import crumbtrail.bakelog.Digests;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Traced;
import crumbtrail.bakelog.Verdict;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.sheet.SheetReader;
import crumbtrail.web.CauseNamer.Named;
import crumbtrail.web.KeepForm.Choice;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One bake of the log, ready to be drawn.
 *
 * @param day when it was baked
 * @param outcome "good", "fair", "failed" or empty
 * @param form what can be changed of it, as it is kept or as it was typed
 * @param baker whose it is, empty where it is the viewer's own
 * @param mine whether the viewer may change it
 * @param deletable whether the viewer may delete it
 * @param causes the first of the trace, and those that were judged
 * @param others causes that can be judged besides
 * @param traced whether there was a trace
 * @param told what stands on the sheet, in the baker's words
 * @param sheet the sheet, to be sent on
 * @param photos the photos
 * @param done what has just been done, as a key, or empty
 */
public record BakePage(
    long id,
    String label,
    String recipe,
    String day,
    String outcome,
    KeepForm form,
    String baker,
    boolean mine,
    boolean deletable,
    List<Judged> causes,
    List<Named> others,
    boolean traced,
    List<Told> told,
    String sheet,
    List<PhotoNote> photos,
    String done) {

  /** A cause, how likely the trace held it, and what the baker found out: "yes", "no" or empty. */
  public record Judged(String key, String name, String percent, String verdict) {}

  /** A heading and what stands under it on the sheet. */
  public record Told(String heading, List<String> lines) {}

  /** What a page says beside the bake itself. */
  record Beside(String baker, boolean mine, boolean deletable, List<Choice> classes, String done) {}

  static BakePage of(Bake bake, Beside beside, CauseNamer causes, Texts t) {
    List<Judged> judged = judged(bake, causes, t);
    List<String> shown = judged.stream().map(Judged::key).toList();
    return new BakePage(
        bake.id(),
        bake.label(),
        bake.recipe(),
        Days.shown(bake.baked(), t),
        KeepForm.typed(bake.outcome()),
        KeepForm.of(bake, beside.classes()),
        beside.baker(),
        beside.mine(),
        beside.deletable(),
        judged,
        causes.all(t).stream().filter(one -> !shown.contains(one.key())).toList(),
        bake.traced() != null,
        told(bake.sheet(), t),
        bake.sheet(),
        bake.photos(),
        beside.done());
  }

  /** Where all bakes of this recipe are listed. */
  public String recipeAddress() {
    return "/log?recipe=" + URLEncoder.encode(recipe, StandardCharsets.UTF_8);
  }

  /** The same with what was typed, and with what is wrong about it. */
  BakePage refused(KeepForm typed) {
    return new BakePage(
        id, label, recipe, day, outcome, typed, baker, mine, deletable, causes, others, traced,
        told, sheet, photos, "");
  }

  private static List<Judged> judged(Bake bake, CauseNamer causes, Texts t) {
    Map<String, Judged> all = new LinkedHashMap<>();
    Traced traced = bake.traced();
    Digest digest = traced == null ? Digest.NONE : Digests.ofReport(traced.report());
    digest
        .ranking()
        .forEach(
            one ->
                all.put(
                    one.cause(),
                    new Judged(
                        one.cause(),
                        causes.name(one.cause(), t),
                        t.number(ReportWords.percent(one.probability())),
                        verdict(bake.verdicts().get(one.cause())))));
    bake.verdicts()
        .forEach(
            (cause, verdict) ->
                all.putIfAbsent(
                    cause, new Judged(cause, causes.name(cause, t), "", verdict(verdict))));
    return List.copyOf(all.values());
  }

  private static String verdict(Verdict verdict) {
    if (verdict == null) {
      return "";
    }
    return verdict == Verdict.CONFIRMED ? "yes" : "no";
  }

  private static List<Told> told(String text, Texts t) {
    Optional<BakeSheet> read = SheetReader.read(text).sheet();
    if (read.isEmpty()) {
      return List.of();
    }
    BakeSheet sheet = read.get();
    List<Told> told = new ArrayList<>();
    add(told, t.of("log.sheet.seen"), sheet.seen().stream().map(one -> one.words()).toList());
    add(told, t.of("log.sheet.notseen"), sheet.notSeen());
    add(told, t.of("log.sheet.formula"), written(sheet.formula()));
    sheet
        .preferments()
        .forEach(
            one ->
                add(
                    told,
                    one.name().isEmpty() ? t.of("log.sheet.ahead") : one.name(),
                    written(one.formula())));
    add(told, t.of("log.sheet.remarks"), sheet.process().sentences());
    return told;
  }

  private static List<String> written(List<FormulaLine> lines) {
    return lines.stream().map(FormulaLine::written).toList();
  }

  private static void add(List<Told> told, String heading, List<String> lines) {
    if (!lines.isEmpty()) {
      told.add(new Told(heading, List.copyOf(lines)));
    }
  }
}
