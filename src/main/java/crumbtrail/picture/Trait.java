package crumbtrail.picture;

import java.util.Arrays;
import java.util.Optional;

/**
 * What can be more or less than on a sound bake. Nought is sound; below and above it the trait
 * shows one way or the other, up to -1 and 1. A trait without words for below knows only one way.
 */
public enum Trait {
  // The form of the loaf.
  VOLUME("volume", Scene.LOAF, "small, short of its full size", "blown up beyond its size"),
  SPREAD("spread", Scene.LOAF, "round like a ball", "spread low and wide"),
  LOPSIDED("lopsided", Scene.LOAF, null, "lopsided"),
  TOP_FALL("top-fall", Scene.LOAF, null, "top sunk in"),
  SIDES_IN("sides-in", Scene.LOAF, null, "sides drawn in"),
  SIDE_BURST("side-burst", Scene.LOAF, null, "side torn open near the foot"),
  CAP_LIFT("cap-lift", Scene.LOAF, null, "top crust lifted like a cap"),
  CUTS("cuts", Scene.LOAF, "cuts closed, no ear", "cuts wide open"),
  OVERFLOW("overflow", Scene.LOAF, null, "run over the rim of the tin"),
  STUCK("stuck", Scene.LOAF, null, "torn where it stuck to the tin"),
  SPRING("oven-spring", Scene.LOAF, "no higher than when it went in", "sprung high in the oven"),
  // The crumb.
  CELL_SIZE("cell-size", Scene.LOAF, "fine, closed cells", "coarse, open cells"),
  CELL_NUMBER("cell-number", Scene.LOAF, "few cells in heavy crumb", "many cells"),
  UNEVEN("uneven-cells", Scene.LOAF, "even cells", "cells of many sizes"),
  UPRIGHT("upright-cells", Scene.LOAF, "flattened cells", "cells drawn upwards"),
  HOLES("holes", Scene.LOAF, null, "big holes"),
  TUNNEL("tunnel", Scene.LOAF, null, "a tunnel through the crumb"),
  FLYING_CRUST("flying-crust", Scene.LOAF, null, "a hollow under the top crust"),
  DENSE_BAND("dense-band", Scene.LOAF, null, "a dense band along the base"),
  STREAKS("streaks", Scene.LOAF, null, "dense streaks and cores"),
  FLOUR_LUMPS("flour-lumps", Scene.LOAF, null, "lumps of dry flour"),
  GUMMY("gummy", Scene.LOAF, null, "gummy crumb that smears the knife"),
  RAW("raw", Scene.LOAF, null, "raw dough in the middle"),
  CRUMBLY("crumbly", Scene.LOAF, null, "crumb that falls to crumbs"),
  DRY("dry", Scene.LOAF, null, "dry cracks in the crumb"),
  GREY("grey", Scene.LOAF, null, "grey, dull crumb"),
  FRUIT("fruit-sunk", Scene.LOAF, null, "fruit sunk to the base"),
  SWIRL_GAP("swirl-gap", Scene.LOAF, null, "a gap around the filling"),
  LAYERS("layers", Scene.LOAF, "layers run together, bready", "clear open layers"),
  PUFF("puff", Scene.LOAF, "no pocket inside", "puffed to a pocket"),
  // The crust.
  CRUST_COLOUR("crust-colour", Scene.LOAF, "pale crust", "dark, burnt crust"),
  BASE_COLOUR("base-colour", Scene.LOAF, "pale base", "burnt base"),
  PATCHY("patchy", Scene.LOAF, null, "patchy browning"),
  CRUST_THICKNESS("crust-thickness", Scene.LOAF, "thin, soft crust", "thick, hard crust"),
  BASE_THICKNESS("base-thickness", Scene.LOAF, null, "thick, hard base"),
  WET_BASE("wet-base", Scene.LOAF, null, "wet, limp base"),
  BLISTERS("blisters", Scene.LOAF, null, "blisters on the crust"),
  CRACKS("cracks", Scene.LOAF, null, "fine cracks and flakes in the crust"),
  WRINKLES("wrinkles", Scene.LOAF, null, "wrinkled crust"),
  DULL("dull", Scene.LOAF, null, "dull, floury crust without shine"),
  SPOTS("spots", Scene.LOAF, null, "spots on the crust"),
  ROUGH("rough", Scene.LOAF, null, "rough, torn surface"),
  FOLD_CRACK("fold-crack", Scene.LOAF, null, "cracks where it is folded"),
  // What came out of it or onto it.
  FILLING_LEAK("filling-leak", Scene.LOAF, null, "filling run out"),
  BUTTER_LEAK("butter-leak", Scene.LOAF, null, "butter run out around it"),
  MOULD("mould", Scene.LOAF, null, "furry spots of mould"),
  ROPE("rope", Scene.LOAF, null, "sticky threads drawn from the crumb"),
  // Dough and starter.
  RISE("rise", Scene.BOWL, "hardly above the mark", "far above the mark, soon"),
  SECOND_RISE("second-rise", Scene.BOWL, "low again after shaping", null),
  SHAGGY("shaggy", Scene.BOWL, null, "lumps, dry flour and loose liquid"),
  WET("wet", Scene.BOWL, null, "wet and shining, liquid around it"),
  POURS("pours", Scene.BOWL, null, "pours from the spoon like batter"),
  SKIN("skin", Scene.BOWL, null, "a dry, crazed skin"),
  SLACK("slack", Scene.BENCH, null, "flows out flat"),
  STICKY("sticky", Scene.BENCH, null, "strings to the scraper"),
  STIFF("stiff", Scene.BENCH, null, "stands stiff, with dry cracks"),
  SPRINGS_BACK("springs-back", Scene.BENCH, null, "draws back from where it was rolled"),
  TEARS("tears", Scene.BENCH, null, "rips as it is stretched"),
  GREASY("greasy", Scene.BENCH, null, "fat shines and seeps out"),
  CLINGS("clings", Scene.BASKET, null, "clings to the cloth and tears"),
  SANK("sank", Scene.BASKET, null, "sank and wrinkled before it was baked"),
  LEVEL("level", Scene.JAR, "level still at the band, hardly a bubble", null),
  THIN("thin", Scene.JAR, null, "runs off the spoon like cream"),
  HOOCH("hooch", Scene.JAR, null, "a dark liquid on top"),
  FUR("fur", Scene.JAR, null, "fur and coloured streaks on top"),
  FOAM("foam", Scene.CUP, "no head of foam", null),
  BUTTER_PIECES("butter-pieces", Scene.SHEET, null, "butter broken up and through the dough");

  private final String key;
  private final Scene scene;
  private final String below;
  private final String above;

  Trait(String key, Scene scene, String below, String above) {
    this.key = key;
    this.scene = scene;
    this.below = below;
    this.above = above;
  }

  /** The name under which pictures.yaml knows it. */
  public String key() {
    return key;
  }

  /** Where it can be seen. */
  public Scene scene() {
    return scene;
  }

  /** Whether a sound bake can be left this way. */
  boolean knows(double amount) {
    return amount >= -1 && amount <= 1 && (amount < 0 ? below : above) != null;
  }

  /** In words what is seen; empty at nought. */
  String words(double amount) {
    String words = amount < 0 ? below : above;
    return amount == 0 || words == null ? "" : words;
  }

  /** The trait of this name. */
  public static Optional<Trait> of(String key) {
    return Arrays.stream(values()).filter(trait -> trait.key.equals(key)).findFirst();
  }
}
