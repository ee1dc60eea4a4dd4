package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A food that food laws want named to whoever eats it.
 *
 * @param key stable name
 * @param name plain words
 * @param us its name on the list of nine of the United States, null if it is not on it
 * @param eu its name on the list of fourteen of the European Union, null if it is not on it
 * @param pantry keys of the ingredients that hold it
 * @param words whole words of a formula line that mean it
 * @param spare phrases in which such a word means something else: "buckwheat"
 * @param source ids of the bibliography or "common practice"
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Allergen(
    String key,
    String name,
    String us,
    String eu,
    List<String> pantry,
    List<String> words,
    List<String> spare,
    String source) {
  public Allergen {
    pantry = pantry == null ? List.of() : List.copyOf(pantry);
    words = words == null ? List.of() : List.copyOf(words);
    spare = spare == null ? List.of() : List.copyOf(spare);
  }
}
