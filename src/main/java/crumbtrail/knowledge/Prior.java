package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * How often a cause spoils a home baker's loaf, before anything is known of the bake. The weights
 * are common practice: a teacher's ordering put on the deciban scale, not a survey.
 */
public enum Prior {
  @JsonProperty("everyday")
  EVERYDAY(-10),
  @JsonProperty("common")
  COMMON(-13),
  @JsonProperty("occasional")
  OCCASIONAL(-16),
  @JsonProperty("rare")
  RARE(-20);

  private final double decibans;

  Prior(double decibans) {
    this.decibans = decibans;
  }

  /** Log-odds in decibans: ten times the base-10 logarithm of the odds. */
  public double decibans() {
    return decibans;
  }
}
