package crumbtrail.web;

import crumbtrail.lessons.Board;
import crumbtrail.lessons.Drawn;
import crumbtrail.lessons.Variation;
import crumbtrail.lessons.Variation.Dial;
import crumbtrail.lessons.Variation.Named;
import crumbtrail.lessons.Variation.Point;
import crumbtrail.lessons.Variation.Tipping;
import crumbtrail.quantity.Amounts;
import crumbtrail.web.ReportView.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What moved, ready to be drawn.
 *
 * @param title the baker's name for the bake
 * @param dials what was turned, in sentences
 * @param key letters of the causes, in the order of the lines
 * @param figure the picture with its numbers, null where no cause became likely or two were turned
 * @param tipping where something changes over
 * @param tables further numbers
 * @param readings names of what is worked out, to be explained
 * @param loaves drawn as they would look
 */
public record VaryView(
    String title,
    List<String> dials,
    List<String> key,
    Figure figure,
    List<String> tipping,
    List<Table> tables,
    List<String> readings,
    List<Drawn> loaves) {

  /**
   * A table.
   *
   * @param rows cells, the first of each row being its head
   */
  public record Table(String heading, List<String> columns, List<List<String>> rows) {}

  /** One knob. */
  static VaryView of(Variation variation, List<Drawn> loaves, Texts t) {
    List<Named> causes = variation.causes();
    List<String> key =
        IntStream.range(0, causes.size())
            .mapToObj(place -> LessonWords.letter(place) + ": " + t.name(causes.get(place).name()))
            .toList();
    List<String> tipping =
        new ArrayList<>(variation.tipping().stream().map(Tipping::words).toList());
    if (!variation.turns()) {
      tipping.add(t.of("vary.nothing", t.name(variation.dial().name())));
    } else if (causes.isEmpty()) {
      tipping.add(t.of("vary.nocause"));
    } else if (tipping.isEmpty()) {
      tipping.add(t.of("vary.noturn"));
    }
    List<Table> tables = new ArrayList<>();
    Stream.of(readings(variation, t), signs(variation, t))
        .filter(table -> table.columns().size() > 1)
        .forEach(tables::add);
    return new VaryView(
        variation.title(),
        List.of(sentence(variation.dial(), t)),
        key,
        causes.isEmpty() ? null : figure(variation, tipping, t),
        tipping,
        tables,
        variation.readings().stream().map(Variation.Measure::name).toList(),
        loaves);
  }

  private static Figure figure(Variation variation, List<String> tipping, Texts t) {
    List<String> columns = new ArrayList<>(List.of(head(variation.dial(), t)));
    variation.causes().forEach(cause -> columns.add(t.name(cause.name())));
    return new Figure(
        "vary",
        t.of("vary.chart"),
        Stream.of(Frame.WIDE, Frame.NARROW)
            .map(frame -> VaryPicture.of(variation, frame, tipping, t))
            .toList(),
        t.of("vary.chart.caption", percent(Variation.RISK, t)),
        false,
        List.of(),
        columns,
        variation.points().stream()
            .map(
                point ->
                    row(
                        variation,
                        point,
                        t,
                        variation.causes().stream()
                            .map(cause -> percent(point.causes().get(cause.key()), t))))
            .toList());
  }

  private static Table readings(Variation variation, Texts t) {
    List<String> columns = new ArrayList<>(List.of(head(variation.dial(), t)));
    variation
        .readings()
        .forEach(
            one ->
                columns.add(t.name(one.name()) + (one.unit().isEmpty() ? "" : ", " + one.unit())));
    return new Table(
        t.of("vary.readings"),
        columns,
        variation.points().stream()
            .map(
                point ->
                    row(
                        variation,
                        point,
                        t,
                        variation.readings().stream()
                            .map(
                                one -> value(point.readings().get(one.name()), one.decimals(), t))))
            .toList());
  }

  private static Table signs(Variation variation, Texts t) {
    List<String> columns = new ArrayList<>(List.of(head(variation.dial(), t)));
    variation.signs().forEach(sign -> columns.add(t.name(sign.name())));
    return new Table(
        t.of("vary.signs"),
        columns,
        variation.points().stream()
            .map(
                point ->
                    row(
                        variation,
                        point,
                        t,
                        variation.signs().stream()
                            .map(sign -> percent(point.signs().get(sign.key()), t))))
            .toList());
  }

  private static List<String> row(Variation variation, Point point, Texts t, Stream<String> cells) {
    String at =
        LessonWords.told(variation.dial(), point.at(), t)
            + (point.own() ? ", " + t.of("vary.here") : "");
    return Stream.concat(Stream.of(at), cells).toList();
  }

  private static String value(Double value, int decimals, Texts t) {
    return value == null ? "–" : t.number(Amounts.fixed(value, decimals));
  }

  private static String percent(Double probability, Texts t) {
    return t.number(LessonWords.percent(probability));
  }

  /** Two knobs. */
  static VaryView of(Board board, Texts t) {
    List<String> keys = board.causes().stream().map(Named::key).toList();
    List<String> columns =
        new ArrayList<>(List.of(head(board.down(), t) + " \\ " + head(board.across(), t)));
    board.acrossAt().forEach(at -> columns.add(LessonWords.told(board.across(), at, t)));
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < board.cells().size(); row++) {
      List<String> cells = new ArrayList<>();
      cells.add(LessonWords.told(board.down(), board.downAt().get(row), t));
      for (Board.Cell cell : board.cells().get(row)) {
        String lead =
            cell.lead() == null
                ? "·"
                : LessonWords.letter(keys.indexOf(cell.lead()))
                    + " "
                    + percent(cell.probability(), t);
        cells.add(cell.own() ? lead + " (" + t.of("vary.here") + ")" : lead);
      }
      rows.add(cells);
    }
    return new VaryView(
        board.title(),
        List.of(sentence(board.across(), t), sentence(board.down(), t)),
        IntStream.range(0, keys.size())
            .mapToObj(at -> LessonWords.letter(at) + ": " + t.name(board.causes().get(at).name()))
            .toList(),
        null,
        List.of(),
        List.of(new Table(t.of("vary.crossing"), columns, rows)),
        List.of(),
        List.of());
  }

  private static String head(Dial dial, Texts t) {
    return LessonWords.capital(t.name(dial.name()));
  }

  private static String sentence(Dial dial, Texts t) {
    String low = t.number(LessonWords.number(dial.low()));
    String high = LessonWords.told(dial, dial.high(), t);
    return dial.own() == null
        ? t.of("vary.turned", head(dial, t), low, high)
        : t.of("vary.turned.own", head(dial, t), low, high, LessonWords.told(dial, dial.own(), t));
  }
}
