package crumbtrail.bakelog.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** Reports repeat themselves; packed they take a fifth of the room. */
final class Packed {
  private Packed() {}

  static byte[] of(String text) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(32 * 1024);
    try (GZIPOutputStream packing = new GZIPOutputStream(bytes)) {
      packing.write(text.getBytes(StandardCharsets.UTF_8));
    } catch (IOException impossible) {
      throw new UncheckedIOException("memory cannot fail to be written", impossible);
    }
    return bytes.toByteArray();
  }

  static String text(byte[] packed) {
    try (GZIPInputStream unpacking = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      return new String(unpacking.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new UncheckedIOException("a stored report cannot be unpacked", fault);
    }
  }
}
