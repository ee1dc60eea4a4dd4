package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.Nearest;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.Source;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Checks every rule against the sentence file and the catalogues, and says for each fault what
 * would be right.
 */
final class RuleCheck {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

  private final Catalogue catalogue;
  private final Sentences sentences;
  private final Set<String> tags;
  private final Set<String> sources;
  private final Map<String, RuleText> names = new HashMap<>();
  private final List<Fault> faults = new ArrayList<>();

  RuleCheck(Catalogue catalogue, Sentences sentences) {
    this.catalogue = catalogue;
    this.sentences = sentences;
    this.tags =
        catalogue.knowledge().styles().stream()
            .flatMap(style -> style.tags().stream())
            .collect(Collectors.toSet());
    this.sources =
        catalogue.knowledge().sources().stream().map(Source::id).collect(Collectors.toSet());
  }

  /** All faults of these rules. */
  List<Fault> faults(List<RuleText> rules) {
    rules.forEach(this::check);
    return faults;
  }

  private void check(RuleText rule) {
    RuleText twin = names.putIfAbsent(rule.name(), rule);
    if (twin != null) {
      fault(
          rule,
          rule.line(),
          "a rule of this name stands in " + twin.file() + ":" + twin.line(),
          "Give each rule a name of its own");
    }
    for (String key : List.of("strand", "source", "lesson")) {
      if (rule.metadata().getOrDefault(key, "").isBlank()) {
        fault(rule, rule.line(), "the rule has no @" + key, "Add @" + key + "(\"…\")");
      }
    }
    Stream.of(rule.metadata().getOrDefault("source", Source.COMMON_PRACTICE).split(";"))
        .map(String::trim)
        .filter(id -> !id.equals(Source.COMMON_PRACTICE) && !sources.contains(id))
        .forEach(id -> unknown(rule, rule.line(), "source", id, sources.stream()));
    if (rule.conditions().isEmpty() || rule.consequences().isEmpty()) {
      fault(rule, rule.line(), "the rule says nothing", "Write sentences after when and then");
    }
    rule.conditions().forEach(sentence -> check(rule, sentence, true));
    rule.consequences().forEach(sentence -> check(rule, sentence, false));
  }

  private void check(RuleText rule, RuleText.Sentence sentence, boolean condition) {
    Optional<Map<String, String>> slots =
        condition ? sentences.condition(sentence.words()) : sentences.consequence(sentence.words());
    if (slots.isEmpty()) {
      fault(
          rule,
          sentence.line(),
          "\"" + sentence.words() + "\" is no sentence that rules know",
          "Nearest: " + sentences.nearest(sentence.words(), condition));
      return;
    }
    slots.get().forEach((slot, said) -> slot(rule, sentence.line(), slot, said));
    measures(rule, sentence.line(), slots.get());
  }

  private void slot(RuleText rule, int line, String slot, String said) {
    String key = Catalogue.keyOf(said);
    switch (slot.replaceAll("\\d", "")) {
      case "reading" -> {
        if (catalogue.reading(said).isEmpty()) {
          unknown(
              rule,
              line,
              "reading",
              said,
              catalogue.knowledge().readings().stream().map(ReadingKind::name));
        }
      }
      case "sign" -> {
        if (catalogue.sign(key).isEmpty()) {
          unknown(
              rule,
              line,
              "sign",
              said,
              spoken(catalogue.knowledge().signs().stream().map(s -> s.key())));
        }
      }
      case "circumstance" -> {
        if (catalogue.circumstance(key).isEmpty()) {
          unknown(
              rule,
              line,
              "circumstance",
              said,
              spoken(catalogue.knowledge().circumstances().stream().map(c -> c.key())));
        }
      }
      case "cause" -> {
        if (catalogue.cause(key).filter(cause -> cause.key().equals(key)).isEmpty()) {
          unknown(
              rule,
              line,
              "cause",
              said,
              spoken(catalogue.knowledge().causes().stream().map(c -> c.key())));
        }
      }
      case "tag" -> {
        if (!tags.contains(said)) {
          unknown(rule, line, "kind of bread", said, tags.stream());
        }
      }
      default -> {}
    }
  }

  private void measures(RuleText rule, int line, Map<String, String> slots) {
    for (String slot : List.of("unit", "unit2")) {
      String unit = slots.get(slot);
      if (unit != null) {
        catalogue
            .reading(slots.get("reading"))
            .filter(reading -> !reading.unit().equals(unit))
            .ifPresent(
                reading ->
                    fault(
                        rule,
                        line,
                        "the " + reading.name() + " is not told in \"" + unit + "\"",
                        "Write it in " + reading.unit()));
      }
    }
    for (String slot : List.of("limit", "least", "most")) {
      String number = slots.getOrDefault(slot, "0");
      if (!NUMBER.matcher(number).matches()) {
        fault(rule, line, "\"" + number + "\" is no number", "Write a number like 12 or -1.5");
        return;
      }
    }
    String least = slots.get("least");
    String most = slots.get("most");
    if (least != null && most != null && Double.parseDouble(least) > Double.parseDouble(most)) {
      fault(
          rule,
          line,
          "nothing lies between when it runs from " + least + " to " + most,
          "Write the smaller number first");
    }
  }

  private static Stream<String> spoken(Stream<String> keys) {
    return keys.map(Catalogue::spoken);
  }

  private void unknown(RuleText rule, int line, String kind, String said, Stream<String> known) {
    fault(
        rule,
        line,
        "\"" + said + "\" is no " + kind,
        "Nearest: \"" + Nearest.of(said, known.collect(Collectors.toSet())) + "\"");
  }

  private void fault(RuleText rule, int line, String what, String remedy) {
    faults.add(new Fault(rule.file(), line, what, remedy));
  }
}
