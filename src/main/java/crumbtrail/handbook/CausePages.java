package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A page for each cause. */
final class CausePages {
  private static final int NEIGHBOURS = 4;
  private static final int TELLING = 4;

  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Plain plain;

  CausePages(Catalogue catalogue, Witnesses witnesses) {
    this.catalogue = catalogue;
    this.witnesses = witnesses;
    this.plain = new Plain(catalogue);
  }

  String page(Cause cause) {
    Page page = new Page(catalogue, cause.name());
    page.paragraph(cause.what());
    page.paragraph(standing(cause));
    page.heading("What goes on").paragraph(cause.mechanism());
    page.heading("How it shows");
    signs(page, cause);
    together(page, cause);
    spoken(page, cause, true, "What else on the sheet speaks for it");
    if (cause.noReading() != null) {
      page.paragraph("No number on a sheet speaks for it. " + cause.noReading());
    }
    spoken(page, cause, false, "What speaks against it");
    page.heading("How to tell it from its neighbours").paragraph(cause.tell());
    page.table(
        List.of("neighbour", "speaks for this one", "speaks for the neighbour"),
        neighbours(cause.key()));
    page.heading("What to do").paragraph(cause.change());
    page.paragraph("The cause itself is described in " + page.cite(cause.sources()) + ".");
    return page.end();
  }

  private String standing(Cause cause) {
    StringBuilder words = new StringBuilder();
    words.append("Stage: [").append(cause.stage()).append("](../stages/");
    words.append(cause.stage()).append(".md). In home baking: ");
    words.append(cause.prior().name().toLowerCase(Locale.ROOT)).append(".");
    if (!cause.refines().isEmpty()) {
      words.append(" A finer form, or the root, of ");
      words.append(cause.refines().stream().map(plain::cause).collect(Collectors.joining(", ")));
      words.append(".");
    }
    List<String> finer =
        catalogue.knowledge().causes().stream()
            .filter(other -> other.refines().contains(cause.key()))
            .map(other -> plain.cause(other.key()))
            .toList();
    if (!finer.isEmpty()) {
      words.append(" Finer forms and roots: ").append(String.join(", ", finer)).append(".");
    }
    return words.toString();
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

  // Causes with which it shares most of what is seen.
  private List<List<String>> neighbours(String cause) {
    Map<String, Double> own = weights(cause);
    Map<String, Double> shared = new TreeMap<>();
    for (Cause other : catalogue.knowledge().causes()) {
      if (!other.key().equals(cause) && !kin(other, cause)) {
        Map<String, Double> theirs = weights(other.key());
        double sum = 0;
        for (Map.Entry<String, Double> sign : own.entrySet()) {
          sum += Math.min(sign.getValue(), theirs.getOrDefault(sign.getKey(), 0.0));
        }
        shared.put(other.key(), sum);
      }
    }
    return shared.entrySet().stream()
        .filter(other -> other.getValue() > 0)
        .sorted(
            Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder())
                .thenComparing(Map.Entry.comparingByKey()))
        .limit(NEIGHBOURS)
        .map(
            other ->
                List.of(
                    plain.cause(other.getKey()),
                    telling(cause, other.getKey()),
                    telling(other.getKey(), cause)))
        .toList();
  }

  // Finer forms and roots show what the coarser cause shows; they are named at the top.
  private boolean kin(Cause other, String cause) {
    return other.refines().contains(cause)
        || catalogue.cause(cause).filter(one -> one.refines().contains(other.key())).isPresent();
  }

  private Map<String, Double> weights(String cause) {
    Map<String, Double> weights = new TreeMap<>();
    witnesses.signsOf(cause).forEach((sign, words) -> weights.put(sign, words.decibans()));
    weights.values().removeIf(weight -> weight <= 0);
    return weights;
  }

  private String telling(String cause, String other) {
    Map<String, Double> theirs = new TreeMap<>();
    witnesses.signsOf(other).forEach((sign, words) -> theirs.put(sign, words.decibans()));
    String signs =
        weights(cause).entrySet().stream()
            .filter(sign -> sign.getValue() - theirs.getOrDefault(sign.getKey(), 0.0) >= 3)
            .sorted(
                Comparator.comparingDouble(
                        (Map.Entry<String, Double> sign) ->
                            theirs.getOrDefault(sign.getKey(), 0.0) - sign.getValue())
                    .thenComparing(Map.Entry::getKey))
            .limit(TELLING)
            .map(sign -> plain.sign(sign.getKey()))
            .collect(Collectors.joining(", "));
    return signs.isEmpty() ? "no sign; what was measured or done" : signs;
  }
}
