package crumbtrail.handbook;

import java.util.List;

/**
 * A cause on one card. Words may hold Markdown links to other pages of the handbook, as seen from
 * its folder of causes; {@link CardWriter} takes them out where they lead nowhere.
 *
 * @param key key of the cause
 * @param title its name
 * @param sections the parts of the card, in the order in which they are read; each says something
 */
public record Card(String key, String title, List<Section> sections) {
  /** Headings of the sections that every card has, in their order. */
  public static final List<String> HEADINGS =
      List.of(
          "What it is",
          "What goes on",
          "How it shows",
          "What it may be confused with",
          "How to tell it from its neighbours",
          "What to do",
          "Prove it to yourself with a small bake");

  public Card {
    sections = List.copyOf(sections);
  }

  /**
   * A part of the card.
   *
   * @param heading its heading
   * @param paragraphs what it says
   * @param items what it lists below that; may be empty
   */
  public record Section(String heading, List<String> paragraphs, List<String> items) {
    public Section {
      paragraphs = paragraphs.stream().filter(words -> !words.isBlank()).toList();
      items = List.copyOf(items);
    }
  }

  /** The same card in plain text, without links and emphasis. */
  public Card plain() {
    return new Card(
        key,
        title,
        sections.stream()
            .map(
                one ->
                    new Section(
                        one.heading(),
                        one.paragraphs().stream().map(Card::plain).toList(),
                        one.items().stream().map(Card::plain).toList()))
            .toList());
  }

  private static String plain(String words) {
    return words.replaceAll("\\[([^\\]]*)\\]\\([^)]*\\)", "$1").replace("*", "");
  }

  /** The section of this heading; throws if the card has none. */
  public Section section(String heading) {
    return sections.stream().filter(one -> one.heading().equals(heading)).findFirst().orElseThrow();
  }
}
