package crumbtrail.web;

/** Probabilities and weights of evidence in plain words. */
final class ReportWords {

  private ReportWords() {}

  /**
   * A probability in words. The steps are those of the guidance note of the Intergovernmental Panel
   * on Climate Change on the treatment of uncertainties, 2010 (from memory); the words are ours.
   *
   * @param probability from 0 to 1
   */
  static String likelihood(double probability) {
    if (probability > 0.99) {
      return "almost certain";
    }
    if (probability > 0.90) {
      return "very likely";
    }
    if (probability > 0.66) {
      return "likely";
    }
    if (probability >= 0.33) {
      return "quite possible";
    }
    if (probability >= 0.10) {
      return "less likely";
    }
    return probability >= 0.01 ? "unlikely" : "very unlikely";
  }

  /** A probability as a percentage that never claims more than it knows at either end. */
  static String percent(double probability) {
    if (probability > 0.99) {
      return "over 99 %";
    }
    if (probability < 0.01) {
      return "under 1 %";
    }
    return Math.round(probability * 100) + " %";
  }

  /**
   * A weight of evidence in words, after the words of the rules: faintly 3 dB, plainly 6 dB, firmly
   * 10 dB, clear 20 dB. The steps lie half way between them.
   *
   * @param decibans the weight; its sign does not matter
   */
  static String weight(double decibans) {
    double size = Math.abs(decibans);
    if (size < 4.5) {
      return "faint";
    }
    if (size < 8) {
      return "plain";
    }
    return size < 15 ? "firm" : "decisive";
  }
}
