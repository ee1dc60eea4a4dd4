package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Traced;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.Input;
import crumbtrail.cli.Rules;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.report.Report;
import java.io.PrintWriter;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts bakes into the log. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    description =
        "Put bakes into the log: the sheet as it is written, and what a trace of it says. The number"
            + " of each is printed; it is on disk when it is.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log add demo",
      "  crumbtrail log add tuesday.json --when 2026-03-03 --outcome failed",
      "  crumbtrail log add tuesday.json --note \"new flour\" --photo crumb.jpg"
    })
final class AddCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin RulesOption rules;

  @Parameters(
      paramLabel = "SHEET.json",
      arity = "1..*",
      description = "bake sheets; - for standard input, demo for one that comes with the program")
  List<String> sheets;

  @Option(
      names = "--when",
      paramLabel = "2026-03-01",
      description = "when it was baked, with its time as 2026-03-01T14:30 (now unless told)")
  String when;

  @Option(
      names = "--label",
      paramLabel = "TEXT",
      description = "your name for this bake (the title of the sheet unless told)")
  String label;

  @Option(
      names = "--recipe",
      paramLabel = "NAME",
      description =
          "what was baked: bakes of one recipe are compared (the title of the sheet unless told)")
  String recipe;

  @Option(names = "--note", paramLabel = "TEXT", description = "your notes")
  String note = "";

  @Option(names = "--outcome", paramLabel = "good|fair|failed", description = "how it came out")
  Outcome outcome;

  @Option(
      names = "--photo",
      paramLabel = "FILE",
      description = "a photo, JPEG or PNG; place, time and camera are taken out. May be repeated")
  List<String> photos = List.of();

  @Option(names = "--no-trace", description = "do not trace it; log retrace does so later")
  boolean untraced;

  @Override
  public Integer call() throws Exception {
    if (!photos.isEmpty() && sheets.size() > 1) {
      throw new BadInput(List.of("--photo: say to which of the sheets it belongs: add one alone."));
    }
    LocalDateTime baked =
        when == null ? LocalDateTime.now(ZoneId.systemDefault()) : Kept.when("--when", when, 12);
    // All is read before anything is kept, so that a fault in the last sheet leaves nothing behind.
    List<Input.Written> written = new ArrayList<>();
    for (String sheet : sheets) {
      written.add(Input.written(sheet));
    }
    List<Photo> pictures = PhotoFiles.read(photos);
    PostMortem postMortem = untraced ? null : Rules.postMortem(rules, spec.commandLine().getErr());
    PrintWriter out = spec.commandLine().getOut();
    try (LogStore store = kept.open()) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      for (Input.Written one : written) {
        Report report = postMortem == null ? null : postMortem.trace(one.sheet());
        Bake bake = bake(one, baked, report);
        long id = log.add(bake);
        pictures.forEach(picture -> log.addPhoto(id, picture));
        out.println(id + "  " + bake.label() + first(report));
        out.flush();
      }
    }
    return 0;
  }

  private Bake bake(Input.Written written, LocalDateTime baked, Report report) {
    String title = written.sheet().title();
    String named = label != null ? label : title.isEmpty() ? written.sheet().style() : title;
    return Bake.of(baked, named, recipe == null ? title : recipe, written.text())
        .withNote(NoteCommand.checked(note))
        .withOutcome(outcome)
        .withTraced(report == null ? null : new Traced(JsonReport.line(report), report.ruleBase()));
  }

  private static String first(Report report) {
    if (report == null || report.causes().isEmpty()) {
      return "";
    }
    Report.RankedCause cause = report.causes().get(0);
    return "  (%s, %d %%)".formatted(cause.key(), Math.round(100 * cause.probability()));
  }
}
