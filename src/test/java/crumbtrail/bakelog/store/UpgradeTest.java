package crumbtrail.bakelog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogFault;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Sought;
import crumbtrail.bakelog.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Logs that earlier versions wrote. */
class UpgradeTest {
  private static final Path SNAPSHOTS = Path.of("src/test/resources/crumbtrail/bakelog");
  private static final Path MIGRATIONS =
      Path.of("src/main/resources/crumbtrail/bakelog/migrations");

  @TempDir Path folder;

  @Test
  void there_is_a_snapshot_of_every_earlier_version() throws IOException {
    List<Integer> versions;
    try (Stream<Path> files = Files.list(MIGRATIONS)) {
      versions =
          files
              .map(file -> file.getFileName().toString())
              .map(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
              .sorted()
              .toList();
    }
    assertThat(versions)
        .containsExactlyElementsOf(IntStream.rangeClosed(1, Migrations.LATEST).boxed().toList());
    for (int version = 1; version < Migrations.LATEST; version++) {
      assertThat(SNAPSHOTS.resolve("version-" + version + ".sql")).exists();
    }
  }

  static Stream<Arguments> earlier() {
    return Stream.of(StoreKind.values())
        .flatMap(
            kind ->
                IntStream.range(1, Migrations.LATEST)
                    .mapToObj(version -> Arguments.of(kind, version)));
  }

  @ParameterizedTest
  @MethodSource("earlier")
  void a_log_of_an_earlier_version_is_brought_up_to_date(StoreKind kind, int version)
      throws Exception {
    LogPlace place = kind.place(folder);
    run(place, Files.readString(SNAPSHOTS.resolve("version-" + version + ".sql")));

    try (LogStore store = SqlLogStore.open(place)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      Bake bake = log.find(12).orElseThrow();
      assertThat(bake.sheet()).isEqualTo("{\"seen\": [\"dense\"] }");
      assertThat(bake.baked()).isEqualTo(SomeBakes.TUESDAY);
      assertThat(bake.noted()).isEqualTo(Instant.parse("2026-03-03T19:00:00.123Z"));
      assertThat(bake.outcome()).isEqualTo(Outcome.FAILED);
      assertThat(bake.judged(Verdict.CONFIRMED)).containsExactly("over-proofed");
      assertThat(log.list(Sought.words("base"), 9, null).lines()).hasSize(1);
      assertThat(log.list(Sought.cause("over-proofed"), 9, null).lines()).hasSize(1);
      assertThat(store.of(Scope.schoolClass(70)).find(13)).isPresent();
      assertThat(log.learnsFrom()).isEmpty();
      assertThat(log.digests(Sought.judged(null), 9)).hasSize(1);
      assertThat(log.add(SomeBakes.traced(1))).isEqualTo(14);
    }
    try (Way way = Way.open(place)) {
      assertThat(Migrations.version(way.pool())).isEqualTo(Migrations.LATEST);
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_log_of_a_later_version_is_left_alone(StoreKind kind) throws Exception {
    LogPlace place = kind.place(folder);
    SqlLogStore.open(place).close();
    run(
        place,
        "insert into \"bake_log_schema\" (\"installed_rank\", \"version\", \"description\","
            + " \"type\", \"script\", \"installed_by\", \"execution_time\", \"success\")"
            + " values (99, '99', 'later', 'SQL', 'V99__later.sql', 'keeper', 1, true)");

    assertThatThrownBy(() -> SqlLogStore.open(place))
        .isInstanceOfSatisfying(
            LogFault.class, fault -> assertThat(fault.kind()).isEqualTo(LogFault.Kind.NEWER))
        .hasMessageContaining("was written by a later version");
  }

  private static void run(LogPlace place, String script) throws SQLException {
    try (Way way = Way.open(place);
        Connection connection = way.another();
        Statement statement = connection.createStatement()) {
      for (String one : script.split(";\\s*(\n|$)")) {
        if (!one.isBlank()) {
          statement.execute(one);
        }
      }
    }
  }
}
