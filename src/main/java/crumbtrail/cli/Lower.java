package crumbtrail.cli;

import java.util.Locale;

/** The words of an option as a command line says them. */
public final class Lower {
  private Lower() {}

  /** The word. */
  public static String of(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
