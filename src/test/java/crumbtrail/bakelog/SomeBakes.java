package crumbtrail.bakelog;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import javax.imageio.ImageIO;

/** Invented bakes at the bread school in the tide mill. */
public final class SomeBakes {
  public static final LocalDateTime TUESDAY = LocalDateTime.of(2026, 3, 3, 14, 30);

  /** A sheet with the white space that its writer gave it. */
  public static final String SHEET =
      "{\n  \"title\": \"Tin loaf\",\n\t\"formula\": [\"500 g flour\"], \"seen\": [\"größere Löcher\"]}\n";

  public static final String REPORT =
      "{\"causes\":[{\"key\":\"over-proofed\",\"probability\":0.83},"
          + "{\"key\":\"under-baked\",\"probability\":0.1}],"
          + "\"workup\":{\"hydration\":{\"value\":62.0,\"unit\":\"%\"},"
          + "\"dough temperature\":{\"value\":25.5,\"unit\":\"°C\"}},\"ruleBase\":\"abc123\"}";

  private SomeBakes() {}

  public static Bake tinLoaf() {
    return tinLoaf(0);
  }

  /** The tin loaf of so many days later. */
  public static Bake tinLoaf(int days) {
    return Bake.of(TUESDAY.plusDays(days), "Tin loaf, class " + days, "Tin loaf", SHEET);
  }

  public static Bake traced(int days) {
    return tinLoaf(days).withTraced(new Traced(REPORT, "abc123"));
  }

  /** A picture of this size as a file of this format. */
  public static byte[] picture(int width, int height, String format) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.ORANGE);
    pen.fillRect(0, 0, width / 2, height);
    pen.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, format, bytes);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
    return bytes.toByteArray();
  }

  public static Photo photo() {
    return Photo.unnumbered("image/png", 4, 3, picture(4, 3, "png"));
  }
}
