package crumbtrail.oven;

/** A loaf as it leaves the oven, layer by layer. Nothing of it changes. */
public final class HotLoaf {
  private final Loaf loaf;
  private final double metres;
  private final double[] state;

  HotLoaf(Loaf loaf, double metres, double[] state) {
    this.loaf = loaf;
    this.metres = metres;
    this.state = state.clone();
  }

  Loaf loaf() {
    return loaf;
  }

  double metres() {
    return metres;
  }

  double[] state() {
    return state.clone();
  }
}
