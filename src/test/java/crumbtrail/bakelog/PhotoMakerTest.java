package crumbtrail.bakelog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a photo loses on its way into the log, and what it keeps. */
class PhotoMakerTest {
  private static final String SECRET = "54.1234N 7.9876E baker's kitchen";

  @Test
  void nothing_of_the_metadata_is_kept() throws Exception {
    byte[] file = withExif(SomeBakes.picture(40, 30, "jpeg"), 1);
    assertThat(text(file)).contains(SECRET).contains("Exif");

    Photo photo = PhotoMaker.of(file);

    assertThat(text(photo.picture())).doesNotContain(SECRET).doesNotContain("Exif");
    assertThat(photo.note().kind()).isEqualTo("image/jpeg");
    assertThat(photo.note().width()).isEqualTo(40);
    assertThat(photo.note().height()).isEqualTo(30);
    assertThat(photo.note().bytes()).isEqualTo(photo.picture().length);
  }

  @Test
  void words_hidden_in_a_png_or_behind_its_end_are_not_kept() throws Exception {
    byte[] png = SomeBakes.picture(40, 30, "png");
    byte[] file = new byte[png.length + SECRET.length()];
    System.arraycopy(png, 0, file, 0, png.length);
    System.arraycopy(bytes(SECRET), 0, file, png.length, SECRET.length());

    Photo photo = PhotoMaker.of(file);

    assertThat(photo.note().kind()).isEqualTo("image/png");
    assertThat(text(photo.picture())).doesNotContain(SECRET);
    assertThat(read(photo).getRGB(5, 5)).isEqualTo(Color.ORANGE.getRGB());
  }

  // A 60 by 40 picture, white but for a black corner; where that corner is when all is upright.
  @ParameterizedTest
  @CsvSource({
    "1, 60, 40, left, top",
    "2, 60, 40, right, top",
    "3, 60, 40, right, bottom",
    "4, 60, 40, left, bottom",
    "5, 40, 60, left, top",
    "6, 40, 60, right, top",
    "7, 40, 60, right, bottom",
    "8, 40, 60, left, bottom"
  })
  void a_picture_that_was_held_sideways_is_set_upright(
      int orientation, int width, int height, String across, String down) throws Exception {
    BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, 60, 40);
    pen.setColor(Color.BLACK);
    pen.fillRect(0, 0, 16, 16);
    pen.dispose();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", file);

    BufferedImage made = read(PhotoMaker.of(withExif(file.toByteArray(), orientation)));

    assertThat(made.getWidth()).isEqualTo(width);
    assertThat(made.getHeight()).isEqualTo(height);
    for (String side : new String[] {"left", "right"}) {
      for (String end : new String[] {"top", "bottom"}) {
        int x = side.equals("left") ? 6 : width - 7;
        int y = end.equals("top") ? 6 : height - 7;
        boolean dark = (made.getRGB(x, y) & 0xFF) < 80;
        assertThat(dark)
            .as("%s %s of orientation %d", end, side, orientation)
            .isEqualTo(side.equals(across) && end.equals(down));
      }
    }
  }

  @Test
  void a_large_picture_becomes_small_enough() throws Exception {
    BufferedImage noise = new BufferedImage(4000, 3000, BufferedImage.TYPE_INT_RGB);
    Random random = new Random(7);
    for (int y = 0; y < 3000; y++) {
      for (int x = 0; x < 4000; x++) {
        noise.setRGB(x, y, random.nextInt());
      }
    }
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    ImageIO.write(noise, "jpeg", file);

    Photo photo = PhotoMaker.of(file.toByteArray());

    assertThat(photo.note().bytes()).isLessThanOrEqualTo(PhotoMaker.MOST_KEPT);
    assertThat(photo.note().width()).isEqualTo(PhotoMaker.LONGEST_SIDE);
    assertThat(photo.note().height()).isEqualTo(1200);
  }

  @Test
  void a_small_file_that_would_unfold_to_a_giant_is_refused_before_it_does() throws IOException {
    byte[] file = SomeBakes.picture(4, 4, "png");
    ByteBuffer.wrap(file).putInt(16, 60_000).putInt(20, 60_000);

    assertThatThrownBy(() -> PhotoMaker.of(file))
        .isInstanceOf(PhotoMaker.NoPhoto.class)
        .hasMessageContaining("100 million pixels");
  }

  @Test
  void what_is_no_picture_is_refused_with_what_would_do() {
    assertThatThrownBy(() -> PhotoMaker.of(bytes("a letter from the miller")))
        .isInstanceOf(PhotoMaker.NoPhoto.class)
        .hasMessageContaining("save it as JPEG or PNG");
    assertThatThrownBy(() -> PhotoMaker.of(new byte[0])).isInstanceOf(PhotoMaker.NoPhoto.class);
    byte[] torn = Arrays.copyOf(SomeBakes.picture(40, 30, "png"), 60);
    assertThatThrownBy(() -> PhotoMaker.of(torn))
        .isInstanceOf(PhotoMaker.NoPhoto.class)
        .hasMessageContaining("broken");
    assertThatThrownBy(() -> PhotoMaker.of(new byte[PhotoMaker.MOST_BYTES + 1]))
        .isInstanceOf(PhotoMaker.NoPhoto.class)
        .hasMessageContaining("25 MB");
  }

  @Test
  void lengths_that_lead_out_of_the_file_do_no_harm() throws Exception {
    byte[] file = withExif(SomeBakes.picture(40, 30, "jpeg"), 6);
    // The directory is said to lie far beyond the end.
    ByteBuffer.wrap(file).putInt(2 + 4 + 6 + 4, Integer.MAX_VALUE);

    assertThat(PhotoMaker.of(file).note().width()).isEqualTo(40);
  }

  /** The file with an Exif part that holds an orientation and a place. */
  private static byte[] withExif(byte[] jpeg, int orientation) {
    byte[] secret = bytes(SECRET);
    ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 24 + 4 + secret.length);
    tiff.put(bytes("MM")).putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    tiff.putShort((short) 0x0112).putShort((short) 3).putInt(1);
    tiff.putShort((short) orientation).putShort((short) 0);
    tiff.putShort((short) 0x010E).putShort((short) 2).putInt(secret.length).putInt(38);
    tiff.putInt(0).put(secret);
    int length = 2 + 6 + tiff.capacity();
    ByteBuffer file = ByteBuffer.allocate(jpeg.length + 2 + length);
    file.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) length);
    file.put(bytes("Exif\0\0")).put(tiff.array()).put(jpeg, 2, jpeg.length - 2);
    return file.array();
  }

  private static BufferedImage read(Photo photo) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(photo.picture()));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
