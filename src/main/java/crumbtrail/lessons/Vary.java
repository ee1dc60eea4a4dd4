package crumbtrail.lessons;

import crumbtrail.advice.Knob;
import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.lessons.Board.Cell;
import crumbtrail.lessons.Variation.Dial;
import crumbtrail.lessons.Variation.Named;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Turns one knob of a bake, or two, and watches causes, readings and predicted signs move: the
 * pipeline of every bake, run along the range without the signs of the sheet. Safe for use by many
 * threads.
 */
public final class Vary {
  /** In place of a number of settings: round ones, about twenty, to each side of a board eight. */
  public static final int AS_USUAL = 0;

  /** No page and no terminal shows more; and each costs a run. */
  public static final int MOST_STEPS = 101;

  private static final int USUAL = 24;
  private static final int USUAL_ON_BOARD = 8;

  private final Pipeline pipeline;

  /**
   * @param rules the rule base
   */
  public Vary(RuleBase rules) {
    this(new Pipeline(rules));
  }

  Vary(Pipeline pipeline) {
    this.pipeline = pipeline;
  }

  /** All that can be turned. */
  public List<KnobKind> knobs() {
    return pipeline.knobs().all().stream().map(Knob::kind).toList();
  }

  /** The knob of this key. */
  public Optional<KnobKind> knob(String key) {
    return pipeline.knobs().named(key).map(Knob::kind);
  }

  /**
   * One knob turned.
   *
   * @param steps settings along the range, from 2 to {@link #MOST_STEPS}, or {@link #AS_USUAL};
   *     where the sheet itself stands is one more
   */
  public Variation along(BakeSheet sheet, Turn turn, int steps) {
    try (Reasoning reasoning = pipeline.open()) {
      Bench bench = new Bench(pipeline, reasoning, sheet);
      Knob knob = knob(turn);
      Optional<Double> own = bench.own(knob);
      List<Double> settings = new ArrayList<>(settings(turn, steps, USUAL));
      own.filter(value -> value >= turn.low() && value <= turn.high())
          .filter(value -> settings.stream().noneMatch(one -> Math.abs(one - value) < 1e-9))
          .ifPresent(settings::add);
      List<Stand> stands = settings.stream().sorted().map(at -> bench.at(knob, at)).toList();
      return VariationWriter.write(pipeline, bench, turn, own, stands);
    }
  }

  /**
   * Two knobs turned.
   *
   * @param across from left to right
   * @param down from top to bottom
   * @param steps settings to each side, from 2 to {@link #MOST_STEPS}, or {@link #AS_USUAL}
   */
  public Board over(BakeSheet sheet, Turn across, Turn down, int steps) {
    try (Reasoning reasoning = pipeline.open()) {
      Bench bench = new Bench(pipeline, reasoning, sheet);
      Optional<Double> ownAcross = bench.own(knob(across));
      Optional<Double> ownDown = bench.own(knob(down));
      List<Double> columns = settings(across, steps, USUAL_ON_BOARD);
      List<Double> rows = settings(down, steps, USUAL_ON_BOARD);
      int ownColumn = nearest(columns, ownAcross);
      int ownRow = nearest(rows, ownDown);
      List<List<Cell>> cells = new ArrayList<>();
      for (int row = 0; row < rows.size(); row++) {
        Bench turned = bench.turned(knob(down), rows.get(row));
        List<Cell> line = new ArrayList<>();
        for (int column = 0; column < columns.size(); column++) {
          Stand stand = turned.at(knob(across), columns.get(column));
          line.add(new Cell(stand.lead(), stand.likeliest(), row == ownRow && column == ownColumn));
        }
        cells.add(line);
      }
      return new Board(
          sheet.title(),
          dial(across, ownAcross),
          dial(down, ownDown),
          columns,
          rows,
          cells,
          leading(cells));
    }
  }

  /** For every knob by its key, the range around where the bake stands on it. */
  public Map<String, Turn> around(BakeSheet sheet) {
    try (Reasoning reasoning = pipeline.open()) {
      Bench bench = new Bench(pipeline, reasoning, sheet);
      Map<String, Turn> ranges = new LinkedHashMap<>();
      for (Knob knob : pipeline.knobs().all()) {
        ranges.put(knob.kind().key(), Turn.around(knob.kind(), bench.own(knob).orElse(0.0)));
      }
      return ranges;
    }
  }

  private Knob knob(Turn turn) {
    return pipeline.knobs().named(turn.knob().key()).orElseThrow();
  }

  static Dial dial(Turn turn, Optional<Double> own) {
    KnobKind knob = turn.knob();
    return new Dial(
        knob.key(), knob.name(), knob.unit(), turn.low(), turn.high(), own.orElse(null));
  }

  // Unless told how many, settings that a baker can set, as many as keep within the usual number.
  private static List<Double> settings(Turn turn, int steps, int usual) {
    if (steps != AS_USUAL) {
      int count = Math.max(2, Math.min(MOST_STEPS, steps));
      return IntStream.range(0, count)
          .mapToObj(at -> turn.low() + (turn.high() - turn.low()) * at / (count - 1))
          .toList();
    }
    double width = turn.high() - turn.low();
    double step = turn.knob().step() * Math.max(1, Math.ceil(width / turn.knob().step() / usual));
    List<Double> settings = new ArrayList<>();
    for (int at = 0; turn.low() + at * step < turn.high() - 1e-6 * width; at++) {
      settings.add(rounded(turn.low() + at * step));
    }
    settings.add(turn.high());
    return settings;
  }

  private static double rounded(double value) {
    return Math.round(value * 1e6) / 1e6;
  }

  // -1 where the sheet does not say or stands beyond the range.
  private static int nearest(List<Double> settings, Optional<Double> own) {
    double gap = settings.get(1) - settings.get(0);
    return own.map(
            value ->
                IntStream.range(0, settings.size())
                    .boxed()
                    .min(Comparator.comparingDouble(at -> Math.abs(settings.get(at) - value)))
                    .filter(at -> Math.abs(settings.get(at) - value) <= gap)
                    .orElse(-1))
        .orElse(-1);
  }

  private List<Named> leading(List<List<Cell>> cells) {
    Map<String, Long> counts =
        cells.stream()
            .flatMap(List::stream)
            .map(Cell::lead)
            .filter(Objects::nonNull)
            .collect(Collectors.groupingBy(key -> key, LinkedHashMap::new, Collectors.counting()));
    return counts.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .map(entry -> new Named(entry.getKey(), pipeline.causeName(entry.getKey())))
        .toList();
  }
}
