package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A page for each cause: its card, and below that every rule that speaks of it. */
final class CausePages {
  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Plain plain;
  private final CauseCards cards;

  CausePages(Catalogue catalogue, Witnesses witnesses) {
    this.catalogue = catalogue;
    this.witnesses = witnesses;
    this.plain = new Plain(catalogue);
    this.cards = new CauseCards(catalogue, witnesses);
  }

  Leaf page(Cause cause) {
    Page page = new Page(catalogue, cause.name());
    Card card = cards.card(cause);
    card.sections().forEach(section -> section(page, section));
    page.heading("Sign by sign");
    signs(page, cause);
    together(page, cause);
    spoken(page, cause, true, "What else on the sheet speaks for it");
    if (cause.noReading() != null) {
      page.paragraph("No number on a sheet speaks for it. " + cause.noReading());
    }
    spoken(page, cause, false, "What speaks against it");
    page.paragraph("The cause itself is described in " + page.cite(cause.sources()) + ".");
    return page.end();
  }

  private static void section(Page page, Card.Section section) {
    page.heading(section.heading());
    section.paragraphs().forEach(page::paragraph);
    page.list(section.items());
  }

  private void signs(Page page, Cause cause) {
    List<List<String>> rows = new ArrayList<>();
    witnesses.signsOf(cause.key()).entrySet().stream()
        .filter(sign -> sign.getValue().decibans() > 0)
        .sorted(Map.Entry.comparingByValue(Witnesses.STRONGEST_FIRST))
        .forEach(
            sign ->
                rows.add(
                    List.of(
                        plain.sign(sign.getKey()) + bread(sign.getValue().rule()),
                        Strengths.word(sign.getValue().decibans()),
                        sign.getValue().rule().lesson(),
                        page.cite(List.of(sign.getValue().rule().source())),
                        tables(sign.getKey(), cause.key()))));
    if (rows.isEmpty()) {
      page.paragraph("No sign by itself points to it; what happened and what was measured does.");
    }
    page.table(List.of("sign", "speaks for it", "why", "source", "tables naming both"), rows);
  }

  private String tables(String sign, String cause) {
    int tables = witnesses.tables(sign, cause);
    return tables == 0 ? "none" : String.valueOf(tables);
  }

  private static String bread(WrittenRule rule) {
    return rule.conditions().stream()
        .filter(condition -> condition.kind() == Kind.BREAD)
        .map(condition -> condition.sentence().replace("\"", "").replace("The bread is ", ""))
        .map(words -> " (" + words + ")")
        .collect(Collectors.joining());
  }

  // Signs that speak only in company.
  private void together(Page page, Cause cause) {
    List<String> items =
        witnesses.on(cause.key()).stream()
            .filter(words -> words.decibans() > 0 && words.rule().looksAt(Kind.SIGN))
            .filter(words -> !Strengths.alone(words.rule()))
            .map(words -> item(page, words))
            .toList();
    if (!items.isEmpty()) {
      page.heading("Signs in company").list(items);
    }
  }

  private void spoken(Page page, Cause cause, boolean speaksFor, String heading) {
    List<String> items =
        witnesses.on(cause.key()).stream()
            .filter(words -> words.decibans() > 0 == speaksFor)
            .filter(words -> !speaksFor || !words.rule().looksAt(Kind.SIGN))
            .map(words -> item(page, words))
            .toList();
    page.heading(heading);
    page.paragraph(items.isEmpty() ? "Nothing that the rules know of." : "");
    page.list(items);
  }

  private String item(Page page, Words words) {
    return "%s: *%s*. %s (%s)"
        .formatted(
            Plain.upper(plain.when(words.rule())),
            Strengths.word(words.decibans()),
            words.rule().lesson(),
            page.cite(List.of(words.rule().source())));
  }
}
