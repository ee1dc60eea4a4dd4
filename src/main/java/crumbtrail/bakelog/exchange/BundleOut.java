package crumbtrail.bakelog.exchange;

import java.io.BufferedOutputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * Writes a {@link Bundle}. Of a zip file only one entry can be open at a time, so its lines wait in
 * a file beside it until the photos are in; memory stays flat.
 */
final class BundleOut implements AutoCloseable {
  private final Path lines;
  private final Writer bakes;
  private final @Nullable ZipOutputStream zip;
  private final Path folder;

  private BundleOut(Path folder, Path lines, @Nullable ZipOutputStream zip) throws IOException {
    this.folder = folder;
    this.lines = lines;
    this.zip = zip;
    this.bakes =
        new BufferedWriter(
            new OutputStreamWriter(Files.newOutputStream(lines), StandardCharsets.UTF_8));
  }

  /** Into a folder, or into a file that ends in {@code .zip}. */
  static BundleOut to(Path place) throws IOException {
    if (Bundle.zipped(place)) {
      OutputStream out = new BufferedOutputStream(Files.newOutputStream(place));
      return new BundleOut(
          place, place.resolveSibling(place.getFileName() + ".lines"), new ZipOutputStream(out));
    }
    Files.createDirectories(place.resolve(Bundle.PHOTOS));
    return new BundleOut(place, place.resolve(Bundle.BAKES), null);
  }

  void bake(String line) throws IOException {
    bakes.write(line);
    bakes.write('\n');
  }

  void photo(String file, byte[] picture) throws IOException {
    put(Bundle.PHOTOS + "/" + file, picture);
  }

  /** Writes what comes last. Without it, the bundle is not whole. */
  void finish(String about) throws IOException {
    bakes.close();
    if (zip != null) {
      zip.putNextEntry(new ZipEntry(Bundle.BAKES));
      Files.copy(lines, zip);
      zip.closeEntry();
    }
    put(Bundle.ABOUT, about.getBytes(StandardCharsets.UTF_8));
  }

  private void put(String name, byte[] bytes) throws IOException {
    if (zip == null) {
      Files.write(folder.resolve(name), bytes);
      return;
    }
    zip.putNextEntry(new ZipEntry(name));
    zip.write(bytes);
    zip.closeEntry();
  }

  @Override
  public void close() throws IOException {
    bakes.close();
    if (zip != null) {
      try {
        zip.close();
      } finally {
        Files.deleteIfExists(lines);
      }
    }
  }
}
