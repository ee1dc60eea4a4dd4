package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.KnobKind.Turns;
import crumbtrail.knowledge.Remedy;
import crumbtrail.quantity.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A small bake that shows a cause to whoever doubts it: two pieces alike but for one thing. Made
 * from the remedies of the cause and the signs that the rules know, never written by hand.
 */
final class SmallBake {
  // Flour of the whole bake and of one piece of it, grams; and what a piece weighs (our choice).
  private static final double FLOUR = 300;
  private static final double HALF = FLOUR / 2;
  private static final double PIECE = 250;
  private static final int SIGNS = 3;
  private static final int FACTS = 2;

  private static final String ALIKE = "All else is the same for both.";
  private static final String AFTER =
      " Bake one after the other; the second waits in the refrigerator for its turn.";

  // Nobody is to breed these in order to look at them.
  private static final Set<String> UNSAFE = Set.of("mould", "rope", "starter-mouldy");

  // Facts that a baker finds and cannot bring about at will, or had better not.
  private static final Set<String> FOUND =
      Set.of(
          "cover-stuck",
          "dough-did-not-double",
          "flour-changed",
          "flour-unknown-brand",
          "hot-humid-weather",
          "kitchen-cold",
          "oven-uneven",
          "skin-formed",
          "starter-failed-float",
          "stored-warm-damp",
          "yeast-did-not-foam");

  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final RemedyWords words;
  private final Plain plain;

  SmallBake(Catalogue catalogue, Witnesses witnesses) {
    this.catalogue = catalogue;
    this.witnesses = witnesses;
    this.words = new RemedyWords(catalogue);
    this.plain = new Plain(catalogue);
  }

  /**
   * What a bake says.
   *
   * @param instead why there is none and what to do in its place; null where there is one
   * @param changed the one thing in which the pieces differ; null where there is none
   * @param steps what to do; empty where there is none
   */
  record Told(String instead, String changed, List<String> steps) {}

  Told of(Cause cause) {
    if (cause.noBake() != null) {
      return new Told(cause.noBake(), null, List.of());
    }
    return Stream.<Function<Remedy, Optional<Told>>>of(
            remedy -> plainly(cause, remedy), remedy -> done(cause, remedy))
        .flatMap(way -> remedies(cause).stream().flatMap(remedy -> way.apply(remedy).stream()))
        .findFirst()
        .orElse(
            new Told(
                "No small bake shows this one by itself. Watch for it in your next bakes: "
                    + cause.tell(),
                null,
                List.of()));
  }

  private List<Remedy> remedies(Cause cause) {
    return catalogue.knowledge().remedies().stream()
        .filter(remedy -> remedy.cause().equals(cause.key()))
        .toList();
  }

  // By its knob, or where it is a matter of doing by what is done.
  private Optional<Told> plainly(Cause cause, Remedy remedy) {
    return remedy.does() == null
        ? words.knob(remedy).flatMap(knob -> turned(cause, remedy, knob))
        : done(cause, remedy);
  }

  // One number is different.
  private Optional<Told> turned(Cause cause, Remedy remedy, KnobKind knob) {
    return Pushed.of(catalogue, remedy, knob)
        .map(
            pushed -> {
              List<String> steps = new ArrayList<>();
              steps.add(begin(parting(knob), "by a recipe for " + pushed.style().name()));
              steps.add(
                  "One thing is different, the %s: %s in the first piece, as usual, and %s in the second."
                      .formatted(
                          knob.name(),
                          amount(knob, pushed.usual()),
                          amount(knob, pushed.pushed())));
              steps.add(same(knob));
              steps.add(look(cause));
              return new Told(null, knob.name(), steps);
            });
  }

  // Something is done or left undone.
  private Optional<Told> done(Cause cause, Remedy remedy) {
    List<String> with = facts(remedy.drop());
    List<String> without = facts(remedy.hold());
    if (with.isEmpty() && without.isEmpty()) {
      return Optional.empty();
    }
    List<String> steps = new ArrayList<>();
    steps.add(begin(parting(cause), bread(remedy)));
    String first =
        without.isEmpty() ? "as usual" : "as it should be: " + String.join(" and ", without);
    String second = with.isEmpty() ? "the same without that" : any(with);
    steps.add(
        "One thing is different. The first piece is %s. The second: %s%s."
            .formatted(first, second, with.size() > 1 ? "; choose one, and only one" : ""));
    steps.add(
        cause.stage().equals("baking")
            ? ALIKE + AFTER
            : ALIKE + " Weights, warmth, minutes and place in the oven.");
    steps.add(look(cause));
    return Optional.of(new Told(null, with.isEmpty() ? any(without) : any(with), steps));
  }

  private String bread(Remedy remedy) {
    return Pushed.plainest(catalogue)
        .filter(style -> !style.tags().isEmpty() && !remedy.breads().isEmpty())
        .filter(style -> remedy.fits(style.tags()))
        .findFirst()
        .map(style -> "by a recipe for " + style.name())
        .orElse("by your usual recipe");
  }

  private List<String> facts(List<String> keys) {
    return keys.stream()
        .filter(key -> !FOUND.contains(key))
        .flatMap(key -> catalogue.circumstance(key).stream())
        .filter(one -> !one.outcome())
        .map(CircumstanceKind::name)
        .limit(FACTS)
        .toList();
  }

  private static String any(List<String> facts) {
    return String.join(", or ", facts);
  }

  private enum Parting {
    BOWL("Mix two small doughs side by side, each of %.0f g of flour, %s."),
    BULK("Mix one small dough of %.0f g of flour, %s, and divide it at once."),
    BENCH("Mix one small dough of %.0f g of flour, %s; halve it after its first rise."),
    OVEN("Mix one small dough of %.0f g of flour, %s, and shape two pieces alike.");

    private final String words;

    Parting(String words) {
      this.words = words;
    }
  }

  private static String begin(Parting parting, String bread) {
    return parting.words.formatted(parting == Parting.BOWL ? HALF : FLOUR, bread)
        + " Each piece weighs about %.0f g. Mark them.".formatted(PIECE);
  }

  private static Parting parting(KnobKind knob) {
    return switch (knob.turns()) {
      case INGREDIENT,
          PROTEIN,
          DOUGH_WEIGHT,
          LIQUID_TEMPERATURE,
          PREFERMENT_TIME,
          PREFERMENT_TEMPERATURE ->
          Parting.BOWL;
      case WARM_TIME, WARM_TEMPERATURE, COLD_TIME, COLD_TEMPERATURE ->
          "proof".equals(knob.at()) ? Parting.OVEN : Parting.BULK;
      case OVEN, BAKE_TIME, TIN -> Parting.OVEN;
      case FIELD ->
          knob.at().startsWith("mixing") || knob.at().equals("room")
              ? Parting.BOWL
              : knob.at().startsWith("shaping") ? Parting.BENCH : Parting.OVEN;
    };
  }

  private static Parting parting(Cause cause) {
    return switch (cause.stage()) {
      case "ingredients", "formula", "mixing" -> Parting.BOWL;
      case "bulk" -> Parting.BULK;
      case "shaping" -> Parting.BENCH;
      default -> Parting.OVEN;
    };
  }

  private static String amount(KnobKind knob, double value) {
    if (knob.turns() == Turns.TIN) {
      return "a tin of " + Amounts.number(Amounts.rounded(value * PIECE / 10, 0) * 10) + " ml";
    }
    if (value == 0) {
      return "none";
    }
    if (knob.turns() == Turns.INGREDIENT && knob.unit().equals("%")) {
      double grams = value * HALF / 100;
      return knob.key().equals("starter")
          ? Amounts.quantity(value, "%") + " of the flour in it"
          : Amounts.number(Amounts.rounded(grams, grams < 20 ? 1 : 0))
              + " g ("
              + Amounts.quantity(value, "%")
              + " of the flour)";
    }
    return Amounts.quantity(value, knob.unit());
  }

  private static String same(KnobKind knob) {
    return switch (knob.turns()) {
      case WARM_TIME, COLD_TIME, WARM_TEMPERATURE, COLD_TEMPERATURE ->
          ALIKE
              + " Take a dough without milk and egg, so that it may stand, and bake each piece when"
              + " its own time has come.";
      case OVEN -> ALIKE + AFTER;
      case BAKE_TIME -> ALIKE + " Bake both together and take each out at its own time.";
      default -> ALIKE;
    };
  }

  private String look(Cause cause) {
    List<String> signs =
        Stream.of(true, false)
            .flatMap(published -> signs(cause, published))
            .distinct()
            .limit(SIGNS)
            .map(plain::sign)
            .toList();
    return signs.isEmpty()
        ? "Look for what tells this cause: " + cause.tell()
        : "Look in the second piece for: "
            + String.join(", ", signs)
            + ". If the pieces are alike, this was not the cause in your kitchen, or the push was"
            + " too small to see.";
  }

  // The loudest first; those that a published table pairs with the cause, or any.
  private Stream<String> signs(Cause cause, boolean published) {
    return witnesses.signsOf(cause.key()).entrySet().stream()
        .filter(sign -> sign.getValue().decibans() > 0 && !UNSAFE.contains(sign.getKey()))
        .filter(sign -> !published || witnesses.tables(sign.getKey(), cause.key()) > 0)
        .sorted(Map.Entry.comparingByValue(Witnesses.STRONGEST_FIRST))
        .map(Map.Entry::getKey);
  }
}
