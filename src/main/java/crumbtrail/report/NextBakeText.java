package crumbtrail.report;

import crumbtrail.report.Report.DayStep;
import crumbtrail.report.Report.NextBakeSheet;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.apache.commons.text.WordUtils;

/** The next bake as plain text for a terminal or for paper. */
public final class NextBakeText {
  private static final int USUAL_WIDTH = 80;
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\u2028\\u2029&&[^\n]]");

  private final StringBuilder text = new StringBuilder();
  private final int width;

  private NextBakeText(int width) {
    this.width = width;
  }

  /** The next bake as lines of at most 80 characters. */
  public static String of(NextBakeSheet next) {
    return of(next, USUAL_WIDTH);
  }

  /**
   * The next bake as lines.
   *
   * @param width characters of a line at most; 60 or more
   */
  public static String of(NextBakeSheet next, int width) {
    NextBakeText page = new NextBakeText(width);
    page.write(next);
    return CONTROL.matcher(page.text).replaceAll(" ");
  }

  private void write(NextBakeSheet next) {
    String title = next.title().replaceAll("\\s+", " ");
    paragraph("", title);
    line("=".repeat(Math.min(width, title.length())));
    section("What to change");
    if (next.changes().isEmpty()) {
      paragraph("", "Nothing on this sheet can be mended without harm elsewhere.");
    }
    int number = 1;
    for (Report.CorrectionLine one : next.changes()) {
      paragraph(number++ + ". ", AdviceText.correction(one));
    }
    next.conflicts().forEach(said -> paragraph("! ", said));
    next.notes().forEach(said -> paragraph("- ", said));
    if (!next.lines().isEmpty()) {
      section("Formula");
      AdviceText.formula(next).forEach(this::line);
      line(String.format(Locale.ROOT, "Dough %.0f g", next.doughGrams()));
    }
    section("The day");
    next.steps().forEach(this::step);
    if (!next.untold().isEmpty()) {
      paragraph(
          "! ",
          "The sheet does not say how long this takes; the clock counts with what is usual: "
              + untold(next.untold())
              + ".");
    }
    section("What may still go wrong");
    if (next.risks().isEmpty()) {
      paragraph("", "No cause stands out.");
    }
    next.risks()
        .forEach(risk -> line("- " + risk.name() + " " + AdviceText.percent(risk.probability())));
  }

  private static String untold(List<String> untold) {
    return String.join(", ", untold.stream().distinct().toList());
  }

  private void step(DayStep step) {
    String length = AdviceText.length(step);
    String head =
        String.format(
            Locale.ROOT,
            "%-8s %s%s%s",
            AdviceText.when(step),
            step.name(),
            length.isEmpty() ? "" : ", " + length,
            step.how().isEmpty() ? "" : ": " + step.how());
    line(WordUtils.wrap(head.strip(), width, "\n         ", true));
    if (!step.look().isEmpty()) {
      paragraph("         ", step.look());
    }
  }

  private void section(String heading) {
    line("");
    line(heading);
    line("-".repeat(heading.length()));
  }

  private void paragraph(String lead, String words) {
    String indent = " ".repeat(lead.length());
    line(lead + WordUtils.wrap(words.strip(), width - lead.length(), "\n" + indent, true));
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }
}
