package crumbtrail.web;

import crumbtrail.lessons.Board;
import crumbtrail.lessons.Drawn;
import crumbtrail.lessons.Variation;
import crumbtrail.lessons.Variation.Dial;
import crumbtrail.lessons.Variation.Named;
import crumbtrail.lessons.Variation.Point;
import crumbtrail.lessons.Variation.Tipping;
import crumbtrail.web.ReportView.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
 * @param loaves drawn as they would look
 */
public record VaryView(
    String title,
    List<String> dials,
    List<String> key,
    Figure figure,
    List<String> tipping,
    List<Table> tables,
    List<Drawn> loaves) {

  /**
   * A table.
   *
   * @param rows cells, the first of each row being its head
   */
  public record Table(String heading, List<String> columns, List<List<String>> rows) {}

  /** One knob. */
  static VaryView of(Variation variation, List<Drawn> loaves) {
    List<Named> causes = variation.causes();
    List<String> key =
        IntStream.range(0, causes.size())
            .mapToObj(place -> LessonWords.letter(place) + ": " + causes.get(place).name())
            .toList();
    List<String> tipping =
        new ArrayList<>(variation.tipping().stream().map(Tipping::words).toList());
    if (!variation.turns()) {
      tipping.add("Turning " + variation.dial().name() + " changes nothing on this sheet.");
    } else if (causes.isEmpty()) {
      tipping.add("No cause becomes likely anywhere along this range.");
    } else if (tipping.isEmpty()) {
      tipping.add("Nothing changes over along this range.");
    }
    List<Table> tables = new ArrayList<>();
    Stream.of(readings(variation), signs(variation))
        .filter(table -> table.columns().size() > 1)
        .forEach(tables::add);
    return new VaryView(
        variation.title(),
        List.of(sentence(variation.dial())),
        key,
        causes.isEmpty() ? null : figure(variation, tipping),
        tipping,
        tables,
        loaves);
  }

  private static Figure figure(Variation variation, List<String> tipping) {
    List<String> columns = new ArrayList<>(List.of(head(variation.dial())));
    variation.causes().forEach(cause -> columns.add(cause.name()));
    return new Figure(
        "vary",
        "How likely each cause is",
        Stream.of(Frame.WIDE, Frame.NARROW)
            .map(frame -> VaryPicture.of(variation, frame, tipping))
            .toList(),
        "Without any sign seen. The dotted level is where a risk begins, "
            + LessonWords.percent(Variation.RISK)
            + ".",
        List.of(),
        columns,
        variation.points().stream()
            .map(
                point ->
                    row(
                        variation,
                        point,
                        variation.causes().stream()
                            .map(cause -> LessonWords.percent(point.causes().get(cause.key())))))
            .toList());
  }

  private static Table readings(Variation variation) {
    List<String> columns = new ArrayList<>(List.of(head(variation.dial())));
    variation
        .readings()
        .forEach(one -> columns.add(one.name() + (one.unit().isEmpty() ? "" : ", " + one.unit())));
    return new Table(
        "What is worked out",
        columns,
        variation.points().stream()
            .map(
                point ->
                    row(
                        variation,
                        point,
                        variation.readings().stream()
                            .map(one -> value(point.readings().get(one.name()), one.decimals()))))
            .toList());
  }

  private static Table signs(Variation variation) {
    List<String> columns = new ArrayList<>(List.of(head(variation.dial())));
    variation.signs().forEach(sign -> columns.add(sign.name()));
    return new Table(
        "What would be seen, as published tables go",
        columns,
        variation.points().stream()
            .map(
                point ->
                    row(
                        variation,
                        point,
                        variation.signs().stream()
                            .map(sign -> LessonWords.percent(point.signs().get(sign.key())))))
            .toList());
  }

  private static List<String> row(Variation variation, Point point, Stream<String> cells) {
    String at = LessonWords.told(variation.dial(), point.at()) + (point.own() ? ", the sheet" : "");
    return Stream.concat(Stream.of(at), cells).toList();
  }

  private static String value(Double value, int decimals) {
    return value == null ? "–" : String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  /** Two knobs. */
  static VaryView of(Board board) {
    List<String> keys = board.causes().stream().map(Named::key).toList();
    List<String> columns =
        new ArrayList<>(List.of(head(board.down()) + " \\ " + head(board.across())));
    board.acrossAt().forEach(at -> columns.add(LessonWords.told(board.across(), at)));
    List<List<String>> rows = new ArrayList<>();
    for (int row = 0; row < board.cells().size(); row++) {
      List<String> cells = new ArrayList<>();
      cells.add(LessonWords.told(board.down(), board.downAt().get(row)));
      for (Board.Cell cell : board.cells().get(row)) {
        String lead =
            cell.lead() == null
                ? "·"
                : LessonWords.letter(keys.indexOf(cell.lead()))
                    + " "
                    + LessonWords.percent(cell.probability());
        cells.add(cell.own() ? lead + " (the sheet)" : lead);
      }
      rows.add(cells);
    }
    return new VaryView(
        board.title(),
        List.of(sentence(board.across()), sentence(board.down())),
        IntStream.range(0, keys.size())
            .mapToObj(at -> LessonWords.letter(at) + ": " + board.causes().get(at).name())
            .toList(),
        null,
        List.of(),
        List.of(new Table("The leading cause at each crossing", columns, rows)),
        List.of());
  }

  private static String head(Dial dial) {
    return LessonWords.capital(dial.name());
  }

  private static String sentence(Dial dial) {
    return head(dial)
        + " turned from "
        + LessonWords.number(dial.low())
        + " to "
        + LessonWords.told(dial, dial.high())
        + (dial.own() == null
            ? "; the sheet does not say where it stands."
            : "; the sheet stands at " + LessonWords.told(dial, dial.own()) + ".");
  }
}
