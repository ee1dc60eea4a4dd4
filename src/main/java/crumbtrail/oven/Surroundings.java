package crumbtrail.oven;

/**
 * What a loaf feels from outside.
 *
 * @param celsius temperature of air and walls
 * @param air heat carried by air and contact, W/(m² K)
 * @param radiation share of black radiation
 * @param open share of the surface that vapour can leave through
 * @param vapour density of vapour in the air, kg/m³
 */
record Surroundings(double celsius, double air, double radiation, double open, double vapour) {
  // A fan oven at 200 °C bakes like a still one at 220 °C (common practice): with the surface near
  // 85 °C that is 2 W/(m² K) more.
  private static final double FAN = 2;

  static Surroundings oven(Loaf loaf, OvenStage stage, Constants constants) {
    Boundary boundary = loaf.boundary();
    double air = constants.stillAir() + (stage.fan() ? FAN : 0);
    return new Surroundings(
        stage.celsius(),
        boundary.heat * air + boundary.contact * loaf.baseShare(),
        boundary.heat * constants.radiation(),
        stage.lid() ? 0 : boundary.open,
        0);
  }

  /** Largest transfer, for the length of a step, W/(m² K). */
  double most() {
    double kelvin = Math.max(celsius, 120) + 273;
    return air + radiation * 4 * 5.67e-8 * kelvin * kelvin * kelvin;
  }
}
