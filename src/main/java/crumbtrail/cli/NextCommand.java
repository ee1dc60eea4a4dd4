package crumbtrail.cli;

import crumbtrail.advice.Instead;
import crumbtrail.advice.Wish;
import crumbtrail.cli.CrumbtrailCommand.RulesOption;
import crumbtrail.cli.screen.Screen;
import crumbtrail.quantity.Dimension;
import crumbtrail.quantity.Quantities;
import crumbtrail.quantity.Quantity;
import crumbtrail.report.NextBakeText;
import crumbtrail.report.Report.NextBakeSheet;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Vessels;
import crumbtrail.web.HtmlReport;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the sheet of the next bake. */
@Command(
    name = "next",
    mixinStandardHelpOptions = true,
    description =
        "The next bake after one that failed: the corrected formula, the day by the clock, and what"
            + " to look for. With --format sheet it is a bake sheet that this program reads again.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail next cases/over-proofed-tin-loaf.json --start 9:00",
      "  crumbtrail next sheet.json --one --format sheet > next.json",
      "  crumbtrail next sheet.json --format html > next.html",
      "  crumbtrail next sheet.json --overnight 12h --ready 18:00",
      "  crumbtrail next sheet.json --bulk 60min --proof 60min --dough 1700g",
      "  crumbtrail next sheet.json --loaves 2 --tin 23x13x7cm",
      "  crumbtrail next sheet.json --instead milk=water --instead butter=margarine"
    })
final class NextCommand implements Callable<Integer> {
  enum Format {
    TEXT,
    SHEET,
    HTML
  }

  @Spec CommandSpec spec;

  @Mixin RulesOption rules;

  @Parameters(paramLabel = "SHEET.json", description = "the bake sheet; - for standard input")
  String sheet;

  @Option(
      names = "--format",
      paramLabel = "text|sheet|html",
      defaultValue = "TEXT",
      description =
          "text to read, a bake sheet as JSON, or a page that prints on one leaf (text unless told)")
  Format format;

  @Option(names = "--one", description = "only the change of the greatest gain, for learning")
  boolean one;

  @Option(names = "--start", paramLabel = "9:00", description = "when you begin to mix")
  String start;

  @Option(
      names = "--ready",
      paramLabel = "18:00",
      description = "when the loaf is to leave the oven; the mixing begins as long before")
  String ready;

  @Option(
      names = "--bulk",
      paramLabel = "60min",
      description = "time of the first rise; yeast or starter is fitted to it")
  String bulk;

  @Option(names = "--proof", paramLabel = "60min", description = "time of the final proof")
  String proof;

  @Option(
      names = "--overnight",
      paramLabel = "12h",
      description = "time in the refrigerator after half an hour in the warm")
  String overnight;

  @Option(names = "--dough", paramLabel = "900g", description = "weight of dough to scale to")
  String dough;

  @Option(
      names = "--loaves",
      paramLabel = "2",
      description = "how many loaves, each as heavy as before or as the tin wants it")
  Integer loaves;

  @Option(
      names = "--tin",
      paramLabel = "\"23x13x7cm\"",
      description = "tin to scale the dough to, by its lengths or by what it holds (1.8l)")
  String tin;

  @Option(
      names = "--instead",
      paramLabel = "\"milk=water\"",
      description =
          "what to take in place of what you lack; water, fat, sugar, salt and the protein of the"
              + " flour are kept. May be given several times")
  List<String> instead = List.of();

  @Override
  public Integer call() throws Exception {
    Wish wish = wish();
    BakeSheet bake = Input.sheet(sheet);
    Screen screen = CrumbtrailCommand.screen(spec);
    NextBakeSheet next = Rules.postMortem(rules, screen.err()).next(bake, wish);
    switch (format) {
      case TEXT -> screen.print(NextBakeText.of(next, screen.width()));
      case SHEET -> screen.out().println(next.sheet().toPrettyString());
      case HTML -> screen.out().print(HtmlReport.next(next));
    }
    screen.out().flush();
    return 0;
  }

  private Wish wish() {
    OptionalDouble hours = amount("--overnight", overnight, Dimension.TIME, "12h");
    return new Wish(
        clock("--start", start),
        clock("--ready", ready),
        amount("--bulk", bulk, Dimension.TIME, "60min"),
        amount("--proof", proof, Dimension.TIME, "60min"),
        hours.isPresent() ? OptionalDouble.of(hours.getAsDouble() / 60) : hours,
        amount("--dough", dough, Dimension.MASS, "900g"),
        loaves(),
        tin(),
        instead(),
        one);
  }

  private OptionalInt loaves() {
    if (loaves == null) {
      return OptionalInt.empty();
    }
    if (loaves < 1 || loaves > Wish.MOST_LOAVES) {
      throw new BadInput(
          List.of("--loaves: " + loaves + " cannot be used. Write 1 to " + Wish.MOST_LOAVES + "."));
    }
    return OptionalInt.of(loaves);
  }

  private Optional<String> tin() {
    if (tin != null && !Vessels.readable(tin)) {
      throw new BadInput(List.of("--tin: \"" + tin + "\" cannot be used. " + Vessels.WOULD_DO));
    }
    return Optional.ofNullable(tin);
  }

  private List<Instead> instead() {
    return Instead.read(String.join(";", instead))
        .orElseThrow(
            () ->
                new BadInput(
                    List.of(
                        "--instead: \""
                            + String.join(";", instead)
                            + "\" cannot be used. Write it as "
                            + Instead.WOULD_DO
                            + ".")));
  }

  private static Optional<LocalTime> clock(String option, String text) {
    if (text == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LocalTime.parse(text.strip().length() == 4 ? "0" + text.strip() : text.strip()));
    } catch (DateTimeParseException fault) {
      throw new BadInput(
          List.of(option + ": \"" + text + "\" is no time of day. Write it as 9:00 or 18:30."));
    }
  }

  private static OptionalDouble amount(
      String option, String text, Dimension dimension, String would) {
    if (text == null) {
      return OptionalDouble.empty();
    }
    Optional<Quantity> read = Quantities.read(text, dimension).filter(one -> one.value() > 0);
    if (read.isEmpty()) {
      throw new BadInput(
          List.of(option + ": \"" + text + "\" cannot be used. Write it as " + would + "."));
    }
    return OptionalDouble.of(read.get().value());
  }
}
