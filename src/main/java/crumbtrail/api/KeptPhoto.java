package crumbtrail.api;

/**
 * A photo.
 *
 * @param id its number
 * @param kind media type: image/jpeg or image/png
 * @param width pixels
 * @param height pixels
 * @param picture the file in Base64
 */
public record KeptPhoto(long id, String kind, int width, int height, String picture) {}
