package crumbtrail.lessons;

import crumbtrail.advice.Knob;
import crumbtrail.advice.PredictedSigns.Predicted;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.Remedy;
import crumbtrail.knowledge.Style;
import crumbtrail.lessons.Variation.Measure;
import crumbtrail.lessons.Variation.Named;
import crumbtrail.lessons.Variation.Point;
import crumbtrail.workup.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Picks out what moved along a range and puts it into the shape of a variation. */
final class VariationWriter {
  /** So many lines can still be told apart (our choice). */
  private static final int SHOWN = 6;

  /** What is nowhere likelier is not shown (our choice). */
  private static final double LEAST = 0.1;

  /** A change of less than this share of what is usual is not shown (our choice). */
  private static final double MOVED = 0.05;

  /** A likelihood that moves by less does not move (our choice). */
  private static final double STILL = 0.01;

  private final Pipeline pipeline;
  private final List<Stand> stands;
  private final List<Map<String, Double>> signs;

  private VariationWriter(Pipeline pipeline, List<Stand> stands) {
    this.pipeline = pipeline;
    this.stands = stands;
    this.signs = stands.stream().map(this::signs).toList();
  }

  static Variation write(
      Pipeline pipeline, Bench bench, Turn turn, Optional<Double> own, List<Stand> stands) {
    Knob knob = pipeline.knobs().named(turn.knob().key()).orElseThrow();
    VariationWriter writer = new VariationWriter(pipeline, stands);
    List<String> causes = writer.causes(turn.knob().key());
    List<Measure> readings = writer.readings(turn.knob().reading());
    List<String> shown = writer.shownSigns();
    return new Variation(
        bench.title(),
        Vary.dial(turn, own),
        causes.stream().map(key -> new Named(key, pipeline.causeName(key))).toList(),
        readings,
        shown.stream().map(key -> new Named(key, pipeline.signName(key))).toList(),
        writer.points(own, causes, readings, shown),
        new Tippings(bench, knob, turn).of(stands, causes),
        bench.shape().key(),
        bench.turns(knob));
  }

  private List<Point> points(
      Optional<Double> own, List<String> causes, List<Measure> readings, List<String> shown) {
    List<Point> points = new ArrayList<>();
    for (int place = 0; place < stands.size(); place++) {
      Stand stand = stands.get(place);
      Map<String, Double> likely = new LinkedHashMap<>();
      causes.forEach(key -> likely.put(key, rounded(stand.probability(key))));
      Map<String, Double> measured = new LinkedHashMap<>();
      readings.forEach(
          one ->
              value(stand, one.name())
                  .ifPresent(value -> measured.put(one.name(), rounded(value))));
      Map<String, Double> expected = new LinkedHashMap<>();
      for (String sign : shown) {
        expected.put(sign, rounded(signs.get(place).getOrDefault(sign, 0.0)));
      }
      boolean here = own.filter(value -> Math.abs(value - stand.at()) < 1e-9).isPresent();
      points.add(new Point(stand.at(), here, stand.lead(), likely, measured, expected));
    }
    return points;
  }

  // Those first that a baker would turn this very knob against, if they move at all.
  private List<String> causes(String knob) {
    TreeSet<String> all = new TreeSet<>();
    stands.forEach(stand -> stand.findings().ranked().forEach(one -> all.add(one.cause().key())));
    Set<String> own =
        pipeline.catalogue().knowledge().remedies().stream()
            .filter(remedy -> knob.equals(remedy.turn()))
            .map(Remedy::cause)
            .filter(key -> moved(stand -> stand.probability(key)) >= STILL)
            .collect(Collectors.toSet());
    return all.stream()
        .filter(key -> own.contains(key) || most(stand -> stand.probability(key)) >= LEAST)
        .sorted(
            byMost(
                key ->
                    (own.contains(key) ? 2 : 0)
                        + moved(stand -> stand.probability(key))
                        + most(stand -> stand.probability(key))))
        .limit(SHOWN)
        .toList();
  }

  private List<String> shownSigns() {
    TreeSet<String> all = new TreeSet<>();
    signs.forEach(one -> all.addAll(one.keySet()));
    return all.stream()
        .filter(key -> mostOf(key) >= LEAST)
        .sorted(byMost(this::mostOf))
        .limit(SHOWN)
        .toList();
  }

  private double mostOf(String sign) {
    return signs.stream().mapToDouble(one -> one.getOrDefault(sign, 0.0)).max().orElse(0);
  }

  private static Comparator<String> byMost(ToDoubleFunction<String> size) {
    return Comparator.comparingDouble(size).reversed().thenComparing(Comparator.naturalOrder());
  }

  // The knob's own reading, then those that moved most on what is usual.
  private List<Measure> readings(String own) {
    TreeSet<String> all = new TreeSet<>();
    stands.forEach(stand -> stand.workup().readings().forEach(one -> all.add(one.name())));
    return all.stream()
        .filter(name -> name.equals(own) || share(name) >= MOVED)
        .sorted(byMost(name -> name.equals(own) ? Double.MAX_VALUE : share(name)))
        .limit(SHOWN)
        .map(this::measure)
        .toList();
  }

  private Measure measure(String name) {
    Optional<ReadingKind> kind = pipeline.catalogue().reading(name);
    return new Measure(
        name, kind.map(ReadingKind::unit).orElse(""), kind.map(ReadingKind::decimals).orElse(1));
  }

  // How far a reading moved, on the width of what is usual or else on its own size.
  private double share(String name) {
    double[] values =
        stands.stream()
            .flatMap(stand -> value(stand, name).stream())
            .mapToDouble(one -> one)
            .toArray();
    if (values.length < 2) {
      return 0;
    }
    double low = Arrays.stream(values).min().orElse(0);
    double high = Arrays.stream(values).max().orElse(0);
    double size =
        stands.stream()
            .flatMap(stand -> stand.workup().readings().stream())
            .filter(one -> one.name().equals(name))
            .flatMap(one -> one.usual().stream())
            .mapToDouble((Style.Range range) -> range.high() - range.low())
            .max()
            .orElse(Math.max(Math.abs(low), Math.abs(high)));
    return size <= 0 ? 0 : (high - low) / size;
  }

  private static Optional<Double> value(Stand stand, String name) {
    return stand.workup().readings().stream()
        .filter(one -> one.name().equals(name))
        .map(Reading::value)
        .filter(Double::isFinite)
        .findFirst();
  }

  private double most(ToDoubleFunction<Stand> of) {
    return stands.stream().mapToDouble(of).max().orElse(0);
  }

  private double moved(ToDoubleFunction<Stand> of) {
    return most(of) - stands.stream().mapToDouble(of).min().orElse(0);
  }

  private Map<String, Double> signs(Stand stand) {
    Map<String, Double> expected = new LinkedHashMap<>();
    for (Predicted one :
        pipeline.predicted().of(stand.findings(), stand.workup().style().tags(), LEAST / 2)) {
      expected.put(one.sign().key(), one.probability());
    }
    return expected;
  }

  private static double rounded(double value) {
    return Math.round(value * 1e4) / 1e4;
  }
}
