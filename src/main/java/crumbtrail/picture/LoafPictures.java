package crumbtrail.picture;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.KnowledgeFolder;
import crumbtrail.knowledge.PictureKind;
import crumbtrail.knowledge.Places;
import crumbtrail.knowledge.SignKind;
import crumbtrail.knowledge.Style;
import crumbtrail.memory.Once;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Draws signs as the rules folder says they look. Immutable. */
public final class LoafPictures {
  private final Supplier<Known> known;

  private LoafPictures(Supplier<Known> known) {
    this.known = known;
  }

  /** What catalogues know of how things look. */
  private record Known(
      Map<String, PictureKind> kinds, Map<String, Shape> styles, List<SignKind> drawn) {
    static Known of(Knowledge knowledge) {
      Map<String, PictureKind> kinds = new HashMap<>();
      knowledge.pictures().forEach(kind -> kinds.putIfAbsent(kind.about(), kind));
      Map<String, Shape> styles = new HashMap<>();
      for (Style style : knowledge.styles()) {
        if (!style.tags().isEmpty()) {
          Shape shape = Shape.fitting(style.tags(), style.name());
          styles.put(style.key(), shape);
          styles.put(style.name(), shape);
        }
      }
      List<SignKind> drawn =
          knowledge.signs().stream()
              .filter(sign -> kinds.containsKey(sign.key()) && kinds.get(sign.key()).on() != null)
              .toList();
      return new Known(kinds, styles, drawn);
    }
  }

  /** No pictures of any sign. */
  public static LoafPictures none() {
    Known nothing = new Known(Map.of(), Map.of(), List.of());
    return new LoafPictures(() -> nothing);
  }

  /** The pictures that these catalogues know. */
  public static LoafPictures of(Catalogue catalogue) {
    return of(() -> catalogue);
  }

  /**
   * The pictures that catalogues know which need not be there yet.
   *
   * @param catalogue asked for when the first picture is
   */
  public static LoafPictures of(Supplier<Catalogue> catalogue) {
    return new LoafPictures(new Once<>(() -> Known.of(catalogue.get().knowledge())));
  }

  /**
   * The pictures of a rules folder.
   *
   * @throws FaultyKnowledge if the folder cannot be read or does not hold together
   */
  public static LoafPictures read(Path rules) throws FaultyKnowledge {
    Known known = Known.of(KnowledgeFolder.read(rules));
    return new LoafPictures(() -> known);
  }

  /** What is wrong with the pictures of a rules folder; see {@link PictureGuard}. */
  public static List<Fault> faults(Knowledge knowledge, Places places) {
    return PictureGuard.faults(knowledge, places);
  }

  private Map<String, PictureKind> kinds() {
    return known.get().kinds();
  }

  private Map<String, Shape> styles() {
    return known.get().styles();
  }

  /** Whether a sign can be seen. */
  public boolean draws(String sign) {
    return kinds().containsKey(sign) && kinds().get(sign).on() != null;
  }

  /** All signs that can be seen, in the order of their catalogue. */
  public List<SignKind> drawn() {
    return known.get().drawn();
  }

  /** What a sign is drawn on; empty if it cannot be seen. */
  public Optional<Scene> scene(String sign) {
    return draws(sign) ? Optional.of(sceneOf(kinds().get(sign))) : Optional.empty();
  }

  /** Why a sign is not drawn, if it is not. */
  public Optional<String> whyNot(String sign) {
    return Optional.ofNullable(kinds().get(sign)).map(PictureKind::notDrawn);
  }

  /** One sign, on the kind of loaf on which it shows best, plainly. */
  public Optional<LoafPicture> of(String sign) {
    if (!draws(sign)) {
      return Optional.empty();
    }
    Shape shape = Shape.of(String.valueOf(kinds().get(sign).shape())).orElse(Shape.TIN);
    return Optional.of(of(shape, Map.of(sign, 1.0)));
  }

  /**
   * One sign on the bread on which it was seen.
   *
   * @param style key or name of the style; where it tells no shape, the one on which the sign shows
   *     best is taken
   */
  public Optional<LoafPicture> of(String sign, String style) {
    return draws(sign) && styles().containsKey(style)
        ? Optional.of(of(styles().get(style), Map.of(sign, 1.0)))
        : of(sign);
  }

  /**
   * Several signs in one picture on a bread of this style.
   *
   * @param style key or name of the style; a hearth loaf where it tells no shape
   * @param strengths how marked or how likely each sign is, from 0 to 1, by key
   */
  public LoafPicture of(String style, Map<String, Double> strengths) {
    return of(styles().getOrDefault(style, Shape.HEARTH), strengths);
  }

  /**
   * Several signs in one picture. A loaf goes before dough; among doughs the vessel of the
   * strongest sign. Where two signs pull a trait both ways, the difference shows.
   *
   * @param shape the kind of loaf; of no account for dough
   * @param strengths how marked or how likely each sign is, from 0 to 1, by key
   * @return the picture of a sound loaf if no sign can be seen
   */
  public LoafPicture of(Shape shape, Map<String, Double> strengths) {
    Map<String, Double> strong = new LinkedHashMap<>();
    List<String> undrawn = new ArrayList<>();
    strengths.entrySet().stream()
        .sorted(
            Comparator.comparingDouble((Map.Entry<String, Double> sign) -> -sign.getValue())
                .thenComparing(Map.Entry::getKey))
        .filter(sign -> sign.getValue() > 0)
        .forEach(
            sign -> {
              if (draws(sign.getKey())) {
                strong.put(sign.getKey(), Math.min(1, sign.getValue()));
              } else {
                undrawn.add(sign.getKey());
              }
            });
    Scene scene = scene(strong);
    Map<Trait, Double> more = new EnumMap<>(Trait.class);
    Map<Trait, Double> less = new EnumMap<>(Trait.class);
    strong.forEach(
        (sign, strength) -> {
          PictureKind kind = kinds().get(sign);
          if (sceneOf(kind) != scene) {
            undrawn.add(sign);
            return;
          }
          kind.shows()
              .forEach(
                  (name, amount) ->
                      Trait.of(name)
                          .ifPresent(
                              trait ->
                                  (amount > 0 ? more : less)
                                      .merge(trait, Math.abs(amount) * strength, Math::max)));
        });
    Map<Trait, Double> traits = new EnumMap<>(more);
    less.forEach((trait, amount) -> traits.merge(trait, -amount, Double::sum));
    return LoafPicture.of(Look.of(scene, shape, traits), undrawn);
  }

  private Scene scene(Map<String, Double> strong) {
    List<Scene> scenes =
        strong.keySet().stream().map(kinds()::get).map(LoafPictures::sceneOf).toList();
    return scenes.isEmpty() || scenes.contains(Scene.LOAF) ? Scene.LOAF : scenes.get(0);
  }

  private static Scene sceneOf(PictureKind kind) {
    return Scene.of(kind.on()).orElse(Scene.LOAF);
  }

  /**
   * The shape that goes with a bread; see {@link Shape#fitting}.
   *
   * @param tags families of its style
   * @param words name of the style, vessel and what else is known
   */
  public static Shape shapeFor(List<String> tags, String words) {
    return Shape.fitting(tags, words);
  }
}
