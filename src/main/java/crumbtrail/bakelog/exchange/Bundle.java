package crumbtrail.bakelog.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A log outside of a store: a folder, or a zip file of the same, with {@code about.json}, one bake
 * a line in {@code bakes.jsonl}, and the photos below {@code photos}.
 */
final class Bundle implements AutoCloseable {
  static final String ABOUT = "about.json";
  static final String BAKES = "bakes.jsonl";
  static final String PHOTOS = "photos";

  private final Path root;
  private final @Nullable FileSystem zip;

  private Bundle(Path root, @Nullable FileSystem zip) {
    this.root = root;
    this.zip = zip;
  }

  static boolean zipped(Path place) {
    return place.toString().toLowerCase(Locale.ROOT).endsWith(".zip");
  }

  /** One that is there. */
  static Bundle open(Path place) throws IOException {
    return Files.isDirectory(place) ? new Bundle(place, null) : zip(place);
  }

  private static Bundle zip(Path file) throws IOException {
    URI address = URI.create("jar:" + file.toAbsolutePath().toUri());
    FileSystem zip = FileSystems.newFileSystem(address, Map.of());
    return new Bundle(zip.getPath("/"), zip);
  }

  boolean has(String name) {
    return Files.isRegularFile(root.resolve(name));
  }

  InputStream read(String name) throws IOException {
    return Files.newInputStream(root.resolve(name));
  }

  byte[] photo(String file) throws IOException {
    return Files.readAllBytes(root.resolve(PHOTOS).resolve(file));
  }

  @Override
  public void close() throws IOException {
    if (zip != null) {
      zip.close();
    }
  }
}
