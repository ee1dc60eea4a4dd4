package crumbtrail.quantity;

/**
 * A quantity found inside a longer text.
 *
 * @param quantity what was found
 * @param bare whether no unit was written, so that pieces are meant
 * @param start where it starts in the text
 * @param end where the text goes on after it
 */
public record Scan(Quantity quantity, boolean bare, int start, int end) {}
