package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * Something that a baker can still be asked.
 *
 * @param about key of a sign or of a circumstance, or name of a reading
 * @param ask the question, in plain words
 * @param how how to find out; null for a sign, which says so itself
 * @param cost what it costs to find out; null for a sign, whose place says it
 * @param field of a reading: where its answer stands on the bake sheet, below "process"; else null
 * @param no of a circumstance: key of the circumstance that holds if the answer is no; else null
 * @param unless keys of signs and circumstances, and names of readings, that have answered it or
 *     make it pointless
 * @param breads families of bread for which it makes sense; empty for all
 * @param not families of bread for which it makes none
 * @param often how common a yes is among failed bakes whose baker has not spoken of it
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record QuestionKind(
    String about,
    String ask,
    String how,
    Cost cost,
    String field,
    String no,
    List<String> unless,
    List<String> breads,
    List<String> not,
    Often often) {

  public QuestionKind {
    unless = unless == null ? List.of() : List.copyOf(unless);
    breads = breads == null ? List.of() : List.copyOf(breads);
    not = not == null ? List.of() : List.copyOf(not);
    often = often == null ? Often.SOMETIMES : often;
  }

  /** Whether the question makes sense for a bread of these families. */
  public boolean fits(List<String> tags) {
    return (breads.isEmpty() || breads.stream().anyMatch(tags::contains))
        && not.stream().noneMatch(tags::contains);
  }

  /** A question about a sign in the sign's own name. */
  public static QuestionKind plain(SignKind sign) {
    return new QuestionKind(
        sign.key(),
        "Is it so: " + sign.name() + "?",
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  /** How common a yes is (our judgement, not a survey). */
  public enum Often {
    @JsonProperty("often")
    OFTEN(0.2),
    @JsonProperty("sometimes")
    SOMETIMES(0.08),
    @JsonProperty("seldom")
    SELDOM(0.02);

    private final double share;

    Often(double share) {
      this.share = share;
    }

    /** Share of bakes, 0 to 1. */
    public double share() {
      return share;
    }
  }

  /**
   * What an answer costs the baker. The order is plain (a look at the loaf is the cheapest), the
   * numbers are our choice.
   */
  public enum Cost {
    @JsonProperty("look")
    LOOK("look", 1),
    @JsonProperty("measure")
    MEASURE("measure", 1.5),
    @JsonProperty("remember")
    REMEMBER("remember", 2),
    @JsonProperty("bake again")
    BAKE_AGAIN("bake again", 6);

    private final String words;
    private final double weight;

    Cost(String words, double weight) {
      this.words = words;
      this.weight = weight;
    }

    /** In plain words. */
    public String words() {
      return words;
    }

    /** On a scale on which a look at the loaf is 1. */
    public double weight() {
      return weight;
    }

    /**
     * The cost of looking for a sign.
     *
     * @param place where the sign shows, as the catalogue of signs has it
     */
    public static Cost of(String place) {
      return switch (place) {
        case "dough", "proof", "oven" -> REMEMBER;
        case "keeping" -> MEASURE;
        default -> LOOK;
      };
    }
  }
}
