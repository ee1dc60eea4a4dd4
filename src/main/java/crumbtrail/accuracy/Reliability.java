package crumbtrail.accuracy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How far stated probabilities can be believed. */
final class Reliability {
  private Reliability() {}

  /**
   * A probability that was stated and whether it came true.
   *
   * @param stated 0 to 1
   * @param right whether the cause was at work
   */
  record Claim(double stated, boolean right) {
    double square() {
      double off = stated - (right ? 1 : 0);
      return off * off;
    }

    double logLoss() {
      return -Math.log(Math.max(1e-12, right ? stated : 1 - stated));
    }
  }

  /**
   * A row of the reliability table.
   *
   * @param claims how many
   * @param stated mean of what was stated
   * @param right share that came true
   */
  record Row(int claims, double stated, double right) {}

  /** Mean squared distance between what was stated and what was so. */
  static double brier(List<Claim> claims) {
    return claims.stream().mapToDouble(Claim::square).average().orElse(0);
  }

  /** Rows by tenths of the stated probability; empty tenths are left out. */
  static List<Row> byTenths(List<Claim> claims) {
    List<Row> rows = new ArrayList<>();
    for (int tenth = 0; tenth < 10; tenth++) {
      int here = tenth;
      List<Claim> within =
          claims.stream()
              .filter(claim -> Math.min(9, (int) (claim.stated() * 10)) == here)
              .toList();
      if (!within.isEmpty()) {
        rows.add(row(within));
      }
    }
    return rows;
  }

  /** Rows of as many claims each as can be, by stated probability. */
  static List<Row> inGroups(List<Claim> claims, int groups) {
    List<Claim> sorted = claims.stream().sorted(Comparator.comparingDouble(Claim::stated)).toList();
    List<Row> rows = new ArrayList<>();
    for (int group = 0; group < groups; group++) {
      List<Claim> within =
          sorted.subList(group * sorted.size() / groups, (group + 1) * sorted.size() / groups);
      if (!within.isEmpty()) {
        rows.add(row(within));
      }
    }
    return rows;
  }

  /** Mean distance between stated and true share over the rows, weighted by their claims. */
  static double error(List<Row> rows) {
    double claims = rows.stream().mapToInt(Row::claims).sum();
    return rows.stream()
        .mapToDouble(row -> row.claims() / claims * Math.abs(row.stated() - row.right()))
        .sum();
  }

  private static Row row(List<Claim> claims) {
    return new Row(
        claims.size(),
        claims.stream().mapToDouble(Claim::stated).average().orElse(0),
        claims.stream().mapToDouble(claim -> claim.right() ? 1 : 0).average().orElse(0));
  }
}
