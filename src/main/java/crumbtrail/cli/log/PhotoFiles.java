package crumbtrail.cli.log;

import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.PhotoMaker;
import crumbtrail.cli.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Photos as files that the user names. */
final class PhotoFiles {
  private PhotoFiles() {}

  /** All of them, or a {@link BadInput} that names each that cannot be kept. */
  static List<Photo> read(List<String> names) throws IOException {
    List<Photo> photos = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    for (String name : names) {
      Path file = Path.of(name);
      if (Files.isDirectory(file)) {
        faults.add(name + " is a folder. Name a file.");
        continue;
      }
      try (InputStream in = Files.newInputStream(file)) {
        photos.add(PhotoMaker.of(in.readNBytes(PhotoMaker.MOST_BYTES + 1)));
      } catch (PhotoMaker.NoPhoto fault) {
        faults.add(name + " cannot be kept as a photo: " + fault.getMessage() + ".");
      }
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    return photos;
  }
}
