package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A page in the making: headings, paragraphs, lists, tables, and its sources by number. */
final class Page {
  private final String title;
  private final List<Leaf.Part> parts = new ArrayList<>();
  private final List<String> sources = new ArrayList<>();
  private final Catalogue catalogue;

  Page(Catalogue catalogue, String title) {
    this.catalogue = catalogue;
    this.title = Plain.upper(title);
  }

  /** A heading below the title. */
  Page heading(String words) {
    parts.add(new Leaf.Heading(words));
    return this;
  }

  /** A paragraph; nothing if there are no words. */
  Page paragraph(String words) {
    if (words != null && !words.isBlank()) {
      parts.add(new Leaf.Paragraph(words.strip()));
    }
    return this;
  }

  /** The picture of a sign. */
  Page drawing(String sign, String words) {
    parts.add(new Leaf.Drawing(sign, words));
    return this;
  }

  /** A list; nothing if it is empty. */
  Page list(List<String> items) {
    if (!items.isEmpty()) {
      parts.add(new Leaf.Items(items));
    }
    return this;
  }

  /** A table; nothing if it has no rows. */
  Page table(List<String> head, List<List<String>> rows) {
    if (!rows.isEmpty()) {
      parts.add(new Leaf.Table(head, rows));
    }
    return this;
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
  Leaf end() {
    if (!sources.isEmpty()) {
      heading("Sources");
      parts.add(new Leaf.Sources(sources.stream().map(this::cited).toList()));
    }
    return new Leaf(title, parts);
  }

  private Leaf.Cited cited(String id) {
    return catalogue.knowledge().sources().stream()
        .filter(source -> source.id().equals(id))
        .findFirst()
        .map(source -> new Leaf.Cited(source.cited(), address(source)))
        .orElse(new Leaf.Cited(Plain.upper(id), ""));
  }

  private static String address(Source source) {
    String address = source.address();
    return address != null && address.startsWith("http") ? address : "";
  }
}
