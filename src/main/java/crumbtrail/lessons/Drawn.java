package crumbtrail.lessons;

import crumbtrail.picture.LoafPicture;

/**
 * A drawn loaf.
 *
 * @param caption what it stands for, a few words
 * @param picture the drawing with its words
 */
public record Drawn(String caption, LoafPicture picture) {}
