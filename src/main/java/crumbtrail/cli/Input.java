package crumbtrail.cli;

import crumbtrail.lessons.CaseShelf;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** Reads what the user names: a file, or standard input for a hyphen. */
public final class Input {
  private static final int MOST_BYTES = 4 * 1024 * 1024;

  /** Some editors put this in front of UTF-8 text; it is no part of the sheet. */
  private static final char MARK = '\uFEFF';

  /** The word for a bake that comes with the program, where no file is called so. */
  static final String DEMO = "demo";

  private static final String DEMO_CASE = "over-proofed-tin-loaf";

  private Input() {}

  /** The text of a file, or of standard input. */
  public static String text(String name) throws IOException {
    boolean standard = name.equals("-");
    String shown = standard ? "Standard input" : name;
    byte[] bytes;
    if (standard) {
      bytes = System.in.readNBytes(MOST_BYTES + 1);
    } else {
      try (InputStream in = Files.newInputStream(file(name))) {
        bytes = in.readNBytes(MOST_BYTES + 1);
      }
    }
    if (bytes.length > MOST_BYTES) {
      throw new BadInput(List.of(shown + " is over 4 MB. A bake sheet has a few kilobytes."));
    }
    try {
      return withoutMark(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
    } catch (CharacterCodingException fault) {
      throw new BadInput(List.of(shown + " is not UTF-8 text. Save it as UTF-8 and try again."));
    }
  }

  /**
   * The bake sheet that the user names.
   *
   * @throws BadInput with everything that is wrong with it
   */
  static BakeSheet sheet(String name) throws IOException {
    if (name.equals(DEMO) && !Files.exists(Path.of(name))) {
      return CaseShelf.sheet(DEMO_CASE).orElseThrow();
    }
    return read(name, text(name));
  }

  /**
   * A sheet with the text in which it was written.
   *
   * @param text as it stands in the file
   * @param sheet what it says
   */
  public record Written(String text, BakeSheet sheet) {}

  /**
   * The bake sheet that the user names, and its text.
   *
   * @throws BadInput with everything that is wrong with it
   */
  public static Written written(String name) throws IOException {
    if (name.equals(DEMO) && !Files.exists(Path.of(name))) {
      BakeSheet demo = sheet(name);
      return new Written(SheetWriter.write(demo), demo);
    }
    String text = text(name);
    return new Written(text, read(name, text));
  }

  private static BakeSheet read(String name, String text) {
    Reading reading = SheetReader.read(text);
    return reading
        .sheet()
        .orElseThrow(
            () -> BadInput.of(name.equals("-") ? "Standard input" : name, reading.problems()));
  }

  private static String withoutMark(String text) {
    return text.indexOf(MARK) == 0 ? text.substring(1) : text;
  }

  /** What the user types, line by line. */
  static BufferedReader answers() {
    return new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
  }

  /** The lines of a file, or of standard input. */
  public static BufferedReader lines(String name) throws IOException {
    InputStream in = name.equals("-") ? System.in : Files.newInputStream(file(name));
    // Malformed bytes are replaced, so that one bad line does not end the batch.
    BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    lines.mark(1);
    if (lines.read() != MARK) {
      lines.reset();
    }
    return lines;
  }

  private static Path file(String name) throws NoSuchFileException {
    Path file = Path.of(name);
    if (!Files.exists(file)) {
      throw new NoSuchFileException(name);
    }
    if (Files.isDirectory(file)) {
      throw new BadInput(List.of(name + " is a folder. Name a file."));
    }
    return file;
  }
}
