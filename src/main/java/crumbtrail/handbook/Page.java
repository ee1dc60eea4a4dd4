package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A page in the making: headings, paragraphs, lists, tables, and its sources by number. */
final class Page {
  private final StringBuilder text = new StringBuilder();
  private final List<String> sources = new ArrayList<>();
  private final Catalogue catalogue;

  Page(Catalogue catalogue, String title) {
    this.catalogue = catalogue;
    text.append("# ").append(Plain.upper(title)).append("\n\n");
  }

  /** A heading below the title. */
  Page heading(String words) {
    text.append("## ").append(words).append("\n\n");
    return this;
  }

  /** A paragraph; nothing if there are no words. */
  Page paragraph(String words) {
    if (words != null && !words.isBlank()) {
      text.append(words.strip()).append("\n\n");
    }
    return this;
  }

  /** A list; nothing if it is empty. */
  Page list(List<String> items) {
    if (!items.isEmpty()) {
      items.forEach(item -> text.append("- ").append(item).append("\n"));
      text.append("\n");
    }
    return this;
  }

  /** A table; nothing if it has no rows. */
  Page table(List<String> head, List<List<String>> rows) {
    if (!rows.isEmpty()) {
      row(head);
      text.append("|").append("---|".repeat(head.size())).append("\n");
      rows.forEach(this::row);
      text.append("\n");
    }
    return this;
  }

  private void row(List<String> cells) {
    text.append(
        cells.stream()
            .map(cell -> cell.replace("|", "\\|"))
            .collect(Collectors.joining(" | ", "| ", " |\n")));
  }

  /** The numbers under which this page lists the sources of a citation. */
  String cite(List<String> ids) {
    return ids.stream()
        .flatMap(citation -> List.of(citation.split(";")).stream())
        .map(String::trim)
        .filter(id -> !id.isEmpty())
        .distinct()
        .map(this::number)
        .sorted()
        .map(String::valueOf)
        .collect(Collectors.joining(", "));
  }

  private int number(String id) {
    if (!sources.contains(id)) {
      sources.add(id);
    }
    return sources.indexOf(id) + 1;
  }

  /** The page, with the sources that it cited. */
  String end() {
    if (!sources.isEmpty()) {
      heading("Sources");
      for (int place = 0; place < sources.size(); place++) {
        text.append(place + 1).append(". ").append(cited(sources.get(place))).append("\n");
      }
      text.append("\n");
    }
    return text.toString().strip() + "\n";
  }

  private String cited(String id) {
    return catalogue.knowledge().sources().stream()
        .filter(source -> source.id().equals(id))
        .findFirst()
        .map(
            source ->
                source.cited()
                    + (source.address() != null && source.address().startsWith("http")
                        ? ", <" + source.address() + ">"
                        : ""))
        .orElse(Plain.upper(id));
  }
}
