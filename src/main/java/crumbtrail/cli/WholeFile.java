package crumbtrail.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * A file that comes under its name only when it is whole: written beside it and moved there, so
 * that a run that breaks off leaves what was there before.
 */
final class WholeFile {
  private WholeFile() {}

  /** Writes a file. */
  @FunctionalInterface
  interface Writing {
    void to(Path file) throws IOException;
  }

  /**
   * Writes a file under a name. A link stays a link to the file that is written; what is no file (a
   * pipe, {@code /dev/null}) is written to as it is, for there is nothing to put in its place.
   */
  static void write(Path target, Writing writing) throws IOException {
    if (Files.exists(target) && !Files.isRegularFile(target)) {
      writing.to(target);
      return;
    }
    Path place = Files.exists(target) ? target.toRealPath() : target;
    Path draft = place.resolveSibling(place.getFileName() + ".part");
    try {
      writing.to(draft);
      Files.move(draft, place, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }
}
