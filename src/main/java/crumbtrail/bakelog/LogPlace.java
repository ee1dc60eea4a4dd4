package crumbtrail.bakelog;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Where a log is: a file of this machine or a server.
 *
 * @param file of an embedded log, without its ending; null for a server
 * @param url address of a server as JDBC writes it, with whatever it needs to let us in; empty for
 *     a file
 */
public record LogPlace(@Nullable Path file, String url) {

  /** The environment variable that names a log. */
  public static final String VARIABLE = "CRUMBTRAIL_LOG";

  /** What the store puts behind the name of a file. */
  public static final String ENDING = ".mv.db";

  private static final String SERVER = "jdbc:postgresql:";

  /**
   * The log that is meant: the one told, or the one of the environment, or that of this user.
   *
   * @param told a file or an address, null where none was told
   */
  public static LogPlace of(@Nullable String told, Map<String, String> environment) {
    String said = told == null || told.isBlank() ? environment.get(VARIABLE) : told;
    if (said == null || said.isBlank()) {
      return new LogPlace(
          home(
                  environment,
                  System.getProperty("os.name", ""),
                  Path.of(System.getProperty("user.home")))
              .resolve("bakes"),
          "");
    }
    return of(said.strip());
  }

  private static LogPlace of(String said) {
    if (said.startsWith(SERVER)) {
      return new LogPlace(null, said);
    }
    if (said.startsWith("jdbc:")) {
      throw misnamed(said, "is of a kind that is not known");
    }
    try {
      Path path = Path.of(said.endsWith(ENDING) ? bare(said) : said).toAbsolutePath().normalize();
      // The address of an embedded log ends at a semicolon.
      if (path.getFileName() == null || path.toString().contains(";")) {
        throw misnamed(said, "has no usable name");
      }
      return new LogPlace(path, "");
    } catch (InvalidPathException fault) {
      throw misnamed(said, "has no usable name");
    }
  }

  private static String bare(String said) {
    return said.substring(0, said.length() - ENDING.length());
  }

  private static LogFault misnamed(String said, String what) {
    return new LogFault(
        LogFault.Kind.MISNAMED,
        shown(said),
        what,
        "Name a file, or a server as jdbc:postgresql://HOST/DATABASE?user=NAME.",
        new IllegalArgumentException(what));
  }

  // Where programs of this system keep what belongs to the user.
  static Path home(Map<String, String> environment, String system, Path user) {
    String name = system.toLowerCase(Locale.ROOT);
    String told = environment.getOrDefault("XDG_DATA_HOME", "");
    String local = environment.getOrDefault("LOCALAPPDATA", "");
    Path base = user.resolve(Path.of(".local", "share"));
    if (!told.isBlank()) {
      base = Path.of(told);
    } else if (name.startsWith("windows")) {
      base = local.isBlank() ? user.resolve(Path.of("AppData", "Local")) : Path.of(local);
    } else if (name.startsWith("mac")) {
      base = user.resolve(Path.of("Library", "Application Support"));
    }
    return base.resolve("crumbtrail");
  }

  /** For people, without a password. */
  public String shown() {
    return file == null ? shown(url) : file + ENDING;
  }

  private static String shown(String said) {
    return said.replaceAll("(?i)(password=)[^&]*", "$1…").replaceAll("//[^/@]*@", "//…@");
  }
}
