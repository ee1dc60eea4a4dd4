package crumbtrail.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Accounts as they are looked after from a terminal, and how a shared log may be served. */
class PeopleCommandsTest {
  private static final String PASSWORD = "rye and salt and patience\n";

  @RegisterExtension final Listening shell = new Listening();

  @TempDir Path folder;

  private String log;

  @BeforeEach
  void place() {
    log = folder.resolve("bakes").toString();
  }

  @Test
  void accounts_are_made_listed_changed_and_deleted() {
    assertThat(people(PASSWORD, "add", "Ida", "--role", "keeper")).isZero();
    assertThat(shell.out()).isEqualTo("1  Ida  keeper" + System.lineSeparator());
    assertThat(people(PASSWORD, "add", "Jon")).isZero();
    assertThat(people(PASSWORD, "add", "IDA")).isEqualTo(2);
    assertThat(shell.err()).contains("There is somebody called \"IDA\" already.");
    assertThat(people("short\n", "add", "Una")).isEqualTo(2);
    assertThat(shell.err()).contains("at least 10 characters");
    assertThat(people("", "add", "Una")).isEqualTo(2);
    assertThat(people(PASSWORD, "add", "<b>")).isEqualTo(2);

    assertThat(people("", "list")).isZero();
    assertThat(shell.out()).contains("1  keeper   Ida", "2  baker    Jon").doesNotContain("Una");
    assertThat(people("", "role", "jon", "teacher")).isZero();
    assertThat(people("", "role", "Ida", "baker")).isEqualTo(2);
    assertThat(shell.err()).contains("The log would be without a keeper.");
    assertThat(people("another long one\n", "password", "Jon")).isZero();
    assertThat(people("", "password", "Nobody")).isEqualTo(2);
    assertThat(people("", "delete", "Jon")).isEqualTo(2);
    assertThat(shell.err()).contains("Nothing was deleted.");
    assertThat(people("", "delete", "Jon", "--yes")).isZero();
    assertThat(people("", "list")).isZero();
    assertThat(shell.out()).doesNotContain("Jon");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--host=0.0.0.0", "--behind-proxy", "--host=::"})
  void a_log_of_one_person_is_never_served_to_others(String option) {
    assertThat(shell.run("serve", "--port", "0", option, "--log", log)).isEqualTo(2);
    assertThat(shell.err())
        .contains("would read and change your log", "--people", "--no-log")
        .doesNotContain("Exception");
  }

  @Test
  void there_is_nothing_to_share_without_a_log() {
    assertThat(shell.run("serve", "--port", "0", "--people", "--no-log")).isEqualTo(2);
    assertThat(shell.err()).contains("nothing to share");
  }

  private int people(String typed, String command, String... arguments) {
    String[] all = new String[arguments.length + 5];
    all[0] = "log";
    all[1] = "people";
    all[2] = command;
    System.arraycopy(arguments, 0, all, 3, arguments.length);
    all[arguments.length + 3] = "--log";
    all[arguments.length + 4] = log;
    return shell.piped(typed, all);
  }
}
