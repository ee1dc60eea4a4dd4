package crumbtrail.study;

import crumbtrail.study.Kitchen.OfCause;
import java.util.List;
import java.util.Locale;

/** Writes what was learnt of a kitchen for a terminal or a plain file. */
public final class KitchenText {
  /** Odds that move by less are not shown, decibans: about a tenth. Our choice. */
  private static final double TELLING = 0.5;

  private static final int SHOWN = 20;
  private static final int NUMBERS = 46;

  private KitchenText() {}

  /**
   * The table as lines.
   *
   * @param width characters of a line at most; 60 or more
   */
  public static String of(Kitchen kitchen, int width) {
    TextPage page = new TextPage(width);
    if (kitchen.judged() == 0) {
      page.paragraph(
          "",
          "Nothing was learnt yet"
              + since(kitchen)
              + ". It takes bakes that were traced and of which a cause was confirmed: crumbtrail log"
              + " confirm ID CAUSE");
      if (kitchen.from() != null) {
        page.paragraph("", "Let earlier bakes count again: crumbtrail log learn --again");
      }
      return page.toString();
    }
    page.section(
        "Learnt from %d judged %s%s"
            .formatted(kitchen.judged(), kitchen.judged() == 1 ? "bake" : "bakes", since(kitchen)));
    page.paragraph(
        "",
        "How often each cause was foretold and how often you confirmed it. What comes up oftener than"
            + " foretold gets better odds in this kitchen, what comes up more rarely gets worse.");
    page.line("");
    List<OfCause> telling =
        kitchen.causes().stream().filter(one -> Math.abs(one.decibans()) >= TELLING).toList();
    int longest = telling.stream().mapToInt(one -> one.name().length()).max().orElse(0);
    int room = Math.max("cause".length(), Math.min(longest, width - NUMBERS));
    page.line(
        "%s %9s %9s %8s %8s  %s"
            .formatted(
                TextPage.padded("cause", room), "foretold", "confirmed", "share", "now", "odds"));
    telling.stream().limit(SHOWN).forEach(one -> page.line(row(one, room)));
    if (telling.size() > SHOWN) {
      page.line("and " + (telling.size() - SHOWN) + " more; all of them: --format json");
    }
    if (telling.isEmpty()) {
      page.line("No cause came up much oftener or more rarely than foretold.");
    }
    page.line("");
    page.paragraph("", "Trace by these odds: crumbtrail trace SHEET.json --kitchen");
    page.paragraph("", "Forget them: crumbtrail log learn --reset");
    return page.toString();
  }

  private static String row(OfCause one, int room) {
    return String.format(
        Locale.ROOT,
        "%s %9.1f %9d %6.1f %% %6.1f %%  x%.2g",
        TextPage.padded(one.name(), room),
        one.foretold(),
        one.confirmed(),
        100 * one.before(),
        100 * one.share(),
        Math.pow(10, one.decibans() / 10));
  }

  private static String since(Kitchen kitchen) {
    return kitchen.from() == null ? "" : " since " + kitchen.from().replace('T', ' ');
  }
}
