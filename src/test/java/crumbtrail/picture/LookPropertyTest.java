package crumbtrail.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is wrong with a bread, and however much of it, there is a picture. */
class LookPropertyTest {
  /** Many faults at once make more strokes than one. */
  private static final int LARGEST = 40_000;

  @Provide
  Arbitrary<Map<Trait, Double>> traits() {
    Arbitrary<Double> amounts =
        Arbitraries.oneOf(
            Arbitraries.of(-1.0, -0.01, 0.01, 1.0), Arbitraries.doubles().between(-1, 1));
    return Arbitraries.maps(Arbitraries.of(Trait.values()), amounts).ofMaxSize(9);
  }

  @Property(tries = 150)
  void any_look_stays_on_its_plate_and_is_the_same_each_time(
      @ForAll Scene scene, @ForAll Shape shape, @ForAll("traits") Map<Trait, Double> traits) {
    Look look = Look.of(scene, shape, traits);

    String svg = LoafPicture.of(look).svg();

    Drawings.wellFormed(svg);
    assertThat(svg).doesNotContain("NaN", "Infinity");
    assertThat(Drawings.inside(svg)).isTrue();
    assertThat(svg.getBytes(StandardCharsets.UTF_8).length).isLessThan(LARGEST);
    assertThat(LoafPicture.of(Look.of(scene, shape, Map.copyOf(traits))).svg()).isEqualTo(svg);
  }

  @Property(tries = 60)
  void each_trait_alone_is_seen_and_said(
      @ForAll Trait trait, @ForAll Shape shape, @ForAll boolean up) {
    double amount = up ? 1 : -1;
    Look sound = Look.of(trait.scene(), shape, Map.of());
    Look faulty = Look.of(trait.scene(), shape, Map.of(trait, amount));

    if (trait.knows(amount)) {
      assertThat(LoafPicture.of(faulty).description())
          .isEqualToIgnoringCase(trait.words(amount) + ".");
      assertThat(faulty.amount(trait)).isEqualTo(amount);
    } else {
      assertThat(faulty).isEqualTo(sound);
    }
  }

  @Property(tries = 100)
  void amounts_beyond_the_scale_are_held_and_strange_traits_left_out(
      @ForAll Scene scene, @ForAll("traits") Map<Trait, Double> traits) {
    Map<Trait, Double> tenfold = new EnumMap<>(Trait.class);
    traits.forEach((trait, amount) -> tenfold.put(trait, 10 * amount));

    Look look = Look.of(scene, Shape.TIN, tenfold);

    assertThat(look.traits().values()).allMatch(amount -> Math.abs(amount) <= 1);
    assertThat(look.traits().keySet()).allMatch(trait -> trait.scene() == scene);
    assertThat(List.copyOf(look.traits().keySet())).isSorted();
  }
}
