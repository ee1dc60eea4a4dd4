package crumbtrail.oven;

import crumbtrail.published.Check;
import crumbtrail.published.PublishedChecks;
import java.util.ArrayList;
import java.util.List;

/** Boiling points of extension services and utilities. */
public final class BoilingChecks implements PublishedChecks {
  private static final double METRES_PER_FOOT = 0.3048;

  @Override
  public String title() {
    return "Boiling point at altitude";
  }

  @Override
  public List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    String rounded = "the tables are rounded to whole degrees or to steps of 500 ft";
    String extension = "Colorado State University Extension, high-elevation guide";
    double[][] csu = {{0, 212}, {2000, 208}, {5000, 203}, {7500, 198}, {10_000, 193.5}};
    for (double[] row : csu) {
      checks.add(at(row[0], row[1], 0.8, rounded, extension));
    }
    String utility = "Public Service of Colorado about 1965; NMSU Guide E-215";
    double[][] nmsu = {
      {3000, 206.4}, {5000, 202.8}, {5500, 201.9}, {7000, 199.2}, {8000, 197.5}, {10_000, 194.0}
    };
    for (double[] row : nmsu) {
      checks.add(at(row[0], row[1], 0.6, "straight lines of 500 to 550 ft a degree", utility));
    }
    return checks;
  }

  private static Check at(double feet, double published, double tolerance, String why, String by) {
    double ours = Boiling.at(feet * METRES_PER_FOOT) * 1.8 + 32;
    return Check.of(
        "boiling at %.0f ft".formatted(feet), published, ours, "°F", tolerance, why, by);
  }
}
