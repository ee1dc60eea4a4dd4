package crumbtrail.lessons;

import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The invented bakes that come with the program, by name. */
public final class CaseShelf {
  private static final String NAME = "[a-z0-9]+(-[a-z0-9]+)*";

  private CaseShelf() {}

  /** The bake of a name, as its file is called without its ending; empty if there is none. */
  public static Optional<BakeSheet> sheet(String name) {
    if (!name.matches(NAME)) {
      return Optional.empty();
    }
    try (InputStream in =
        CaseShelf.class.getResourceAsStream("/crumbtrail/cases/" + name + ".json")) {
      return in == null
          ? Optional.empty()
          : SheetReader.read(new String(in.readAllBytes(), StandardCharsets.UTF_8)).sheet();
    } catch (IOException fault) {
      throw new UncheckedIOException("the program's own bakes cannot be read", fault);
    }
  }
}
