package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bake of the log.
 *
 * @param id its number
 * @param uid its name in every log
 * @param schoolClass number of the class to which it was given
 * @param baked when, by the clock in the kitchen
 * @param noted when it was put into the log, UTC
 * @param label the baker's name for it
 * @param recipe what was baked
 * @param note the baker's notes
 * @param outcome good, fair or failed; missing while nobody has said
 * @param ranking what the trace held likeliest, the first few
 * @param ruleBase version of the rules that traced it
 * @param confirmed keys of the causes that were at work
 * @param ruledOut keys of the causes that were not
 * @param photos in the order in which they were added
 * @param sheet the bake sheet; missing where what was kept is no JSON
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KeptBake(
    long id,
    String uid,
    @Nullable Long schoolClass,
    String baked,
    String noted,
    String label,
    String recipe,
    String note,
    @Nullable String outcome,
    List<KeptCause> ranking,
    @Nullable String ruleBase,
    List<String> confirmed,
    List<String> ruledOut,
    List<KeptPhotoLine> photos,
    @Nullable JsonNode sheet) {

  public KeptBake {
    ranking = List.copyOf(ranking);
    confirmed = List.copyOf(confirmed);
    ruledOut = List.copyOf(ruledOut);
    photos = List.copyOf(photos);
  }

  /**
   * A cause and how likely the trace held it.
   *
   * @param key key of the cause
   * @param probability 0 to 1
   */
  public record KeptCause(String key, double probability) {}

  /**
   * A photo without its pixels.
   *
   * @param id its number
   * @param kind media type
   * @param width pixels
   * @param height pixels
   * @param bytes length of the file
   */
  public record KeptPhotoLine(long id, String kind, int width, int height, int bytes) {}
}
