package crumbtrail.rules;

import crumbtrail.rules.PlainPattern.Being;
import crumbtrail.rules.PlainPattern.Limited;
import crumbtrail.rules.PlainPattern.Named;
import crumbtrail.rules.PlainPattern.Tagged;
import crumbtrail.workup.Reading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.kie.api.KieBase;

/**
 * Writes the rules and the facts of all cases in the language of CLIPS, another general-purpose
 * rule engine, and what our own engine makes of them: how often each rule fired on each case, and
 * how long a run took. {@code src/test/clips/compare.sh} runs both and compares them.
 *
 * <p>Arguments: the folder to write to, how many rules.
 */
public final class YardstickExport {
  /** Runs before the clock starts, and while it goes, over all cases. */
  private static final int WARM = 300;

  private static final int TIMED = 100;

  /** What a reading can be; CLIPS is told it, for it is worked out before the rules. */
  private static final List<String> BEING =
      List.of(
          "withinUsual()",
          "belowUsual()",
          "aboveUsual()",
          "farBelowUsual()",
          "farAboveUsual()",
          "belowAllCustom()",
          "aboveAllCustom()");

  private YardstickExport() {}

  /** Writes all files. */
  @SuppressWarnings("SystemOut") // speaks to whoever compares
  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    List<PlainRule> rules = SomeRules.plain(Integer.parseInt(arguments[1]));
    Map<String, List<Object>> facts = SomeRules.facts();
    Files.writeString(folder.resolve("rules.clp"), rules(rules));
    Files.writeString(folder.resolve("cases.clp"), cases(facts));
    KieBase base = PlainNetwork.of(rules);
    Files.write(folder.resolve("fired-by-ours.txt"), fired(base, facts));
    System.out.printf(
        Locale.ROOT, "Drools: %.1f microseconds a case%n", microseconds(base, facts.values()));
  }

  private static double microseconds(KieBase base, Collection<List<Object>> facts) {
    for (int round = 0; round < WARM; round++) {
      facts.forEach(one -> run(base, one));
    }
    long start = System.nanoTime();
    for (int round = 0; round < TIMED; round++) {
      facts.forEach(one -> run(base, one));
    }
    return (System.nanoTime() - start) / 1e3 / TIMED / facts.size();
  }

  private static final Map<String, Testimony.Preface> PREFACES = new ConcurrentHashMap<>();

  private static Map<String, List<Evidence>> run(KieBase base, List<Object> facts) {
    try (RuleRun run = new RuleRun(base, PREFACES, new Broken())) {
      return run.evidence(facts);
    }
  }

  // A rule that speaks of several causes is heard once for each.
  private static List<String> fired(KieBase base, Map<String, List<Object>> facts) {
    List<String> lines = new ArrayList<>();
    facts.forEach(
        (name, told) -> {
          Map<String, Long> heard =
              run(base, told).values().stream()
                  .flatMap(List::stream)
                  .collect(
                      Collectors.groupingBy(Evidence::rule, TreeMap::new, Collectors.counting()));
          heard.forEach((rule, times) -> lines.add(name + "\t" + rule + "\t" + times));
        });
    return lines.stream().sorted().toList();
  }

  private static String rules(List<PlainRule> rules) {
    StringBuilder text = new StringBuilder();
    text.append("(deftemplate reading (slot name) (slot value)");
    BEING.forEach(one -> text.append(" (slot ").append(bare(one)).append(')'));
    text.append(")\n(deftemplate sign (slot name) (slot seen) (slot marked))\n")
        .append("(deftemplate circumstance (slot name))\n(deftemplate bread (multislot tags))\n")
        .append("(defglobal ?*heard* = 0 ?*told* = FALSE ?*case* = \"\")\n")
        .append("(deffunction hear (?rule ?decibans) (bind ?*heard* (+ ?*heard* ?decibans))\n")
        .append("  (if ?*told* then (printout ?*told* ?*case* tab ?rule crlf)))\n");
    int number = 0;
    for (PlainRule rule : rules) {
      text.append("(defrule r").append(number++);
      for (int at = 0; at < rule.patterns().size(); at++) {
        PlainPattern plain = PlainPattern.of(rule.patterns().get(at)).orElseThrow();
        text.append("\n  ").append(pattern(plain, "?v" + at));
      }
      text.append("\n  =>");
      for (PlainRule.Word word : rule.words()) {
        text.append("\n  (hear ").append(quoted(rule.name())).append(' ').append(word.decibans());
        text.append(')');
      }
      text.append(")\n");
    }
    return text.toString();
  }

  private static String pattern(PlainPattern plain, String value) {
    StringBuilder slots = new StringBuilder();
    List<String> limits = new ArrayList<>();
    for (PlainPattern.Test test : plain.tests()) {
      if (test instanceof Named named) {
        slots.append(" (name ").append(joined(named.names(), "|")).append(')');
      } else if (test instanceof Limited limited) {
        limits.add("&:(" + limited.sign() + " " + value + " " + limited.limit() + ")");
      } else if (test instanceof Tagged tagged) {
        String has =
            tagged.tags().stream()
                .map(tag -> "(member$ " + quoted(tag) + " $?tags)")
                .collect(Collectors.joining(" ", "(or ", " FALSE)"));
        slots.append(" (tags $?tags&:").append(tagged.without() ? "(not " + has + ")" : has);
        slots.append(')');
      } else if (test instanceof Being being) {
        slots.append(" (").append(bare(being.word())).append(' ');
        slots.append(being.word().startsWith("!") ? "no" : "yes").append(')');
      }
    }
    if (!limits.isEmpty()) {
      slots.append(" (value ").append(value).append(String.join("", limits)).append(')');
    }
    String found = "(" + template(plain.fact()) + slots + ")";
    return plain.absent() ? "(not " + found + ")" : found;
  }

  private static String template(Class<?> fact) {
    if (fact == Reading.class) {
      return "reading";
    }
    if (fact == SignFact.class) {
      return "sign";
    }
    return fact == CircumstanceFact.class ? "circumstance" : "bread";
  }

  private static String cases(Map<String, List<Object>> facts) {
    StringBuilder text = new StringBuilder();
    List<String> names = List.copyOf(facts.keySet());
    for (int at = 0; at < names.size(); at++) {
      text.append("(deffunction case-").append(at).append(" ()\n  (bind ?*case* ");
      text.append(quoted(names.get(at))).append(")\n  (assert");
      for (Object fact : Set.copyOf(facts.get(names.get(at)))) {
        text.append("\n    ").append(fact(fact));
      }
      text.append("))\n");
    }
    text.append("(deffunction all-cases ()\n");
    for (int at = 0; at < names.size(); at++) {
      text.append("  (reset) (case-").append(at).append(") (run)\n");
    }
    return text.append(")\n(defglobal ?*cases* = " + names.size() + ")\n").toString();
  }

  private static String fact(Object fact) {
    if (fact instanceof Reading reading) {
      StringBuilder slots = new StringBuilder("(reading (name " + quoted(reading.name()) + ")");
      slots.append(" (value ").append(reading.value()).append(')');
      for (String one : BEING) {
        boolean is =
            PlainPattern.of("Reading(" + one + ")").orElseThrow().tests().stream()
                .allMatch(test -> ((Being) test).holds().test(reading));
        slots.append(" (").append(bare(one)).append(is ? " yes)" : " no)");
      }
      return slots.append(')').toString();
    }
    if (fact instanceof SignFact sign) {
      return "(sign (name %s) (seen %s) (marked %s))"
          .formatted(quoted(sign.name()), yes(sign.seen()), yes(sign.marked()));
    }
    if (fact instanceof CircumstanceFact one) {
      return "(circumstance (name %s))".formatted(quoted(one.name()));
    }
    return "(bread (tags %s))".formatted(joined(((Bread) fact).tags(), " "));
  }

  private static String yes(boolean is) {
    return is ? "yes" : "no";
  }

  private static String bare(String word) {
    return word.replace("()", "").replace("!", "");
  }

  private static String joined(List<String> texts, String between) {
    return texts.stream().map(YardstickExport::quoted).collect(Collectors.joining(between));
  }

  private static String quoted(String text) {
    return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
