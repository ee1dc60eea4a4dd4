package crumbtrail.report;

import java.util.List;

/** How firm a ranking is, in a sentence. */
public final class OutlookWords {
  private static final int NAMED = 3;

  private OutlookWords() {}

  /** The sentence; says so where nothing is open. */
  public static String firmness(Report report) {
    Report.Firmness firmness = report.firmness();
    if (firmness.runs() <= 1) {
      return "The sheet leaves nothing open that could be tried another way.";
    }
    List<String> shares =
        firmness.firstIn().entrySet().stream()
            .limit(NAMED)
            .map(entry -> name(report, entry.getKey()) + " in " + percent(entry.getValue()))
            .toList();
    if (shares.isEmpty()) {
      return "However the open amounts fall, nothing points to a cause.";
    }
    return "Of "
        + firmness.runs()
        + " ways in which what the sheet leaves open may have been, these come first: "
        + String.join(", ", shares)
        + ".";
  }

  private static String name(Report report, String key) {
    return report.causes().stream()
        .filter(cause -> cause.key().equals(key))
        .map(Report.RankedCause::name)
        .findFirst()
        .orElse(key.replace('-', ' '));
  }

  private static String percent(double share) {
    if (share > 0.995) {
      return share == 1 ? "all" : "over 99 %";
    }
    return share < 0.005 ? "under 1 %" : Math.round(share * 100) + " %";
  }
}
