package crumbtrail.web;

import crumbtrail.handbook.Inline;
import crumbtrail.handbook.Leaf;
import crumbtrail.picture.LoafPictures;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A leaf of the handbook laid out for the page: the same words as in the handbook's files, with
 * links that lead within the server.
 *
 * @param leaf what stands on it
 * @param drawings pictures of signs that go with the leaf as a whole
 * @param pictures draws the signs that the leaf itself shows
 */
public record LeafView(Leaf leaf, List<ReportView.Drawn> drawings, LoafPictures pictures) {
  private static final Pattern LEAF =
      Pattern.compile("(?:\\.\\./)?(causes|signs|stages)/([a-z0-9-]+)\\.md");

  /**
   * A run of words.
   *
   * @param address where it leads, or empty
   * @param kind how it stands out
   */
  public record Run(String words, String address, Inline.Kind kind) {}

  /** The runs of a line, with the addresses of this server. */
  public static List<Run> runs(String line) {
    return Inline.of(line).stream()
        .map(run -> new Run(run.words(), address(run.target()), run.kind()))
        .toList();
  }

  /** The address under which this server shows what a link of the handbook means; empty if none. */
  static String address(String target) {
    Matcher leaf = LEAF.matcher(target);
    if (leaf.matches()) {
      return "/" + leaf.group(1) + "/" + leaf.group(2);
    }
    return switch (target) {
      case "README.md", "../README.md" -> "/handbook";
      case "matrix.md" -> "/handbook/matrix";
      case "matrix.csv" -> "/handbook/matrix.csv";
      case "../how-it-reasons.md" -> "/about";
      default -> "";
    };
  }

  /** The mark of a heading in an address. */
  public static String mark(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", "-");
  }

  /** The picture of a sign, as the drawing engine made it from words of its own; or empty. */
  public String svg(String sign) {
    return pictures.of(sign).map(picture -> picture.svg()).orElse("");
  }
}
