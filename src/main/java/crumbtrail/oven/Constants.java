package crumbtrail.oven;

/**
 * The constants of the oven model that are fitted; docs/science/oven.md tells how.
 *
 * @param stillAir heat carried by the air of an oven without fan, W/(m² K); handbook size, from
 *     memory, not fitted
 * @param radiation share of black radiation that reaches the loaf; fitted, one for a kind of oven
 * @param transport share of the vapour that free air would carry across the gas cells; fitted
 * @param skin speed at which vapour leaves a moist skin, m/s; fitted
 */
record Constants(double stillAir, double radiation, double transport, double skin) {
  /**
   * A small laboratory oven. All three fitted on the small loaf of Zhang and Datta (2006). Still
   * air and radiation together are 9.6 W/(m² K) at 190 °C; others who modelled this loaf and
   * another took 9.5 to 10.
   */
  static final Constants LABORATORY = new Constants(5, 0.27, 0.5, 5.6e-4);

  /**
   * An oven of kitchen or bakery, whose glowing parts and hot walls give more: radiation set such
   * that a 900 g loaf in a tin, 38 min at 215 °C, loses about a tenth until it is cool (published:
   * 9.8 to 11.5 %). The rest as fitted.
   */
  static final Constants USUAL = new Constants(5, 0.38, 0.5, 5.6e-4);

  /** How much a risen dough swells in the oven, taken over the bake: our choice. */
  static final double SPRING = 1.35;
}
