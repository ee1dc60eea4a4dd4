package crumbtrail.report;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.Nearest;
import crumbtrail.knowledge.SignKind;
import crumbtrail.knowledge.Style;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Hearing;
import crumbtrail.workup.StyleFinder;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Says back what was understood of a sheet that is still being written. Nothing is judged here, and
 * no rule is run. Immutable; safe for use by many threads.
 */
public final class SheetEcho {
  private final Catalogue catalogue;
  private final Pantry pantry;
  private final StyleFinder styles;
  private final Hearing hearing;

  /**
   * @param catalogue signs, circumstances and styles
   * @param pantry the ingredients
   */
  public SheetEcho(Catalogue catalogue, Pantry pantry) {
    this.catalogue = catalogue;
    this.pantry = pantry;
    this.styles = new StyleFinder(catalogue);
    this.hearing = new Hearing(catalogue);
  }

  /** What was heard in words, and the words of which nothing was understood. */
  public record Echo(List<String> heard, List<String> notUnderstood) {
    public Echo {
      heard = List.copyOf(heard);
      notUnderstood = List.copyOf(notUnderstood);
    }
  }

  /** A recipe laid out in baker's percent. */
  public RecipeLayout recipe(String text) {
    return RecipeLayout.ofRecipe(text, pantry);
  }

  /** The style that these words name; empty where none is known by them. */
  public Optional<String> style(String words) {
    return styles.named(words).map(Style::name);
  }

  /** The known style whose name is most like these words. */
  public String nearestStyle(String words) {
    return Nearest.of(
        words.toLowerCase(Locale.ROOT),
        catalogue.knowledge().styles().stream().map(Style::name).toList());
  }

  /** Names of the known styles, in the order of the catalogue. */
  public List<String> styles() {
    return catalogue.knowledge().styles().stream().map(Style::name).toList();
  }

  /** What the words of a sheet tell: signs seen or ruled out, and what happened. */
  public Echo words(BakeSheet sheet) {
    Heard heard = hearing.hear(sheet);
    List<String> said = new ArrayList<>();
    heard.signs().forEach(sign -> said.add(sign(sign)));
    heard.circumstances().stream()
        .flatMap(one -> catalogue.circumstance(one.key()).stream())
        .map(CircumstanceKind::name)
        .forEach(said::add);
    return new Echo(said, heard.notUnderstood());
  }

  private String sign(Heard.Sign sign) {
    String name = catalogue.sign(sign.key()).map(SignKind::name).orElse(sign.key());
    if (!sign.seen()) {
      return "not seen: " + name;
    }
    return sign.degree() == Degree.PLAIN
        ? name
        : name + " (" + sign.degree().name().toLowerCase(Locale.ROOT) + ")";
  }
}
