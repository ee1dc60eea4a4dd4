package crumbtrail.bakelog;

/**
 * A bake of a list with its numbers.
 *
 * @param line the bake
 * @param digest what its report counts
 */
public record Digested(BakeLine line, Digest digest) {}
