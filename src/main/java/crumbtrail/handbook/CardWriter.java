package crumbtrail.handbook;

import java.util.List;
import java.util.Locale;
import org.apache.commons.text.StringEscapeUtils;
import org.apache.commons.text.WordUtils;

/** A card for the terminal, for a page of one's own, or as Markdown. */
public enum CardWriter {
  TEXT,
  HTML,
  MARKDOWN;

  private static final int USUAL_WIDTH = 80;

  /** The card in this form, without links. */
  public String write(Card card) {
    return write(card, USUAL_WIDTH);
  }

  /**
   * The card in this form, without links.
   *
   * @param width characters of a line of text at most; a page and Markdown find their own
   */
  public String write(Card card, int width) {
    return switch (this) {
      case TEXT -> text(card, width);
      case HTML -> html(card);
      case MARKDOWN -> markdown(card);
    };
  }

  /** The name of the form as a command line says it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  private static String text(Card card, int width) {
    StringBuilder text = new StringBuilder();
    text.append(Plain.upper(card.title()).toUpperCase(Locale.ROOT)).append("\n");
    for (Card.Section section : card.sections()) {
      text.append("\n").append(section.heading()).append("\n");
      section.paragraphs().forEach(words -> text.append(wrap(width, "  ", "  ", words)));
      section.items().forEach(words -> text.append(wrap(width, "  - ", "    ", words)));
    }
    return text.toString();
  }

  private static String wrap(int width, String first, String next, String words) {
    String plain = bare(words).replace("*", "");
    return first + WordUtils.wrap(plain, width - next.length(), "\n" + next, false) + "\n";
  }

  private static String markdown(Card card) {
    StringBuilder text = new StringBuilder("# " + Plain.upper(card.title()) + "\n");
    for (Card.Section section : card.sections()) {
      text.append("\n## ").append(section.heading()).append("\n");
      section.paragraphs().forEach(words -> text.append("\n").append(bare(words)).append("\n"));
      if (!section.items().isEmpty()) {
        text.append("\n");
        section.items().forEach(words -> text.append("- ").append(bare(words)).append("\n"));
      }
    }
    return text.toString();
  }

  // A whole page without a style of its own.
  private static String html(Card card) {
    String title = escaped(Plain.upper(card.title()));
    StringBuilder page = new StringBuilder();
    page.append("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\">\n");
    page.append("<meta name=\"viewport\" content=\"width=device-width\">\n");
    page.append("<title>").append(title).append("</title>\n</head>\n<body>\n<main>\n");
    page.append("<h1>").append(title).append("</h1>\n");
    for (Card.Section section : card.sections()) {
      page.append("<h2>").append(escaped(section.heading())).append("</h2>\n");
      section.paragraphs().forEach(words -> page.append(element("p", words)));
      if (!section.items().isEmpty()) {
        page.append("<ul>\n");
        section.items().forEach(words -> page.append(element("li", words)));
        page.append("</ul>\n");
      }
    }
    return page.append("</main>\n</body>\n</html>\n").toString();
  }

  private static String element(String name, String words) {
    String inside = escaped(bare(words)).replaceAll("\\*([^*]+)\\*", "<em>$1</em>");
    return "<" + name + ">" + inside + "</" + name + ">\n";
  }

  private static String escaped(String words) {
    return StringEscapeUtils.escapeHtml4(words);
  }

  // Without links.
  private static String bare(String words) {
    return words.replaceAll("\\[([^\\]]*)\\]\\([^)]*\\)", "$1");
  }

  /** The words of all forms, as a command line lists them. */
  public static List<String> words() {
    return List.of(values()).stream().map(CardWriter::word).toList();
  }
}
