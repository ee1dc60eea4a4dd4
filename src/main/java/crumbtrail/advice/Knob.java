package crumbtrail.advice;

import crumbtrail.formula.Formula;
import crumbtrail.formula.FormulaEdit;
import crumbtrail.formula.FormulaWorker;
import crumbtrail.formula.Level;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.Style;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetFields;
import crumbtrail.workup.MixWarmth;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Workup;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;

/**
 * One quantity of a bake that can be turned up and down: where it stands on a sheet, and the sheet
 * with it turned. What cannot be turned on a sheet (the refrigerator of a dough that never saw one)
 * leaves the sheet as it is. Immutable.
 */
public final class Knob {
  private final KnobKind kind;
  private final Pantry pantry;

  /**
   * @param kind what it turns
   * @param pantry what ingredients are
   */
  public Knob(KnobKind kind, Pantry pantry) {
    this.kind = kind;
    this.pantry = pantry;
  }

  /** What it is. */
  public KnobKind kind() {
    return kind;
  }

  /**
   * Where it stands, in its own unit.
   *
   * @param workup of the same sheet
   * @return empty where the sheet leaves it open
   */
  public Optional<Double> value(BakeSheet sheet, Workup workup) {
    return switch (kind.turns()) {
      case WARM_TIME -> Stays.of(sheet, kind.at()).warmMinutes();
      case WARM_TEMPERATURE -> Stays.of(sheet, kind.at()).warmCelsius(workup);
      case COLD_TIME -> Stays.coldMinutes(sheet).map(minutes -> minutes / 60);
      case COLD_TEMPERATURE -> Stays.coldCelsius(sheet);
      case PREFERMENT_TIME -> Stays.aheadMinutes(sheet);
      case PREFERMENT_TEMPERATURE -> Stays.aheadCelsius(sheet);
      // As it says on the bag; the reading counts added gluten in.
      case PROTEIN -> workup.formula().flourAloneProtein().map(Level::value);
      case LIQUID_TEMPERATURE ->
          reading(workup, kind.reading()).map(at -> ColdWater.asLiquid(sheet, pantry, at));
      default -> reading(workup, kind.reading());
    };
  }

  /** Whether turning it changes anything on this sheet. */
  public boolean turns(BakeSheet sheet, Workup workup) {
    return switch (kind.turns()) {
      case COLD_TIME, COLD_TEMPERATURE -> Stays.coldMinutes(sheet).isPresent();
      case PREFERMENT_TIME -> Stays.aheadMinutes(sheet).isPresent();
      case PREFERMENT_TEMPERATURE -> Stays.aheadCelsius(sheet).isPresent();
      case INGREDIENT -> workup.formula().flourGrams().value() > 0;
      case PROTEIN -> workup.formula().reading("flour protein").isPresent();
      case DOUGH_WEIGHT ->
          workup.formula().scaleKnown() && workup.formula().doughGrams().value() > 0;
      case WARM_TEMPERATURE -> !Stays.of(sheet, kind.at()).none();
      case TIN -> reading(workup, "tin room").isPresent();
      default -> true;
    };
  }

  /**
   * The sheet with it turned.
   *
   * @param workup of the same sheet
   * @param value in its own unit
   */
  public BakeSheet turned(BakeSheet sheet, Workup workup, double value) {
    BakeProcess process = sheet.process();
    return switch (kind.turns()) {
      case INGREDIENT -> ingredient(sheet).apply(value);
      case PROTEIN -> FormulaEdit.of(sheet, pantry).withProtein(Knob::glutenFlour, value);
      case DOUGH_WEIGHT -> {
        double now = workup.formula().doughGrams().value();
        yield now > 0
            ? pieces(FormulaEdit.of(sheet, pantry).scaled(value / now), value / now)
            : sheet;
      }
      case WARM_TIME -> Stays.of(sheet, kind.at()).lasting(value);
      case WARM_TEMPERATURE -> Stays.of(sheet, kind.at()).at(value);
      case COLD_TIME -> Stays.coldLasting(sheet, value * 60);
      case COLD_TEMPERATURE -> Stays.coldAt(sheet, value);
      case PREFERMENT_TIME -> Stays.aheadLasting(sheet, value);
      case PREFERMENT_TEMPERATURE -> Stays.aheadAt(sheet, value);
      case LIQUID_TEMPERATURE -> liquid(sheet, workup, value);
      case OVEN ->
          sheet.with(
              Heat.told(process)
                  ? Heat.shifted(process, value - reading(workup, "oven mean").orElse(value))
                  : Heat.at(process, value));
      case BAKE_TIME -> sheet.with(Heat.lasting(process, value));
      case TIN -> tin(sheet, workup, value);
      case FIELD -> field(sheet, kind.at(), text(value));
    };
  }

  /**
   * The same for one setting after another: what they have in common is worked out once.
   *
   * @param workup of the same sheet
   * @return the sheet with it turned to a value in its own unit
   */
  DoubleFunction<BakeSheet> turning(BakeSheet sheet, Workup workup) {
    return kind.turns() == KnobKind.Turns.INGREDIENT
        ? ingredient(sheet)
        : value -> turned(sheet, workup, value);
  }

  /** A value as a baker can set it, within the ends of the knob. */
  public double settable(double value) {
    return kind.settable(value);
  }

  /** Grams of its ingredient on a sheet; empty if it turns something else, or there are none. */
  public Optional<Double> grams(BakeSheet sheet) {
    if (kind.turns() != KnobKind.Turns.INGREDIENT) {
      return Optional.empty();
    }
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    return Optional.of(edit.grams(chosen(edit))).filter(grams -> grams > 0);
  }

  /** Grams of ice in the dough. */
  double ice(BakeSheet sheet) {
    return FormulaEdit.of(sheet, pantry).grams(ColdWater::ice);
  }

  /** What its ingredient is called on a sheet, empty if it turns something else. */
  public String ingredientName(BakeSheet sheet) {
    if (kind.turns() != KnobKind.Turns.INGREDIENT) {
      return "";
    }
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    List<String> names = edit.names(chosen(edit));
    return names.isEmpty() ? kind.adds() : String.join(" and ", names);
  }

  // A reading is a straight line in the grams of the ingredient, so two points settle it.
  private DoubleFunction<BakeSheet> ingredient(BakeSheet sheet) {
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    Predicate<Ingredient> chosen = chosen(edit);
    Formula formula = FormulaWorker.work(sheet, pantry);
    double flour = formula.flourGrams().value();
    if (flour <= 0) {
      return value -> sheet;
    }
    double grams = edit.grams(chosen);
    double more = grams + flour / 10;
    double now = percent(formula);
    double then = percent(FormulaWorker.work(edit.to(chosen, more, kind.adds()), pantry));
    double slope = (then - now) / (more - grams);
    if (slope <= 0) {
      return value -> sheet;
    }
    return value -> edit.to(chosen, Math.max(0, grams + (value - now) / slope), kind.adds());
  }

  private double percent(Formula formula) {
    return formula.reading(kind.reading()).map(Level::value).orElse(0.0);
  }

  private Predicate<Ingredient> chosen(FormulaEdit edit) {
    return kind.pick().stream()
        .map(Knob::picks)
        .filter(edit::has)
        .findFirst()
        .orElseGet(() -> picks(kind.pick().get(0)));
  }

  /** Which ingredients a choice stands for: kinds and flags of the pantry joined by "+". */
  static Predicate<Ingredient> picks(String pick) {
    Predicate<Ingredient> all = any -> true;
    for (String word : pick.split("\\+", -1)) {
      // A word may be both: "liquid" is a kind, and whatever is poured has it as a flag.
      all =
          all.and(
              ingredient ->
                  ingredient.kind().word().equals(word)
                      || ingredient.has(word)
                      || ingredient.key().equals(word));
    }
    return all;
  }

  private static boolean glutenFlour(Ingredient ingredient) {
    return ingredient.kind() == Kind.FLOUR && !ingredient.has("gluten-free");
  }

  // A dough that was measured follows its liquid by the share that water has in its warmth.
  private BakeSheet liquid(BakeSheet told, Workup workup, double celsius) {
    BakeSheet sheet = ColdWater.thawed(told, pantry);
    // What no refrigerator can do is done with ice.
    boolean icy = celsius < ColdWater.FRIDGE;
    BakeSheet turned =
        field(
            icy ? ColdWater.iced(sheet, pantry, celsius) : sheet,
            kind.at(),
            text(icy ? ColdWater.FRIDGE : celsius));
    Optional<Double> measured =
        sheet.process().mixing().doughTemperature().map(quantity -> quantity.value());
    Optional<Double> was =
        sheet.process().temperatures().liquid().map(quantity -> quantity.value());
    if (measured.isEmpty()) {
      return turned;
    }
    double from =
        ColdWater.asLiquid(
            told, pantry, was.orElseGet(() -> reading(workup, "room").orElse(MixWarmth.KITCHEN)));
    double dough = measured.get() + MixWarmth.liquidShare(workup.formula()) * (celsius - from);
    return field(turned, "mixing.doughTemperature", Text.of(dough, 1) + " C");
  }

  // As many pieces as before, each so much heavier.
  private static BakeSheet pieces(BakeSheet sheet, double factor) {
    return sheet
        .process()
        .shaping()
        .pieceWeight()
        .map(was -> field(sheet, "shaping.pieceWeight", Text.of(was.value() * factor, 0) + " g"))
        .orElse(sheet);
  }

  private static BakeSheet tin(BakeSheet sheet, Workup workup, double room) {
    double piece = reading(workup, "piece weight").orElse(0.0);
    if (piece <= 0) {
      return sheet;
    }
    return field(sheet, "vessel.size", Math.round(room * piece / 10) * 10 + " ml");
  }

  private static BakeSheet field(BakeSheet sheet, String path, String text) {
    return SheetFields.with(sheet, path, text).sheet().orElse(sheet);
  }

  private String text(double value) {
    int decimals = kind.step() >= 1 ? 0 : 2;
    return Text.of(value, decimals) + " " + kind.unit();
  }

  static Optional<Double> reading(Workup workup, String name) {
    return workup.readings().stream()
        .filter(reading -> reading.name().equals(name))
        .map(Reading::value)
        .findFirst();
  }

  /** What is usual for the bread, where its style says. */
  static Optional<Style.Range> usual(Workup workup, String name) {
    return workup.readings().stream()
        .filter(reading -> reading.name().equals(name))
        .findFirst()
        .flatMap(Reading::usual)
        .or(() -> workup.style().range(name));
  }
}
