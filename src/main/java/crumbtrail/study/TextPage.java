package crumbtrail.study;

import org.apache.commons.text.WordUtils;

/** A page of text, line by line. */
final class TextPage {
  private final int width;
  private final StringBuilder text = new StringBuilder();

  TextPage(int width) {
    this.width = width;
  }

  int width() {
    return width;
  }

  void section(String title) {
    if (text.length() > 0) {
      text.append('\n');
    }
    text.append(title).append('\n').append("-".repeat(title.length())).append('\n');
  }

  void paragraph(String lead, String words) {
    String plain = words.replaceAll("\\s+", " ");
    String hang = "\n" + " ".repeat(lead.length());
    text.append(lead).append(WordUtils.wrap(plain, width - lead.length(), hang, true)).append('\n');
  }

  void line(String line) {
    text.append(line.stripTrailing()).append('\n');
  }

  /** A name in its column. */
  static String padded(String name, int room) {
    String cut = name.length() <= room ? name : name.substring(0, room - 1) + "…";
    return cut + " ".repeat(room - cut.length());
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
