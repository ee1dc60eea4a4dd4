package crumbtrail.api;

/**
 * A photo to be added.
 *
 * @param picture a JPEG, PNG or GIF of at most 25 MB in Base64
 */
public record PhotoRequest(String picture) {}
