package crumbtrail.formula;

import crumbtrail.memory.Recent;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Percentages that a baker states in words instead of as a line: "hydration 76.5 %", "22 % levain".
 *
 * @param hydration poured liquids on all flour, percent
 * @param starter ripe starter on the flour, percent
 */
record Stated(OptionalDouble hydration, OptionalDouble starter) {
  private static final String NUMBER = "(\\d{1,3}(?:[.,]\\d+)?)";
  private static final String CULTURE = "(?:sourdough starter|starter|levain|leaven)";

  private static final Pattern HYDRATION =
      Pattern.compile(
          NUMBER
              + "\\s*(?:%|per ?cent)\\s*hydration|hydration\\s*(?:of|was|is|:|=|at|about|around|~)*"
              + "\\s*"
              + NUMBER);

  private static final Set<String> NAMED =
      Set.of("hydration", "total hydration", "dough hydration");

  /** A hydration next to one of these is that of the culture, not of the dough. */
  private static final Pattern OF_CULTURE =
      Pattern.compile(
          CULTURE + "[^.;,]{0,25}hydration|hydration[^.;,]{0,12}" + CULTURE + "|poolish|biga");

  private static final Pattern STARTER =
      Pattern.compile(
          NUMBER
              + "\\s*(?:%|per ?cent)\\s*(?:ripe |active |of )?"
              + CULTURE
              + "|"
              + CULTURE
              + "\\s*(?:at|of|was|is|:|=|about)*\\s*"
              + NUMBER
              + "\\s*(?:%|per ?cent)"
              + "(?!\\s*hydration)");

  // What-ifs of a bake leave its words alone.
  private static final Recent<List<String>, Stated> LATELY = new Recent<>(64);

  static Stated on(BakeSheet sheet) {
    List<String> texts = new ArrayList<>();
    texts.add(sheet.title());
    texts.add(sheet.style());
    texts.addAll(sheet.process().sentences());
    Stated said = LATELY.of(texts, Stated::said);
    for (FormulaLine line : sheet.formula()) {
      if (isHydration(line)) {
        said = new Stated(OptionalDouble.of(line.amount().orElseThrow().value()), said.starter());
      }
    }
    return said;
  }

  private static Stated said(List<String> texts) {
    OptionalDouble hydration = OptionalDouble.empty();
    OptionalDouble starter = OptionalDouble.empty();
    for (String raw : texts) {
      String text = raw.toLowerCase(Locale.ROOT);
      if (hydration.isEmpty() && !OF_CULTURE.matcher(text).find()) {
        hydration = first(HYDRATION, text, 30, 150);
      }
      if (starter.isEmpty()) {
        starter = first(STARTER, text, 0.5, 100);
      }
    }
    return new Stated(hydration, starter);
  }

  /** Whether a line of the formula states the hydration: "hydration 76.5 %". */
  static boolean isHydration(FormulaLine line) {
    return line.amount().isPresent()
        && NAMED.contains(line.ingredient().strip().toLowerCase(Locale.ROOT));
  }

  private static OptionalDouble first(Pattern pattern, String text, double least, double most) {
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      String digits = matcher.group(1) != null ? matcher.group(1) : matcher.group(2);
      double number = Double.parseDouble(digits.replace(',', '.'));
      if (number >= least && number <= most) {
        return OptionalDouble.of(number);
      }
    }
    return OptionalDouble.empty();
  }
}
