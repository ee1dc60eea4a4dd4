package crumbtrail.report;

import crumbtrail.findings.Finding;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.quantity.Amounts;
import crumbtrail.rules.CircumstanceFact;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Tells in two or three sentences why a cause is suspected: the baker's own numbers and words, what
 * they mean, and what speaks against it.
 */
final class Story {
  /** How much of each is told; a list is no story. */
  private static final int NUMBERS = 2;

  private static final int SIGNS = 3;
  private static final int EVENTS = 2;

  /** Evidence weaker than a faint word is not worth a sentence, decibans. */
  private static final double WORTH = 2.5;

  private final Catalogue catalogue;

  Story(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /** The story of one cause. */
  String of(Finding finding) {
    List<Evidence> pro =
        finding.evidence().stream().filter(one -> one.decibans() > 0).limit(4).toList();
    if (pro.isEmpty()) {
      return "";
    }
    List<Object> facts = pro.stream().flatMap(one -> one.facts().stream()).distinct().toList();
    List<String> sentences = new ArrayList<>();
    sentences.add(sentence(joined(numbers(facts, NUMBERS), "; ")));
    List<String> clauses = new ArrayList<>();
    seen(facts).ifPresent(clauses::add);
    events(facts).ifPresent(clauses::add);
    sentences.add(sentence(joined(clauses, ", and ")));
    sentences.add(sentence(pro.get(0).lesson()));
    against(finding, facts).ifPresent(sentences::add);
    sentences.removeIf(String::isEmpty);
    return String.join(" ", sentences);
  }

  // The strongest against stands last. What was just told in favour is not turned round in the same
  // breath; the list of evidence shows both sides.
  private Optional<String> against(Finding finding, List<Object> told) {
    List<Evidence> con =
        finding.evidence().stream()
            .filter(one -> one.decibans() <= -WORTH && !told.containsAll(one.facts()))
            .toList();
    if (con.isEmpty()) {
      return Optional.empty();
    }
    List<Object> facts = con.get(con.size() - 1).facts();
    List<String> clauses = new ArrayList<>(numbers(facts, 1));
    told("you saw ", signs(facts, true, this::name), SIGNS, ", ").ifPresent(clauses::add);
    told("you did not see ", signs(facts, false, this::name), SIGNS, ", ").ifPresent(clauses::add);
    events(facts).ifPresent(clauses::add);
    return Optional.of(
        "Against it: "
            + (clauses.isEmpty()
                ? sentence(con.get(con.size() - 1).lesson())
                : joined(clauses, "; and ") + "."));
  }

  private List<String> numbers(List<Object> facts, int most) {
    return readings(facts).limit(most).map(this::number).toList();
  }

  private static Stream<Reading> readings(List<Object> facts) {
    return facts.stream().filter(Reading.class::isInstance).map(Reading.class::cast);
  }

  private String number(Reading reading) {
    Optional<ReadingKind> kind = catalogue.reading(reading.name());
    String unit = kind.map(ReadingKind::unit).orElse("");
    String value = Amounts.quantity(rounded(reading.value(), kind), unit);
    String told =
        kind.map(ReadingKind::say)
            .orElse("your " + reading.name() + " is {value}")
            .replace("{value}", value);
    if (reading.known() == Known.ASSUMED) {
      told += " (in part assumed)";
    }
    if (reading.usual().isEmpty()) {
      return told;
    }
    return told
        + (reading.withinUsual()
            ? ", as is usual for this bread"
            : ", where "
                + Amounts.range(reading.usual().get().low(), reading.usual().get().high(), unit)
                + " is usual");
  }

  private static double rounded(double value, Optional<ReadingKind> kind) {
    return ReportWriter.rounded(value, kind.map(ReadingKind::decimals).orElse(1));
  }

  private Optional<String> seen(List<Object> facts) {
    return told("you saw ", signs(facts, true, this::own), SIGNS, " and ");
  }

  private static List<String> signs(
      List<Object> facts, boolean seen, Function<SignFact, String> words) {
    return facts.stream()
        .filter(SignFact.class::isInstance)
        .map(SignFact.class::cast)
        .filter(sign -> sign.seen() == seen)
        .map(words)
        .distinct()
        .toList();
  }

  // In the baker's own words, unless these are a key. What speaks against a cause is told by name,
  // for the same words may hold another sign that speaks for it.
  private String own(SignFact sign) {
    String words = sign.words().strip();
    return words.equals(Catalogue.keyOf(sign.name())) || words.isEmpty()
        ? name(sign)
        : "\"" + words + "\"";
  }

  private String name(SignFact sign) {
    return catalogue.sign(Catalogue.keyOf(sign.name())).map(SignKind::name).orElse(sign.name());
  }

  private Optional<String> events(List<Object> facts) {
    List<String> events =
        facts.stream()
            .filter(CircumstanceFact.class::isInstance)
            .map(fact -> ((CircumstanceFact) fact).name())
            .map(
                name ->
                    catalogue
                        .circumstance(Catalogue.keyOf(name))
                        .map(CircumstanceKind::name)
                        .orElse(name))
            .distinct()
            .toList();
    return told("the sheet tells of: ", events, EVENTS, ", ");
  }

  private static Optional<String> told(String lead, List<String> all, int most, String last) {
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(lead + joined(all.subList(0, Math.min(most, all.size())), last));
  }

  private static String joined(List<String> all, String last) {
    if (all.size() < 2) {
      return String.join("", all);
    }
    return String.join(", ", all.subList(0, all.size() - 1)) + last + all.get(all.size() - 1);
  }

  private static String sentence(String words) {
    String text = words.strip();
    if (text.isEmpty()) {
      return "";
    }
    String begun = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    return begun.endsWith(".") || begun.endsWith("!") ? begun : begun + ".";
  }
}
