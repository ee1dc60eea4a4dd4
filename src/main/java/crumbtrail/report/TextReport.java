package crumbtrail.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.text.WordUtils;
import org.jspecify.annotations.Nullable;

/** A report as plain text for a terminal or for paper. */
public final class TextReport {
  /** Columns of a page where nobody says otherwise. */
  public static final int USUAL_WIDTH = 80;

  private static final int CAUSES_SHOWN = 5;
  private static final int SIGNS_SHOWN = 6;
  private static final int OTHERS_SHOWN = 4;
  private static final int STEPS_SHOWN = 3;
  private static final int BAR = 20;
  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_READING = 34;
  private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\u2028\\u2029&&[^\n]]");

  private final StringBuilder text = new StringBuilder();
  private final int width;

  private TextReport(int width) {
    this.width = width;
  }

  /** The report as lines of at most 80 characters, ending in a line break. */
  public static String of(Report report) {
    return of(report, USUAL_WIDTH);
  }

  /**
   * The report as lines, ending in a line break.
   *
   * @param width characters of a line at most; 60 or more
   */
  public static String of(Report report, int width) {
    TextReport page = new TextReport(width);
    page.head(report);
    page.causes(report);
    page.kitchen(report.kitchen());
    page.ahead(report.foresight());
    page.open(report);
    page.advice(report);
    page.outlook(report);
    page.formula(report.formula());
    page.workup(report.workup());
    page.courses(report.courses(), report.workup());
    page.list("Assumed", report.assumptions());
    page.list("Take care", report.cautions());
    // A sheet may come from anybody: what would steer the terminal is shown as a blank.
    return CONTROL.matcher(page.text).replaceAll(" ");
  }

  private void head(Report report) {
    String title = report.title().isBlank() ? "Bake" : report.title();
    paragraph("", title.replaceAll("\\s+", " ") + " (" + report.style() + ")");
    int widest = text.toString().lines().mapToInt(String::length).max().orElse(0);
    line("=".repeat(widest));
  }

  private void causes(Report report) {
    if (report.causes().isEmpty()) {
      paragraph(
          "",
          report.foresight() == null
              ? "Nothing on this sheet points to a cause. Say what came out, in your own words, or"
                  + " what was done and for how long."
              : "Nothing on this sheet points to a risk.");
      return;
    }
    section(report.foresight() == null ? "Likely causes" : "What may go wrong");
    int shown = Math.min(CAUSES_SHOWN, report.causes().size());
    for (int rank = 0; rank < shown; rank++) {
      cause(rank + 1, report.causes().get(rank));
    }
    if (report.causes().size() > shown) {
      line("");
      paragraph(
          "Less likely: ",
          String.join(
              ", ",
              report.causes().subList(shown, Math.min(shown + 5, report.causes().size())).stream()
                  .map(cause -> cause.name() + " " + percent(cause.probability()))
                  .toList()));
    }
  }

  private void kitchen(@Nullable List<Report.KitchenShift> shifts) {
    if (shifts == null) {
      return;
    }
    section("By the odds of this kitchen");
    if (shifts.isEmpty()) {
      paragraph("", "What your log has taught moves nothing here.");
    } else {
      paragraph("", "What your log has taught moved the ranking:");
      shifts.forEach(shift -> paragraph("- ", KitchenShifts.words(shift)));
    }
  }

  private void cause(int rank, Report.RankedCause cause) {
    line("");
    String name = rank + ". " + cause.name();
    // On a narrow page the bar gives way before the name does.
    int room = Math.min(LONGEST_NAME, width - BAR / (width < USUAL_WIDTH ? 2 : 1) - 10);
    line(
        String.format(
            Locale.ROOT,
            "%-" + room + "s %s %5s",
            cut(name, room),
            bar(cause.probability()),
            percent(cause.probability())));
    paragraph("   ", cause.story() == null ? cause.what() : cause.what() + " " + cause.story());
    evidence("   for      ", cause.evidence().stream().filter(e -> e.decibans() > 0).toList());
    evidence("   against  ", cause.evidence().stream().filter(e -> e.decibans() < 0).toList());
    paragraph("   change   ", cause.change());
  }

  private void evidence(String lead, List<Report.EvidenceLine> lines) {
    for (Report.EvidenceLine line : lines) {
      paragraph(lead, String.join("; ", line.readings()) + ": " + line.rule());
    }
  }

  private void open(Report report) {
    if (report.together().size() > 1) {
      section("Together");
      paragraph(
          "",
          "The fewest plausible causes that account for all you saw: "
              + String.join(", ", names(report, report.together()))
              + " ("
              + percent(report.togetherProbability())
              + " that all were at work).");
      report.actingTogether().forEach(joint -> paragraph("- ", acting(report, joint)));
    }
    list("Nothing here accounts for", report.unexplained());
    list("Not understood", report.notUnderstood());
  }

  private static String acting(Report report, Report.Joint joint) {
    return "These act together: "
        + String.join(" and ", names(report, joint.causes()))
        + ". "
        + joint.why();
  }

  private void ahead(Report.ForesightTable ahead) {
    if (ahead == null) {
      return;
    }
    list(
        "What would be seen",
        ahead.predicted().stream()
            .limit(SIGNS_SHOWN)
            .map(sign -> sign.name() + ", " + percent(sign.probability()))
            .toList());
    list(
        "Missing from the recipe",
        ahead.missing().stream().map(gap -> gap.what() + ". " + gap.why()).toList());
    list("Levels", ahead.levels().stream().map(Report.LevelLine::words).toList());
  }

  private void advice(Report report) {
    String heading = report.foresight() == null ? "What to change" : "Change before you start";
    list(heading, AdviceText.recommended(report));
    list("One step, and look again", AdviceText.steps(report, STEPS_SHOWN));
    list("Also tried", AdviceText.others(report, OTHERS_SHOWN));
    if (report.foresight() != null) {
      list(
          "What to watch",
          report.foresight().watch().stream()
              .filter(step -> !step.look().isEmpty())
              .map(step -> step.name() + ": " + step.look())
              .toList());
    }
  }

  private void outlook(Report report) {
    Report.Firmness firmness = report.firmness();
    if (firmness != null && !report.causes().isEmpty()) {
      section("How firm this is");
      paragraph("", OutlookWords.firmness(report));
      firmness.matters().forEach(matter -> paragraph("- ", matter.advice()));
    }
    if (!report.askNext().isEmpty()) {
      section("Look at this next");
      for (Report.NextQuestion question : report.askNext()) {
        paragraph("- ", question.question() + " " + question.how() + " (" + question.cost() + ")");
      }
    }
  }

  private void formula(Report.FormulaTable formula) {
    if (formula == null) {
      return;
    }
    section("Formula");
    int name = Math.min(LONGEST_NAME, width - 24);
    for (Report.FormulaRow row : formula.lines()) {
      String amount =
          row.grams() == null
              ? ""
              : String.format(
                  Locale.ROOT,
                  "%8.1f g %7s",
                  row.grams(),
                  row.percent() == null
                      ? ""
                      : String.format(Locale.ROOT, "%.1f %%", row.percent()));
      line(
          String.format(
              Locale.ROOT,
              "%-" + name + "s %s",
              cut(row.written() + (row.part().isEmpty() ? "" : " [" + row.part() + "]"), name),
              amount));
    }
    paragraph(
        "",
        String.format(
            Locale.ROOT,
            "Flour %.0f g, dough %.0f g; hydration %.1f %% poured, %.1f %% with all water",
            formula.flourGrams(),
            formula.doughGrams(),
            formula.hydration().liquid(),
            formula.hydration().allWater()));
    formula.contradictions().forEach(said -> paragraph("! ", said));
  }

  private void workup(Map<String, Report.WorkedReading> workup) {
    List<ReadingTable.Group> groups = ReadingTable.of(workup);
    if (groups.isEmpty()) {
      return;
    }
    section("Worked out");
    String heading = "usual for this bread";
    for (ReadingTable.Group group : groups) {
      line(row(capital(group.name()), "", "", heading));
      heading = "";
      for (ReadingTable.Row row : group.rows()) {
        boolean outside = row.lies().equals("below") || row.lies().equals("above");
        String usual = outside ? row.usual() + ", " + row.lies() : row.usual();
        line(cut(row("  " + row.name(), row.value(), known(row), usual), width));
      }
    }
  }

  // A narrow page has no room to tell how a number is known; the JSON report does.
  private String row(String name, String value, String known, String usual) {
    if (width < USUAL_WIDTH - 4) {
      return String.format(Locale.ROOT, "%-21s %-16s %s", name, value, usual);
    }
    int room = Math.min(LONGEST_READING, 21 + Math.max(0, width - USUAL_WIDTH));
    return String.format(Locale.ROOT, "%-" + room + "s %-16s %-12s %s", name, value, known, usual);
  }

  private void courses(Courses courses, Map<String, Report.WorkedReading> workup) {
    if (courses != null && courses.rise() != null) {
      picture(
          "Rise, times the size after mixing",
          TextPlots.rise(courses.rise(), width),
          CourseWords.of(courses.rise()),
          CourseWords.warnings(courses.rise(), workup));
    }
    if (courses != null && courses.bake() != null && !courses.bake().points().isEmpty()) {
      picture(
          "Core through the bake",
          TextPlots.bake(courses.bake(), width),
          CourseWords.of(courses.bake()),
          CourseWords.warnings(courses.bake(), workup));
    }
  }

  private void picture(
      String heading, List<String> plot, List<String> words, List<String> warnings) {
    if (!plot.isEmpty()) {
      section(heading);
      plot.forEach(this::line);
      paragraph("", String.join(" ", words));
      warnings.forEach(warning -> paragraph("! ", warning));
    }
  }

  private void list(String heading, List<String> items) {
    if (!items.isEmpty()) {
      section(heading);
      items.forEach(item -> paragraph("- ", item));
    }
  }

  private static List<String> names(Report report, List<String> keys) {
    List<String> names = new ArrayList<>();
    for (String key : keys) {
      report.causes().stream()
          .filter(cause -> cause.key().equals(key))
          .findFirst()
          .ifPresent(cause -> names.add(cause.name()));
    }
    return names;
  }

  private void section(String heading) {
    line("");
    line(heading);
    line("-".repeat(heading.length()));
  }

  private void paragraph(String lead, String words) {
    String indent = " ".repeat(lead.length());
    String wrapped = WordUtils.wrap(words.strip(), width - lead.length(), "\n" + indent, true);
    line(lead + wrapped);
  }

  private void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  // The words of the page are too long for a column; most numbers are worked out.
  private static String known(ReadingTable.Row row) {
    return row.known().startsWith("beyond") ? "beyond range" : row.known();
  }

  private static String capital(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private String bar(double probability) {
    int length = width < USUAL_WIDTH ? BAR / 2 : BAR;
    int filled = (int) Math.round(probability * length);
    return "#".repeat(filled) + ".".repeat(length - filled);
  }

  // Never more than is known at either end.
  private static String percent(double probability) {
    if (probability > 0.99) {
      return ">99 %";
    }
    return probability < 0.01 ? "<1 %" : Math.round(probability * 100) + " %";
  }

  private static String cut(String words, int width) {
    return words.length() <= width ? words : words.substring(0, width - 1) + "…";
  }
}
