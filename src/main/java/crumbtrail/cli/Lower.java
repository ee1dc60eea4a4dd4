package crumbtrail.cli;

import java.util.Locale;

/** The words of an option as a command line says them. */
final class Lower {
  private Lower() {}

  static String of(Enum<?> word) {
    return word.name().toLowerCase(Locale.ROOT);
  }
}
