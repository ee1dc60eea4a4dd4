package crumbtrail.cli.log;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Digests;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Traced;
import crumbtrail.bakelog.Verdict;
import crumbtrail.bakelog.exchange.BakeJson;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.Lower;
import java.io.PrintWriter;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows one bake of the log. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    description = "Show one bake: what was noted, its sheet, or the report that was made of it.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log show 12",
      "  crumbtrail log show 12 --format report",
      "  crumbtrail log show 12 --format sheet | crumbtrail trace -"
    })
final class ShowCommand implements Callable<Integer> {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int CAUSES = 3;

  enum Format {
    TEXT,
    JSON,
    SHEET,
    REPORT
  }

  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(paramLabel = "ID", description = "number of the bake")
  long id;

  @Option(
      names = "--format",
      paramLabel = "FORM",
      defaultValue = "TEXT",
      description =
          "text; json for everything; sheet for the sheet exactly as it was written; report for the"
              + " report as JSON (text unless told)")
  Format format;

  @Override
  public Integer call() throws Exception {
    PrintWriter out = spec.commandLine().getOut();
    try (LogStore store = kept.open()) {
      Bake bake = store.of(Scope.ONLY_BAKER).find(id).orElseThrow(() -> Kept.missing(id));
      switch (format) {
        case TEXT -> out.print(text(bake));
        case JSON -> out.println(JSON.readTree(BakeJson.line(bake)).toPrettyString());
        case SHEET -> out.print(bake.sheet());
        case REPORT -> out.println(JSON.readTree(report(bake)).toPrettyString());
      }
      out.flush();
    }
    return 0;
  }

  private static String report(Bake bake) {
    Traced traced = bake.traced();
    if (traced == null) {
      throw new BadInput(
          List.of(
              "The bake " + bake.id() + " has not been traced. Trace it: crumbtrail log retrace"));
    }
    return traced.report();
  }

  private static String text(Bake bake) {
    StringBuilder text = new StringBuilder();
    row(text, "bake", bake.id() + "  " + bake.label());
    row(text, "recipe", bake.recipe());
    row(text, "baked", bake.baked().toString().replace('T', ' '));
    row(text, "outcome", bake.outcome() == null ? "" : Lower.of(bake.outcome()));
    row(text, "confirmed", said(bake.judged(Verdict.CONFIRMED)));
    row(text, "ruled out", said(bake.judged(Verdict.RULED_OUT)));
    Traced traced = bake.traced();
    if (traced != null) {
      Digests.ofReport(traced.report()).ranking().stream()
          .limit(CAUSES)
          .forEach(
              one ->
                  row(
                      text,
                      "likely",
                      "%s, %d %%".formatted(one.cause(), Math.round(100 * one.probability()))));
      row(text, "rules", traced.ruleBase());
    }
    for (PhotoNote photo : bake.photos()) {
      row(
          text,
          "photo",
          "%d  %d x %d, %d kB"
              .formatted(photo.id(), photo.width(), photo.height(), photo.bytes() / 1000));
    }
    if (!bake.note().isEmpty()) {
      text.append('\n').append(bake.note()).append('\n');
    }
    return text.toString();
  }

  private static String said(Set<String> causes) {
    return String.join(", ", causes);
  }

  private static void row(StringBuilder text, String name, String value) {
    if (!value.isEmpty()) {
      text.append("%-10s %s%n".formatted(name, value));
    }
  }
}
