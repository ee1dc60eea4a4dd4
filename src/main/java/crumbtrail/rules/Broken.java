package crumbtrail.rules;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kie.api.KieBase;
import org.kie.api.runtime.rule.ConsequenceException;

/**
 * Rules that broke off while they ran. Such a rule is taken out of the network for good, so that
 * all others go on. Safe for use by many threads.
 */
final class Broken {
  private static final Pattern NAMED = Pattern.compile("Rule \"([^\"]+)\"");

  private final Map<String, String> why = new ConcurrentSkipListMap<>();

  /**
   * Takes the rule out that a fault names.
   *
   * @return its name; empty if the fault is not that of a rule of this base
   */
  Optional<String> takeOut(KieBase base, RuntimeException fault) {
    Optional<String> name = rule(fault);
    synchronized (this) {
      // Another thread may have met the same rule at the same time.
      if (name.isEmpty() || why.containsKey(name.get())) {
        return name;
      }
      if (base.getRule(RuleCompiler.PACKAGE, name.get()) == null) {
        return Optional.empty();
      }
      base.removeRule(RuleCompiler.PACKAGE, name.get());
      why.put(name.get(), reason(fault));
    }
    return name;
  }

  /** The rules that were taken out, by name, with what went wrong. */
  Map<String, String> why() {
    return Map.copyOf(why);
  }

  private static Optional<String> rule(Throwable fault) {
    for (Throwable one = fault; one != null; one = one.getCause()) {
      if (one instanceof ConsequenceException consequence) {
        return Optional.of(consequence.getRule().getName());
      }
      Matcher named = NAMED.matcher(String.valueOf(one.getMessage()));
      if (named.find()) {
        return Optional.of(named.group(1));
      }
    }
    return Optional.empty();
  }

  private static String reason(Throwable fault) {
    Throwable first = fault;
    while (first.getCause() != null) {
      first = first.getCause();
    }
    return first.getClass().getSimpleName();
  }
}
