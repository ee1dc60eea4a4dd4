package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.KnobKind.Turns;
import crumbtrail.knowledge.Remedy;
import crumbtrail.knowledge.Style;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A knob where a bread usually has it, and where a small bake pushes it so that the cause shows. It
 * goes the way from which the remedy comes back, three of the remedy's steps, and with too much of
 * an ingredient out of what is usual, within the ends of the knob (our choice).
 *
 * @param usual its usual value
 * @param pushed its value in the piece that is to fail
 * @param style the bread from which the usual value is taken
 */
record Pushed(double usual, double pushed, Style style) {
  private static final double STEPS = 3;
  // Hotter than this liquid would harm the yeast, which is another cause.
  private static final double LIQUID_STEPS = 2;
  // A push that the end of the knob cuts shorter than this shows nothing.
  private static final double LEAST = 1.5;

  // Breads to try on, the plainest first.
  private static final List<String> PLAIN =
      List.of("white-tin-loaf", "white-hearth-loaf", "sweet-roll-dough", "sourdough-loaf");

  /** How a remedy's knob is pushed; empty if no bread has a usual value from which it can be. */
  static Optional<Pushed> of(Catalogue catalogue, Remedy remedy, KnobKind knob) {
    return plainest(catalogue)
        .filter(style -> remedy.fits(style.tags()))
        .filter(style -> !knob.key().equals("starter") || style.tags().contains("sourdough"))
        .flatMap(style -> pushed(catalogue, remedy, knob, style).stream())
        .findFirst();
  }

  /** All styles, those on which a small bake is made first in front. */
  static Stream<Style> plainest(Catalogue catalogue) {
    return catalogue.knowledge().styles().stream()
        .sorted(
            Comparator.comparingInt(
                style -> PLAIN.contains(style.key()) ? PLAIN.indexOf(style.key()) : PLAIN.size()));
  }

  private static Optional<Pushed> pushed(
      Catalogue catalogue, Remedy remedy, KnobKind knob, Style style) {
    Optional<Double> base = aim(remedy).or(() -> usual(catalogue, knob, style));
    if (base.isEmpty() || remedy.step() == null) {
      return Optional.empty();
    }
    double usual = knob.settable(base.get());
    boolean up = !RemedyWords.up(remedy);
    Remedy.Step told = remedy.aim().step();
    double step = Math.abs(told.from(usual) - usual);
    double steps = knob.turns() == Turns.LIQUID_TEMPERATURE ? LIQUID_STEPS : STEPS;
    double far = usual + (up ? 1 : -1) * steps * step;
    if (told.share() && !up) {
      far = usual / (1 + steps * step / usual);
    }
    if (up && knob.turns() == Turns.INGREDIENT && aim(remedy).isEmpty()) {
      // Too much is what lies beyond the usual range.
      far =
          Math.max(
              far,
              range(knob, style)
                  .map(range -> range.high() + (range.high() - range.low()) / 2)
                  .orElse(far));
    }
    double pushed = knob.settable(far);
    boolean none = pushed == 0 && usual >= step;
    boolean enough =
        none
            || Math.abs(pushed - usual)
                >= Math.min(LEAST * step, Math.abs(far - usual) - knob.step());
    return enough && pushed != usual
        ? Optional.of(new Pushed(usual, pushed, style))
        : Optional.empty();
  }

  // An aim that is a number of the knob itself.
  private static Optional<Double> aim(Remedy remedy) {
    return remedy.until() == null && remedy.to() != null && remedy.to().matches("-?[0-9.]+")
        ? Optional.of(Double.parseDouble(remedy.to()))
        : Optional.empty();
  }

  private static Optional<Style.Range> range(KnobKind knob, Style style) {
    return Optional.ofNullable(reading(knob)).flatMap(style::range);
  }

  private static Optional<Double> usual(Catalogue catalogue, KnobKind knob, Style style) {
    Style.Spell bulk = style.habits().bulk();
    Style.Spell proof = style.habits().proof();
    Style.Spell spell = "proof".equals(knob.at()) ? proof : bulk;
    Style.Spell oven = style.habits().oven();
    return switch (knob.turns()) {
      case WARM_TIME -> Optional.ofNullable(spell).map(Style.Spell::minutes);
      case WARM_TEMPERATURE -> Optional.ofNullable(spell).map(Style.Spell::celsius);
      case OVEN -> Optional.ofNullable(oven).map(Style.Spell::celsius);
      case BAKE_TIME -> Optional.ofNullable(oven).map(Style.Spell::minutes);
      default ->
          Optional.ofNullable(reading(knob))
              .flatMap(
                  reading ->
                      style
                          .range(reading)
                          .map(Style.Range::middle)
                          .or(() -> style.habits().value(reading))
                          .or(
                              () ->
                                  catalogue
                                      .reading(reading)
                                      .map(kind -> kind.usual())
                                      .map(Style.Range::middle)));
    };
  }

  private static String reading(KnobKind knob) {
    return switch (knob.turns()) {
      case WARM_TIME -> knob.at() + " time";
      case WARM_TEMPERATURE -> knob.at() + " temperature";
      case PREFERMENT_TIME -> "preferment time";
      case PREFERMENT_TEMPERATURE -> "preferment temperature";
      case OVEN -> "oven temperature";
      default -> knob.reading();
    };
  }
}
