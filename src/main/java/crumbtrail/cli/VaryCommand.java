package crumbtrail.cli;

import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.TraceCommand.Format;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.lessons.LessonJson;
import crumbtrail.lessons.School;
import crumbtrail.lessons.Turn;
import crumbtrail.lessons.VariationText;
import crumbtrail.lessons.Vary;
import crumbtrail.rules.RuleBook;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Problem;
import crumbtrail.web.HtmlLessons;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Turns one quantity of a bake, or two, and shows what moves. */
@Command(
    name = "vary",
    mixinStandardHelpOptions = true,
    description =
        "Turn one quantity of a bake, or two, and see what moves: how likely each cause is, what is"
            + " worked out, what would be seen. The signs on the sheet are put aside.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail vary demo --salt 0..3%%",
      "  crumbtrail vary sheet.json --proof-time 30..120min --proof-temperature 70..90F",
      "  crumbtrail vary sheet.json --turn water=55..80%% --format json"
    })
final class VaryCommand implements Callable<Integer> {
  private static final String NAME = "vary";
  private static final Set<String> KNOWING = Set.of(NAME, "completion", "man");

  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(paramLabel = "SHEET.json", description = CrumbtrailCommand.SHEET)
  String sheet;

  @Option(
      names = "--turn",
      paramLabel = "WHAT=RANGE",
      description = "a quantity and its range, like salt=0..3%%; at most two")
  Map<String, String> turned = new LinkedHashMap<>();

  @Option(
      names = "--steps",
      paramLabel = "N",
      description = "settings along the range, 2 to 101 (round ones, about twenty, unless told)")
  Integer steps;

  @Option(
      names = "--format",
      paramLabel = "text|json|html",
      defaultValue = "TEXT",
      description = "form of the answer (text unless told)")
  Format format;

  /**
   * Gives the command an option for each quantity that can be turned. The catalogue is read only
   * where the command line asks for this command or for what is written of all of them.
   */
  static void offerKnobs(CommandLine line, String... arguments) {
    CommandLine vary = line.getSubcommands().get(NAME);
    // A word of another command may be spelt like this one.
    if (vary == null || Arrays.stream(arguments).noneMatch(KNOWING::contains)) {
      return;
    }
    CommandSpec spec = vary.getCommandSpec();
    for (KnobKind knob : RuleBook.bundled().catalogue().knowledge().knobs()) {
      spec.addOption(
          OptionSpec.builder("--" + knob.key())
              .paramLabel("RANGE")
              .type(String.class)
              .description(knob.name() + ", within " + Turn.example(knob).replace("%", "%%"))
              .build());
    }
  }

  @Override
  public Integer call() throws Exception {
    Map<String, String> wanted = wanted();
    if (wanted.isEmpty() || wanted.size() > 2) {
      throw new BadInput(
          List.of(
              "Turn one quantity or two, for example: --salt 0..3%. What can be turned stands in:"
                  + " crumbtrail vary --help"));
    }
    if (steps != null && (steps < 2 || steps > Vary.MOST_STEPS)) {
      throw new BadInput(List.of("--steps: say a number from 2 to " + Vary.MOST_STEPS + "."));
    }
    BakeSheet bake = Input.sheet(sheet);
    PrintWriter out = spec.commandLine().getOut();
    School school = School.of(Rules.ruleBase(rules, spec.commandLine().getErr()));
    List<Turn> turns = turns(school.vary(), wanted);
    out.print(answer(school, bake, turns));
    out.flush();
    return 0;
  }

  private String answer(School school, BakeSheet bake, List<Turn> turns) {
    int settings = steps == null ? Vary.AS_USUAL : steps;
    if (turns.size() == 1) {
      var variation = school.vary().along(bake, turns.get(0), settings);
      return switch (format) {
        case TEXT -> VariationText.of(variation, CrumbtrailCommand.screen(spec).width());
        case JSON -> LessonJson.pretty(variation);
        case HTML -> HtmlLessons.page(variation, school.drawings().of(variation));
      };
    }
    var board = school.vary().over(bake, turns.get(0), turns.get(1), settings);
    return switch (format) {
      case TEXT -> VariationText.of(board, CrumbtrailCommand.screen(spec).width());
      case JSON -> LessonJson.pretty(board);
      case HTML -> HtmlLessons.page(board);
    };
  }

  // In the order of the command line, the options of their own before those of --turn.
  private Map<String, String> wanted() {
    Map<String, String> wanted = new LinkedHashMap<>();
    for (OptionSpec option : spec.commandLine().getParseResult().matchedOptions()) {
      if (option.userObject() == null && option.getValue() instanceof String range) {
        wanted.put(option.longestName().substring(2), range);
      }
    }
    wanted.putAll(turned);
    return wanted;
  }

  private static List<Turn> turns(Vary vary, Map<String, String> wanted) {
    List<Turn> turns = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    wanted.forEach(
        (key, range) -> {
          var knob = vary.knob(key.strip());
          if (knob.isEmpty()) {
            String all = vary.knobs().stream().map(KnobKind::key).collect(Collectors.joining(", "));
            faults.add("\"" + key + "\" cannot be turned. Turn one of: " + all + ".");
          } else {
            Turn.Reading reading = Turn.read(knob.get(), range);
            reading.turn().ifPresent(turns::add);
            for (Problem problem : reading.problems()) {
              faults.add("--" + key + ": " + problem.what() + ": " + problem.remedy() + ".");
            }
          }
        });
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    return turns;
  }
}
