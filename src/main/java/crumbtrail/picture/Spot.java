package crumbtrail.picture;

/** A point of the picture, x to the right, y downwards. */
record Spot(double x, double y) {
  Spot plus(double right, double down) {
    return new Spot(x + right, y + down);
  }

  /** The point a share of the way to another. */
  Spot towards(Spot other, double share) {
    return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
  }

  double distance(Spot other) {
    return StrictMath.hypot(other.x - x, other.y - y);
  }
}
