package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Outcome;
import crumbtrail.report.Report;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What is told of a bake beside its sheet when it is put into the log, as it was typed.
 *
 * @param sheet the bake sheet as JSON, as it came; may be anything
 * @param label the baker's name for the bake
 * @param recipe what was baked
 * @param baked the day
 * @param outcome how it came out, empty where that is not said
 * @param schoolClass number of the class to which it is given, empty for none
 * @param classes to which it can be given
 * @param faults what is wrong, by name of the field
 */
public record KeepForm(
    String sheet,
    String label,
    String recipe,
    String baked,
    String note,
    String outcome,
    String schoolClass,
    List<Choice> classes,
    Map<String, String> faults) {

  /** How it can come out, as the form has it. */
  public static final List<String> OUTCOMES = List.of("good", "fair", "failed");

  public KeepForm {
    classes = List.copyOf(classes);
    faults = Map.copyOf(faults);
  }

  /** Something to choose: what the form sends, and its name. */
  public record Choice(String key, String name) {}

  /** The form below the findings; empty where the sheet is too long to be sent back. */
  static Optional<KeepForm> blank(String sheet, Report report, List<Choice> classes) {
    if (sheet == null) {
      return Optional.empty();
    }
    String title = report.title() == null ? "" : report.title();
    String style = report.style() == null ? "" : report.style();
    return Optional.of(
        new KeepForm(
            sheet,
            title.isEmpty() ? style : title,
            title.isEmpty() ? style : title,
            Days.today().toString(),
            "",
            "",
            "",
            classes,
            Map.of()));
  }

  /** The form of a bake that is kept. */
  static KeepForm of(Bake bake, List<Choice> classes) {
    return new KeepForm(
        "",
        bake.label(),
        bake.recipe(),
        bake.baked().toLocalDate().toString(),
        bake.note(),
        typed(bake.outcome()),
        bake.schoolClass() == null ? "" : String.valueOf(bake.schoolClass()),
        classes,
        Map.of());
  }

  /**
   * The form of a bake that is kept, as it was sent; what it does not hold of name, recipe and day
   * is as before.
   */
  static KeepForm changed(Bake bake, Map<String, String> fields, List<Choice> classes, Texts t) {
    Map<String, String> all = new java.util.LinkedHashMap<>();
    KeepForm before = of(bake, classes);
    all.put("label", before.label);
    all.put("recipe", before.recipe);
    all.put("baked", before.baked);
    all.putAll(fields);
    // Bakes that a command kept may have no name, and need none to be written on.
    if (bake.label().isEmpty() && all.get("label").isBlank()) {
      all.put("label", "–");
      KeepForm typed = of(all, classes, t);
      return new KeepForm(
          "",
          "",
          typed.recipe,
          typed.baked,
          typed.note,
          typed.outcome,
          typed.schoolClass,
          classes,
          typed.faults);
    }
    return of(all, classes, t);
  }

  /** The bake with what the form holds; whose it is stays. */
  Bake written(Bake bake) {
    LocalDate day = Days.typed(baked).orElseThrow();
    return bake.called(
            label, recipe, day.equals(bake.baked().toLocalDate()) ? bake.baked() : Days.baked(day))
        .withNote(note)
        .withOutcome(outcome(outcome));
  }

  /** The form as it was sent, with what is wrong about it. */
  static KeepForm of(Map<String, String> fields, List<Choice> classes, Texts t) {
    KeepForm typed =
        new KeepForm(
            fields.getOrDefault("sheet", ""),
            fields.getOrDefault("label", ""),
            fields.getOrDefault("recipe", ""),
            fields.getOrDefault("baked", ""),
            fields.getOrDefault("note", ""),
            fields.getOrDefault("outcome", ""),
            fields.getOrDefault("class", ""),
            classes,
            Map.of());
    return new KeepForm(
        typed.sheet,
        typed.label,
        typed.recipe,
        typed.baked,
        typed.note,
        typed.outcome,
        typed.schoolClass,
        classes,
        faults(typed, t));
  }

  private static Map<String, String> faults(KeepForm typed, Texts t) {
    Map<String, String> faults = new java.util.LinkedHashMap<>();
    if (typed.label.isBlank()) {
      faults.put("label", t.of("keep.label.missing"));
    } else if (typed.label.length() > Bake.LONGEST_NAME) {
      faults.put("label", t.of("keep.long", Bake.LONGEST_NAME));
    }
    if (typed.recipe.length() > Bake.LONGEST_NAME) {
      faults.put("recipe", t.of("keep.long", Bake.LONGEST_NAME));
    }
    if (Days.typed(typed.baked).isEmpty()) {
      faults.put("baked", t.of("keep.baked.fault"));
    }
    if (typed.note.length() > Bake.LONGEST_NOTE) {
      faults.put("note", t.of("keep.long", Bake.LONGEST_NOTE));
    }
    if (!typed.schoolClass.isEmpty()
        && typed.classes.stream().noneMatch(one -> one.key().equals(typed.schoolClass))) {
      faults.put("class", t.of("keep.class.fault"));
    }
    return faults;
  }

  /** The names of the faulty fields, in the order of the form. */
  public List<String> faulty() {
    List<String> order = new ArrayList<>(List.of("label", "recipe", "baked", "note", "class"));
    order.retainAll(faults.keySet());
    return order;
  }

  /** Whether something is wrong with name, recipe or day. */
  public boolean misnamed() {
    return !fault("label").isEmpty() || !fault("recipe").isEmpty() || !fault("baked").isEmpty();
  }

  /** What is wrong with a field, or empty. */
  public String fault(String field) {
    return faults.getOrDefault(field, "");
  }

  /** How it came out, as the log keeps it. */
  static Outcome outcome(String typed) {
    return OUTCOMES.contains(typed) ? Outcome.valueOf(typed.toUpperCase(Locale.ROOT)) : null;
  }

  /** How it came out, as the form has it; empty while nobody has said. */
  static String typed(Outcome outcome) {
    return outcome == null ? "" : outcome.name().toLowerCase(Locale.ROOT);
  }

  /** The class to which it is given, null for none. */
  Long schoolClassNumber() {
    return schoolClass.isEmpty() ? null : Sight.number(schoolClass).orElse(null);
  }
}
