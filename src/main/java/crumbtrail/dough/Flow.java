package crumbtrail.dough;

/**
 * The equations of a dough during one stay, and single steps along them by the classical method of
 * Runge and Kutta. Time in minutes of the stay. The step is written out: what a library does around
 * it took longer than the equations. Not shared between threads.
 */
final class Flow {
  private static final int YEAST = 0;
  private static final int STARTER = 1;
  private static final int AGE = 2;
  private static final int SUGAR = 3;
  private static final int STARCH = 4;
  private static final int MADE = 5;
  private static final int HELD = 6;
  private static final int SIZE = 7;

  // Enzymes split an eighth of the broken starch that is left in an hour at 26 °C (common practice
  // in size).
  private static final double SPLITTING = 0.125;

  // Dry yeast wakes with half its strength asleep and the rest up within an hour (common practice).
  private static final double ASLEEP = 0.5;
  private static final double WAKING_HOURS = 1.0 / 3;

  // Gas beyond what the dough can hold leaves it within half an hour (our choice).
  private static final double LEAK_PER_HOUR = 2;

  // Growth was set on doughs that have the sugar of their flour.
  private static final double WELL_FED = Gassing.fed(Fermentation.FLOUR_SUGAR);

  private final Gassing gassing;
  private final GasHold hold;
  private final DoughMix mix;
  private final DoughState begin;
  private final Fermentation.Stay stay;

  private final double[] first = new double[SIZE];
  private final double[] second = new double[SIZE];
  private final double[] third = new double[SIZE];
  private final double[] fourth = new double[SIZE];
  private final double[] between = new double[SIZE];

  // A step asks twice in a row at the same minute: of the middle of a step, and of its end,
  // which is the beginning of the next. What depends on the clock alone is worked out once.
  private double askedMinute = Double.NaN;
  private double askedCelsius;
  private double askedActivity;
  private double askedWarmth;
  private double askedGrowth;

  Flow(Gassing gassing, GasHold hold, DoughMix mix, DoughState begin, Fermentation.Stay stay) {
    this.gassing = gassing;
    this.hold = hold;
    this.mix = mix;
    this.begin = begin;
    this.stay = stay;
  }

  double[] initial() {
    double[] state = new double[SIZE];
    state[YEAST] = begin.yeast();
    state[STARTER] = begin.starter();
    state[AGE] = begin.age();
    state[SUGAR] = begin.sugar();
    state[STARCH] = begin.starch();
    state[MADE] = begin.made();
    state[HELD] = begin.held();
    return state;
  }

  // A step that ends just beyond the last of the sugar may overshoot it by a trace.
  DoughState state(double minute, double[] now) {
    return new DoughState(
        begin.minute() + minute,
        celsius(minute),
        now[YEAST],
        now[STARTER],
        now[AGE],
        Math.max(0, now[SUGAR]),
        now[STARCH],
        now[MADE],
        now[HELD],
        strain(now));
  }

  /** Gas an hour that the yeast of a state makes at a temperature with the sugar of its flour. */
  double wellFed(double[] now, double celsius) {
    return gassing.rate(
        now[YEAST], now[STARTER], Fermentation.FLOUR_SUGAR, YeastActivity.at(celsius));
  }

  /** Moves a state from one minute to another, in place. */
  void step(double minute, double next, double[] now) {
    double length = next - minute;
    double middle = minute + length / 2;
    rates(minute, now, first);
    rates(middle, ahead(now, length / 2, first), second);
    rates(middle, ahead(now, length / 2, second), third);
    rates(next, ahead(now, length, third), fourth);
    for (int part = 0; part < SIZE; part++) {
      now[part] += length / 6 * (first[part] + 2 * second[part] + 2 * third[part] + fourth[part]);
    }
  }

  private double[] ahead(double[] now, double minutes, double[] perMinute) {
    for (int part = 0; part < SIZE; part++) {
      between[part] = now[part] + minutes * perMinute[part];
    }
    return between;
  }

  private void rates(double minute, double[] now, double[] perMinute) {
    if (minute != askedMinute) {
      askedMinute = minute;
      askedCelsius = celsius(minute);
      askedActivity = YeastActivity.at(askedCelsius);
      askedWarmth = YeastGrowth.warmth(askedCelsius);
      askedGrowth = begin.starter() == 0 ? 0 : YeastGrowth.ofSourdough(askedCelsius);
    }
    double activity = askedActivity;
    double awake = 1 - ASLEEP * Math.exp(-now[AGE] / WAKING_HOURS);
    double gas = gassing.rate(now[YEAST] * awake, now[STARTER], now[SUGAR], activity);
    double split = SPLITTING * mix.enzymes() * activity * Math.max(0, now[STARCH]);
    double most = hold.most(strain(now));
    double leak = LEAK_PER_HOUR * Math.max(0, now[HELD] - most);

    perMinute[YEAST] = YeastGrowth.inDough(now[YEAST], now[AGE], askedWarmth) / 60;
    perMinute[STARTER] = askedGrowth * now[STARTER] * Gassing.fed(now[SUGAR]) / WELL_FED / 60;
    perMinute[AGE] = activity / 60;
    perMinute[SUGAR] = (split - gassing.sugarFor(gas)) / 60;
    perMinute[STARCH] = -split / 60;
    perMinute[MADE] = gas / 60;
    perMinute[HELD] = (gas * hold.kept(now[HELD], most) - leak) / 60;
  }

  private double celsius(double minute) {
    return DoughTemperature.after(begin.celsius(), stay.celsius(), minute, stay.lag());
  }

  private double strain(double[] now) {
    return begin.strain() + (now[MADE] - begin.made()) / mix.volume();
  }
}
