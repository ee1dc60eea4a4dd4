package crumbtrail.picture;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.KnowledgeFolder;
import crumbtrail.knowledge.PictureKind;
import crumbtrail.knowledge.SignKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sign of the rules as it is drawn. */
class LoafPicturesTest {
  private static final Path RULES = Path.of("rules");

  /** Letters that a picture may have, so that a page with several of them stays small. */
  private static final int LARGEST = 15_000;

  private static Knowledge knowledge;
  private static LoafPictures pictures;

  @BeforeAll
  static void read() throws FaultyKnowledge {
    knowledge = KnowledgeFolder.read(RULES);
    pictures = LoafPictures.read(RULES);
  }

  @Test
  void every_sign_has_a_picture_or_a_reason() {
    assertThat(LoafPictures.faults(knowledge, KnowledgeFolder.places(RULES))).isEmpty();
    for (SignKind sign : knowledge.signs()) {
      assertThat(pictures.draws(sign.key()))
          .as(sign.key())
          .isNotEqualTo(pictures.whyNot(sign.key()).isPresent());
    }
  }

  @Test
  void the_page_on_pictures_lists_every_trait_with_its_words() throws IOException {
    String page = Files.readString(Path.of("docs/pictures.md"));
    for (Trait trait : Trait.values()) {
      String below = trait.knows(-1) ? trait.words(-1) : "–";
      String above = trait.knows(1) ? trait.words(1) : "–";
      assertThat(page)
          .contains(
              "| %s | `%s` | %s | %s |".formatted(trait.scene().key(), trait.key(), below, above));
    }
    for (Shape shape : Shape.values()) {
      assertThat(page).contains("`" + shape.key() + "`");
    }
  }

  static Stream<PictureKind> drawn() throws FaultyKnowledge {
    return KnowledgeFolder.read(RULES).pictures().stream().filter(kind -> kind.on() != null);
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void a_sign_looks_other_than_a_sound_bake_and_says_so(PictureKind kind) {
    LoafPicture picture = pictures.of(kind.about()).orElseThrow();

    LoafPicture sound = sound(kind);
    assertThat(picture.svg()).isNotEqualTo(sound.svg());
    assertThat(strokes(picture.svg())).isNotEqualTo(strokes(sound.svg()));
    kind.shows()
        .forEach(
            (name, amount) ->
                assertThat(picture.description())
                    .containsIgnoringCase(Trait.of(name).orElseThrow().words(amount)));
    assertThat(picture.svg()).contains("<desc>" + picture.description() + "</desc>");
  }

  @ParameterizedTest
  @MethodSource("drawn")
  void a_picture_is_small_well_formed_the_same_each_time_and_without_script(PictureKind kind) {
    String svg = pictures.of(kind.about()).orElseThrow().svg();

    assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThan(LARGEST);
    Drawings.wellFormed(svg);
    assertThat(pictures.of(kind.about()).orElseThrow().svg()).isEqualTo(svg);
    assertThat(svg)
        .contains("role=\"img\"")
        .doesNotContain("<script", "style=", "href")
        .doesNotContainPattern(" on[a-z]+=");
    assertThat(Drawings.inside(svg)).as("points on the plate").isTrue();
  }

  @Test
  void no_two_signs_look_the_same() throws FaultyKnowledge {
    Map<String, String> met = new LinkedHashMap<>();
    drawn()
        .forEach(
            kind ->
                assertThat(met.put(pictures.of(kind.about()).orElseThrow().svg(), kind.about()))
                    .as(kind.about())
                    .isNull());
  }

  @ParameterizedTest
  @EnumSource(Shape.class)
  void a_fainter_sign_is_drawn_fainter_on_every_shape(Shape shape) {
    LoafPicture faint = pictures.of(shape, Map.of("dense-crumb", 0.4));
    LoafPicture plain = pictures.of(shape, Map.of("dense-crumb", 1.0));

    assertThat(faint.svg()).isNotEqualTo(plain.svg());
    assertThat(faint.description()).contains("(slightly)");
    assertThat(pictures.of(shape, Map.of("dense-crumb", 0.0)).description())
        .isEqualTo("As it should be.");
  }

  @Test
  void several_signs_share_a_loaf_and_what_cannot_be_seen_is_named() {
    LoafPicture picture =
        pictures.of(
            Shape.TIN,
            Map.of("large-holes", 0.8, "pale-crust", 0.9, "sour-flavour", 1.0, "slack-dough", 0.7));

    assertThat(picture.title()).isEqualTo("Cut tin loaf");
    assertThat(picture.description()).containsIgnoringCase("big holes").contains("pale crust");
    assertThat(picture.undrawn()).containsExactly("sour-flavour", "slack-dough");
  }

  @Test
  void signs_that_pull_both_ways_leave_the_difference() {
    assertThat(pictures.of(Shape.TIN, Map.of("pale-crust", 0.5, "dark-crust", 0.5)).description())
        .isEqualTo("As it should be.");
    assertThat(pictures.of(Shape.TIN, Map.of("pale-crust", 0.3, "dark-crust", 0.9)).description())
        .isEqualTo("Dark, burnt crust.");
  }

  @Test
  void doughs_alone_are_drawn_in_the_vessel_of_the_strongest() {
    LoafPicture picture = pictures.of(Shape.HEARTH, Map.of("slow-rise", 0.5, "slack-dough", 0.9));

    assertThat(picture.title()).isEqualTo("Dough on the bench");
    assertThat(picture.undrawn()).containsExactly("slow-rise");
  }

  @ParameterizedTest
  @CsvSource({
    "tin white, White tin loaf, TIN",
    "tin soft, Sandwich bread in a lidded tin, LIDDED_TIN",
    "hearth lean small, Baguette, BATARD",
    "hearth lean, Country loaf, HEARTH",
    "flat lean, Focaccia, FLAT",
    "laminated small, Croissant, LAMINATED",
    "small soft, Soft rolls, ROLL",
    "small sweet, Cinnamon rolls, SWIRL",
    "'', , HEARTH"
  })
  void the_shape_goes_with_the_bread(String tags, String words, Shape shape) {
    assertThat(LoafPictures.shapeFor(List.of(tags.split(" ")), words)).isEqualTo(shape);
  }

  private static LoafPicture sound(PictureKind kind) {
    Shape shape = Shape.of(String.valueOf(kind.shape())).orElse(Shape.TIN);
    return LoafPicture.of(Look.of(Scene.of(kind.on()).orElseThrow(), shape, Map.of()));
  }

  // What is drawn, without words.
  private static String strokes(String svg) {
    return svg.replaceAll("(?s)<(title|desc|text).*?</\\1>", "")
        .replaceAll("aria-label=\"[^\"]*\"", "");
  }
}
