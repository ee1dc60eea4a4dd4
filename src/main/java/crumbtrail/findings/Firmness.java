package crumbtrail.findings;

import crumbtrail.rules.Evidence;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Reading.Known;
import crumbtrail.workup.Uncertain;
import crumbtrail.workup.Uncertainties;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;

/**
 * How firm a ranking is where the sheet leaves something open.
 *
 * @param runs how often the pipeline was run; 1 where nothing is open
 * @param firstIn share of the runs in which each cause came first, the largest first
 * @param matters what leaves the ranking open, the most telling first
 */
public record Firmness(int runs, Map<String, Double> firstIn, List<Matter> matters) {
  /** A few hundred runs tell a share to two or three points. */
  private static final int RUNS = 300;

  /** Any fixed number does; the same sheet gets the same answer. */
  private static final long SEED = 20_011;

  private static final int MOST = 3;

  /** How much sooner a reading is shown for being one on which the first causes rest. */
  private static final double HEEDED = 4;

  /** Probability moved in all below which an open quantity is not worth a word (our choice). */
  private static final double LEAST = 0.02;

  public Firmness {
    matters = List.copyOf(matters);
  }

  /**
   * Something open that matters.
   *
   * @param uncertain what is open
   * @param reading name of the reading that it moves most for its usual range, empty if none
   * @param from the reading with the quantity at its low end
   * @param to the reading with the quantity at its high end
   * @param effect probability that it moves, summed over the causes
   */
  public record Matter(
      Uncertain uncertain, String reading, double from, double to, double effect) {}

  /**
   * Tries a sheet in the ways that it leaves open.
   *
   * @param findings on the sheet as it stands
   */
  public static Firmness of(
      Reasoning reasoning, BakeSheet sheet, Workup workup, Findings findings) {
    Draws draws = new Draws(reasoning, sheet, workup, findings);
    draws.draw(reasoning);
    return draws.firmness(reasoning);
  }

  /**
   * The draws of one sheet. Each open quantity is drawn from a triangle over its plausible values
   * with its peak at the value that is reckoned with (our choice), apart from the others; every
   * draw goes through the whole pipeline. Safe for use by many threads, each with a reasoning of
   * its own: they share the draws out among themselves, and who drew what never shows.
   */
  public static final class Draws {
    private final BakeSheet sheet;
    private final Findings findings;
    private final List<Uncertain> open;
    private final double[][] lots;
    private final AtomicInteger next = new AtomicInteger();
    private final Map<String, Reading> standing;
    private final Map<String, Integer> times = new ConcurrentHashMap<>();

    /** The draws of a sheet, none of them made yet. */
    public Draws(Reasoning reasoning, BakeSheet sheet, Workup workup, Findings findings) {
      this.sheet = sheet;
      this.findings = findings;
      this.standing = byName(workup);
      this.open = Uncertainties.of(sheet, workup, reasoning.pantry());
      SplittableRandom random = new SplittableRandom(SEED);
      lots = new double[open.isEmpty() ? 0 : RUNS][open.size()];
      for (double[] lot : lots) {
        for (int one = 0; one < lot.length; one++) {
          lot[one] = random.nextDouble();
        }
      }
    }

    /** Draws for as long as there are any draws that nobody else has begun. */
    public void draw(Reasoning reasoning) {
      for (int run = next.getAndIncrement(); run < lots.length; run = next.getAndIncrement()) {
        BakeSheet drawn = sheet;
        for (int one = 0; one < open.size(); one++) {
          drawn = open.get(one).settle(drawn, triangle(open.get(one), lots[run][one]));
        }
        first(reasoning.standing(known(reasoning.draw(drawn), standing)))
            .ifPresent(key -> times.merge(key, 1, Integer::sum));
      }
    }

    /** What leaves the ranking open, the most telling first. */
    public List<Matter> matters(Reasoning reasoning) {
      return Firmness.matters(reasoning, sheet, standing, open, findings);
    }

    /** How firm the ranking is, once all have drawn. */
    Firmness firmness(Reasoning reasoning) {
      return firmness(matters(reasoning));
    }

    /** How firm the ranking is, once all have drawn. */
    public Firmness firmness(List<Matter> matters) {
      Map<String, Double> shares = new LinkedHashMap<>();
      if (open.isEmpty()) {
        first(findings).ifPresent(key -> shares.put(key, 1.0));
        return new Firmness(1, shares, List.of());
      }
      times.entrySet().stream()
          .sorted(
              Map.Entry.<String, Integer>comparingByValue()
                  .reversed()
                  .thenComparing(Map.Entry.comparingByKey()))
          .forEach(entry -> shares.put(entry.getKey(), entry.getValue() / (double) RUNS));
      return new Firmness(RUNS, shares, matters);
    }
  }

  // A value is no better known for having been drawn: readings keep the standing that they have on
  // the sheet itself, and none comes in that the sheet does not have.
  private static Workup known(Workup drawn, Map<String, Reading> standing) {
    List<Reading> readings = new ArrayList<>();
    for (Reading reading : drawn.readings()) {
      Reading old = standing.get(reading.name());
      if (old != null) {
        readings.add(reading.knownAs(old));
      }
    }
    return new Workup(
        drawn.style(),
        drawn.formula(),
        readings,
        drawn.heard(),
        drawn.assumptions(),
        drawn.rise(),
        drawn.bake());
  }

  private static Map<String, Reading> byName(Workup workup) {
    return workup.readings().stream().collect(Collectors.toMap(Reading::name, reading -> reading));
  }

  private static Optional<String> first(Findings findings) {
    return findings.ranked().stream().findFirst().map(one -> one.cause().key());
  }

  /** The value below which this share of a triangular distribution lies. */
  static double triangle(Uncertain open, double share) {
    double width = open.high() - open.low();
    if (width <= 0) {
      return open.value();
    }
    double left = (open.value() - open.low()) / width;
    return share < left
        ? open.low() + width * Math.sqrt(share * left)
        : open.high() - width * Math.sqrt((1 - share) * (1 - left));
  }

  private static List<Matter> matters(
      Reasoning reasoning,
      BakeSheet sheet,
      Map<String, Reading> standing,
      List<Uncertain> open,
      Findings findings) {
    Set<String> heeded =
        findings.ranked().stream()
            .limit(MOST)
            .flatMap(one -> one.evidence().stream())
            .map(Evidence::facts)
            .flatMap(List::stream)
            .filter(Reading.class::isInstance)
            .map(fact -> ((Reading) fact).name())
            .collect(Collectors.toSet());
    List<Matter> matters = new ArrayList<>();
    for (Uncertain one : open) {
      Workup low = known(reasoning.work(one.settle(sheet, one.low())), standing);
      Workup high = known(reasoning.work(one.settle(sheet, one.high())), standing);
      double effect = moved(reasoning.standing(low), reasoning.standing(high));
      if (effect >= LEAST) {
        matters.add(matter(one, low, high, heeded, effect));
      }
    }
    return matters.stream()
        .sorted(
            Comparator.comparingDouble(Matter::effect)
                .reversed()
                .thenComparing(matter -> matter.uncertain().what()))
        .limit(MOST)
        .toList();
  }

  private static double moved(Findings low, Findings high) {
    Map<String, Double> moved = new HashMap<>();
    low.ranked().forEach(one -> moved.put(one.cause().key(), -one.probability()));
    high.ranked().forEach(one -> moved.merge(one.cause().key(), one.probability(), Double::sum));
    return moved.values().stream().mapToDouble(Math::abs).sum();
  }

  // The reading to show is one that is worked out, moves far for its usual range, and that the
  // first causes rest on.
  private static Matter matter(
      Uncertain open, Workup low, Workup high, Set<String> heeded, double effect) {
    Map<String, Reading> ends = byName(high);
    String name = "";
    double from = 0;
    double to = 0;
    double farthest = 0;
    for (Reading reading : low.readings()) {
      Reading end = ends.get(reading.name());
      if (end != null) {
        double weight = heeded.contains(reading.name()) ? HEEDED : 1;
        double far = far(reading, end) * (reading.known() == Known.MEASURED ? 1 / HEEDED : weight);
        if (far > farthest) {
          farthest = far;
          name = reading.name();
          from = reading.value();
          to = end.value();
        }
      }
    }
    return new Matter(open, name, from, to, effect);
  }

  private static double far(Reading low, Reading high) {
    double width =
        low.usual()
            .map(range -> range.high() - range.low())
            .filter(wide -> wide > 0)
            .orElse(Math.max(Math.abs(low.value()), Math.abs(high.value())));
    return width <= 0 ? 0 : Math.abs(high.value() - low.value()) / width;
  }
}
