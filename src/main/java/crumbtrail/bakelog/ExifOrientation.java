package crumbtrail.bakelog;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How a camera was held, as the Exif part of a JPEG file tells it: 1 upright, 3 upside down, 6 and
 * 8 on a side, the others the same in a mirror (CIPA DC-008, Exif 2.32, tag 0112).
 */
final class ExifOrientation {
  static final int UPRIGHT = 1;

  private static final int TAG = 0x0112;
  private static final byte[] MARK = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  private ExifOrientation() {}

  /** The orientation of a file; upright where it tells none, or nothing that can be read. */
  static int of(byte[] file) {
    try {
      return search(ByteBuffer.wrap(file));
    } catch (RuntimeException beyond) {
      // Lengths that lead out of the file: a picture without a hint is better than none.
      return UPRIGHT;
    }
  }

  private static int search(ByteBuffer file) {
    if (file.getShort(0) != (short) 0xFFD8) {
      return UPRIGHT;
    }
    int at = 2;
    while (file.get(at) == (byte) 0xFF) {
      int kind = file.get(at + 1) & 0xFF;
      int length = file.getShort(at + 2) & 0xFFFF;
      if (kind == 0xE1 && marked(file, at + 4)) {
        return ofTiff(file.slice(at + 10, length - 8));
      }
      if (kind == 0xDA) {
        return UPRIGHT;
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static boolean marked(ByteBuffer file, int at) {
    for (int i = 0; i < MARK.length; i++) {
      if (file.get(at + i) != MARK[i]) {
        return false;
      }
    }
    return true;
  }

  private static int ofTiff(ByteBuffer tiff) {
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    int entries = tiff.getShort(directory) & 0xFFFF;
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + 12 * i;
      if ((tiff.getShort(entry) & 0xFFFF) == TAG) {
        int told = tiff.getShort(entry + 8) & 0xFFFF;
        return told >= 1 && told <= 8 ? told : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  /**
   * What sets a picture upright.
   *
   * @param width of the picture as it lies in the file
   * @param height of the picture as it lies in the file
   */
  static AffineTransform turn(int orientation, int width, int height) {
    return switch (orientation) {
      case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
      case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
      case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
      case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
      case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
      case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
      case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
      default -> new AffineTransform();
    };
  }
}
