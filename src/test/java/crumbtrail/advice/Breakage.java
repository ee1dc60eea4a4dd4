package crumbtrail.advice;

import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetFields;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.Optional;
import java.util.Set;

/** One thing broken in a sound bake, and the causes of which any names it rightly. */
enum Breakage {
  SALT_LEFT_OUT("salt left out", Set.of("salt-omitted", "salt-too-low")),
  SALT_TWICE("salt two and a half times", Set.of("salt-too-high")),
  YEAST_A_FIFTH(
      "a fifth of the leavening",
      Set.of("yeast-too-low", "starter-too-little", "under-fermented", "under-proofed")),
  YEAST_FOURFOLD(
      "four times the leavening", Set.of("yeast-too-high", "over-fermented", "over-proofed")),
  WATER_SHORT("12 points less liquid", Set.of("water-too-low", "flour-thirsty")),
  WATER_OVER("16 points more liquid", Set.of("water-too-high")),
  FLOUR_WEAK("flour of 8.5 % protein", Set.of("flour-weak")),
  LIQUID_SCALDING(
      "liquid at 65 °C", Set.of("scald-or-hot-liquid-killed-yeast", "yeast-dead-or-weak")),
  ALL_COLD(
      "dough, rise and proof at 15 °C",
      Set.of("dough-too-cold", "proof-too-cool", "under-fermented", "under-proofed")),
  PROOF_THREEFOLD("proof three times as long", Set.of("over-proofed")),
  PROOF_A_FIFTH("a fifth of the proof", Set.of("under-proofed")),
  BULK_THREEFOLD("first rise three times as long", Set.of("over-fermented", "over-proofed")),
  OVEN_HOT("oven 60 degrees hotter", Set.of("oven-too-hot")),
  OVEN_COOL("oven 60 degrees cooler", Set.of("oven-too-cool", "under-baked", "core-below-set")),
  BAKE_HALF("half the time in the oven", Set.of("under-baked", "core-below-set")),
  TIN_SMALL("a tin of half the size", Set.of("pan-too-small")),
  CUT_HOT("cut after five minutes", Set.of("cut-while-warm"));

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // Set.of cannot be changed
  private final Set<String> causes;

  Breakage(String words, Set<String> causes) {
    this.words = words;
    this.causes = causes;
  }

  String words() {
    return words;
  }

  boolean named(String cause) {
    return causes.contains(cause);
  }

  /** The sheet so broken, empty where there is nothing to break. */
  Optional<BakeSheet> of(BakeSheet sheet, Knobs knobs, SheetWorkup workups) {
    Workup workup = workups.work(sheet);
    return switch (this) {
      case SALT_LEFT_OUT -> turned("salt", sheet, knobs, workup, 0, 0);
      case SALT_TWICE -> turned("salt", sheet, knobs, workup, 2.5, 0);
      case YEAST_A_FIFTH -> leavening(sheet, knobs, workup, 0.2);
      case YEAST_FOURFOLD -> leavening(sheet, knobs, workup, 4);
      case WATER_SHORT -> turned("water", sheet, knobs, workup, 1, -12);
      case WATER_OVER -> turned("water", sheet, knobs, workup, 1, 16);
      case FLOUR_WEAK ->
          Knob.reading(workup, "rye").orElse(0.0) > 40
              ? Optional.empty()
              : turned("protein", sheet, knobs, workup, 0, 8.5);
      case LIQUID_SCALDING ->
          Knob.reading(workup, "yeast").orElse(0.0) > 0
              ? Optional.of(
                  SheetFields.without(
                      SheetFields.with(sheet, "temperatures.liquid", "65 C").sheet().orElseThrow(),
                      "mixing.doughTemperature"))
              : Optional.empty();
      case ALL_COLD ->
          turned("bulk-temperature", sheet, knobs, workup, 0, 15)
              .flatMap(cold -> turned("proof-temperature", cold, knobs, workup, 0, 15))
              .flatMap(cold -> turned("dough-temperature", cold, knobs, workup, 0, 15));
      case PROOF_THREEFOLD -> turned("proof-time", sheet, knobs, workup, 3, 0);
      case PROOF_A_FIFTH -> turned("proof-time", sheet, knobs, workup, 0.2, 0);
      case BULK_THREEFOLD -> turned("bulk-time", sheet, knobs, workup, 3, 0);
      case OVEN_HOT -> turned("oven", sheet, knobs, workup, 1, 60);
      case OVEN_COOL -> turned("oven", sheet, knobs, workup, 1, -60);
      case BAKE_HALF -> turned("bake-time", sheet, knobs, workup, 0.5, 0);
      case TIN_SMALL -> turned("tin", sheet, knobs, workup, 0.5, 0);
      case CUT_HOT ->
          workup.style().tags().contains("flat") || workup.style().tags().contains("small")
              ? Optional.empty()
              : turned("cooling-time", sheet, knobs, workup, 0, 5);
    };
  }

  private static Optional<BakeSheet> leavening(
      BakeSheet sheet, Knobs knobs, Workup workup, double factor) {
    boolean yeasted = Knob.reading(workup, "yeast").orElse(0.0) > 0;
    return turned(yeasted ? "yeast" : "starter", sheet, knobs, workup, factor, 0);
  }

  private static Optional<BakeSheet> turned(
      String key, BakeSheet sheet, Knobs knobs, Workup workup, double factor, double plus) {
    Knob knob = knobs.named(key).orElseThrow();
    return knob.value(sheet, workup)
        .filter(value -> knob.turns(sheet, workup))
        .map(value -> knob.turned(sheet, workup, factor * value + plus));
  }
}
