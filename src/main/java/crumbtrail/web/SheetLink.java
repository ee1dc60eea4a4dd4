package crumbtrail.web;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/** A bake sheet packed into an address, so that a link carries it and no server keeps it. */
final class SheetLink {
  /** Longer addresses are refused by servers and by programs that pass links on. */
  static final int LONGEST = 6_000;

  private static final int CHUNK = 4_096;

  private SheetLink() {}

  /** The sheet as letters for an address; empty if it would be too long. */
  static Optional<String> pack(String sheet) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
    try {
      deflater.setInput(sheet.getBytes(StandardCharsets.UTF_8));
      deflater.finish();
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      byte[] chunk = new byte[CHUNK];
      while (!deflater.finished()) {
        packed.write(chunk, 0, deflater.deflate(chunk));
      }
      String letters = Base64.getUrlEncoder().withoutPadding().encodeToString(packed.toByteArray());
      return letters.length() > LONGEST ? Optional.empty() : Optional.of(letters);
    } finally {
      deflater.end();
    }
  }

  /**
   * The address of the findings on this sheet; empty if it would be too long.
   *
   * @param ahead whether the bake is still to come
   */
  static Optional<String> address(String sheet, boolean ahead) {
    return pack(sheet).map(letters -> (ahead ? "/precheck" : "/trace") + "?sheet=" + letters);
  }

  /**
   * The sheet that the letters stand for.
   *
   * @throws Refusal if they are too many, are damaged, or unpack to more than a form may hold
   */
  static String unpack(String letters) {
    if (letters.length() > LONGEST) {
      throw new Refusal(
          414, "The link is too long to carry a sheet. Ask for the sheet as a file instead.");
    }
    try {
      byte[] sheet = inflated(Base64.getUrlDecoder().decode(letters));
      return FormBody.text(sheet, sheet.length).orElseThrow(SheetLink::damaged);
    } catch (IllegalArgumentException | DataFormatException e) {
      throw damaged();
    }
  }

  private static Refusal damaged() {
    return new Refusal(
        400, "The link is damaged; part of it may have been lost. Ask for it again.");
  }

  // A few letters can unpack to any length: it stops at what a form may hold.
  private static byte[] inflated(byte[] packed) throws DataFormatException {
    Inflater inflater = new Inflater(true);
    try {
      inflater.setInput(packed);
      ByteArrayOutputStream sheet = new ByteArrayOutputStream();
      byte[] chunk = new byte[CHUNK];
      while (!inflater.finished()) {
        int length = inflater.inflate(chunk);
        if ((length == 0 && !inflater.finished()) || sheet.size() + length > WebFace.BODY_LIMIT) {
          throw new DataFormatException("cut short, or too long");
        }
        sheet.write(chunk, 0, length);
      }
      return sheet.toByteArray();
    } finally {
      inflater.end();
    }
  }
}
