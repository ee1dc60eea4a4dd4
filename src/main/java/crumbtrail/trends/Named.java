package crumbtrail.trends;

/**
 * A cause of a ranking and how likely it is.
 *
 * @param cause key
 * @param probability 0 to 1
 */
public record Named(String cause, double probability) {}
