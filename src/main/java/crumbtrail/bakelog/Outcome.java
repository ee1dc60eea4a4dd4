package crumbtrail.bakelog;

/** How a bake came out, in the baker's own judgement. */
public enum Outcome {
  GOOD,
  FAIR,
  FAILED
}
