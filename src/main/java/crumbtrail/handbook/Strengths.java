package crumbtrail.handbook;

import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.SignFact;
import crumbtrail.rules.WrittenRule;
import crumbtrail.rules.WrittenRule.Condition;
import crumbtrail.rules.WrittenRule.Kind;
import crumbtrail.rules.WrittenRule.Verdict;
import crumbtrail.sheet.BakeSheet.Degree;
import java.util.List;
import java.util.Optional;

/**
 * How strongly a rule speaks, as the program hears it: the word of the rule, and for a rule on one
 * sign alone what published tables make of that word. Pages show words, never the number.
 */
final class Strengths {
  private static final double UNDOUBTED = 25;
  private static final double SURE = 15;
  private static final double FIRM = 8;
  private static final double PLAIN = 4.5;
  private static final double FAINT = 2;
  private static final double CLEAR = -15;

  private final Weights weights;

  Strengths(Catalogue catalogue) {
    this.weights = Weights.of(catalogue);
  }

  /**
   * Weight in decibans, below nought if it speaks against.
   *
   * @param sign the sign that was seen, where the rule rests on one of several
   */
  double decibans(WrittenRule rule, Verdict verdict, Optional<String> sign) {
    double word = verdict.strength().decibans();
    double signed = verdict.speaksFor() ? word : -word;
    if (sign.isEmpty() || !alone(rule)) {
      return signed;
    }
    SignFact seen = new SignFact(Catalogue.spoken(sign.get()), true, Degree.PLAIN, "");
    return weights
        .weigh(
            new Evidence(
                verdict.cause(),
                rule.name(),
                rule.strand(),
                signed,
                rule.lesson(),
                rule.source(),
                List.of(seen)))
        .decibans();
  }

  /** How many independent published tables name the cause for the sign. */
  int tables(String sign, String cause) {
    return weights.lineages(sign, cause).size();
  }

  /** Whether the rule rests on one sign that was seen, and at most on the kind of bread beside. */
  static boolean alone(WrittenRule rule) {
    long signs = rule.conditions().stream().filter(one -> one.kind() == Kind.SIGN).count();
    return signs == 1
        && rule.conditions().stream()
            .map(Condition::kind)
            .allMatch(kind -> kind == Kind.SIGN || kind == Kind.BREAD);
  }

  /** The word for a weight. The one place that chooses it. */
  static String word(double decibans) {
    double size = Math.abs(decibans);
    if (decibans <= CLEAR) {
      return "rules it out";
    }
    if (size >= SURE) {
      return size >= UNDOUBTED ? "beyond doubt" : "surely";
    }
    if (size >= FIRM) {
      return "firmly";
    }
    if (size >= PLAIN) {
      return "plainly";
    }
    return size >= FAINT ? "faintly" : "hardly";
  }
}
