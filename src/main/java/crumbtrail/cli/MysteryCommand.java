package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.knowledge.MysteryKind.Level;
import crumbtrail.lessons.Mysteries;
import java.util.concurrent.Callable;
import java.util.concurrent.ThreadLocalRandom;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A loaf that failed for a hidden reason. */
@Command(
    name = "mystery",
    mixinStandardHelpOptions = true,
    description =
        "A loaf failed for a hidden reason. Ask what you want to know, name the cause, and see how a"
            + " good diagnostician would have narrowed it down.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail mystery",
      "  crumbtrail mystery --level hard --seed 7"
    })
final class MysteryCommand implements Callable<Integer> {
  private static final int SEEDS = 10_000;

  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "the same number brings the same loaf again (any loaf unless told)")
  Long seed;

  @Option(
      names = "--level",
      paramLabel = "easy|middling|hard",
      defaultValue = "EASY",
      description = "how hard the loaf is (easy unless told)")
  Level level;

  @Override
  public Integer call() throws Exception {
    long drawn = seed == null ? ThreadLocalRandom.current().nextLong(1, SEEDS) : seed;
    Mysteries mysteries = new Mysteries(Rules.ruleBase(rules, spec.commandLine().getErr()));
    new MysteryDialogue(
            mysteries,
            mysteries.loaf(drawn, level),
            Input.answers(),
            CrumbtrailCommand.screen(spec))
        .run();
    return 0;
  }
}
