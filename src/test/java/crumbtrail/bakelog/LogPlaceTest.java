package crumbtrail.bakelog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a log is looked for. */
class LogPlaceTest {
  private static final Path HOME = Path.of("/home/miller");

  @ParameterizedTest
  @CsvSource({
    "Linux, /home/miller/.local/share/crumbtrail",
    "FreeBSD, /home/miller/.local/share/crumbtrail",
    "Mac OS X, /home/miller/Library/Application Support/crumbtrail",
    "Windows 11, /home/miller/AppData/Local/crumbtrail"
  })
  void each_system_has_its_place_for_what_belongs_to_the_user(String system, String place) {
    assertThat(LogPlace.home(Map.of(), system, HOME)).isEqualTo(Path.of(place));
  }

  @Test
  void the_environment_names_another_place() {
    assertThat(LogPlace.home(Map.of("XDG_DATA_HOME", "/data"), "Linux", HOME))
        .isEqualTo(Path.of("/data/crumbtrail"));
    assertThat(LogPlace.home(Map.of("LOCALAPPDATA", "/local"), "Windows 11", HOME))
        .isEqualTo(Path.of("/local/crumbtrail"));
    Map<String, String> environment = Map.of("XDG_DATA_HOME", "/data");
    assertThat(LogPlace.of(null, environment).file()).isEqualTo(Path.of("/data/crumbtrail/bakes"));
    Map<String, String> named = Map.of(LogPlace.VARIABLE, "/mill/log");
    assertThat(LogPlace.of(null, named).file()).isEqualTo(Path.of("/mill/log"));
    assertThat(LogPlace.of("/own/log", named).file()).isEqualTo(Path.of("/own/log"));
  }

  @Test
  void a_file_may_be_named_with_its_ending_or_without() {
    assertThat(LogPlace.of("/mill/log.mv.db", Map.of()))
        .isEqualTo(LogPlace.of("/mill/log", Map.of()));
    assertThat(LogPlace.of("/mill/log", Map.of()).shown()).isEqualTo("/mill/log.mv.db");
  }

  @ParameterizedTest
  @CsvSource({
    "jdbc:postgresql://db/bakes?user=mill&password=hush&ssl=true,"
        + " jdbc:postgresql://db/bakes?user=mill&password=…&ssl=true",
    "jdbc:postgresql://mill:hush@db/bakes, jdbc:postgresql://…@db/bakes"
  })
  void a_password_is_not_shown(String url, String shown) {
    assertThat(LogPlace.of(url, Map.of()).shown()).isEqualTo(shown);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jdbc:mysql://db/bakes?password=hush", "/", "a;b"})
  void what_names_no_log_is_refused_with_what_would_do(String said) {
    assertThatThrownBy(() -> LogPlace.of(said, Map.of()))
        .isInstanceOfSatisfying(
            LogFault.class,
            fault -> {
              assertThat(fault.kind()).isEqualTo(LogFault.Kind.MISNAMED);
              assertThat(fault.remedy()).contains("jdbc:postgresql://");
              assertThat(fault.getMessage()).doesNotContain("hush");
            });
  }
}
