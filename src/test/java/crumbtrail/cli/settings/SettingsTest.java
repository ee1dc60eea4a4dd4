package crumbtrail.cli.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbtrail.cli.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What is set, and where it is looked for. */
class SettingsTest {
  private static final Path PAGE = Path.of("docs", "configuration.md");

  @TempDir Path folder;

  @Command
  static final class Some implements Runnable {
    @Option(names = "--port")
    String port;

    @Option(names = "--log")
    String log;

    @Option(names = "--no-log")
    boolean noLog;

    @Override
    public void run() {}
  }

  @Test
  void an_option_counts_for_more_than_the_environment_and_that_for_more_than_a_file()
      throws IOException {
    Map<String, String> environment = Map.of("CRUMBTRAIL_PORT", "2", "CRUMBTRAIL_WORKERS", "12");
    String file = "# of the school\n\nport = 3\nworkers = 13\npatience=14\n";

    Settings settings = read(file, environment, "--port", "1");

    assertThat(settings.number(Setting.PORT)).isEqualTo(1);
    assertThat(settings.number(Setting.WORKERS)).isEqualTo(12);
    assertThat(settings.number(Setting.PATIENCE)).isEqualTo(14);
    assertThat(settings.text(Setting.HOST)).isEqualTo("127.0.0.1");
    assertThat(settings.text(Setting.LOG)).isNull();
  }

  @Test
  void all_that_is_wrong_is_said_at_once_with_what_would_do() {
    assertThatThrownBy(
            () ->
                read(
                    "prot = 80\nport = many\npeople\nmetrics = me\nhost = a\nhost = b\nno-log=true\n",
                    Map.of("CRUMBTRAIL_PEPLE", "yes", "CRUMBTRAIL_WORKERS", "2")))
        .isInstanceOfSatisfying(
            BadInput.class,
            fault ->
                assertThat(fault.getMessage())
                    .contains(
                        "conf:1: there is no setting \"prot\". Nearest: port",
                        "conf:2: \"many\" is no whole number. Write a number from 0 to 65535",
                        "conf:3: people has no value",
                        "conf:4: \"me\" is not one of these. Write here, anywhere or nobody.",
                        "conf:6: host stands at ",
                        "conf:7: \"true\" is not yes or no. Write yes or no.",
                        "CRUMBTRAIL_PEPLE, which means nothing here. Nearest: CRUMBTRAIL_PEOPLE",
                        "CRUMBTRAIL_WORKERS: \"2\" is no whole number. Write a number from 8"));
  }

  @Test
  void a_log_that_is_named_nearer_by_counts_for_more_than_none() throws IOException {
    Map<String, String> none = Map.of("CRUMBTRAIL_NO_LOG", "yes");

    assertThat(read("", none, "--log", "mill").noLog()).isFalse();
    assertThat(read("log = mill\n", none).noLog()).isTrue();
    assertThat(read("log = mill\n", Map.of(), "--no-log").noLog()).isTrue();
    assertThat(read("no-log = yes\n", Map.of("CRUMBTRAIL_LOG", "mill")).noLog()).isFalse();
  }

  @Test
  void a_file_that_is_named_must_be_there_and_one_that_is_not_need_not() throws IOException {
    Path missing = folder.resolve("none.conf");

    assertThatThrownBy(() -> Settings.of(null, missing, Map.of()))
        .isInstanceOf(BadInput.class)
        .hasMessageContaining("none.conf");
    assertThat(Settings.of(null, null, home()).number(Setting.PORT)).isEqualTo(7280);

    Files.createDirectories(folder.resolve("crumbtrail"));
    Files.writeString(folder.resolve("crumbtrail").resolve("crumbtrail.conf"), "port = 5\n");
    assertThat(Settings.of(null, null, home()).number(Setting.PORT)).isEqualTo(5);
  }

  @ParameterizedTest
  @CsvSource({
    "Linux, '', '', /home/ida/.config/crumbtrail/crumbtrail.conf",
    "Linux, /etc/xdg, '', /etc/xdg/crumbtrail/crumbtrail.conf",
    "Mac OS X, '', '', /home/ida/Library/Application Support/crumbtrail/crumbtrail.conf",
    "Windows 11, '', /roaming, /roaming/crumbtrail/crumbtrail.conf"
  })
  void the_file_lies_where_the_system_keeps_settings(
      String system, String xdg, String roaming, String found) {
    assertThat(
            SettingsFile.usual(
                Map.of("XDG_CONFIG_HOME", xdg, "APPDATA", roaming), system, Path.of("/home/ida")))
        .isEqualTo(Path.of(found));
  }

  @Test
  void every_setting_is_an_option_of_serve_with_the_usual_value_in_its_help() throws Exception {
    CommandLine serve = serve();
    for (Setting one : Setting.values()) {
      assertThat(serve.getCommandSpec().findOption(one.option())).as(one.option()).isNotNull();
      if (one.hasUsualValue() && !one.flag()) {
        assertThat(String.join(" ", serve.getCommandSpec().findOption(one.option()).description()))
            .contains("(" + one.usual() + " unless told)");
      }
    }
  }

  @Test
  void the_page_shows_them_all() throws IOException {
    String page = Files.readString(PAGE);
    int from = page.indexOf("| file |");
    int to = page.indexOf("\n## ", from);
    if (Boolean.getBoolean("crumbtrail.write")) {
      Files.writeString(PAGE, page.substring(0, from) + Settings.tables() + page.substring(to));
    } else {
      assertThat(page.substring(from, to)).isEqualTo(Settings.tables());
    }
  }

  private static CommandLine serve() throws Exception {
    Class<?> command = Class.forName("crumbtrail.cli.ServeCommand");
    var constructor = command.getDeclaredConstructor();
    constructor.setAccessible(true);
    return new CommandLine(constructor.newInstance());
  }

  private Map<String, String> home() {
    return Map.of("XDG_CONFIG_HOME", folder.toString());
  }

  private Settings read(String text, Map<String, String> environment, String... arguments)
      throws IOException {
    Path file = Files.writeString(folder.resolve("school.conf"), text);
    Map<String, String> all = new HashMap<>(home());
    all.putAll(environment);
    CommandLine line = new CommandLine(new Some());
    return Settings.of(line.parseArgs(List.of(arguments).toArray(new String[0])), file, all);
  }
}
