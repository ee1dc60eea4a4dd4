package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.handbook.Card;
import crumbtrail.handbook.CauseCards;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.KnobKind;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.Style;
import crumbtrail.lessons.Turn;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the rules know, to be looked up.
 *
 * @param catalogue causes, signs, breads and knobs
 * @param cards writes the cards of causes
 * @param ruleBase version of the rules
 */
public record Shelf(Catalogue catalogue, CauseCards cards, String ruleBase) {

  /**
   * A cause in a list.
   *
   * @param key stable key
   * @param name plain words
   * @param stage where in the bake it arises
   * @param what what went wrong, one sentence
   */
  public record CauseLine(String key, String name, String stage, String what) {}

  /**
   * The card of a cause.
   *
   * @param key stable key
   * @param name plain words
   * @param stage where in the bake it arises
   * @param atHome how often it spoils a home baker's loaf, in a word
   * @param refines keys of the coarser causes of which it is a finer form or the root
   * @param sections what the card says, in order
   * @param sources citations
   */
  public record CauseCard(
      String key,
      String name,
      String stage,
      String atHome,
      List<String> refines,
      List<CardSection> sections,
      List<String> sources) {}

  /**
   * A part of a card, in plain text.
   *
   * @param heading its heading
   * @param paragraphs what it says
   * @param items what it lists below that
   */
  public record CardSection(String heading, List<String> paragraphs, List<String> items) {}

  /**
   * A sign that a baker can see, smell, taste or feel.
   *
   * @param key stable key
   * @param name plain words
   * @param place dough, proof, oven, crust, crumb, shape, flavour, keeping or starter
   * @param meaning what counts as this sign
   * @param look how a baker checks for it
   */
  public record SignLine(String key, String name, String place, String meaning, String look) {}

  /**
   * A style of bread.
   *
   * @param key stable key
   * @param name plain words
   * @param tags families that it belongs to
   * @param usual usual ranges by name of the reading
   */
  public record StyleLine(
      String key, String name, List<String> tags, Map<String, UsualRange> usual) {}

  /**
   * A usual range.
   *
   * @param low its lower end, in the unit
   * @param high its upper end
   * @param unit of both
   * @param source citation in full, or "common practice"
   */
  public record UsualRange(double low, double high, String unit, String source) {}

  /**
   * A quantity that can be turned.
   *
   * @param key short name
   * @param name plain words
   * @param unit of its values
   * @param low least value that makes sense
   * @param high greatest value that makes sense
   * @param step what a baker can set it to
   * @param range all of it, as it is written in a request
   */
  public record KnobLine(
      String key, String name, String unit, double low, double high, double step, String range) {}

  /**
   * What is running.
   *
   * @param program its name
   * @param version its version; missing where it runs unpackaged
   * @param ruleBase version of the rules: a hash of their folder
   * @param causes how many causes are known
   * @param signs how many signs are known
   * @param styles how many breads are known
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Version(
      String program,
      @Nullable String version,
      String ruleBase,
      int causes,
      int signs,
      int styles) {}

  /** All causes, in the order of the catalogue. */
  public List<CauseLine> causes() {
    return catalogue.knowledge().causes().stream()
        .map(one -> new CauseLine(one.key(), one.name(), one.stage(), one.what()))
        .toList();
  }

  /** The card of the cause of this key. */
  public Optional<CauseCard> cause(String key) {
    return catalogue.cause(key).map(this::card);
  }

  private CauseCard card(Cause cause) {
    Card card = cards.card(cause).plain();
    return new CauseCard(
        cause.key(),
        cause.name(),
        cause.stage(),
        cause.prior().name().toLowerCase(Locale.ROOT),
        cause.refines(),
        card.sections().stream()
            .map(one -> new CardSection(one.heading(), one.paragraphs(), one.items()))
            .toList(),
        cause.sources().stream().map(catalogue::cited).toList());
  }

  /** All signs, in the order of the catalogue. */
  public List<SignLine> signs() {
    return catalogue.knowledge().signs().stream()
        .map(one -> new SignLine(one.key(), one.name(), one.place(), one.meaning(), one.look()))
        .toList();
  }

  /** All breads, in the order of the catalogue. */
  public List<StyleLine> styles() {
    return catalogue.knowledge().styles().stream().map(this::style).toList();
  }

  private StyleLine style(Style style) {
    Map<String, UsualRange> usual = new TreeMap<>();
    style.ranges().forEach((reading, range) -> usual.put(reading, usual(reading, range)));
    return new StyleLine(style.key(), style.name(), style.tags(), usual);
  }

  private UsualRange usual(String reading, Style.Range range) {
    return new UsualRange(
        range.low(),
        range.high(),
        catalogue.reading(reading).map(ReadingKind::unit).orElse(""),
        catalogue.cited(range.source()));
  }

  /** All that can be turned. */
  public List<KnobLine> knobs() {
    return catalogue.knowledge().knobs().stream().map(Shelf::knob).toList();
  }

  private static KnobLine knob(KnobKind knob) {
    return new KnobLine(
        knob.key(),
        knob.name(),
        knob.unit(),
        knob.low(),
        knob.high(),
        knob.step(),
        Turn.example(knob));
  }

  /** What is running. */
  public Version version() {
    return new Version(
        "crumbtrail",
        Shelf.class.getPackage().getImplementationVersion(),
        ruleBase,
        catalogue.knowledge().causes().size(),
        catalogue.knowledge().signs().size(),
        catalogue.knowledge().styles().size());
  }
}
