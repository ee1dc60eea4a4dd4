package crumbtrail.bakelog;

import java.util.UUID;

/** A photo that has been made safe to keep: of bounded size and without metadata. Immutable. */
public final class Photo {
  private final PhotoNote note;
  private final byte[] picture;

  /**
   * @param picture the file; copied
   * @throws IllegalArgumentException if it is no file of the kind that the note says
   */
  public Photo(PhotoNote note, byte[] picture) {
    int first = note.kind().equals(PhotoNote.PNG) ? 0x89 : 0xFF;
    if (picture.length != note.bytes() || picture.length == 0 || (picture[0] & 0xFF) != first) {
      throw new IllegalArgumentException("the photo " + note.file() + " is not what it says");
    }
    this.note = note;
    this.picture = picture.clone();
  }

  static Photo unnumbered(String kind, int width, int height, byte[] picture) {
    return new Photo(
        new PhotoNote(0, UUID.randomUUID(), kind, width, height, picture.length), picture);
  }

  /** What it is. */
  public PhotoNote note() {
    return note;
  }

  /** A copy of the file. */
  public byte[] picture() {
    return picture.clone();
  }
}
