package crumbtrail.web;

import java.awt.image.BufferedImage;
import java.awt.image.IndexColorModel;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;

/** Makes the picture of a page small: its commonest colours only, the others by their nearest. */
final class SmallPicture {
  private static final int COLOURS = 64;

  /** Shades that nobody tells apart are one. */
  private static final int MASK = 0xF8F8F8;

  private SmallPicture() {}

  /** The same picture as PNG with a palette. */
  static byte[] of(byte[] png) throws IOException {
    BufferedImage full = ImageIO.read(new ByteArrayInputStream(png));
    Map<Integer, Integer> counts = new HashMap<>();
    for (int y = 0; y < full.getHeight(); y++) {
      for (int x = 0; x < full.getWidth(); x++) {
        counts.merge(full.getRGB(x, y) & MASK, 1, Integer::sum);
      }
    }
    List<Integer> palette =
        counts.entrySet().stream()
            .sorted(Map.Entry.<Integer, Integer>comparingByValue().reversed())
            .limit(COLOURS)
            .map(Map.Entry::getKey)
            .toList();
    int[] colours = palette.stream().mapToInt(SmallPicture::whole).toArray();
    IndexColorModel model =
        new IndexColorModel(
            8, colours.length, colours, 0, false, -1, java.awt.image.DataBuffer.TYPE_BYTE);
    BufferedImage small =
        new BufferedImage(
            full.getWidth(), full.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
    Map<Integer, Integer> nearest = new HashMap<>();
    for (int y = 0; y < full.getHeight(); y++) {
      for (int x = 0; x < full.getWidth(); x++) {
        int place = nearest.computeIfAbsent(full.getRGB(x, y) & MASK, one -> nearest(palette, one));
        small.getRaster().setSample(x, y, 0, place);
      }
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(small, "png", out);
    return out.toByteArray();
  }

  // White stays white: what the mask took away at the bright end is put back.
  private static int whole(int masked) {
    return masked | ((masked >> 5) & 0x070707);
  }

  private static int nearest(List<Integer> palette, int colour) {
    int best = 0;
    for (int place = 1; place < palette.size(); place++) {
      if (apart(palette.get(place), colour) < apart(palette.get(best), colour)) {
        best = place;
      }
    }
    return best;
  }

  private static int apart(int one, int other) {
    int sum = 0;
    for (int shift = 0; shift <= 16; shift += 8) {
      int gap = (one >> shift & 0xFF) - (other >> shift & 0xFF);
      sum += gap * gap;
    }
    return sum;
  }
}
