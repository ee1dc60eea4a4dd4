package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.SignKind;
import crumbtrail.rules.WrittenRule.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Signs against causes. */
final class Matrix {
  /** As many columns as a page bears. */
  private static final int COLUMNS = 6;

  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Overviews overviews;

  Matrix(Catalogue catalogue, Witnesses witnesses, Overviews overviews) {
    this.catalogue = catalogue;
    this.witnesses = witnesses;
    this.overviews = overviews;
  }

  Leaf page() {
    Page page = new Page(catalogue, "Which signs go with which causes");
    page.paragraph(
        """
        What a sign alone says of a cause: how strongly it speaks for it, or *against*. An empty
        cell says nothing. Causes stand by stage, six to a table; signs that speak of none of them
        are left out. The same as one sheet, for a spreadsheet: [matrix.csv](matrix.csv).""");
    for (String stage : Overviews.STAGES) {
      page.heading(Plain.upper(stage));
      List<Cause> causes = overviews.causes(stage);
      for (int from = 0; from < causes.size(); from += COLUMNS) {
        table(page, causes.subList(from, Math.min(causes.size(), from + COLUMNS)));
      }
    }
    return page.end();
  }

  private void table(Page page, List<Cause> causes) {
    List<String> head = new ArrayList<>(List.of("sign"));
    causes.forEach(cause -> head.add("[%s](causes/%s.md)".formatted(cause.name(), cause.key())));
    List<List<String>> rows = new ArrayList<>();
    for (SignKind sign : catalogue.knowledge().signs()) {
      List<String> cells = causes.stream().map(cause -> cell(sign, cause)).toList();
      if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
        List<String> row = new ArrayList<>();
        row.add("[%s](signs/%s.md)".formatted(sign.name(), sign.key()));
        row.addAll(cells);
        rows.add(row);
      }
    }
    page.table(head, rows);
  }

  private String cell(SignKind sign, Cause cause) {
    return witnesses.pair(sign.key(), cause.key()).map(Matrix::told).orElse("");
  }

  private static String told(Words words) {
    String strength = Strengths.word(words.decibans());
    boolean against = words.decibans() < 0 && words.verdict().strength() != Strength.CLEAR;
    return against ? "against, " + strength : strength;
  }

  /** One row for each sign, one column for each cause; keys and words. */
  String csv() {
    List<Cause> causes =
        Overviews.STAGES.stream().flatMap(stage -> overviews.causes(stage).stream()).toList();
    StringBuilder text = new StringBuilder("sign");
    causes.forEach(cause -> text.append(",").append(cause.key()));
    text.append("\n");
    for (SignKind sign : catalogue.knowledge().signs()) {
      text.append(sign.key()).append(",");
      text.append(
          causes.stream()
              .map(cause -> cell(sign, cause).replace(", ", " "))
              .collect(Collectors.joining(",")));
      text.append("\n");
    }
    return text.toString();
  }
}
