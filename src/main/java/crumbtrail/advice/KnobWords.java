package crumbtrail.advice;

import crumbtrail.formula.Formula;
import crumbtrail.knowledge.KnobKind.Turns;
import crumbtrail.knowledge.Remedy.Step;
import crumbtrail.quantity.Amounts;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Workup;
import java.util.Optional;

/** A turned knob in the words and units of a baker. */
final class KnobWords {
  private final Knob knob;
  private final Trial before;
  private final BakeSheet turned;
  private final Workup after;

  KnobWords(Knob knob, Trial before, BakeSheet turned, Workup after) {
    this.knob = knob;
    this.before = before;
    this.turned = turned;
    this.after = after;
  }

  /**
   * What to do: "Take more salt, by 4 g".
   *
   * @param step the way the remedy goes, for a sheet that does not tell where the knob stood
   */
  String change(Step step) {
    Optional<Double> was = knob.value(before.sheet(), before.workup());
    Optional<Double> is = knob.value(turned, after);
    boolean unknown = was.isEmpty() && step != null;
    boolean more = unknown ? !step.down() : is.orElse(0.0) >= was.orElse(0.0);
    String lead = more ? knob.kind().more() : knob.kind().less();
    String amount = difference(was, is);
    return amount.isEmpty() ? lead : lead + ", by " + amount;
  }

  /** Which way a step turns a knob. */
  static String lead(Knob knob, Step step) {
    return step.down() ? knob.kind().less() : knob.kind().more();
  }

  /** A step as a baker reads it: "15 °C less than now", "25 % more than now". */
  static String step(Knob knob, Step step) {
    double amount = Math.abs(step.amount());
    return Amounts.quantity(amount, step.share() ? "%" : knob.kind().unit())
        + (step.down() ? " less than now" : " more than now");
  }

  String from() {
    return told(before.sheet(), before.workup());
  }

  /**
   * @param set what it was set to, for readings that the sheet is too silent to have
   */
  String to(double set) {
    String told = told(turned, after);
    return told.equals(Corrections.NOT_TOLD) ? quantity(set) : told;
  }

  private String difference(Optional<Double> was, Optional<Double> is) {
    if (knob.kind().turns() == Turns.INGREDIENT && before.workup().formula().scaleKnown()) {
      double grams =
          Math.abs(knob.grams(turned).orElse(0.0) - knob.grams(before.sheet()).orElse(0.0));
      return grams > 0 ? Grams.of(grams).strip() : "";
    }
    if (was.isEmpty() || is.isEmpty()) {
      return "";
    }
    if (knob.ice(turned) > 0) {
      return "";
    }
    double difference = Math.abs(is.get() - was.get());
    return switch (knob.kind().unit()) {
      case "%" -> Amounts.number(Amounts.rounded(difference, 1)) + " points";
      case "cm3/g" -> "";
      default -> quantity(difference);
    };
  }

  private String told(BakeSheet sheet, Workup workup) {
    Optional<Double> value = knob.value(sheet, workup);
    if (knob.kind().turns() == Turns.INGREDIENT) {
      return ingredient(sheet, workup.formula(), value.orElse(0.0));
    }
    if (knob.kind().turns() == Turns.TIN && value.isPresent()) {
      double piece = Knob.reading(workup, "piece weight").orElse(0.0);
      return Math.round(value.get() * piece / 10) * 10 + " ml";
    }
    if (knob.kind().turns() == Turns.LIQUID_TEMPERATURE) {
      return Knob.reading(workup, knob.kind().reading())
          .map(at -> quantity(at) + ice(sheet))
          .orElse(Corrections.NOT_TOLD);
    }
    return value.map(this::quantity).orElse(Corrections.NOT_TOLD);
  }

  // The share is that of the grams beside it. What the knob reckons with may be another: active dry
  // yeast as instant, the water of all liquids.
  private String ingredient(BakeSheet sheet, Formula formula, double reckoned) {
    Optional<Double> grams = knob.grams(sheet);
    double flour = formula.flourGrams().value();
    if (!formula.scaleKnown() || grams.isEmpty() || flour <= 0) {
      return quantity(reckoned) + " of the flour";
    }
    String share = quantity(100 * grams.get() / flour) + " of the flour";
    return Grams.of(grams.get()) + knob.ingredientName(sheet) + " (" + share + ")";
  }

  private String ice(BakeSheet sheet) {
    double grams = knob.ice(sheet);
    return grams > 0 ? " with " + Grams.of(grams) + "of it as ice" : "";
  }

  private String quantity(double value) {
    return Amounts.quantity(value, knob.kind().unit());
  }
}
