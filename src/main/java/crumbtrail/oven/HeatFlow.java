package crumbtrail.oven;

import java.util.Arrays;

/**
 * Heat and water in the layers of a loaf: the right-hand side of the balances.
 *
 * <p>State: the heat of each layer above 0 °C (J), then its water (kg), then the heat taken up
 * through the surface and the heat gone with vapour (J). Layers are thinner towards the surface.
 * Buffers are reused: one instance serves one thread.
 */
final class HeatFlow {
  private static final double STEFAN = 5.670374e-8;
  private static final double KELVIN = 273.15;
  // A layer gives off vapour as if wet until three quarters of its water are gone (our choice).
  private static final double LAST_WATER = 0.25;
  // Vapour through dry crust: that of air at 100 °C times 0.75 of gas over a tortuosity of ten,
  // m²/s
  // (our choice, between open crumb at 2.4 and closed dough at 70 in the breadBakingFoam files).
  private static final double CRUST_VAPOUR = 3e-6;
  private static final double STABLE = 0.9;
  private static final int MOST_LAYERS = 12;
  private static final double LAYER = 0.0035;

  private final int layers;
  private final double[] dryHeat;
  private final double[] water;
  private final double[] perWater;
  private final double[] knownWater;
  private final double[] perHeat;
  private final double[] area;
  private final double[] half;
  private final double[] temperature;
  private final double[] conduction;
  private final double[] rates;
  private final Crumb crumb;
  private final double skin;
  private Surroundings around;
  private double surface;

  HeatFlow(Loaf loaf, Crumb crumb, double skin) {
    Body body = loaf.body();
    this.crumb = crumb;
    this.skin = skin;
    layers = (int) Math.max(3, Math.min(MOST_LAYERS, Math.round(body.radius() / LAYER)));
    double grade = layers < 6 ? 0 : 0.5;
    dryHeat = new double[layers];
    water = new double[layers];
    knownWater = new double[layers];
    Arrays.fill(knownWater, Double.NaN);
    perHeat = new double[layers];
    area = new double[layers];
    half = new double[layers];
    temperature = new double[layers];
    conduction = new double[layers];
    perWater = new double[layers];
    rates = new double[2 * layers + 2];
    double kilograms = loaf.grams() / 1000;
    double inner = 0;
    double within = 0;
    for (int i = 0; i < layers; i++) {
      double outer = edge((i + 1.0) / layers, grade);
      double shell = Math.pow(outer, body.exponent());
      double share = outer * shell - within;
      within = outer * shell;
      dryHeat[i] = kilograms * (1 - loaf.waterShare()) * share * Crumb.DRY_HEAT;
      water[i] = kilograms * loaf.waterShare() * share;
      perWater[i] = 1 / water[i];
      area[i] = body.surface() * shell;
      half[i] = (outer - inner) * body.radius() / 2;
      inner = outer;
    }
  }

  // Layers from 1.5 times the mean thickness in the middle to half of it at the surface, or, in
  // flat
  // pieces of few layers, alike.
  private static double edge(double part, double grade) {
    return part * (1 + grade - grade * part);
  }

  void surround(Surroundings surroundings) {
    around = surroundings;
  }

  double[] start(double celsius) {
    double[] state = new double[2 * layers + 2];
    for (int i = 0; i < layers; i++) {
      state[layers + i] = water[i];
      state[i] = (dryHeat[i] + water[i] * Crumb.WATER_HEAT) * celsius;
    }
    return state;
  }

  // Only the outer layers lose water; for the others the division is not done again.
  double temperature(double[] state, int layer) {
    double wet = state[layers + layer];
    if (wet != knownWater[layer]) {
      knownWater[layer] = wet;
      perHeat[layer] = 1 / (dryHeat[layer] + wet * Crumb.WATER_HEAT);
    }
    return state[layer] * perHeat[layer];
  }

  /** Temperature of the surface when the rates were last worked out, °C. */
  double surface() {
    return surface;
  }

  /** Sum of a part of the state: 0 the heat (J), 1 the water (kg). */
  double sum(double[] state, int part) {
    double sum = 0;
    for (int i = 0; i < layers; i++) {
      sum += state[part * layers + i];
    }
    return sum;
  }

  /** Heat taken up so far (0), heat gone with vapour (1), J. */
  double passed(double[] state, int which) {
    return state[2 * layers + which];
  }

  /** Longest step that is stable while the loaf is about as warm as it is, s. */
  double step(double[] state) {
    double longest = Double.MAX_VALUE;
    double inward = 0;
    double through = through(0, state);
    for (int i = 0; i < layers; i++) {
      double next = i == layers - 1 ? 1 / around.most() : through(i + 1, state);
      double outward = area[i] / (through + next);
      double heat = dryHeat[i] + state[layers + i] * Crumb.WATER_HEAT;
      longest = Math.min(longest, heat / (inward + outward));
      inward = outward;
      through = next;
    }
    return STABLE * longest;
  }

  // Resistance of half a layer a little warmer than it is, since it will be.
  private double through(int i, double[] state) {
    double wet = state[layers + i] * perWater[i];
    double dry = Crumb.CRUST_CONDUCTION;
    return half[i] / (dry + wet * (crumb.conduction(temperature(state, i) + 4) - dry));
  }

  // The change of each part of the state in a second; the same array each time.
  private double[] rates(double[] state) {
    double outward = 0;
    for (int i = 0; i < layers; i++) {
      double t = temperature(state, i);
      double wet = state[layers + i] * perWater[i];
      double dry = Crumb.CRUST_CONDUCTION;
      double k = dry + wet * (crumb.conduction(t) - dry);
      if (i > 0) {
        // Two half layers in a row; written with one division, for this is the inmost loop.
        double inner = conduction[i - 1];
        double flow =
            area[i - 1]
                * (t - temperature[i - 1])
                * inner
                * k
                / (half[i - 1] * k + half[i] * inner);
        rates[i - 1] = flow - outward;
        outward = flow;
      }
      temperature[i] = t;
      conduction[i] = k;
      rates[layers + i] = 0;
    }
    int last = layers - 1;
    double taken = area[last] * flux(temperature[last], half[last] / conduction[last]);
    rates[last] = taken - outward;
    rates[2 * layers] = taken;
    rates[2 * layers + 1] = leave(state);
    return rates;
  }

  /**
   * One explicit step of Euler's; the state moves in place. Written out, since all that a library
   * does around this line took as long as the balances themselves.
   */
  void advance(double[] state, double seconds) {
    double[] change = rates(state);
    for (int i = 0; i < state.length; i++) {
      state[i] += seconds * change[i];
    }
  }

  // W/m² into the surface; radiation is made linear about the surface temperature, in two rounds.
  private double flux(double outermost, double through) {
    surface = outermost;
    double flux = 0;
    double hot = around.celsius() + KELVIN;
    for (int round = 0; round < 2; round++) {
      double cold = surface + KELVIN;
      double h =
          around.air() + around.radiation() * STEFAN * (hot * hot + cold * cold) * (hot + cold);
      flux = (around.celsius() - outermost) / (1 / h + through);
      surface = around.celsius() - flux / h;
    }
    return flux;
  }

  // Vapour from the outermost moist layer through skin and dry crust; it takes its heat of
  // evaporation and its own warmth along.
  private double leave(double[] state) {
    if (around.open() <= 0) {
      return 0;
    }
    double left = area[layers - 1] * around.open();
    double crust = 0;
    double lost = 0;
    for (int i = layers - 1; i >= 0 && left > 0; i--) {
      double moist = Math.min(1, state[layers + i] * perWater[i] / LAST_WATER);
      double share = left * moist;
      double drive = Crumb.vapour(temperature[i]) - around.vapour();
      double vapour = drive > 0 ? share * drive / (1 / skin + crust / CRUST_VAPOUR) : 0;
      double heat = vapour * (Crumb.EVAPORATION + Crumb.WATER_HEAT * temperature[i]);
      rates[layers + i] = -vapour;
      rates[i] -= heat;
      lost += heat;
      left = moist == 1 ? 0 : left - share;
      crust += 2 * half[i];
    }
    return lost;
  }

  /** Boils off what a step has heated past boiling; the heat goes with the vapour. */
  void boil(double[] state, double boiling) {
    for (int i = layers - 1; i >= 0; i--) {
      double wet = state[layers + i];
      double excess = state[i] - (dryHeat[i] + wet * Crumb.WATER_HEAT) * boiling;
      if (excess > 0 && wet > 0) {
        double gone = Math.min(wet, excess / Crumb.EVAPORATION);
        double heat = gone * (Crumb.EVAPORATION + Crumb.WATER_HEAT * boiling);
        state[layers + i] = wet - gone;
        state[i] -= heat;
        state[2 * layers + 1] += heat;
      }
    }
  }
}
