package crumbtrail.handbook;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A page of the handbook. Words may hold Markdown: links to other pages of the handbook, as seen
 * from the folder in which the page lies, and emphasis; {@link Inline} takes them apart.
 *
 * @param title its name
 * @param parts what stands on it, in the order in which it is read
 */
public record Leaf(String title, List<Part> parts) {

  public Leaf {
    parts = List.copyOf(parts);
  }

  /** Something on a page. */
  public sealed interface Part {}

  /** A heading below the title. */
  public record Heading(String words) implements Part {}

  /** A paragraph. */
  public record Paragraph(String words) implements Part {}

  /**
   * The picture of a sign.
   *
   * @param sign its key
   * @param words what is to be seen on it
   */
  public record Drawing(String sign, String words) implements Part {}

  /** A list. */
  public record Items(List<String> items) implements Part {
    public Items {
      items = List.copyOf(items);
    }
  }

  /** A table; every row has as many cells as its head. */
  public record Table(List<String> head, List<List<String>> rows) implements Part {
    public Table {
      head = List.copyOf(head);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /** The sources of the page, under the numbers by which it cites them, from 1. */
  public record Sources(List<Cited> list) implements Part {
    public Sources {
      list = List.copyOf(list);
    }
  }

  /**
   * A source.
   *
   * @param words the citation
   * @param address where it can be read, or empty
   */
  public record Cited(String words, String address) {}

  /** The page as Markdown. */
  String markdown() {
    return "# "
        + title
        + "\n\n"
        + parts.stream().map(Leaf::written).collect(Collectors.joining("\n\n"))
        + "\n";
  }

  private static String written(Part part) {
    if (part instanceof Heading heading) {
      return "## " + heading.words();
    } else if (part instanceof Paragraph paragraph) {
      return paragraph.words();
    } else if (part instanceof Drawing drawing) {
      return "![%s](../pictures/%s.svg)".formatted(drawing.words(), drawing.sign());
    } else if (part instanceof Items list) {
      return list.items().stream().map(item -> "- " + item).collect(Collectors.joining("\n"));
    } else if (part instanceof Table table) {
      return written(table);
    }
    return written((Sources) part);
  }

  private static String written(Table table) {
    return row(table.head())
        + "\n|"
        + "---|".repeat(table.head().size())
        + table.rows().stream().map(row -> "\n" + row(row)).collect(Collectors.joining());
  }

  private static String row(List<String> cells) {
    return cells.stream()
        .map(cell -> cell.replace("|", "\\|"))
        .collect(Collectors.joining(" | ", "| ", " |"));
  }

  private static String written(Sources sources) {
    StringBuilder text = new StringBuilder();
    for (Cited source : sources.list()) {
      text.append(text.isEmpty() ? "" : "\n");
      text.append(sources.list().indexOf(source) + 1).append(". ").append(source.words());
      text.append(source.address().isEmpty() ? "" : ", <" + source.address() + ">");
    }
    return text.toString();
  }
}
