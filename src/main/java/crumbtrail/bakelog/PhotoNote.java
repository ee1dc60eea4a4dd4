package crumbtrail.bakelog;

import java.util.UUID;

/**
 * That there is a photo, without its pixels.
 *
 * @param id its number in this log
 * @param uid its name in every log
 * @param kind media type: {@code image/jpeg} or {@code image/png}
 * @param width pixels
 * @param height pixels
 * @param bytes length of the file
 */
public record PhotoNote(long id, UUID uid, String kind, int width, int height, int bytes) {

  static final String JPEG = "image/jpeg";
  static final String PNG = "image/png";

  public PhotoNote {
    if (!kind.equals(JPEG) && !kind.equals(PNG)) {
      throw new IllegalArgumentException("a photo is " + JPEG + " or " + PNG + ", not " + kind);
    }
  }

  /** The name under which it is written out. */
  public String file() {
    return uid + (kind.equals(PNG) ? ".png" : ".jpg");
  }
}
