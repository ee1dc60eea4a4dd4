package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.Remedy;
import crumbtrail.quantity.Amounts;
import java.util.List;
import java.util.Optional;

/** What can be done about a cause, in words that hold for any bake. */
final class RemedyWords {
  private static final String READY = "times ready";

  private final Catalogue catalogue;

  RemedyWords(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The knob that a remedy turns, if it turns one. */
  Optional<KnobKind> knob(Remedy remedy) {
    return catalogue.knowledge().knobs().stream()
        .filter(knob -> knob.key().equals(remedy.turn()))
        .findFirst();
  }

  /** What to do, how far, why, and for which breads. */
  String of(Remedy remedy) {
    StringBuilder words = new StringBuilder();
    Optional<KnobKind> knob = knob(remedy);
    if (remedy.does() != null) {
      words.append(remedy.does()).append(".");
      knob.ifPresent(
          one ->
              words
                  .append(" In numbers: ")
                  .append(one.name())
                  .append(", ")
                  .append(aim(remedy, one))
                  .append("."));
    } else {
      knob.ifPresent(
          one -> words.append(lead(remedy, one)).append(", ").append(aim(remedy, one)).append("."));
    }
    words.append(" ").append(remedy.why());
    return words.append(breads(remedy)).toString().strip();
  }

  // The knob is named where the imperative does not name it.
  private static String lead(Remedy remedy, KnobKind knob) {
    String lead = up(remedy) ? knob.more() : knob.less();
    return lead.contains(knob.name()) ? lead : lead + " (" + knob.name() + ")";
  }

  /** Whether a remedy turns its knob up. */
  static boolean up(Remedy remedy) {
    return remedy.step() == null || !remedy.aim().step().down();
  }

  private String aim(Remedy remedy, KnobKind knob) {
    String reading = remedy.until() == null ? "it" : "the " + remedy.until();
    String unit =
        remedy.until() == null
            ? knob.unit()
            : catalogue.reading(remedy.until()).map(kind -> kind.unit()).orElse("");
    String to = remedy.to() == null ? "usual" : remedy.to();
    String aim =
        switch (to) {
          case "usual" -> "until " + reading + " is what is usual for the bread";
          case "middle" -> "until " + reading + " is in the middle of what is usual for the bread";
          case "low" -> "until " + reading + " is at the lower end of what is usual for the bread";
          case "high" -> "until " + reading + " is at the upper end of what is usual for the bread";
          default -> "until " + reading + " is " + number(Double.parseDouble(to), unit);
        };
    return remedy.step() == null ? aim : aim + "; for a start, " + step(remedy.aim().step(), knob);
  }

  private static String number(double value, String unit) {
    if (unit.equals(READY)) {
      return value == 1 ? "just ready" : Amounts.number(value) + " times what makes it ready";
    }
    return Amounts.quantity(value, unit);
  }

  private static String step(Remedy.Step step, KnobKind knob) {
    String points = knob.unit().equals("%") ? "points" : knob.unit();
    return Amounts.quantity(Math.abs(step.amount()), step.share() ? "%" : points)
        + (step.down() ? " less" : " more");
  }

  private static String breads(Remedy remedy) {
    String only =
        remedy.breads().isEmpty() ? "" : " Only for " + joined(remedy.breads()) + " bread.";
    return only + (remedy.not().isEmpty() ? "" : " Not for " + joined(remedy.not()) + " bread.");
  }

  private static String joined(List<String> tags) {
    return String.join(" or ", tags);
  }
}
