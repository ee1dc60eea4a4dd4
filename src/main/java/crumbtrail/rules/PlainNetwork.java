package crumbtrail.rules;

import static org.drools.model.DSL.globalOf;
import static org.drools.model.DSL.not;
import static org.drools.model.DSL.on;
import static org.drools.model.PatternDSL.alphaIndexedBy;
import static org.drools.model.PatternDSL.pattern;

import crumbtrail.rules.PlainPattern.Being;
import crumbtrail.rules.PlainPattern.Limited;
import crumbtrail.rules.PlainPattern.Named;
import crumbtrail.rules.PlainPattern.Tagged;
import crumbtrail.workup.Reading;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.model.DSL;
import org.drools.model.Drools;
import org.drools.model.Global;
import org.drools.model.Index.ConstraintType;
import org.drools.model.PatternDSL;
import org.drools.model.PatternDSL.PatternDef;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.functions.Function1;
import org.drools.model.functions.HashedExpression;
import org.drools.model.functions.Predicate1;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.rule.Match;
import org.kie.api.runtime.rule.RuleContext;

/**
 * Builds the engine's network straight from plain rules. A compiler would write a class for each
 * test and each consequence, thousands in all, which have to be loaded at every start; here all
 * tests of a sort are one class.
 */
final class PlainNetwork {
  private static final String PACKAGE = RuleCompiler.PACKAGE;

  /** Numbers by which the engine tells what it may look facts up by. */
  private static final int BY_NAME = 0;

  private static final int BY_VALUE = 1;

  private final Global<Testimony> testimony = globalOf(Testimony.class, PACKAGE, "testimony");

  // Most patterns stand in several rules.
  private final Map<String, PlainPattern> known = new HashMap<>();

  private PlainNetwork() {}

  /** The rules, ready to be run. */
  static KieBase of(List<PlainRule> rules) {
    PlainNetwork network = new PlainNetwork();
    ModelImpl model = new ModelImpl();
    model.addGlobal(network.testimony);
    for (PlainRule rule : rules) {
      model.addRule(network.rule(rule));
    }
    return KieBaseBuilder.createKieBaseFromModel(model);
  }

  private Rule rule(PlainRule rule) {
    List<RuleItemBuilder<?>> items = new ArrayList<>();
    for (String text : rule.patterns()) {
      PlainPattern plain = known.computeIfAbsent(text, one -> PlainPattern.of(one).orElseThrow());
      PatternDef<?> pattern = typed(plain.fact(), plain, text);
      items.add(plain.absent() ? not(pattern) : pattern);
    }
    List<PlainRule.Word> words = rule.words();
    items.add(
        on(testimony)
            .execute(
                (Drools drools, Testimony hearer) -> {
                  Match match = ((RuleContext) drools).getMatch();
                  for (PlainRule.Word word : words) {
                    hearer.hear(match, word.cause(), word.decibans());
                  }
                }));
    return PatternDSL.rule(PACKAGE, rule.name())
        .metadata("strand", rule.preface().strand())
        .metadata("lesson", rule.preface().lesson())
        .metadata("source", rule.preface().source())
        .build(items.toArray(RuleItemBuilder[]::new));
  }

  private <F> PatternDef<F> typed(Class<F> fact, PlainPattern plain, String text) {
    PatternDef<F> pattern = pattern(DSL.declarationOf(fact));
    for (PlainPattern.Test test : plain.tests()) {
      // Equal texts are equal tests, and the engine asks them once for all rules.
      String id = fact.getSimpleName() + " " + test;
      if (test instanceof Named named) {
        named(pattern, id, named);
      } else if (test instanceof Limited limited) {
        double limit = limited.limit();
        pattern.expr(
            id,
            limited(id, limited.sign(), limit),
            alphaIndexedBy(Double.class, order(limited.sign()), BY_VALUE, value(), limit));
      } else if (test instanceof Tagged tagged) {
        List<String> tags = tagged.tags();
        pattern.expr(
            id,
            new Asked<>(
                id, one -> Collections.disjoint(tags, ((Bread) one).tags()) == tagged.without()));
      } else if (test instanceof Being being) {
        pattern.expr(id, new Asked<>(id, being.holds()::test));
      } else {
        throw new IllegalStateException("no such test: " + text);
      }
    }
    return pattern;
  }

  private static <F> void named(PatternDef<F> pattern, String id, Named named) {
    if (named.names().size() == 1) {
      String name = named.names().get(0);
      pattern.expr(
          id,
          new Asked<>(id, one -> name.equals(Facts.name(one))),
          alphaIndexedBy(String.class, ConstraintType.EQUAL, BY_NAME, Facts::name, name));
    } else {
      Set<String> names = Set.copyOf(named.names());
      pattern.expr(id, new Asked<>(id, one -> names.contains(Facts.name(one))));
    }
  }

  private static <F> Predicate1<F> limited(String id, String sign, double limit) {
    return switch (sign) {
      case "<" -> new Asked<>(id, one -> ((Reading) one).value() < limit);
      case "<=" -> new Asked<>(id, one -> ((Reading) one).value() <= limit);
      case ">" -> new Asked<>(id, one -> ((Reading) one).value() > limit);
      default -> new Asked<>(id, one -> ((Reading) one).value() >= limit);
    };
  }

  private static ConstraintType order(String sign) {
    return switch (sign) {
      case "<" -> ConstraintType.LESS_THAN;
      case "<=" -> ConstraintType.LESS_OR_EQUAL;
      case ">" -> ConstraintType.GREATER_THAN;
      default -> ConstraintType.GREATER_OR_EQUAL;
    };
  }

  private static <F> Function1<F, Double> value() {
    return one -> ((Reading) one).value();
  }

  /**
   * A test with a text by which the engine knows it again; it would have to read the code of the
   * test else.
   */
  private record Asked<F>(String text, Predicate1<F> holds)
      implements Predicate1<F>, HashedExpression {
    @Override
    public boolean test(F fact) throws Exception {
      return holds.test(fact);
    }

    @Override
    public String getExpressionHash() {
      return text;
    }
  }
}
