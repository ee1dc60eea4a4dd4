package crumbtrail.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** Reads what the user names: a file, or standard input for a hyphen. */
final class Input {
  private static final int MOST_BYTES = 4 * 1024 * 1024;

  private Input() {}

  static String text(String name) throws IOException {
    if (name.equals("-")) {
      byte[] bytes = System.in.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new BadInput(
            List.of("Standard input is over 4 MB. A bake sheet has a few kilobytes."));
      }
      return new String(bytes, StandardCharsets.UTF_8);
    }
    Path file = file(name);
    if (Files.size(file) > MOST_BYTES) {
      throw new BadInput(List.of(name + " is over 4 MB. A bake sheet has a few kilobytes."));
    }
    try {
      return Files.readString(file);
    } catch (MalformedInputException fault) {
      throw new BadInput(List.of(name + " is not UTF-8 text. Save it as UTF-8 and try again."));
    }
  }

  static BufferedReader lines(String name) throws IOException {
    if (name.equals("-")) {
      return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    }
    // Malformed bytes are replaced, so that one bad line does not end the batch.
    return new BufferedReader(
        new InputStreamReader(Files.newInputStream(file(name)), StandardCharsets.UTF_8));
  }

  private static Path file(String name) throws NoSuchFileException {
    Path file = Path.of(name);
    if (!Files.exists(file)) {
      throw new NoSuchFileException(name);
    }
    if (Files.isDirectory(file)) {
      throw new BadInput(List.of(name + " is a folder. Name a file."));
    }
    return file;
  }
}
