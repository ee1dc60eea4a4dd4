package crumbtrail.study;

import crumbtrail.study.OwnRecord.Band;
import crumbtrail.study.OwnRecord.Share;
import java.util.Locale;

/** Writes how well causes were foretold for a terminal or a plain file. */
public final class OwnRecordText {
  private OwnRecordText() {}

  /**
   * The record as lines.
   *
   * @param width characters of a line at most; 60 or more
   */
  public static String of(OwnRecord record, int width) {
    TextPage page = new TextPage(width);
    if (record.bakes() == 0) {
      page.paragraph(
          "",
          "There is nothing to count yet. It takes bakes that were traced and of which a cause was"
              + " confirmed: crumbtrail log confirm ID CAUSE");
      return page.toString();
    }
    page.section(
        "How well the causes of %d judged %s were foretold"
            .formatted(record.bakes(), record.bakes() == 1 ? "bake" : "bakes"));
    page.line(row("first cause was right", record.first(), record.bakes(), record.firstShare()));
    page.line(row("one of the first three", record.three(), record.bakes(), record.threeShare()));
    page.line(
        String.format(
            Locale.ROOT,
            "Brier score               %.3f; one opinion for all would have %.3f, 0 is perfect",
            record.brier(),
            record.brierOfNoOpinion()));
    page.section("Named with a probability of");
    page.line("              causes  expected  confirmed");
    for (Band band : record.bands()) {
      page.line(
          String.format(
              Locale.ROOT,
              "%3d to %3d %%  %7d %9.1f %10d",
              band.from(),
              band.from() + 10,
              band.named(),
              band.expected(),
              band.confirmed()));
    }
    page.line("");
    page.paragraph(
        "",
        record.bakes() < OwnRecord.FEW
            ? "This is too few to judge by: %d bakes would say something, 100 a good deal."
                .formatted(OwnRecord.FEW)
            : "In brackets: what the shares could as well be by chance, nineteen times of twenty.");
    return page.toString();
  }

  private static String row(String what, int some, int all, Share share) {
    return String.format(
        Locale.ROOT,
        "%-24s %d of %d, %.0f %% (%.0f to %.0f %%)",
        what,
        some,
        all,
        100 * share.value(),
        100 * share.low(),
        100 * share.high());
  }
}
