package crumbtrail.formula;

import crumbtrail.pantry.Kind;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a part of the dough that is made ahead does there. */
enum PartKind {
  /** The dough itself. */
  MAIN,
  /** Raised by a sourdough culture. */
  LEVAIN,
  /** Raised by baker's yeast: sponge, poolish, biga, old dough. */
  YEASTED,
  /** Grain, seeds or flour soaked without being raised. */
  SOAKER,
  /** Flour gelatinised with hot liquid. */
  SCALD;

  private static final Pattern SCALDED =
      Pattern.compile(
          "scald|tang\\s?zhong|yu\\s?dane|roux|mash|boiled flour|cooked flour|gelatini|porridge"
              + "|hot soaker|br(?:ü|u|ue)hst");
  private static final Pattern SOAKED = Pattern.compile("soak|autolys|quellst");
  private static final Pattern SOUR =
      Pattern.compile("levain|leaven|sour|starter|madre|culture|mother|desem|chef");
  private static final Pattern YEASTY =
      Pattern.compile("poolish|biga|sponge|old dough|p[aâ]te ferment|pre-?ferment|ferment");

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether its flour counts as fermented ahead. */
  boolean fermented() {
    return this == LEVAIN || this == YEASTED;
  }

  /** The kind of a part, from what is in it and, where that leaves it open, from its name. */
  static PartKind of(String name, List<WeighedLine> lines) {
    String low = name.toLowerCase(Locale.ROOT);
    boolean yeast = lines.stream().anyMatch(line -> line.isKind(Kind.YEAST));
    boolean culture =
        lines.stream().anyMatch(line -> line.isKind(Kind.STARTER) && !line.has("yeasted"));
    if (yeast) {
      return YEASTED;
    }
    if (culture) {
      return LEVAIN;
    }
    PartKind named = named(low);
    if (named != MAIN) {
      return named;
    }
    boolean hot =
        lines.stream()
            .map(line -> line.line().written().toLowerCase(Locale.ROOT))
            .anyMatch(text -> text.contains("boiling") || text.contains("scald"));
    boolean flour = lines.stream().anyMatch(line -> line.isKind(Kind.FLOUR));
    return hot && flour ? SCALD : SOAKER;
  }

  /** The kind that a name speaks of, {@link #MAIN} if it speaks of none. */
  static PartKind named(String name) {
    String low = name.toLowerCase(Locale.ROOT);
    if (SCALDED.matcher(low).find()) {
      return SCALD;
    }
    if (SOAKED.matcher(low).find()) {
      return SOAKER;
    }
    if (SOUR.matcher(low).find()) {
      return LEVAIN;
    }
    return YEASTY.matcher(low).find() ? YEASTED : MAIN;
  }
}
