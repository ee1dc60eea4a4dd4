package crumbtrail.dough;

/**
 * Core and rim as a linear system: {@code core' = a (rim - core)}, {@code rim' = b (core - rim) - c
 * rim}, temperatures against the place, rates in 1/s.
 */
record Halves(double a, double b, double c) {
  double[] after(double core, double rim, double seconds) {
    double mean = (a + b + c) / 2;
    // Real and apart for positive rates: mean2 - a c = ((a - b - c)2 + 4 a b) / 4.
    double apart = Math.sqrt(((a - b - c) * (a - b - c) + 4 * a * b) / 4);
    double slow = Math.exp((apart - mean) * seconds);
    double fast = Math.exp((-apart - mean) * seconds);
    double even = (slow + fast) / 2;
    double odd = (slow - fast) / (2 * apart);
    double shift = (b + c - a) / 2;
    return new double[] {
      core * even + odd * (shift * core + a * rim), rim * even + odd * (b * core - shift * rim)
    };
  }
}
