package crumbtrail.workup;

import crumbtrail.formula.Formula;
import crumbtrail.formula.FormulaWorker;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Style;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Works out what a bake sheet holds. Immutable; safe for use by many threads. */
public final class SheetWorkup {
  private static final String PARTIAL = "formula-partial";

  private static final Pattern BARE =
      Pattern.compile(
          "(a |my |the )?(home[- ]?made |home |yeasted |yeast )?(bread|loaf|loaves|dough)?");

  private final Catalogue catalogue;
  private final Pantry pantry;
  private final Hearing hearing;
  private final StyleFinder styles;

  /**
   * @param catalogue signs, circumstances, styles, readings
   * @param pantry ingredients
   */
  public SheetWorkup(Catalogue catalogue, Pantry pantry) {
    this.catalogue = catalogue;
    this.pantry = pantry;
    this.hearing = new Hearing(catalogue);
    this.styles = new StyleFinder(catalogue);
  }

  /** Everything that can be worked out from the sheet; never throws for what a sheet says. */
  public Workup work(BakeSheet sheet) {
    return work(sheet, Care.FULL);
  }

  /**
   * The same, with no more care than the question is worth.
   *
   * @return with the readings that are wanted, and any others that cost little; with courses only
   *     at full care
   */
  public Workup work(BakeSheet sheet, Care care) {
    Formula formula = FormulaWorker.work(sheet, pantry);
    List<String> assumptions = new ArrayList<>(formula.assumptions());
    formula
        .notUnderstood()
        .forEach(line -> assumptions.add("\"" + line.written() + "\": " + line.uncertain() + "."));
    if (!sheet.process().fromSteps().isEmpty()) {
      assumptions.add(
          "From the steps of the recipe and the remarks, since no field tells it: "
              + String.join("; ", sheet.process().fromSteps())
              + ".");
    }
    Heard heard = hearing.hear(sheet);
    Optional<Style> told = styles.named(sheet.style()).or(() -> styles.named(sheet.title()));
    String words = (sheet.style() + " " + sheet.title()).toLowerCase(Locale.ROOT);
    Style style = FittedStyle.of(told.orElseGet(() -> styles.guessed(formula)), formula, words);
    if (told.isEmpty()) {
      assumptions.add(
          "No style of bread that I know is named; the ranges are those of " + style.name() + ".");
    }
    ReadingList readings = new ReadingList(catalogue, style);
    boolean partial = heard.circumstances().stream().anyMatch(one -> one.key().equals(PARTIAL));
    formula(formula, partial, readings);
    Courses courses = process(sheet, readings, formula, heard, care);
    return new Workup(
        style,
        formula,
        readings.all(),
        withFormula(heard, partial, formula, styleNotUnderstood(sheet, told)),
        assumptions,
        courses.rise(),
        courses.bake());
  }

  // Of a formula told in part, what is not named may still have been in the dough. Of a flour told
  // only as "flour" the
  // strength is a guess.
  private static void formula(Formula formula, boolean partial, ReadingList readings) {
    boolean anyFlour =
        formula.assumptions().stream().anyMatch(said -> said.startsWith("\"flour\" taken"));
    formula
        .readings()
        .forEach(
            (name, level) -> {
              boolean strength = name.equals("flour protein") || name.equals("water balance");
              if (level.value() > 0 || !partial) {
                readings.put(
                    name,
                    level.value(),
                    level.low(),
                    level.high(),
                    strength && anyFlour ? Known.ASSUMED : Known.WORKED_OUT);
              }
            });
  }

  private record Courses(Optional<RiseCourse> rise, Optional<BakeCurve> bake) {}

  private Courses process(
      BakeSheet sheet, ReadingList readings, Formula formula, Heard heard, Care care) {
    BakeProcess process = sheet.process();
    Set<String> circumstances =
        heard.circumstances().stream().map(Heard.Circumstance::key).collect(Collectors.toSet());
    VesselWorkup.work(process, readings);
    TemperatureWorkup.work(process, readings, formula);
    MixingWorkup.work(process, readings);
    double grown = PrefermentWorkup.work(sheet, formula, pantry, readings);
    Dose dose = Dose.of(readings, formula, circumstances, grown);
    Optional<RiseCourse> rise = RiseWorkup.work(process, readings, dose, circumstances, care);
    OvenWorkup.work(process, readings);
    Optional<BakeCurve> bake = BakeWorkup.work(process, readings, circumstances, care);
    KeepingWorkup.work(process, readings, circumstances);
    return new Courses(rise, bake);
  }

  private Heard withFormula(Heard heard, boolean partial, Formula formula, List<String> more) {
    List<Heard.Circumstance> circumstances = new ArrayList<>(heard.circumstances());
    for (String key : formula.circumstances()) {
      boolean known = catalogue.circumstance(key).isPresent();
      boolean missing = partial && key.startsWith("no-");
      boolean heardAlready = circumstances.stream().anyMatch(one -> one.key().equals(key));
      if (known && !heardAlready && !missing) {
        circumstances.add(new Heard.Circumstance(key, "the formula"));
      }
    }
    List<String> notUnderstood = new ArrayList<>(heard.notUnderstood());
    formula.notUnderstood().forEach(line -> notUnderstood.add(line.written()));
    notUnderstood.addAll(more);
    return new Heard(heard.signs(), circumstances, notUnderstood);
  }

  // A bare "bread" or "loaf" names no style, and there is nothing in it to misunderstand.
  private static List<String> styleNotUnderstood(BakeSheet sheet, Optional<Style> told) {
    if (told.isPresent()) {
      return List.of();
    }
    String words = sheet.style().strip().toLowerCase(Locale.ROOT);
    return BARE.matcher(words).matches() ? List.of() : List.of(sheet.style());
  }
}
