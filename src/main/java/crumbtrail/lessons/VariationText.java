package crumbtrail.lessons;

import crumbtrail.lessons.Board.Cell;
import crumbtrail.lessons.Variation.Dial;
import crumbtrail.lessons.Variation.Measure;
import crumbtrail.lessons.Variation.Named;
import crumbtrail.lessons.Variation.Point;
import crumbtrail.lessons.Variation.Tipping;
import crumbtrail.quantity.Amounts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.text.WordUtils;

/** A variation or a board for the terminal, in plain letters. */
public final class VariationText {
  private static final int USUAL_WIDTH = 80;
  private static final int CELL = 8;
  private static final int ROWS_SHOWN = 13;

  private final Variation variation;
  private final StringBuilder text = new StringBuilder();

  private final int width;

  private VariationText(Variation variation, int width) {
    this.variation = variation;
    this.width = width;
  }

  /** The picture, the table and the tipping points, at most 80 columns wide. */
  public static String of(Variation variation) {
    return of(variation, USUAL_WIDTH);
  }

  /**
   * The picture, the table and the tipping points.
   *
   * @param width characters of a line at most; 60 or more
   */
  public static String of(Variation variation, int width) {
    return new VariationText(variation, width).written();
  }

  private String written() {
    Dial dial = variation.dial();
    heading(text, variation.title(), List.of(dial), width);
    if (!variation.turns()) {
      line("Turning " + dial.name() + " changes nothing on this sheet.");
      return text.toString();
    }
    if (variation.causes().isEmpty()) {
      line("No cause becomes likely anywhere along this range.");
      line("");
    } else {
      plot();
    }
    tipping();
    table("How likely each cause is, without any sign seen:", percents(variation.causes(), true));
    table("What is worked out:", measures());
    table("What would be seen, as published tables go:", percents(variation.signs(), false));
    return text.toString();
  }

  static void heading(StringBuilder text, String title, List<Dial> dials, int width) {
    if (!title.isBlank()) {
      text.append(WordUtils.wrap(title, width, "\n", false)).append('\n');
    }
    for (Dial dial : dials) {
      String range =
          capital(dial.name())
              + " turned from "
              + Numbers.plain(dial.low())
              + " to "
              + told(dial, dial.high());
      String own =
          dial.own() == null
              ? "; the sheet does not say where it stands."
              : "; the sheet stands at " + told(dial, dial.own()) + ".";
      text.append(WordUtils.wrap(range + own, width, "\n", false)).append('\n');
    }
    text.append('\n');
  }

  private void plot() {
    Dial dial = variation.dial();
    LetterPlot plot = new LetterPlot(width - 19, dial.low(), dial.high());
    Double own = dial.own();
    boolean within = own != null && own >= dial.low() && own <= dial.high();
    double[] at = variation.points().stream().mapToDouble(Point::at).toArray();
    for (int place = 0; place < variation.causes().size(); place++) {
      String key = variation.causes().get(place).key();
      double[] heights =
          variation.points().stream().mapToDouble(one -> one.causes().get(key)).toArray();
      plot.line(LetterPlot.letter(place), at, heights);
    }
    if (within) {
      plot.upright(own);
    }
    plot.rows().forEach(this::line);
    String last = told(dial, dial.high());
    String axis = Numbers.plain(dial.low());
    String middle = within ? "here" : "";
    int place = within ? plot.column(own) - 1 : plot.columns() / 2;
    StringBuilder below = new StringBuilder(" ".repeat(8 + plot.columns() + 8));
    below.replace(8, 8 + axis.length(), axis);
    int end = 8 + plot.columns() - last.length();
    below.replace(end, end + last.length(), last);
    int from = 8 + Math.max(0, place);
    if (below.substring(from - 1, from + middle.length() + 1).isBlank()) {
      below.replace(from, from + middle.length(), middle);
    }
    line(below.toString().stripTrailing());
    line("");
    for (int cause = 0; cause < variation.causes().size(); cause++) {
      line("  " + LetterPlot.letter(cause) + "  " + variation.causes().get(cause).name());
    }
    line("");
  }

  private void tipping() {
    if (variation.tipping().isEmpty()) {
      line("Nothing changes over along this range.");
    }
    for (Tipping one : variation.tipping()) {
      line("  " + one.words());
    }
    line("");
  }

  private record Column(String head, List<String> cells) {}

  private List<Column> percents(List<Named> named, boolean causes) {
    return IntStream.range(0, named.size())
        .mapToObj(
            place ->
                new Column(
                    causes ? String.valueOf(LetterPlot.letter(place)) : named.get(place).name(),
                    shown().stream()
                        .map(point -> causes ? point.causes() : point.signs())
                        .map(all -> Numbers.percent(all.get(named.get(place).key())))
                        .toList()))
        .toList();
  }

  private List<Column> measures() {
    return variation.readings().stream()
        .map(
            one ->
                new Column(
                    one.name() + (one.unit().isEmpty() ? "" : ", " + one.unit()),
                    shown().stream().map(point -> value(point, one)).toList()))
        .toList();
  }

  private static String value(Point point, Measure measure) {
    Double value = point.readings().get(measure.name());
    return value == null ? "–" : Amounts.fixed(value, measure.decimals());
  }

  // Every point is in the JSON; a screen holds a dozen, with both ends and the sheet's own.
  private List<Point> shown() {
    List<Point> all = variation.points();
    List<Point> others = all.stream().filter(point -> !point.own()).toList();
    int step = Math.max(1, (int) Math.ceil((others.size() - 1) / (ROWS_SHOWN - 1.0)));
    return all.stream()
        .filter(
            point ->
                point.own()
                    || others.indexOf(point) % step == 0
                    || point.at() == all.get(all.size() - 1).at())
        .toList();
  }

  // Heads stand in a list of their own where they are long, so that rows stay short.
  private void table(String title, List<Column> columns) {
    if (columns.isEmpty()) {
      return;
    }
    line(title);
    List<String> heads = new ArrayList<>();
    // Columns for which a narrow page has no room stand below the others.
    int fitting = Math.max(1, (width - 16) / CELL);
    for (int place = 0; place < columns.size(); place++) {
      String head = columns.get(place).head();
      if (head.length() > 1) {
        line("  " + (place + 1) + "  " + head);
        head = String.valueOf(place + 1);
      }
      heads.add(head);
    }
    for (int from = 0; from < columns.size(); from += fitting) {
      int to = Math.min(columns.size(), from + fitting);
      rows(heads.subList(from, to), columns.subList(from, to));
      line("");
    }
  }

  private void rows(List<String> heads, List<Column> columns) {
    line(String.format("  %12s  ", unit(variation.dial())) + cells(heads));
    List<Point> rows = shown();
    for (int row = 0; row < rows.size(); row++) {
      int here = row;
      String mark = rows.get(row).own() ? ">" : " ";
      line(
          String.format("%s %12s  ", mark, Numbers.plain(rows.get(row).at()))
              + cells(columns.stream().map(column -> column.cells().get(here)).toList()));
    }
  }

  private static String cells(List<String> cells) {
    return cells.stream()
        .map(cell -> String.format("%" + CELL + "s", cell))
        .collect(Collectors.joining());
  }

  /**
   * The leading cause at each crossing of two knobs. A board is not broken: it has the width of its
   * settings, and {@code --steps} makes it narrower.
   *
   * @param width characters of a line of words at most
   */
  public static String of(Board board, int width) {
    StringBuilder text = new StringBuilder();
    heading(text, board.title(), List.of(board.across(), board.down()), width);
    List<String> keys = board.causes().stream().map(Named::key).toList();
    text.append(
        WordUtils.wrap(
            "The leading cause and how likely it is; '.' where none is likely, < the sheet.\n",
            width,
            "\n",
            false));
    text.append(
        String.format(
            "%12s | %s%n",
            unit(board.down()), capital(board.across().name()) + ", " + unit(board.across())));
    text.append(String.format("%12s | ", ""));
    board.acrossAt().forEach(at -> text.append(String.format("%6s", Numbers.plain(at))));
    text.append('\n')
        .append("-".repeat(13))
        .append('+')
        .append("-".repeat(6 * board.acrossAt().size() + 2))
        .append('\n');
    for (int row = 0; row < board.cells().size(); row++) {
      text.append(String.format("%12s | ", Numbers.plain(board.downAt().get(row))));
      for (Cell cell : board.cells().get(row)) {
        String letter =
            cell.lead() == null
                ? "."
                : String.valueOf(LetterPlot.letter(keys.indexOf(cell.lead())));
        String percent = cell.lead() == null ? "" : " " + Math.round(cell.probability() * 100);
        text.append(String.format("%6s", letter + percent + (cell.own() ? "<" : " ")));
      }
      text.append('\n');
    }
    text.append('\n');
    for (int place = 0; place < keys.size(); place++) {
      text.append("  ").append(LetterPlot.letter(place)).append("  ");
      text.append(board.causes().get(place).name()).append('\n');
    }
    return text.toString().lines().map(String::stripTrailing).collect(Collectors.joining("\n"))
        + "\n";
  }

  private static String unit(Dial dial) {
    return dial.unit().equals("C") ? "°C" : dial.unit();
  }

  private static String told(Dial dial, double value) {
    return Numbers.plain(value) + " " + unit(dial);
  }

  private static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private void line(String words) {
    text.append(words.length() <= width ? words : WordUtils.wrap(words, width, "\n    ", false))
        .append('\n');
  }
}
