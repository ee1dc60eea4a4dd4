package crumbtrail.formula;

import crumbtrail.formula.WeighedLine.Way;
import crumbtrail.pantry.Kind;
import java.util.List;
import java.util.Optional;

/** Finds how much flour the percentages of a part stand on. */
final class PartScale {
  private PartScale() {}

  /**
   * @param wanted weight of the part that the dough takes, if it says so
   * @param doughFlour flour of the dough's own lines, grams
   * @param scaleKnown whether that flour is weighed
   * @return grams that are 100 %
   */
  static double flour(
      List<WeighedLine> lines, Optional<Level> wanted, double doughFlour, boolean scaleKnown) {
    double weighed = 0;
    double flourPercent = 0;
    double percent = 0;
    for (WeighedLine line : lines) {
      boolean isFlour = line.isKind(Kind.FLOUR);
      percent += line.percent();
      flourPercent += isFlour ? line.percent() : 0;
      if (isFlour && line.way() != Way.PERCENT) {
        weighed += line.grams().map(Level::value).orElse(0.0);
      }
    }
    if (weighed > 0) {
      return flourPercent > 0 && flourPercent < 99 ? weighed / (1 - flourPercent / 100) : weighed;
    }
    if (wanted.isPresent() && percent > 0) {
      return wanted.get().value() / (percent / 100);
    }
    // Percentages that hold all of a flour are the part's own and leave its size open; smaller
    // ones are of the dough's flour.
    boolean own = flourPercent >= 99;
    return own && scaleKnown ? 0 : doughFlour;
  }
}
