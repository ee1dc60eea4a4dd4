package crumbtrail.workup;

import crumbtrail.formula.Formula;
import crumbtrail.formula.Level;
import crumbtrail.knowledge.Style;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Fits a named style to the formula at hand. */
final class FittedStyle {
  private static final double WHOLE_GRAIN = 40;
  private static final double RYE = 20;

  private FittedStyle() {}

  /**
   * The style with the tags that the formula adds. A bread raised by starter alone has no usual
   * range of yeast, and its proof is a sourdough's. Where the formula names nothing that raises,
   * the baker's word for the bread decides.
   *
   * @param words how the baker names the bread, in small letters
   */
  static Style of(Style style, Formula formula, String words) {
    boolean silent = value(formula, "starter") <= 0 && value(formula, "yeast") <= 0;
    boolean sourdough =
        value(formula, "yeast") <= 0.02
            && (value(formula, "starter") > 0 || (silent && words.contains("sourdough")));
    boolean wholeGrain = value(formula, "whole grain") >= WHOLE_GRAIN;
    boolean rye = value(formula, "rye") >= RYE;
    if (!sourdough && !wholeGrain && !rye) {
      return style;
    }
    Set<String> tags = new LinkedHashSet<>(style.tags());
    Map<String, Style.Range> ranges = new HashMap<>(style.ranges());
    if (sourdough) {
      tags.add("sourdough");
      ranges.remove("yeast");
      if (!style.tags().contains("sourdough")) {
        List.of("bulk time", "proof time").forEach(ranges::remove);
      }
    }
    if (wholeGrain) {
      tags.add("wholegrain");
    }
    if (rye) {
      tags.add("rye");
    }
    return new Style(
        style.key(), style.name(), List.copyOf(tags), style.phrases(), ranges, style.habits());
  }

  private static double value(Formula formula, String reading) {
    return formula.reading(reading).map(Level::value).orElse(0.0);
  }
}
