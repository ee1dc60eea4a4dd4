package crumbtrail.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TerminalTest {
  @ParameterizedTest
  @CsvSource({"40, 60", "60, 60", "99, 99", "300, 120"})
  void a_page_is_as_wide_as_the_window_within_bounds(int columns, int width) {
    assertThat(Terminal.of(columns, Map.of()).width()).isEqualTo(width);
    assertThat(Terminal.of(80, Map.of("COLUMNS", String.valueOf(columns))).width())
        .isEqualTo(width);
  }

  @Test
  void a_pipe_has_eighty_columns_and_nobody_sits_at_it() {
    assertThat(Terminal.piped().width()).isEqualTo(80);
    assertThat(Terminal.piped().read()).isFalse();
    assertThat(Terminal.piped().wantsColour()).isFalse();
  }

  @Test
  void a_width_that_is_none_is_passed_over() {
    for (String columns : new String[] {"", "0", "-5", "wide", "99999999999"}) {
      assertThat(Terminal.of(100, Map.of("COLUMNS", columns)).width()).isEqualTo(100);
    }
  }

  @Test
  void the_environment_has_its_say_on_colours() {
    assertThat(colour(Map.of())).isTrue();
    assertThat(colour(Map.of("NO_COLOR", "1"))).isFalse();
    assertThat(colour(Map.of("NO_COLOR", ""))).isTrue();
    assertThat(colour(Map.of("CLICOLOR", "0"))).isFalse();
    assertThat(colour(Map.of("TERM", "dumb"))).isFalse();
    assertThat(colour(Map.of("TERM", "dumb", "CLICOLOR_FORCE", "1"))).isTrue();
    assertThat(colour(Map.of("NO_COLOR", "1", "CLICOLOR_FORCE", "1"))).isFalse();
    assertThat(colour(Map.of("CLICOLOR", "0", "CLICOLOR_FORCE", "0"))).isFalse();
  }

  private static boolean colour(Map<String, String> environment) {
    return Terminal.of(80, environment).wantsColour();
  }
}
