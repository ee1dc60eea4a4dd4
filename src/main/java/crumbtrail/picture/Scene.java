package crumbtrail.picture;

import java.util.Arrays;
import java.util.Optional;

/** What is drawn. */
public enum Scene {
  LOAF("loaf", "Cut"),
  BOWL("bowl", "Dough in a bowl"),
  BENCH("bench", "Dough on the bench"),
  BASKET("basket", "Proofed piece and its basket"),
  JAR("jar", "Starter in its jar"),
  CUP("cup", "Yeast stirred into a cup of water"),
  SHEET("sheet", "Laminated dough cut across");

  private final String key;
  private final String words;

  Scene(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** The name under which pictures.yaml knows it. */
  public String key() {
    return key;
  }

  /** How its description begins. */
  String words() {
    return words;
  }

  /** The scene of this name. */
  public static Optional<Scene> of(String key) {
    return Arrays.stream(values()).filter(scene -> scene.key.equals(key)).findFirst();
  }
}
