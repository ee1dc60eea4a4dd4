package crumbtrail.formula;

import crumbtrail.pantry.Composition;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Takes a starter apart: of {@code g} grams at {@code h} percent hydration, {@code g / (1 + h/100)}
 * is flour and the rest water (gisslen-2008: percentages are of all flour, so every gram counts
 * once).
 */
final class StarterSplit {
  /** A starter whose hydration nobody states may be fed a little thicker or thinner. */
  private static final double OPEN_LOW = 0.85;

  private static final double OPEN_HIGH = 1.2;

  static final String FLOUR_KEY = "flour-in-starter";

  private StarterSplit() {}

  /** Splits a starter line at its stated hydration, else at the usual one for its kind. */
  static List<Share> split(WeighedLine weighed, Ingredient starter, Level grams, Notes notes) {
    OptionalDouble stated = weighed.line().hydration();
    if (stated.isEmpty()) {
      notes.assume(
          "\""
              + weighed.line().written()
              + "\" taken at "
              + Math.round(starter.starterHydration())
              + " % water to its flour");
    }
    return split(weighed.line().ingredient(), starter, grams, stated);
  }

  /** Splits a starter of which only the kind is known. */
  static List<Share> plain(Ingredient starter, Level grams) {
    return split("", starter, grams, OptionalDouble.empty());
  }

  private static List<Share> split(
      String said, Ingredient starter, Level grams, OptionalDouble stated) {
    double hydration = stated.orElse(starter.starterHydration()) / 100;
    Level ratio =
        stated.isPresent()
            ? Level.exact(hydration)
            : Level.of(hydration * OPEN_LOW, hydration, hydration * OPEN_HIGH);
    double salt = starter.per100().salt() / 100;
    Level wet = grams.times(1 - salt);
    Level flour =
        Level.of(
            wet.low() / (1 + ratio.high()),
            wet.value() / (1 + ratio.value()),
            wet.high() / (1 + ratio.low()));
    Level water =
        Level.of(
            wet.low() * ratio.low() / (1 + ratio.low()),
            wet.value() * ratio.value() / (1 + ratio.value()),
            wet.high() * ratio.high() / (1 + ratio.high()));
    boolean sour = !starter.has("yeasted");
    PartKind part = sour ? PartKind.LEVAIN : PartKind.YEASTED;
    List<Share> shares = new ArrayList<>();
    shares.add(share(flour(said, starter), flour, part, sour));
    shares.add(
        share(
            simple("water-in-starter", "water", Kind.WATER, 100, 0, "liquid"), water, part, sour));
    if (salt > 0) {
      Ingredient salted = simple("salt-in-old-dough", "salt", Kind.SALT, 0, 100, "");
      shares.add(share(salted, grams.times(salt), part, sour));
    }
    return shares;
  }

  private static Share share(Ingredient ingredient, Level grams, PartKind part, boolean sour) {
    return new Share(
        Optional.of(ingredient), ingredient.plainName(), grams, part, OptionalDouble.empty(), sour);
  }

  private static Ingredient flour(String words, Ingredient starter) {
    String said = words.toLowerCase(Locale.ROOT);
    List<String> flags = new ArrayList<>();
    boolean whole = said.contains("whole") || starter.has("wholegrain");
    if (said.contains("rye") || starter.has("rye")) {
      flags.add("rye");
    }
    if (whole) {
      flags.add("wholegrain");
    }
    return simple(FLOUR_KEY, "flour in starter", Kind.FLOUR, 12, 0, flags.toArray(String[]::new));
  }

  private static Ingredient simple(
      String key, String name, Kind kind, double water, double salt, String... flags) {
    return new Ingredient(
        key,
        List.of(name),
        List.of(),
        kind,
        new Composition(water, 0, 0, salt, 0, 0),
        Map.of(),
        0,
        0,
        List.of(flags),
        "common practice");
  }
}
