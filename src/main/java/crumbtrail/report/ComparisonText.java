package crumbtrail.report;

import crumbtrail.compare.Comparison;
import crumbtrail.compare.Comparison.Explained;
import crumbtrail.compare.Comparison.Moved;
import crumbtrail.compare.Difference;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import java.util.List;
import java.util.Locale;
import org.apache.commons.text.WordUtils;

/** Writes two bakes held against each other for a terminal or a plain file. */
public final class ComparisonText {
  /** Differences that explain less are listed without a number. Our choice. */
  private static final double TELLING = 0.01;

  private static final int CAUSES = 3;
  private static final String INDENT = "     ";

  private final Catalogue catalogue;
  private final int width;
  private final StringBuilder text = new StringBuilder();

  private ComparisonText(Catalogue catalogue, int width) {
    this.catalogue = catalogue;
    this.width = width;
  }

  /**
   * The comparison as lines.
   *
   * @param before title of the bake that is held against
   * @param after title of the bake in question
   * @param width characters of a line at most; 60 or more
   */
  public static String of(
      Comparison comparison, String before, String after, Catalogue catalogue, int width) {
    ComparisonText page = new ComparisonText(catalogue, width);
    page.write(comparison, before, after);
    return page.text.toString();
  }

  private void write(Comparison comparison, String before, String after) {
    paragraph("", after);
    paragraph("held against ", before);
    List<Explained> telling =
        comparison.differences().stream().filter(one -> one.power() >= TELLING).toList();
    section("What can explain the change");
    if (comparison.differences().isEmpty()) {
      paragraph("", "Nothing on the two sheets differs.");
    } else if (telling.isEmpty()) {
      paragraph("", "No rule ties any of the differences to what is suspected of this bake.");
    }
    int place = 1;
    for (Explained one : telling) {
      explained(place++, one);
    }
    if (!telling.isEmpty()) {
      paragraph(
          "",
          String.format(
              Locale.ROOT,
              "All differences together explain %.0f %% of what is suspected.",
              100 * comparison.together()));
    }
    others(comparison);
    signs("Seen now and not then", comparison.appeared());
    signs("Seen then and not now", comparison.gone());
    if (!comparison.readings().isEmpty()) {
      section("Worked out, and different by more than it is uncertain");
      comparison.readings().forEach(one -> paragraph("- ", words(one)));
    }
  }

  private void explained(int place, Explained one) {
    paragraph(String.format(Locale.ROOT, "%2d.  ", place), words(one.difference()));
    one.moved().stream().limit(CAUSES).forEach(moved -> paragraph(INDENT, words(moved)));
  }

  private void others(Comparison comparison) {
    List<Explained> others =
        comparison.differences().stream().filter(one -> one.power() < TELLING).toList();
    if (!others.isEmpty()) {
      section("Different too, and not held to explain it");
      others.forEach(one -> paragraph("- ", words(one.difference())));
    }
  }

  private void signs(String title, List<String> names) {
    if (!names.isEmpty()) {
      section(title);
      paragraph("", String.join(", ", names));
    }
  }

  private static String words(Difference difference) {
    return difference.what() + ": " + difference.before() + ", now " + difference.after();
  }

  private String words(Moved moved) {
    String name = catalogue.cause(moved.cause()).map(Cause::name).orElse(moved.cause());
    return String.format(
        Locale.ROOT,
        "risk of %s: %.0f %% as it was then, %.0f %% now",
        name,
        100 * moved.before(),
        100 * moved.after());
  }

  private void section(String title) {
    text.append('\n').append(title).append('\n').append("-".repeat(title.length())).append('\n');
  }

  private void paragraph(String lead, String words) {
    String plain = words.replaceAll("\\s+", " ");
    String hang = "\n" + " ".repeat(lead.length());
    text.append(lead).append(WordUtils.wrap(plain, width - lead.length(), hang, true)).append('\n');
  }
}
