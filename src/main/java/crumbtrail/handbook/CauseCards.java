package crumbtrail.handbook;

import crumbtrail.handbook.Card.Section;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.rules.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Cards of causes, written from the rule base: catalogues, rules, tables, remedies and cautions.
 */
public final class CauseCards {
  // Where a sign is met, in the order of a bake.
  private static final List<String> PLACES =
      List.of("starter", "dough", "proof", "oven", "crust", "crumb", "shape", "flavour", "keeping");

  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Neighbours neighbours;
  private final RemedyWords remedies;
  private final SmallBake bake;
  private final Plain plain;

  /**
   * @param book the rules
   */
  public CauseCards(RuleBook book) {
    this(book.catalogue(), new Witnesses(book, new Strengths(book.catalogue())));
  }

  CauseCards(Catalogue catalogue, Witnesses witnesses) {
    this.catalogue = catalogue;
    this.witnesses = witnesses;
    this.neighbours = new Neighbours(catalogue, witnesses);
    this.remedies = new RemedyWords(catalogue);
    this.bake = new SmallBake(catalogue, witnesses);
    this.plain = new Plain(catalogue);
  }

  /** The stages of a bake, in order, by which causes are grouped. */
  public static List<String> stages() {
    return Overviews.STAGES;
  }

  /** The card of a cause. */
  public Card card(Cause cause) {
    List<Section> sections = new ArrayList<>();
    sections.add(section(0, List.of(cause.what(), standing(cause)), List.of()));
    sections.add(section(1, List.of(cause.mechanism()), List.of()));
    sections.add(shows(cause));
    List<String> near = neighbours.of(cause.key());
    sections.add(confused(cause, near));
    sections.add(apart(cause, near));
    sections.add(
        section(
            5,
            List.of(cause.change()),
            catalogue.knowledge().remedies().stream()
                .filter(remedy -> remedy.cause().equals(cause.key()))
                .map(remedies::of)
                .distinct()
                .toList()));
    SmallBake.Told told = bake.of(cause);
    sections.add(
        section(6, told.instead() == null ? List.of() : List.of(told.instead()), told.steps()));
    List<String> cautions = cautions(cause);
    if (!cautions.isEmpty()) {
      sections.add(new Section("Take care", List.of(), cautions));
    }
    return new Card(cause.key(), cause.name(), sections);
  }

  private static Section section(int place, List<String> paragraphs, List<String> items) {
    return new Section(Card.HEADINGS.get(place), paragraphs, items);
  }

  /** What a small bake of the cause changes; null where there is none, and {@link #instead}. */
  String changed(Cause cause) {
    return bake.of(cause).changed();
  }

  /** Why no small bake shows the cause; null where one does. */
  String instead(Cause cause) {
    return bake.of(cause).instead();
  }

  private String standing(Cause cause) {
    StringBuilder words = new StringBuilder();
    words.append("Stage: [").append(cause.stage()).append("](../stages/");
    words.append(cause.stage()).append(".md). In home baking: ");
    words.append(cause.prior().name().toLowerCase(Locale.ROOT)).append(".");
    if (!cause.refines().isEmpty()) {
      words.append(" A finer form, or the root, of ");
      words.append(cause.refines().stream().map(plain::cause).collect(Collectors.joining(", ")));
      words.append(".");
    }
    List<String> finer =
        catalogue.knowledge().causes().stream()
            .filter(other -> other.refines().contains(cause.key()))
            .map(other -> plain.cause(other.key()))
            .toList();
    if (!finer.isEmpty()) {
      words.append(" Finer forms and roots: ").append(String.join(", ", finer)).append(".");
    }
    return words.toString();
  }

  private Section shows(Cause cause) {
    List<String> items = new ArrayList<>();
    for (String place : PLACES) {
      String signs =
          witnesses.signsOf(cause.key()).entrySet().stream()
              .filter(sign -> sign.getValue().decibans() > 0)
              .filter(sign -> place(sign.getKey()).equals(place))
              .sorted(Map.Entry.comparingByValue(Witnesses.STRONGEST_FIRST))
              .map(
                  sign ->
                      plain.sign(sign.getKey())
                          + " ("
                          + Strengths.word(sign.getValue().decibans())
                          + ")")
              .collect(Collectors.joining(", "));
      if (!signs.isEmpty()) {
        items.add(Plain.upper(place) + ": " + signs);
      }
    }
    return section(
        2,
        List.of(
            items.isEmpty()
                ? "No sign by itself points to it; what happened and what was measured does."
                : "By stage, and how strongly each sign speaks for it."),
        items);
  }

  private String place(String sign) {
    return catalogue.sign(sign).map(kind -> kind.place()).orElse("");
  }

  private Section confused(Cause cause, List<String> near) {
    return section(
        3,
        List.of(
            near.isEmpty()
                ? "It shares no sign with another cause."
                : "Causes that show much the same, the nearest first."),
        near.stream()
            .map(
                other ->
                    Plain.upper(plain.cause(other))
                        + ": also "
                        + String.join(", ", neighbours.shared(cause.key(), other)))
            .toList());
  }

  private Section apart(Cause cause, List<String> near) {
    return section(
        4,
        List.of(cause.tell()),
        near.stream()
            .map(
                other ->
                    "From %s. For this one: %s. For that one: %s."
                        .formatted(
                            plain.cause(other), told(cause.key(), other), told(other, cause.key())))
            .toList());
  }

  private String told(String cause, String other) {
    List<String> telling = neighbours.telling(cause, other);
    return telling.isEmpty() ? "no sign of its own" : String.join("; ", telling);
  }

  private List<String> cautions(Cause cause) {
    return catalogue.knowledge().cautions().stream()
        .filter(caution -> caution.when().contains("cause " + cause.key()))
        .map(caution -> caution.words())
        .filter(words -> !words.contains("{"))
        .toList();
  }
}
