package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;

/**
 * How a sign looks, or why it cannot be drawn. What the names under {@code on}, {@code shape} and
 * {@code shows} mean is the business of whoever draws.
 *
 * @param about key of the sign
 * @param on what is drawn: a loaf, dough in a bowl …; null if nothing is
 * @param shape the kind of loaf on which it is shown where none is told, or null
 * @param shows how far each trait is from that of a sound bake, from -1 to 1, by name
 * @param notDrawn why there is no picture, or null
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record PictureKind(
    String about,
    String on,
    String shape,
    Map<String, Double> shows,
    @JsonProperty("not-drawn") String notDrawn) {
  public PictureKind {
    shows = shows == null ? Map.of() : Map.copyOf(shows);
  }
}
