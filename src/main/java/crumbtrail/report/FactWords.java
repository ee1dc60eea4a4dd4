package crumbtrail.report;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.quantity.Amounts;
import crumbtrail.rules.Bread;
import crumbtrail.rules.CircumstanceFact;
import crumbtrail.rules.SignFact;
import crumbtrail.workup.Reading;
import java.util.Optional;

/** Says a matched fact in plain words. */
final class FactWords {
  private final Catalogue catalogue;

  FactWords(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** A reading with its value and usual range, a sign, or a circumstance, in words. */
  String of(Object fact) {
    if (fact instanceof Reading reading) {
      return reading(reading);
    }
    if (fact instanceof SignFact sign) {
      String name =
          catalogue.sign(Catalogue.keyOf(sign.name())).map(SignKind::name).orElse(sign.name());
      return (sign.seen() ? "you saw: " : "you did not see: ") + name;
    }
    if (fact instanceof CircumstanceFact circumstance) {
      return catalogue
          .circumstance(Catalogue.keyOf(circumstance.name()))
          .map(CircumstanceKind::name)
          .orElse(circumstance.name());
    }
    if (fact instanceof Bread bread) {
      return "the bread is " + bread.name();
    }
    return String.valueOf(fact);
  }

  private String reading(Reading reading) {
    Optional<ReadingKind> kind = catalogue.reading(reading.name());
    int decimals = kind.map(ReadingKind::decimals).orElse(1);
    String unit = kind.map(ReadingKind::unit).orElse("").replace("C", "°C").replace("cm3", "cm³");
    String words = reading.name() + " " + number(reading.value(), decimals) + " " + unit;
    if (reading.usual().isPresent()) {
      words +=
          " (usual "
              + number(reading.usual().get().low(), decimals)
              + " to "
              + number(reading.usual().get().high(), decimals)
              + ")";
    }
    return reading.known() == Reading.Known.ASSUMED ? words + ", assumed" : words;
  }

  private static String number(double value, int decimals) {
    return Amounts.fixed(value, decimals);
  }
}
