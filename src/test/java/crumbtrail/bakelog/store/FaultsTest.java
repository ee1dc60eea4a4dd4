package crumbtrail.bakelog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogFault;
import crumbtrail.bakelog.LogFault.Kind;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What happens to a log when something breaks. */
class FaultsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void a_program_that_is_killed_while_it_writes_loses_no_acknowledged_bake(StoreKind kind)
      throws Exception {
    LogPlace place = kind.place(folder);
    String named = place.file() == null ? place.url() : place.file().toString();
    Random random = new Random(11);
    List<Long> acknowledged = new ArrayList<>();
    for (int round = 0; round < 5; round++) {
      try (Forked scribe = Forked.start(Scribe.class, named, "100000")) {
        int until = 1 + random.nextInt(40);
        for (int i = 0; i < until; i++) {
          acknowledged.add(Long.parseLong(scribe.line()));
        }
        scribe.kill();
      }
      try (LogStore store = SqlLogStore.open(place)) {
        BakeLog log = store.of(Scope.ONLY_BAKER);
        assertThat(acknowledged)
            .as("after round %d", round)
            .allMatch(id -> log.find(id).orElseThrow().traced() != null);
        // What was on its way may be there or not, but never half of it.
        assertThat(log.bakes(0).count()).isEqualTo(log.count());
      }
    }
    assertThat(acknowledged).doesNotHaveDuplicates().hasSizeGreaterThan(5);
  }

  @ParameterizedTest
  @EnumSource
  void several_programs_write_into_one_log_at_the_same_time(StoreKind kind) throws Exception {
    LogPlace place = kind.place(folder);
    String named = place.file() == null ? place.url() : place.file().toString();
    int many = 25;
    try (LogStore store = SqlLogStore.open(place)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      assertThat(log.add(SomeBakes.tinLoaf())).isEqualTo(1);
      try (Forked first = Forked.start(Scribe.class, named, "" + many, "a");
          Forked second = Forked.start(Scribe.class, named, "" + many, "b")) {
        for (int i = 0; i < many; i++) {
          String word = "c" + i;
          log.change(1, bake -> bake.withNote(bake.note() + " " + word));
        }
        assertThat(first.rest()).hasSize(many + 1).last().isEqualTo("done");
        assertThat(second.rest()).hasSize(many + 1).last().isEqualTo("done");
      }
      assertThat(log.count()).isEqualTo(1 + 2 * many);
      assertThat(log.find(1).orElseThrow().note().split(" "))
          .as("no change of one was lost under another")
          .hasSize(3 * many)
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void an_embedded_log_outlives_the_program_through_which_others_reached_it() throws Exception {
    LogPlace place = StoreKind.H2.place(folder);
    try (Forked first = Forked.start(Scribe.class, place.file().toString(), "100000")) {
      first.line();
      try (LogStore store = SqlLogStore.open(place)) {
        BakeLog log = store.of(Scope.ONLY_BAKER);
        long mine = log.add(SomeBakes.tinLoaf());
        first.kill();

        // One call may meet the broken line; the next opens the file itself.
        long later;
        try {
          later = log.add(SomeBakes.tinLoaf());
        } catch (LogFault fault) {
          assertThat(fault.kind()).isEqualTo(Kind.UNREACHABLE);
          later = log.add(SomeBakes.tinLoaf());
        }
        assertThat(log.find(mine)).isPresent();
        assertThat(log.find(later)).isPresent();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a disk", "a limit"})
  void a_full_disk_is_said_keeps_what_was_acknowledged_and_is_forgotten_with_new_room(String what)
      throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    Path ballast = disk.resolve("ballast");
    String log = disk.resolve("bakes").toString();
    List<String> said;
    if (what.equals("a disk")) {
      // A small disk in memory that nobody else sees; needs a system that lets a user have one.
      List<String> apart = List.of("unshare", "-rm", "sh", "-c");
      String mount =
          "mount -t tmpfs -o size=6m tmpfs '"
              + disk
              + "' && head -c 3000000 /dev/zero > '"
              + ballast
              + "'";
      assumeTrue(allowed(apart, "mount -t tmpfs tmpfs '" + disk + "'"));
      try (Forked scribe =
          Forked.after(apart, mount, Scribe.class, log, "full", ballast.toString())) {
        said = scribe.rest();
      }
      assertThat(said).hasSize(3);
      assertThat(said.get(0)).startsWith("FULL: The bake log " + log);
      assertThat(said.get(0))
          .contains("has no room left on its disk. What was acknowledged before is safe");
      assertThat(said.get(1)).matches("kept (\\d+) of \\1");
      assertThat(said.get(2)).matches("found (\\d+) of \\1");
    } else {
      // Files may grow to 4 MB and no further.
      List<String> shell = List.of("sh", "-c");
      assumeTrue(allowed(shell, "ulimit -f 8192"));
      Files.writeString(ballast, "nothing");
      try (Forked scribe =
          Forked.after(shell, "ulimit -f 8192", Scribe.class, log, "full", ballast.toString())) {
        said = scribe.rest();
      }
      assertThat(said.get(0)).startsWith("FULL: The bake log " + log);
      try (LogStore store = SqlLogStore.open(LogPlace.of(log, Map.of()))) {
        BakeLog bakes = store.of(Scope.ONLY_BAKER);
        assertThat(bakes.bakes(0).count()).isPositive().isEqualTo(bakes.count());
        assertThat(bakes.add(SomeBakes.tinLoaf())).isPositive();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"of its own", "of the whole server"})
  void a_full_disk_of_a_server_is_said_and_forgotten_with_new_room(String whose) throws Exception {
    List<String> apart = List.of("unshare", "-rm", "sh", "-c");
    Path disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(
        allowed(apart, "mount -t tmpfs tmpfs '" + disk + "'"),
        "this system lets nobody have a disk of his own");
    boolean own = whose.equals("of its own");
    Path ballast = disk.resolve("ballast");
    String log = disk.resolve("log").toString();
    String mount =
        "mount -t tmpfs -o size=%dm tmpfs '%s' && head -c 9000000 /dev/zero > '%s'"
            .formatted(own ? 24 : 100, disk, ballast);

    try (Forked server =
        Forked.after(
            apart,
            mount,
            FullServer.class,
            own ? folder.resolve("data").toString() : log,
            log,
            ballast.toString())) {
      List<String> said = server.rest();

      assertThat(said).hasSize(3);
      assertThat(said.get(0))
          .startsWith("FULL: The bake log jdbc:postgresql:")
          .contains("has no room left on its disk. What was acknowledged before is safe");
      assertThat(said.get(1)).matches("kept (\\d+) of \\1");
      assertThat(said.get(2)).matches("found (\\d+) of \\1");
    }
  }

  private static boolean allowed(List<String> shell, String what) throws InterruptedException {
    List<String> all = new ArrayList<>(shell);
    all.add(what);
    try {
      Process process = new ProcessBuilder(all).redirectErrorStream(true).start();
      return process.waitFor(20, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException none) {
      return false;
    }
  }

  @Test
  void a_file_that_another_program_holds_for_itself_is_said_to_be_in_use() throws Exception {
    LogPlace place = StoreKind.H2.place(folder);
    SqlLogStore.open(place).close();
    try (Forked holder = Forked.start(Holder.class, place.file().toString())) {
      assertThat(holder.line()).isEqualTo("held");

      assertFault(place, Kind.IN_USE, "is held by another program");
    }
    SqlLogStore.open(place).close();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void a_file_that_is_no_log_is_said_to_be_damaged_and_left_as_it_is(int how) throws Exception {
    LogPlace place = StoreKind.H2.place(folder);
    try (LogStore store = SqlLogStore.open(place)) {
      for (int day = 0; day < 30; day++) {
        store.of(Scope.ONLY_BAKER).add(SomeBakes.traced(day));
      }
    }
    Path file = Path.of(place.file() + LogPlace.ENDING);
    byte[] whole = Files.readAllBytes(file);
    byte[] broken =
        switch (how) {
          case 0 -> "Dear miller, the wheel is stuck.".repeat(400).getBytes(StandardCharsets.UTF_8);
          case 1 -> overwritten(whole, 0, whole.length);
          default -> overwritten(whole, 0, 3 * 4096);
        };
    Files.write(file, broken);

    assertFault(place, Kind.DAMAGED, "is damaged, or no bake log");
    assertThat(Files.readAllBytes(file)).isEqualTo(broken);
    Files.write(file, whole);
    try (LogStore store = SqlLogStore.open(place)) {
      assertThat(store.of(Scope.ONLY_BAKER).count()).isEqualTo(30);
    }
  }

  private static byte[] overwritten(byte[] file, int from, int to) {
    byte[] noise = file.clone();
    byte[] fresh = new byte[to - from];
    new Random(5).nextBytes(fresh);
    System.arraycopy(fresh, 0, noise, from, fresh.length);
    return noise;
  }

  @Test
  void a_place_that_cannot_be_written_is_named() throws IOException {
    Path letter = Files.writeString(folder.resolve("letter"), "Dear miller");

    assertFault(
        LogPlace.of(letter.resolve("bakes").toString(), Map.of()), Kind.FORBIDDEN, "letter");
  }

  @Test
  void what_is_deleted_is_gone_from_the_file() throws IOException {
    LogPlace place = StoreKind.H2.place(folder);
    Path file = Path.of(place.file() + LogPlace.ENDING);
    String secret = "Skarholm-confession-4711";
    try (LogStore store = SqlLogStore.open(place)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      log.add(SomeBakes.tinLoaf());
      log.add(SomeBakes.tinLoaf().withNote(secret));
    }
    assertThat(text(file)).contains(secret);
    try (LogStore store = SqlLogStore.open(place)) {
      assertThat(store.of(Scope.ONLY_BAKER).delete(2)).isTrue();
    }
    assertThat(text(file)).doesNotContain(secret);
    try (LogStore store = SqlLogStore.open(place)) {
      assertThat(store.of(Scope.ONLY_BAKER).count()).isEqualTo(1);
    }
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.ISO_8859_1);
  }

  @Test
  void connections_that_a_server_drops_are_made_anew() throws SQLException {
    LogPlace place = StoreKind.POSTGRES.place(folder);
    try (LogStore store = SqlLogStore.open(place)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long before = log.add(SomeBakes.tinLoaf());
      dropAll(place);

      long after;
      try {
        after = log.add(SomeBakes.tinLoaf());
      } catch (LogFault fault) {
        assertThat(fault.kind()).isEqualTo(Kind.UNREACHABLE);
        after = log.add(SomeBakes.tinLoaf());
      }
      assertThat(log.find(before)).isPresent();
      assertThat(log.find(after)).isPresent();
    }
  }

  private static void dropAll(LogPlace place) throws SQLException {
    try (Way way = Way.open(place);
        Connection connection = way.another();
        Statement statement = connection.createStatement()) {
      statement.execute(
          "select pg_terminate_backend(pid) from pg_stat_activity"
              + " where datname = current_database() and pid <> pg_backend_pid()");
    }
  }

  @Test
  void a_server_that_stops_is_said_to_be_away_and_used_again_when_it_is_back() throws Exception {
    try (Postgres.Own server = Postgres.own(folder.resolve("data"))) {
      LogPlace place = LogPlace.of(server.url(), Map.of());
      try (LogStore store = SqlLogStore.open(place)) {
        BakeLog log = store.of(Scope.ONLY_BAKER);
        long before = log.add(SomeBakes.traced(0));
        server.stop();

        assertThatThrownBy(() -> log.add(SomeBakes.traced(1)))
            .isInstanceOfSatisfying(
                LogFault.class, fault -> assertThat(fault.kind()).isEqualTo(Kind.UNREACHABLE));
        assertFault(place, Kind.UNREACHABLE, "does not answer");
        server.start();

        long after = log.add(SomeBakes.traced(2));
        assertThat(log.find(before)).isPresent();
        assertThat(log.find(after)).isPresent();
      }
    }
  }

  @Test
  void a_server_without_that_database_does_not_let_us_in() {
    String url = Postgres.emptyDatabase().replaceFirst("/log\\d+", "/nowhere");

    assertFault(LogPlace.of(url, Map.of()), Kind.REFUSED, "does not let this program in");
  }

  private static void assertFault(LogPlace place, Kind kind, String said) {
    assertThatThrownBy(() -> SqlLogStore.open(place))
        .isInstanceOfSatisfying(
            LogFault.class,
            fault -> {
              assertThat(fault.kind()).isEqualTo(kind);
              assertThat(fault.remedy()).endsWith(".").doesNotContain("Exception");
            })
        .hasMessageContaining(said);
  }
}
