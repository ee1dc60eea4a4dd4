package crumbtrail.sheet;

/** How much a bake sheet may hold: far more than any bake needs, little enough to be read fast. */
final class SheetLimits {

  /** Characters of the whole sheet. */
  static final int SHEET = 500_000;

  /** Objects and lists within each other. */
  static final int NESTING = 30;

  /** Characters of one pasted recipe. */
  static final int RECIPE = 30_000;

  /** Characters of one remark, sign or other free text. */
  static final int TEXT = 2_000;

  /** Lines of one pasted recipe. */
  static final int RECIPE_LINES = 500;

  /** Lines of one formula. */
  static final int LINES = 150;

  /** Entries of any other list. */
  static final int ENTRIES = 100;

  private SheetLimits() {}
}
