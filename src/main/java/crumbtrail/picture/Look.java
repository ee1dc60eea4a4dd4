package crumbtrail.picture;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Everything that decides on a picture.
 *
 * @param scene what is drawn
 * @param shape the kind of loaf; of no account where no loaf is drawn
 * @param traits amounts from -1 to 1; those not named are as on a sound bake
 * @param seed of the chance that strews cells and specks
 */
public record Look(Scene scene, Shape shape, Map<Trait, Double> traits, long seed) {
  public Look {
    EnumMap<Trait, Double> kept = new EnumMap<>(Trait.class);
    traits.forEach(
        (trait, amount) -> {
          double held = Math.max(-1, Math.min(1, amount));
          if (trait.scene() == scene && held != 0 && trait.knows(held)) {
            kept.put(trait, held);
          }
        });
    traits = Collections.unmodifiableMap(kept);
  }

  /** A look whose seed comes from its content, so that the same loaf looks the same. */
  public static Look of(Scene scene, Shape shape, Map<Trait, Double> traits) {
    return new Look(scene, shape, traits, 31L * scene.key().hashCode() + shape.key().hashCode());
  }

  /** The amount of a trait, from -1 to 1; 0 is sound. */
  double amount(Trait trait) {
    return traits.getOrDefault(trait, 0.0);
  }

  /** How far a trait is above sound, from 0 to 1. */
  double more(Trait trait) {
    return Math.max(0, amount(trait));
  }

  /** How far a trait is below sound, from 0 to 1. */
  double less(Trait trait) {
    return Math.max(0, -amount(trait));
  }

  /** Chance of its own for each thing drawn, so that one trait does not shuffle the others. */
  SplittableRandom chance(int thing) {
    return new SplittableRandom(seed * 1_000_003L + thing);
  }

  /** Chance for what shows a trait. */
  SplittableRandom chance(Trait trait) {
    return chance(trait.key().hashCode());
  }
}
