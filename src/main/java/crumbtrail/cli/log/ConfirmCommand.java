package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Verdict;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CauseNames;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.Rules;
import crumbtrail.knowledge.Catalogue;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Notes which causes were at work in a bake. */
@Command(
    name = "confirm",
    mixinStandardHelpOptions = true,
    description =
        "Note what you found out about a bake: which causes were at work, and which were not.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log confirm 12 over-proofed",
      "  crumbtrail log confirm 12 salt-too-low --not over-proofed",
      "  crumbtrail log confirm 12 --forget salt-too-low"
    })
final class ConfirmCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Parameters(index = "0", paramLabel = "ID", description = "number of the bake")
  long id;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "CAUSE",
      description = "causes that were at work, by key or name")
  List<String> causes = List.of();

  @Option(names = "--not", paramLabel = "CAUSE", description = "a cause that was not at work")
  List<String> not = List.of();

  @Option(
      names = "--forget",
      paramLabel = "CAUSE",
      description = "a cause of which nothing is known after all")
  List<String> forgotten = List.of();

  @Override
  public Integer call() throws Exception {
    if (causes.isEmpty() && not.isEmpty() && forgotten.isEmpty()) {
      throw new BadInput(
          List.of("Name at least one cause, or one with --not. All causes: crumbtrail card"));
    }
    Catalogue catalogue = Rules.book(rules.folder).catalogue();
    Map<String, Verdict> said = new LinkedHashMap<>();
    not.forEach(one -> said.put(key(catalogue, one), Verdict.RULED_OUT));
    for (String one : causes) {
      if (said.put(key(catalogue, one), Verdict.CONFIRMED) == Verdict.RULED_OUT) {
        throw new BadInput(List.of("\"" + one + "\" cannot be both at work and not at work."));
      }
    }
    List<String> gone = forgotten.stream().map(one -> key(catalogue, one)).toList();
    try (LogStore store = kept.open()) {
      Bake bake =
          store
              .of(Scope.ONLY_BAKER)
              .change(
                  id,
                  before -> {
                    Map<String, Verdict> verdicts = new LinkedHashMap<>(before.verdicts());
                    verdicts.keySet().removeAll(gone);
                    verdicts.putAll(said);
                    return before.withVerdicts(verdicts);
                  })
              .orElseThrow(() -> Kept.missing(id));
      spec.commandLine().getOut().println(summary(bake));
    }
    return 0;
  }

  private static String key(Catalogue catalogue, String typed) {
    return CauseNames.named(catalogue, typed).key();
  }

  private static String summary(Bake bake) {
    return "%d  %s  confirmed: %s; ruled out: %s"
        .formatted(
            bake.id(),
            bake.label(),
            listed(bake, Verdict.CONFIRMED),
            listed(bake, Verdict.RULED_OUT));
  }

  private static String listed(Bake bake, Verdict verdict) {
    return bake.judged(verdict).isEmpty() ? "none" : String.join(", ", bake.judged(verdict));
  }
}
