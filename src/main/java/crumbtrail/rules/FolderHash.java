package crumbtrail.rules;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/** A name for the content of a folder: equal content, equal name. */
final class FolderHash {
  private FolderHash() {}

  /**
   * The first 16 hexadecimal digits of the SHA-256 of all file names and contents. Names are told,
   * and put in order, with {@code /} between their parts, so that the name does not tell which
   * system the folder lies on.
   *
   * @throws IOException if the folder or a file in it cannot be read
   */
  static String of(Path folder) throws IOException {
    SortedMap<String, Path> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      all.filter(Files::isRegularFile).forEach(file -> files.put(name(folder, file), file));
    }
    MessageDigest digest = sha256();
    for (Map.Entry<String, Path> file : files.entrySet()) {
      digest.update(file.getKey().getBytes(StandardCharsets.UTF_8));
      digest.update((byte) 0);
      digest.update(Files.readAllBytes(file.getValue()));
    }
    return HexFormat.of().formatHex(digest.digest()).substring(0, 16);
  }

  private static String name(Path folder, Path file) {
    return StreamSupport.stream(folder.relativize(file).spliterator(), false)
        .map(Path::toString)
        .collect(Collectors.joining("/"));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
