package crumbtrail.cli.settings;

import crumbtrail.cli.BadInput;
import crumbtrail.knowledge.Nearest;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What is set: by an option, or else by the environment, or else by a file. */
public final class Settings {
  /** Names the file of settings. */
  public static final String FILE = "CRUMBTRAIL_CONFIG";

  /** What else the environment may say, and who listens to it. */
  private static final Map<String, String> OTHERS = others();

  private final Map<Setting, Told> told;

  /** From what is nearest to what is farthest. */
  private enum From {
    OPTION,
    ENVIRONMENT,
    FILE
  }

  private record Told(String value, From from) {}

  private Settings(Map<Setting, Told> told) {
    this.told = told;
  }

  private static Map<String, String> others() {
    Map<String, String> others = new LinkedHashMap<>();
    others.put(FILE, "the file of settings, for every command that has some; like --config");
    others.put("CRUMBTRAIL_DEBUG", "1 shows where a fault of the program is, in its own terms");
    others.put("CRUMBTRAIL_JAVA", "the launcher: which java command starts the program");
    others.put(
        "CRUMBTRAIL_HEAP",
        "the launcher: most memory for serve (256m unless told), batch, rules and log (512m)");
    others.put("CRUMBTRAIL_NO_CACHE", "the launcher: 1 keeps no classes between starts");
    return others;
  }

  /** What environment and file say, for commands whose options say little of it. */
  public static Settings here() {
    return of(null, null, System.getenv());
  }

  /**
   * What holds for a command.
   *
   * @param options the command line as it was read, or null where it says nothing
   * @param file named by the command line, or null
   * @throws BadInput with everything that is wrong in file and environment
   */
  public static Settings of(
      @Nullable ParseResult options, @Nullable Path file, Map<String, String> environment) {
    List<String> faults = new ArrayList<>();
    Map<Setting, Told> told = new EnumMap<>(Setting.class);
    file(file, environment)
        .ifPresent(
            named ->
                SettingsFile.read(named, faults)
                    .forEach(
                        (setting, line) -> {
                          setting.fault(line.where(), line.value()).ifPresent(faults::add);
                          told.put(setting, new Told(line.value(), From.FILE));
                        }));
    new TreeMap<>(environment)
        .forEach(
            (name, value) -> {
              if (name.startsWith("CRUMBTRAIL_") && !OTHERS.containsKey(name)) {
                take(name, value, told, faults);
              }
            });
    if (options != null) {
      take(options, told, faults);
    }
    if (!faults.isEmpty()) {
      throw new BadInput(faults);
    }
    return new Settings(told);
  }

  private static void take(
      String name, String value, Map<Setting, Told> told, List<String> faults) {
    List<String> known =
        new ArrayList<>(Arrays.stream(Setting.values()).map(Setting::variable).toList());
    Optional<Setting> meant =
        Arrays.stream(Setting.values()).filter(one -> one.variable().equals(name)).findFirst();
    if (meant.isEmpty()) {
      known.addAll(OTHERS.keySet());
      faults.add(
          "The environment sets "
              + name
              + ", which means nothing here. Nearest: "
              + Nearest.of(name, known));
    } else if (!value.isBlank()) {
      meant.get().fault(name, value.strip()).ifPresent(faults::add);
      told.put(meant.get(), new Told(value.strip(), From.ENVIRONMENT));
    }
  }

  private static void take(ParseResult options, Map<Setting, Told> told, List<String> faults) {
    for (Setting setting : Setting.values()) {
      OptionSpec option = options.matchedOption(setting.option());
      if (option != null && option.getValue() != null) {
        String value = option.getValue().toString();
        if (setting.flag()) {
          value = value.equals("true") ? "yes" : "no";
        }
        setting.fault(setting.option(), value).ifPresent(faults::add);
        told.put(setting, new Told(value, From.OPTION));
      }
    }
  }

  private static Optional<Path> file(@Nullable Path named, Map<String, String> environment) {
    String told = environment.getOrDefault(FILE, "");
    if (named != null || !told.isBlank()) {
      return Optional.of(named == null ? Path.of(told.strip()) : named);
    }
    return Optional.of(
            SettingsFile.usual(
                environment,
                System.getProperty("os.name", ""),
                Path.of(System.getProperty("user.home"))))
        .filter(Files::exists);
  }

  /** What is set, or null where nothing is and nothing is usual. */
  public @Nullable String text(Setting setting) {
    Told found = told.get(setting);
    if (found != null) {
      return found.value();
    }
    return setting.hasUsualValue() ? setting.usual() : null;
  }

  /** A number that is set. */
  public int number(Setting setting) {
    return Integer.parseInt(String.valueOf(text(setting)));
  }

  /** Whether something is so. */
  public boolean yes(Setting setting) {
    return "yes".equals(text(setting));
  }

  /** Whether bakes are kept nowhere; a log that is named nearer by counts for more. */
  public boolean noLog() {
    Told log = told.get(Setting.LOG);
    Told none = told.get(Setting.NO_LOG);
    return yes(Setting.NO_LOG)
        && (log == null || none == null || none.from().compareTo(log.from()) <= 0);
  }

  /** All settings and other names as tables, for the page on them. */
  public static String tables() {
    StringBuilder text = new StringBuilder();
    text.append("| file | environment | option of `serve` | usual | what it sets |\n");
    text.append("|---|---|---|---|---|\n");
    for (Setting one : Setting.values()) {
      text.append(
          "| `%s` | `%s` | `%s` | %s | %s |%n"
              .formatted(
                  one.key(),
                  one.variable(),
                  one.option(),
                  one.hasUsualValue() ? "`" + one.usual() + "`" : one.usual(),
                  one.meaning()));
    }
    text.append("\n| environment only | what it does |\n|---|---|\n");
    OTHERS.forEach((name, what) -> text.append("| `%s` | %s |%n".formatted(name, what)));
    return text.toString().replace("\r\n", "\n");
  }
}
