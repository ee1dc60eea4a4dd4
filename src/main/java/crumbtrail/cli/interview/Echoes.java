package crumbtrail.cli.interview;

import crumbtrail.quantity.Amounts;
import crumbtrail.quantity.Quantity;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.SheetEcho;
import crumbtrail.report.SheetEcho.Echo;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says back to the baker what was understood of an answer. */
final class Echoes {
  private static final int LONGEST_NAME = 44;

  private final SheetEcho echo;
  private final Talk talk;

  Echoes(SheetEcho echo, Talk talk) {
    this.echo = echo;
    this.talk = talk;
  }

  /** A recipe in baker's percent, as far as it is understood. */
  void recipe(List<String> lines) {
    RecipeLayout layout = echo.recipe(String.join("\n", lines));
    int name = Math.min(LONGEST_NAME, talk.width() - 24);
    for (RecipeLayout.RecipeLine line : layout.lines()) {
      String shown = line.ingredient().isEmpty() ? line.written() : line.ingredient();
      String part = line.part().isEmpty() ? "" : " [" + line.part() + "]";
      talk.row(
          String.format(
              Locale.ROOT,
              "  %-" + name + "s %9s %9s",
              cut(shown + part, name),
              line.grams() == null ? "" : Amounts.number(line.grams()) + " g",
              line.percent() == null ? "" : String.format(Locale.ROOT, "%.1f %%", line.percent())));
    }
    if (layout.formula() != null) {
      talk.say("  ", whole(layout));
    }
    layout.assumptions().forEach(said -> talk.say("  taken for granted: ", said));
    layout
        .notUnderstood()
        .forEach(
            open -> talk.say("  not sure of: ", "\"" + open.written() + "\", " + open.uncertain()));
  }

  private static String whole(RecipeLayout layout) {
    return Stream.of(
                Optional.of("flour " + Amounts.number(layout.formula().flourGrams()) + " g, 100 %"),
                Optional.of(
                    "hydration " + Amounts.number(layout.formula().hydration().liquid()) + " %"),
                percent("salt", layout.salt()),
                percent("yeast", layout.yeast()))
            .flatMap(Optional::stream)
            .collect(Collectors.joining("; "))
        + ".";
  }

  private static Optional<String> percent(String name, Double percent) {
    return Optional.ofNullable(percent).map(level -> name + " " + Amounts.number(level) + " %");
  }

  /** Stages as they were read. */
  void stages(Question question, BakeSheet sheet) {
    List<String> stages = new ArrayList<>();
    switch (question.key()) {
      case "process.bulk" ->
          sheet.process().bulk().forEach(one -> stages.add(stage(one.time(), one.temperature())));
      case "process.proof" ->
          sheet.process().proof().forEach(one -> stages.add(stage(one.time(), one.temperature())));
      default ->
          sheet
              .process()
              .baking()
              .stages()
              .forEach(one -> stages.add(stage(one.time(), one.oven())));
    }
    talk.say("  heard: ", String.join("; then ", stages));
  }

  private static String stage(Optional<Quantity> time, Optional<Quantity> temperature) {
    return Stream.of(time, temperature)
        .flatMap(Optional::stream)
        .map(Quantity::written)
        .collect(Collectors.joining(" at "));
  }

  /** What was heard in free words. */
  void words(Question question, List<String> lines) {
    for (String line : lines) {
      Draft.alone(question, List.of(line))
          .map(sheet -> question.key().equals("seen") ? sheet : unseen(sheet))
          .map(echo::words)
          .ifPresent(heard -> heard(line, heard));
    }
  }

  // Without the words by which a draft stands in for what is not answered yet.
  private static BakeSheet unseen(BakeSheet sheet) {
    return new BakeSheet(
        "", "", List.of(), List.of(), sheet.process(), List.of(), sheet.notSeen(), List.of());
  }

  private void heard(String line, Echo heard) {
    if (heard.notUnderstood().contains(line) || heard.heard().isEmpty()) {
      talk.say("  kept as you said it, though I cannot place it: ", line);
    } else {
      talk.say("  heard: ", String.join("; ", heard.heard()));
    }
  }

  private static String cut(String words, int width) {
    return words.length() <= width ? words : words.substring(0, width - 1) + "…";
  }
}
