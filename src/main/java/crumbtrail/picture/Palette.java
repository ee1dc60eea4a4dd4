package crumbtrail.picture;

/**
 * The colours. Each differs from its neighbours in lightness too, so that a grey print and an eye
 * that misses a colour still part them.
 */
final class Palette {
  static final String INK = "#3a2a1c";
  static final String PLATE = "#fbf6ea";
  static final String EDGE = "#d9cbaa";
  static final String TABLE = "#eadfc4";
  static final String CELL = "#c79f66";
  static final String DEEP = "#8a6236";
  static final String DOUGH = "#f3e6c8";
  static final String DOUGH_SHADE = "#dcc79b";
  static final String FLOUR = "#fffdf6";
  static final String METAL = "#aeb5b8";
  static final String GLASS = "#eef3f1";
  static final String BUTTER = "#f4d35e";
  static final String FILLING = "#7a4a2b";
  static final String WATER = "#cfdfe2";
  static final String MOULD = "#7f9a86";

  private static final int[][] CRUST = {
    {0xf1, 0xdd, 0xac},
    {0xdf, 0xb5, 0x6f},
    {0xc0, 0x82, 0x42},
    {0x7c, 0x49, 0x23},
    {0x35, 0x23, 0x1a}
  };
  private static final int[][] CRUMB = {{0xf7, 0xea, 0xcb}, {0xcd, 0xc8, 0xba}};
  private static final int[][] DENSE = {{0xf7, 0xea, 0xcb}, {0xdd, 0xc4, 0x92}};

  private Palette() {}

  /** Crust at a darkness from -1, pale, to 1, burnt. */
  static String crust(double dark) {
    return between(CRUST, (dark + 1) / 2);
  }

  /** Crumb at a greyness and a heaviness from 0 to 1. */
  static String crumb(double grey, double heavy) {
    return grey > 0 ? between(CRUMB, grey) : between(DENSE, heavy);
  }

  private static String between(int[][] stops, double share) {
    double at = Math.max(0, Math.min(1, share)) * (stops.length - 1);
    int low = Math.min(stops.length - 2, (int) at);
    double rest = at - low;
    int colour = 0;
    for (int channel = 0; channel < 3; channel++) {
      double value = stops[low][channel] + (stops[low + 1][channel] - stops[low][channel]) * rest;
      colour = colour * 256 + (int) Math.round(value);
    }
    return String.format("#%06x", colour);
  }
}
