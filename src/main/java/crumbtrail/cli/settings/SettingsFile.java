package crumbtrail.cli.settings;

import crumbtrail.cli.BadInput;
import crumbtrail.knowledge.Nearest;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A file of settings: one a line, its key, an equals sign, its value. Lines that begin with a hash
 * are remarks. Values stand as they are, so that a backslash in a path is a backslash.
 */
final class SettingsFile {
  static final String NAME = "crumbtrail.conf";

  private SettingsFile() {}

  /**
   * A value and where it stands.
   *
   * @param where file and line
   */
  record Line(String value, String where) {}

  /** Everything that stands in a file; adds to the faults what cannot be used. */
  static Map<Setting, Line> read(Path file, List<String> faults) {
    Map<Setting, Line> found = new EnumMap<>(Setting.class);
    List<String> lines;
    try {
      lines = Files.readAllLines(file);
    } catch (CharacterCodingException fault) {
      throw new BadInput(List.of(file + " is not UTF-8 text. Save it as UTF-8 and try again."));
    } catch (IOException fault) {
      throw new BadInput(
          List.of("The settings in " + file + " cannot be read. Name another file with --config."));
    }
    for (int at = 0; at < lines.size(); at++) {
      String line = lines.get(at).strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        read(line, file + ":" + (at + 1), found, faults);
      }
    }
    return found;
  }

  private static void read(
      String line, String where, Map<Setting, Line> found, List<String> faults) {
    int equals = line.indexOf('=');
    String key = (equals < 0 ? line : line.substring(0, equals)).strip();
    if (!Setting.keys().contains(key)) {
      faults.add(
          where
              + ": there is no setting \""
              + key
              + "\". Nearest: "
              + Nearest.of(key.toLowerCase(Locale.ROOT), Setting.keys()));
      return;
    }
    if (equals < 0) {
      faults.add(where + ": " + key + " has no value. Write " + key + " = and what is meant.");
      return;
    }
    Setting setting = Setting.valueOf(key.toUpperCase(Locale.ROOT).replace('-', '_'));
    Line before = found.put(setting, new Line(line.substring(equals + 1).strip(), where));
    if (before != null) {
      faults.add(where + ": " + key + " stands at " + before.where() + " already. Leave one away.");
    }
  }

  /** Where the file is looked for if none is named. */
  static Path usual(Map<String, String> environment, String system, Path home) {
    String name = system.toLowerCase(Locale.ROOT);
    Path base = home.resolve(".config");
    if (!environment.getOrDefault("XDG_CONFIG_HOME", "").isBlank()) {
      base = Path.of(environment.get("XDG_CONFIG_HOME"));
    } else if (name.startsWith("windows")) {
      String roaming = environment.getOrDefault("APPDATA", "");
      base = roaming.isBlank() ? home.resolve("AppData").resolve("Roaming") : Path.of(roaming);
    } else if (name.startsWith("mac")) {
      base = home.resolve("Library").resolve("Application Support");
    }
    return base.resolve("crumbtrail").resolve(NAME);
  }
}
