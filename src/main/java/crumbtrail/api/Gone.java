package crumbtrail.api;

/**
 * What is no longer there.
 *
 * @param gone what it was
 */
public record Gone(String gone) {}
