package crumbtrail.oven;

/**
 * What a loaf stands in or on. The factors are our choice, reasoned from common practice: dark and
 * glass tins want the oven 14 °C (25 °F) lower, which is an eighth more heat; a hot stone gives its
 * heat as a contact that fades while it cools, here a steady 15 W/(m² K) over the base; vapour
 * leaves only where there is no wall.
 */
public enum Boundary {
  /** On a thin tray or grid: heated all round by the oven. */
  TRAY(1, 0, 1),
  /** On a hot stone, hearth or steel. */
  HEARTH(1, 15, 1),
  /** In a bright steel or aluminium tin. */
  STEEL_TIN(1, 0, 0.3),
  /** In a dark tin. */
  DARK_TIN(1.12, 0, 0.3),
  /** In glass. */
  GLASS(1.12, 0, 0.3),
  /** In a hot pot; whether its lid is on is said by the oven stage. */
  POT(0.9, 15, 0.7);

  final double heat;
  final double contact;
  final double open;

  Boundary(double heat, double contact, double open) {
    this.heat = heat;
    this.contact = contact;
    this.open = open;
  }
}
