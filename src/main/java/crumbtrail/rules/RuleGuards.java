package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Caution;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.knowledge.Source;
import crumbtrail.picture.LoafPictures;
import crumbtrail.rules.WrittenRule.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Holds a rule base to being complete: a cause that nothing speaks against only ever rises, and a
 * sign that no rule hears misleads whoever reports it. Such a rule base runs all the same, so these
 * are no faults that keep it from being compiled.
 */
final class RuleGuards {
  private final RuleBook book;
  private final List<Fault> found = new ArrayList<>();

  RuleGuards(RuleBook book) {
    this.book = book;
  }

  /** What is missing. */
  List<Fault> faults() {
    found.clear();
    Set<String> accused = causes(true);
    Set<String> defended = causes(false);
    for (Cause cause : book.catalogue().knowledge().causes()) {
      told(cause);
      if (!accused.contains(cause.key())) {
        lacks("causes", cause.key(), "no rule speaks for", "Write one that says: Suspect \"…\"");
      }
      if (!defended.contains(cause.key())) {
        lacks("causes", cause.key(), "no rule speaks against", "Write one that says: Doubt \"…\"");
      }
      kinds(cause);
    }
    Set<String> signs = looked(Kind.SIGN);
    for (SignKind sign : book.catalogue().knowledge().signs()) {
      if (!signs.contains(sign.key())) {
        lacks("signs", sign.key(), "no rule hears", "Write one with: The baker saw \"…\"");
      }
      blank("signs", sign.key(), "meaning", sign.meaning());
      blank("signs", sign.key(), "look", sign.look());
    }
    Set<String> circumstances = looked(Kind.CIRCUMSTANCE);
    circumstances.addAll(cautioned("circumstance "));
    for (CircumstanceKind circumstance : book.catalogue().knowledge().circumstances()) {
      if (!circumstances.contains(circumstance.key()) && !circumstance.aside()) {
        lacks(
            "circumstances",
            circumstance.key(),
            "no rule and no caution hears",
            "Write a rule with: It happened that \"…\"; or take it out");
      }
    }
    found.addAll(LoafPictures.faults(book.catalogue().knowledge(), book.places()));
    return List.copyOf(found);
  }

  /** What a rule writer may want to look at. */
  List<Fault> hints() {
    found.clear();
    readings();
    sources();
    return List.copyOf(found);
  }

  private void told(Cause cause) {
    blank("causes", cause.key(), "what", cause.what());
    blank("causes", cause.key(), "mechanism", cause.mechanism());
    blank("causes", cause.key(), "tell", cause.tell());
    blank("causes", cause.key(), "change", cause.change());
  }

  private void blank(String catalogue, String key, String field, String words) {
    if (words == null || words.isBlank()) {
      lacks(catalogue, key, "there is no \"" + field + "\" of", "Write it");
    }
  }

  // Three kinds of witness can speak for a cause: what was measured or reckoned, what happened,
  // what was seen. Some causes leave no number behind; then the cause says why.
  private void kinds(Cause cause) {
    List<WrittenRule> rules = speaking(cause.key(), true);
    if (rules.isEmpty()) {
      return;
    }
    boolean silent = cause.noReading() != null && !cause.noReading().isBlank();
    boolean read = rules.stream().anyMatch(rule -> rule.looksAt(Kind.READING));
    if (!read && !silent) {
      lacks(
          "causes",
          cause.key(),
          "no reading speaks for",
          "Write a rule with: The … is …; or say under no reading: why there is none");
    } else if (read && silent) {
      lacks(
          "causes",
          cause.key(),
          "a reading speaks, though no reading: says that none can, for",
          "Take out no reading:, or the rule");
    }
    if (rules.stream().noneMatch(rule -> rule.looksAt(Kind.CIRCUMSTANCE))) {
      lacks(
          "causes",
          cause.key(),
          "no circumstance speaks for",
          "Write a rule with: It happened that \"…\"");
    }
    if (rules.stream().noneMatch(rule -> rule.looksAt(Kind.SIGN))) {
      lacks("causes", cause.key(), "no sign speaks for", "Write a rule with: The baker saw \"…\"");
    }
  }

  private void readings() {
    Set<String> read = looked(Kind.READING);
    read.addAll(looked(Kind.NO_READING));
    for (ReadingKind reading : book.catalogue().knowledge().readings()) {
      if (!read.contains(reading.name())) {
        lacks("readings.yaml", reading.name(), "no rule looks at", "It is only shown");
      }
    }
  }

  private void sources() {
    Set<String> cited = new TreeSet<>();
    book.rules().forEach(rule -> cited.addAll(ids(rule.source())));
    var knowledge = book.catalogue().knowledge();
    knowledge.causes().forEach(cause -> cause.sources().forEach(one -> cited.addAll(ids(one))));
    knowledge.cautions().forEach(caution -> cited.addAll(ids(caution.source())));
    knowledge.allergens().forEach(allergen -> cited.addAll(ids(allergen.source())));
    knowledge.readings().stream()
        .filter(reading -> reading.usual() != null)
        .forEach(reading -> cited.addAll(ids(reading.usual().source())));
    knowledge.styles().stream()
        .flatMap(style -> style.ranges().values().stream())
        .forEach(range -> cited.addAll(ids(range.source())));
    for (Source source : knowledge.sources()) {
      if (!cited.contains(source.id())) {
        lacks("sources", source.id(), "nothing here cites", "It may serve the pages on science");
      }
    }
  }

  private static List<String> ids(String citation) {
    return citation == null ? List.of() : Stream.of(citation.split(";")).map(String::trim).toList();
  }

  private List<WrittenRule> speaking(String cause, boolean speaksFor) {
    return book.rules().stream()
        .filter(
            rule ->
                rule.verdicts().stream()
                    .anyMatch(word -> word.cause().equals(cause) && word.speaksFor() == speaksFor))
        .toList();
  }

  private Set<String> causes(boolean speaksFor) {
    return book.rules().stream()
        .flatMap(rule -> rule.verdicts().stream())
        .filter(verdict -> verdict.speaksFor() == speaksFor)
        .map(WrittenRule.Verdict::cause)
        .collect(Collectors.toSet());
  }

  private Set<String> looked(Kind kind) {
    return book.rules().stream()
        .flatMap(rule -> rule.conditions().stream())
        .filter(condition -> condition.kind() == kind)
        .flatMap(condition -> condition.keys().stream())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private Set<String> cautioned(String kind) {
    return book.catalogue().knowledge().cautions().stream()
        .map(Caution::when)
        .flatMap(List::stream)
        .filter(when -> when.startsWith(kind))
        .map(when -> when.substring(kind.length()))
        .collect(Collectors.toSet());
  }

  private void lacks(String catalogue, String key, String what, String remedy) {
    found.add(
        book.places()
            .fault(catalogue, key, "", what + " \"" + Catalogue.spoken(key) + "\"", remedy));
  }
}
