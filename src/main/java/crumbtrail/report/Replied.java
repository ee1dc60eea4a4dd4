package crumbtrail.report;

/**
 * The report on a bake after one more answer.
 *
 * @param report on the sheet with the answer
 * @param taken what became of the answer
 */
public record Replied(Report report, Reply.Taken taken) {}
