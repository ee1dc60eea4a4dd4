package crumbtrail.rules;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** A name for the content of a folder: equal content, equal name. */
final class FolderHash {
  private FolderHash() {}

  /** The first 16 hexadecimal digits of the SHA-256 of all file names and contents. */
  static String of(Path folder) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(folder)) {
      files = all.filter(Files::isRegularFile).sorted().toList();
    }
    MessageDigest digest = sha256();
    for (Path file : files) {
      digest.update(folder.relativize(file).toString().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
      digest.update(Files.readAllBytes(file));
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, 16);
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
