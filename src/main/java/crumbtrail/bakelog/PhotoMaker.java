package crumbtrail.bakelog;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Makes a photo safe to keep. The picture is decoded and painted anew, so that nothing of the file
 * stays but its pixels: no place, no time, no name of a camera, and nothing hidden. A picture that
 * a camera holds sideways is set upright first, since that too is only said in what is taken away.
 */
public final class PhotoMaker {
  /** Bytes of a file that is read at all. */
  public static final int MOST_BYTES = 25_000_000;

  /** Pixels of a picture that is decoded at all; a small file can unfold to a very large one. */
  private static final long MOST_PIXELS = 100_000_000;

  /** Pixels of the longer side that are kept. */
  static final int LONGEST_SIDE = 1600;

  /** Bytes that are kept. */
  static final int MOST_KEPT = 900_000;

  private static final float[] QUALITIES = {0.85f, 0.7f, 0.5f, 0.3f};

  private PhotoMaker() {}

  /** Why a file cannot be kept as a photo. */
  public static final class NoPhoto extends Exception {
    private static final long serialVersionUID = 1L;

    NoPhoto(String what) {
      super(what);
    }
  }

  /**
   * The photo of a file.
   *
   * @throws NoPhoto with what is wrong and what would do
   */
  public static Photo of(byte[] file) throws NoPhoto {
    if (file.length > MOST_BYTES) {
      throw new NoPhoto("the file is over 25 MB; make the picture smaller");
    }
    try {
      String format = format(file);
      BufferedImage upright = upright(read(file), ExifOrientation.of(file));
      if (format.equals("png")) {
        byte[] png = png(upright);
        if (png.length <= MOST_KEPT) {
          return Photo.unnumbered(PhotoNote.PNG, upright.getWidth(), upright.getHeight(), png);
        }
      }
      return jpeg(upright);
    } catch (IOException | RuntimeException fault) {
      // Decoders answer a broken file in many ways.
      throw new NoPhoto("the picture is broken (" + fault.getMessage() + "); save it anew");
    }
  }

  private static String format(byte[] file) throws NoPhoto, IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      String name =
          readers.hasNext() ? readers.next().getFormatName().toLowerCase(Locale.ROOT) : "";
      return switch (name) {
        case "jpeg", "jpg" -> "jpeg";
        case "png", "gif" -> "png";
        default -> throw new NoPhoto("this is no picture that can be kept; save it as JPEG or PNG");
      };
    }
  }

  // Large pictures are thinned out while they are decoded, so that they never fill the memory.
  private static BufferedImage read(byte[] file) throws NoPhoto, IOException {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      ImageReader reader = ImageIO.getImageReaders(in).next();
      try {
        reader.setInput(in, true, true);
        int width = reader.getWidth(0);
        int height = reader.getHeight(0);
        if ((long) width * height > MOST_PIXELS) {
          throw new NoPhoto("the picture has over 100 million pixels; make it smaller");
        }
        ImageReadParam thin = reader.getDefaultReadParam();
        int step = Math.max(1, Math.max(width, height) / (2 * LONGEST_SIDE));
        thin.setSourceSubsampling(step, step, 0, 0);
        return reader.read(0, thin);
      } finally {
        reader.dispose();
      }
    }
  }

  private static BufferedImage upright(BufferedImage image, int orientation) {
    int width = image.getWidth();
    int height = image.getHeight();
    double scale = Math.min(1, (double) LONGEST_SIDE / Math.max(width, height));
    boolean sideways = orientation >= 5;
    int across = Math.max(1, (int) Math.round((sideways ? height : width) * scale));
    int down = Math.max(1, (int) Math.round((sideways ? width : height) * scale));
    boolean seeThrough = image.getColorModel().hasAlpha();
    BufferedImage made =
        new BufferedImage(
            across, down, seeThrough ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = made.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    AffineTransform place = AffineTransform.getScaleInstance(scale, scale);
    place.concatenate(ExifOrientation.turn(orientation, width, height));
    pen.drawImage(image, place, null);
    pen.dispose();
    return made;
  }

  private static byte[] png(BufferedImage image) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }

  private static Photo jpeg(BufferedImage image) throws IOException, NoPhoto {
    BufferedImage opaque =
        new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = opaque.createGraphics();
    pen.drawImage(image, 0, 0, Color.WHITE, null);
    pen.dispose();
    for (float quality : QUALITIES) {
      byte[] bytes = jpeg(opaque, quality);
      if (bytes.length <= MOST_KEPT) {
        return Photo.unnumbered(PhotoNote.JPEG, opaque.getWidth(), opaque.getHeight(), bytes);
      }
    }
    throw new NoPhoto("the picture cannot be made small enough; make it smaller");
  }

  private static byte[] jpeg(BufferedImage image, float quality) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
