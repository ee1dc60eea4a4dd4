package crumbtrail.handbook;

import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.SignKind;
import crumbtrail.picture.LoafPictures;
import crumbtrail.rules.RuleBook;
import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A page for each sign. */
final class SignPages {
  /** Causes near the top of the list, between which one more look decides. */
  private static final int LEADING = 8;

  /** A gap of a faint word and more tells two causes apart. */
  private static final double GAP = 3;

  private final RuleBook book;
  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Weights weights;
  private final Plain plain;
  private final LoafPictures pictures;

  SignPages(RuleBook book, Witnesses witnesses) {
    this.book = book;
    this.catalogue = book.catalogue();
    this.witnesses = witnesses;
    this.weights = Weights.of(catalogue);
    this.plain = new Plain(catalogue);
    this.pictures = LoafPictures.of(catalogue);
  }

  Leaf page(SignKind sign) {
    Page page = new Page(catalogue, sign.name());
    page.paragraph(sign.meaning());
    page.paragraph("Where: " + sign.place() + ".");
    picture(page, sign);
    page.heading("How to look").paragraph(sign.look());
    List<String> shown = shown(sign.key());
    page.heading("What shows it");
    page.paragraph(
        shown.isEmpty()
            ? "By itself it points to no cause."
            : "Likeliest first, when nothing else is known: how common the cause is, and how"
                + " strongly the sign speaks for it.");
    causes(page, sign.key(), shown);
    opposites(page, shown);
    second(page, sign.key(), shown);
    helps(page, shown);
    company(page, sign.key());
    against(page, sign.key());
    return page.end();
  }

  // The picture with its words, or why there is none.
  private void picture(Page page, SignKind sign) {
    pictures
        .of(sign.key())
        .ifPresentOrElse(
            picture -> page.drawing(sign.key(), picture.title() + ". " + picture.description()),
            () ->
                pictures
                    .whyNot(sign.key())
                    .ifPresent(why -> page.paragraph("No picture: " + why + ".")));
  }

  private List<String> shown(String sign) {
    return witnesses.ofSign(sign).entrySet().stream()
        .filter(words -> words.getValue().decibans() > 0)
        .sorted(
            Comparator.comparingDouble(
                    (Map.Entry<String, Words> words) ->
                        -prior(words.getKey()) - words.getValue().decibans())
                .thenComparing(Map.Entry::getKey))
        .map(Map.Entry::getKey)
        .toList();
  }

  private double prior(String cause) {
    return catalogue.cause(cause).map(one -> weights.prior(one, List.of())).orElse(0.0);
  }

  private void causes(Page page, String sign, List<String> shown) {
    List<List<String>> rows = new ArrayList<>();
    for (String cause : shown) {
      Words words = witnesses.pair(sign, cause).orElseThrow();
      int tables = witnesses.tables(sign, cause);
      rows.add(
          List.of(
              plain.cause(cause),
              Strengths.word(words.decibans()),
              words.rule().lesson(),
              page.cite(List.of(words.rule().source())),
              tables == 0 ? "none" : String.valueOf(tables)));
    }
    page.table(List.of("cause", "speaks for it", "why", "source", "tables naming both"), rows);
  }

  // Two causes that show the same sign and yet exclude each other: the rules that part them.
  private void opposites(Page page, List<String> shown) {
    List<String> leading = shown.subList(0, Math.min(2 * LEADING, shown.size()));
    List<List<String>> rows = new ArrayList<>();
    for (int one = 0; one < leading.size(); one++) {
      for (int other = one + 1; other < leading.size(); other++) {
        rows.addAll(parted(leading.get(one), leading.get(other)));
      }
    }
    if (!rows.isEmpty()) {
      page.heading("Opposite causes of this sign");
      page.paragraph("Both can show it, but hardly together. This parts them:");
      page.table(List.of("one or the other", "for the one", "for the other"), rows);
    }
  }

  private List<List<String>> parted(String one, String other) {
    List<WrittenRule> rules = witnesses.partings(one, other);
    List<String> left = observations(rules, one);
    List<String> right = observations(rules, other);
    return left.isEmpty() || right.isEmpty()
        ? List.of()
        : List.of(
            List.of(
                plain.cause(one) + ", " + plain.cause(other),
                String.join("; ", left),
                String.join("; ", right)));
  }

  private List<String> observations(List<WrittenRule> rules, String cause) {
    return rules.stream()
        .filter(rule -> Witnesses.says(rule, cause, true))
        .sorted(
            Comparator.comparingInt((WrittenRule rule) -> rule.conditions().size())
                .thenComparing(WrittenRule::name))
        .map(plain::when)
        .distinct()
        .limit(3)
        .toList();
  }

  // What to do about the likeliest, in the words of their own pages.
  private void helps(Page page, List<String> shown) {
    List<String> items =
        shown.stream()
            .limit(LEADING)
            .flatMap(key -> catalogue.cause(key).stream())
            .map(cause -> Plain.upper(plain.cause(cause.key())) + ": " + cause.change())
            .toList();
    if (!items.isEmpty()) {
      page.heading("What helps, by cause").list(items);
    }
  }

  // For each leading cause the other sign that singles it out best among the leading ones.
  private void second(Page page, String sign, List<String> shown) {
    List<String> leading = shown.subList(0, Math.min(LEADING, shown.size()));
    List<String> items = new ArrayList<>();
    for (String cause : leading) {
      telling(sign, cause, leading)
          .ifPresent(
              other -> items.add("also " + plain.sign(other) + ": rather " + plain.cause(cause)));
    }
    if (leading.size() > 1 && !items.isEmpty()) {
      page.heading("What would tell the likeliest apart").list(items);
    }
  }

  private Optional<String> telling(String sign, String cause, List<String> leading) {
    return catalogue.knowledge().signs().stream()
        .map(SignKind::key)
        .filter(other -> !other.equals(sign) && lead(other, cause, leading) >= GAP)
        .max(
            Comparator.comparingDouble((String other) -> lead(other, cause, leading))
                .thenComparing(Comparator.reverseOrder()));
  }

  // By how much a sign speaks louder for the cause than for the best of the others.
  private double lead(String sign, String cause, List<String> leading) {
    double rival = 0;
    for (String other : leading) {
      if (!other.equals(cause)) {
        rival = Math.max(rival, weight(sign, other));
      }
    }
    return weight(sign, cause) - rival;
  }

  private double weight(String sign, String cause) {
    return witnesses.pair(sign, cause).map(Words::decibans).orElse(0.0);
  }

  private void company(Page page, String sign) {
    List<String> items = new ArrayList<>();
    for (WrittenRule rule : book.rules()) {
      if (rule.looksAt(Kind.SIGN, sign) && !Strengths.alone(rule)) {
        items.add(
            "%s: %s. %s (%s)"
                .formatted(
                    Plain.upper(plain.when(rule)),
                    verdicts(rule),
                    rule.lesson(),
                    page.cite(List.of(rule.source()))));
      }
    }
    if (!items.isEmpty()) {
      page.heading("In company").list(items);
    }
  }

  private String verdicts(WrittenRule rule) {
    return String.join(
        ", ",
        rule.verdicts().stream()
            .map(
                verdict ->
                    (verdict.speaksFor() ? "for " : "against ") + plain.cause(verdict.cause()))
            .toList());
  }

  private void against(Page page, String sign) {
    List<String> seen = new ArrayList<>();
    witnesses.ofSign(sign).entrySet().stream()
        .filter(words -> words.getValue().decibans() < 0)
        .forEach(words -> seen.add(item(page, words.getKey(), words.getValue())));
    List<String> missing = new ArrayList<>();
    for (WrittenRule rule : book.rules()) {
      if (rule.looksAt(Kind.SIGN_ABSENT, sign)) {
        missing.add(
            "%s. %s (%s)"
                .formatted(
                    Plain.upper(verdicts(rule)), rule.lesson(), page.cite(List.of(rule.source()))));
      }
    }
    if (!seen.isEmpty()) {
      page.heading("What it speaks against").list(seen);
    }
    if (!missing.isEmpty()) {
      page.heading("Looked for and not there").list(missing);
    }
  }

  private String item(Page page, String cause, Words words) {
    return "%s: *%s*. %s (%s)"
        .formatted(
            plain.cause(cause),
            Strengths.word(words.decibans()),
            words.rule().lesson(),
            page.cite(List.of(words.rule().source())));
  }
}
