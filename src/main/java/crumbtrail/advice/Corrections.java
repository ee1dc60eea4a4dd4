package crumbtrail.advice;

import crumbtrail.findings.Reasoning;
import crumbtrail.formula.FormulaEdit;
import crumbtrail.formula.Substitution;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.FieldHint;
import crumbtrail.knowledge.Remedy;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetFields;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Works corrections out and tries them: the change is made on the sheet and the sheet goes through
 * the same pipeline again, without signs, as if it were about to be baked.
 *
 * <p>Used by one thread, as the reasoning is.
 */
public final class Corrections {
  /** What a sheet says that says nothing. */
  static final String NOT_TOLD = "not told";

  /**
   * Below this a risk is small enough; of changes that are all enough the first of the remedies'
   * file comes first, as it is written in the order of a kitchen: what costs least before what
   * costs most. Our choice.
   */
  private static final double ENOUGH = 0.1;

  private final Reasoning reasoning;
  private final Catalogue catalogue;
  private final Pantry pantry;
  private final Knobs knobs;

  /**
   * A sheet is tried alone, then in company, then as the next bake: the same sheet, the same trial.
   */
  private final Map<BakeSheet, Trial> trials = new HashMap<>();

  // What is turned is worked out for its words, and mostly tried as it is.
  private final Map<BakeSheet, Workup> worked = new HashMap<>();

  // Several remedies of several causes turn one knob to one aim.
  private final IdentityHashMap<Trial, Map<Sought, OptionalDouble>> met = new IdentityHashMap<>();

  private record Sought(String knob, Remedy.Aim aim) {}

  /**
   * @param reasoning the pipeline
   * @param catalogue lists the remedies
   * @param pantry what ingredients are
   */
  public Corrections(Reasoning reasoning, Catalogue catalogue, Pantry pantry) {
    this.reasoning = reasoning;
    this.catalogue = catalogue;
    this.pantry = pantry;
    this.knobs = new Knobs(catalogue, pantry);
  }

  /** Every correction for a cause that can be made on this sheet, the most helpful first. */
  public List<Correction> of(BakeSheet sheet, String cause) {
    return of(trial(sheet), cause);
  }

  List<Correction> of(Trial trial, String cause) {
    List<Correction> corrections = new ArrayList<>();
    for (Remedy remedy : catalogue.knowledge().remedies()) {
      if (remedy.cause().equals(cause) && remedy.fits(trial.workup().style().tags())) {
        tried(trial, remedy).ifPresent(corrections::add);
      }
    }
    corrections.sort(
        (one, other) -> {
          int verdict = one.verdict().compareTo(other.verdict());
          return verdict != 0
              ? verdict
              : Double.compare(
                  Math.max(ENOUGH, one.riskAfter()), Math.max(ENOUGH, other.riskAfter()));
        });
    return corrections;
  }

  /** The sheet as a bake that is still to come. */
  Trial trial(BakeSheet sheet) {
    return trials.computeIfAbsent(sheet, one -> Trial.of(reasoning, one, this::worked));
  }

  private Workup worked(BakeSheet sheet) {
    return worked.computeIfAbsent(sheet, reasoning::work);
  }

  Reasoning reasoning() {
    return reasoning;
  }

  private Optional<Correction> tried(Trial trial, Remedy remedy) {
    Optional<Change> turned =
        remedy.turn() == null ? Optional.of(Change.none(trial)) : turn(trial, remedy);
    Optional<Change> changed = turned.flatMap(change -> swapped(change, remedy));
    return changed
        .map(change -> told(change, trial, remedy))
        .filter(change -> !change.from().isEmpty())
        .filter(
            change ->
                !change.sheet().equals(trial.sheet())
                    || (remedy.turn() != null && change.from().equals(NOT_TOLD)))
        .map(change -> checked(change, trial, remedy));
  }

  private Correction checked(Change change, Trial before, Remedy remedy) {
    Trial after = trial(change.sheet());
    return new Correction(
        remedy,
        remedy.turn() == null ? "" : remedy.turn(),
        change.words(),
        change.from(),
        change.to(),
        remedy.why(),
        before.risk(remedy.cause()),
        after.risk(remedy.cause()),
        after.moved(before, remedy.cause()),
        change.sheet().equals(before.sheet())
            ? Correction.Verdict.UNTOLD
            : after.against(before, remedy.cause()),
        change.sheet());
  }

  /** A sheet on its way to being corrected. */
  private record Change(BakeSheet sheet, String words, String from, String to) {
    static Change none(Trial trial) {
      return new Change(trial.sheet(), "", "", "");
    }
  }

  private Optional<Change> turn(Trial trial, Remedy remedy) {
    Optional<Knob> found = knobs.named(remedy.turn());
    if (found.isEmpty() || !found.get().turns(trial.sheet(), trial.workup())) {
      return Optional.empty();
    }
    Knob knob = found.get();
    OptionalDouble value = turned(trial, knob, remedy.aim());
    if (value.isEmpty()) {
      boolean told = knob.value(trial.sheet(), trial.workup()).isPresent();
      return told || remedy.step() == null
          ? Optional.empty()
          : Optional.of(blind(trial, remedy, knob));
    }
    BakeSheet turned = knob.turned(trial.sheet(), trial.workup(), value.getAsDouble());
    KnobWords words = new KnobWords(knob, trial, turned, worked(turned));
    String change = remedy.does() == null ? words.change(remedy.aim().step()) : remedy.does();
    return Optional.of(new Change(turned, change, words.from(), words.to(value.getAsDouble())));
  }

  private OptionalDouble turned(Trial trial, Knob knob, Remedy.Aim aim) {
    Turner turner = new Turner(reasoning, trial, aim, knob);
    OptionalDouble aimed =
        met.computeIfAbsent(trial, first -> new HashMap<>())
            .computeIfAbsent(
                new Sought(knob.kind().key(), new Remedy.Aim(aim.until(), aim.to(), null)),
                once -> turner.aimed());
    return turner.value(aimed);
  }

  // The sheet does not say where the knob stands: which way, and how far from there.
  private static Change blind(Trial trial, Remedy remedy, Knob knob) {
    String words =
        remedy.does() == null ? KnobWords.lead(knob, remedy.aim().step()) : remedy.does();
    return new Change(trial.sheet(), words, NOT_TOLD, KnobWords.step(knob, remedy.aim().step()));
  }

  private Optional<Change> swapped(Change change, Remedy remedy) {
    if (remedy.swap() == null) {
      return Optional.of(change);
    }
    Remedy.Swap swap = remedy.swap();
    return pantry
        .lookup(swap.with())
        .flatMap(
            taken ->
                Substitution.of(
                    change.sheet(), pantry, Knob.picks(swap.pick()), taken, swap.share()))
        .map(made -> new Change(made.sheet(), words(change, remedy), made.from(), made.to()));
  }

  private static String words(Change change, Remedy remedy) {
    return remedy.does() == null ? change.words() : remedy.does();
  }

  // What is done otherwise is written into the fields of the sheet, what is no longer so is taken
  // out of them and out of the remarks, and what is so now is remarked.
  private Change told(Change change, Trial trial, Remedy remedy) {
    BakeSheet sheet = dropped(change.sheet(), trial, remedy.drop());
    List<String> from = new ArrayList<>();
    List<String> to = new ArrayList<>();
    for (Map.Entry<String, String> field : new TreeMap<>(remedy.set()).entrySet()) {
      Optional<String> was = SheetFields.text(sheet, field.getKey());
      Optional<BakeSheet> set = set(sheet, field.getKey(), field.getValue());
      if (set.isPresent() && !set.get().equals(sheet)) {
        sheet = set.get();
        from.add(was.map(Corrections::plain).orElse(NOT_TOLD));
        to.add(plain(field.getValue()));
      }
    }
    List<String> remarks = new ArrayList<>(sheet.process().remarks());
    remedy.hold().stream().filter(key -> !remarks.contains(key)).forEach(remarks::add);
    sheet = sheet.with(sheet.process().withRemarks(remarks));
    boolean turned = !change.from().isEmpty();
    if (from.isEmpty()) {
      from.add(
          trial.workup().heard().circumstances().stream()
              .filter(heard -> remedy.drop().contains(heard.key()))
              .map(Heard.Circumstance::key)
              .findFirst()
              .map(this::name)
              .orElse(NOT_TOLD));
      to.add(remedy.hold().isEmpty() ? words(change, remedy) : name(remedy.hold().get(0)));
    }
    return new Change(
        sheet,
        words(change, remedy),
        turned ? change.from() : String.join(", ", from.stream().distinct().toList()),
        turned ? change.to() : String.join(", ", to));
  }

  private Optional<BakeSheet> set(BakeSheet sheet, String field, String text) {
    if (field.equals("formula")) {
      // Every line by weight, whatever it was measured with.
      return Optional.of(FormulaEdit.of(sheet, pantry).scaled(1));
    }
    if (field.endsWith(".covered")) {
      String at = field.substring(0, field.indexOf('.'));
      return Optional.of(Stays.of(sheet, at).covered(text.equals("yes") || text.equals("true")));
    }
    return SheetFields.with(sheet, field, text).sheet();
  }

  private String name(String circumstance) {
    return catalogue.circumstance(circumstance).map(CircumstanceKind::name).orElse(circumstance);
  }

  private static String plain(String text) {
    return text.equals("true") ? "yes" : text.equals("false") ? "no" : text;
  }

  private BakeSheet dropped(BakeSheet sheet, Trial trial, List<String> keys) {
    if (keys.isEmpty()) {
      return sheet;
    }
    BakeSheet left = sheet;
    Set<String> spoken =
        trial.workup().heard().circumstances().stream()
            .filter(heard -> keys.contains(heard.key()))
            .map(Heard.Circumstance::words)
            .collect(Collectors.toSet());
    List<String> remarks =
        sheet.process().remarks().stream()
            .filter(remark -> !keys.contains(remark))
            .filter(remark -> spoken.stream().noneMatch(words -> says(remark, words)))
            .toList();
    left = left.with(left.process().withRemarks(remarks));
    for (FieldHint hint : catalogue.knowledge().fields()) {
      Optional<String> text = SheetFields.text(left, hint.field());
      if (keys.contains(hint.circumstance()) && text.filter(hint::saidBy).isPresent()) {
        left = SheetFields.without(left, hint.field());
      }
    }
    return left;
  }

  private static boolean says(String remark, String words) {
    return remark.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT));
  }
}
