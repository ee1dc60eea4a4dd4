package crumbtrail.knowledge;

import java.util.List;

/**
 * A sign that a baker can see, smell, taste or feel.
 *
 * @param key stable name, words joined by hyphens
 * @param name plain words
 * @param place dough, proof, oven, crust, crumb, shape, flavour, keeping or starter
 * @param meaning what counts as this sign
 * @param look how a baker checks for it
 * @param phrases how people say it, in the phrase language of the words package
 */
public record SignKind(
    String key, String name, String place, String meaning, String look, List<String> phrases) {
  public SignKind {
    phrases = phrases == null ? List.of() : List.copyOf(phrases);
  }
}
