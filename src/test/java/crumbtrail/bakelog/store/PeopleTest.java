package crumbtrail.bakelog.store;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Sought;
import crumbtrail.people.Account;
import crumbtrail.people.People;
import crumbtrail.people.Person;
import crumbtrail.people.Rate;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Accounts, log-ins, classes and allowances on both stores. */
class PeopleTest {
  private static final Instant NOON = Instant.parse("2026-03-03T12:00:00Z");
  private static final String SECRET = "$argon2id$…";

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void the_first_account_takes_over_what_was_kept_before(StoreKind kind) {
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      store.of(Scope.ONLY_BAKER).add(SomeBakes.tinLoaf());
      People people = store.people();

      Person ida = people.add("Ida", Role.KEEPER, SECRET).orElseThrow();
      Person jon = people.add("Jon", Role.BAKER, SECRET).orElseThrow();

      assertThat(store.of(Scope.baker(ida.id())).count()).isEqualTo(1);
      assertThat(store.of(Scope.baker(jon.id())).count()).isZero();
      assertThat(people.add("ＩDA", Role.BAKER, SECRET)).isEmpty();
      assertThat(people.account("ida").map(Account::person)).contains(ida);
      assertThat(people.account(jon.id()).map(Account::secret)).contains(SECRET);
      assertThat(people.everybody(9, 0)).containsExactly(ida, jon);
      assertThat(people.everybody(1, 1)).containsExactly(jon);
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_log_in_ends_when_it_is_told_to_or_was_not_used_or_is_old(StoreKind kind) {
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      People people = store.people();
      Person ida = people.add("Ida", Role.KEEPER, SECRET).orElseThrow();
      people.begin("one", ida.id(), NOON);
      people.begin("two", ida.id(), NOON);
      people.begin("three", ida.id(), NOON);

      assertThat(people.loggedIn("one", NOON.plusSeconds(60))).contains(ida);
      assertThat(people.loggedIn("none", NOON)).isEmpty();
      people.end("one");
      assertThat(people.loggedIn("one", NOON)).isEmpty();
      people.endAll(ida.id(), "two");
      assertThat(people.loggedIn("three", NOON)).isEmpty();
      Instant asked = NOON;
      while (asked.isBefore(NOON.plus(People.LONGEST))) {
        assertThat(people.loggedIn("two", asked)).contains(ida);
        asked = asked.plus(Duration.ofHours(11));
      }
      assertThat(people.loggedIn("two", NOON.plus(People.LONGEST))).isEmpty();

      people.begin("four", ida.id(), NOON);
      assertThat(people.loggedIn("four", NOON.plus(People.IDLE))).isEmpty();
      people.begin("five", ida.id(), NOON);
      people.endAll(ida.id(), null);
      assertThat(people.loggedIn("five", NOON)).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_class_is_joined_renewed_left_and_ended(StoreKind kind) {
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      People people = store.people();
      long ida = people.add("Ida", Role.TEACHER, SECRET).orElseThrow().id();
      Person jon = people.add("Jon", Role.BAKER, SECRET).orElseThrow();
      SchoolClass tuesday = people.make("Tuesday", ida, "AAAAA-BBBBB");
      assertThat(people.byCode("AAAAA-BBBBB")).contains(tuesday);
      assertThat(people.taughtBy(ida)).containsExactly(tuesday);

      people.join(tuesday.id(), jon.id());
      people.join(tuesday.id(), jon.id());
      assertThat(people.members(tuesday.id())).containsExactly(jon);
      assertThat(people.joinedBy(jon.id())).containsExactly(tuesday);
      long bake =
          store.of(Scope.baker(jon.id())).add(SomeBakes.traced(1).of(jon.id(), tuesday.id()));
      assertThat(store.of(Scope.schoolClass(tuesday.id())).find(bake)).isPresent();

      people.code(tuesday.id(), null);
      assertThat(people.byCode("AAAAA-BBBBB")).isEmpty();
      people.code(tuesday.id(), "CCCCC-DDDDD");
      assertThat(people.byCode("CCCCC-DDDDD")).isPresent();

      people.leave(tuesday.id(), jon.id());
      assertThat(people.joinedBy(jon.id())).isEmpty();
      assertThat(store.of(Scope.schoolClass(tuesday.id())).find(bake)).isEmpty();
      assertThat(store.of(Scope.schoolClass(tuesday.id())).list(Sought.words("tin"), 9, null))
          .matches(page -> page.lines().isEmpty());

      store.of(Scope.baker(jon.id())).change(bake, one -> one.of(jon.id(), tuesday.id()));
      assertThat(people.end(tuesday.id())).isTrue();
      assertThat(people.schoolClass(tuesday.id())).isEmpty();
      assertThat(store.of(Scope.baker(jon.id())).find(bake).map(Bake::schoolClass)).isEmpty();
      assertThat(store.of(Scope.baker(jon.id())).find(bake)).isPresent();
    }
  }

  @ParameterizedTest
  @EnumSource
  void whoever_is_deleted_is_gone_with_their_bakes_and_only_theirs(StoreKind kind) {
    try (LogStore store = SqlLogStore.open(kind.place(folder))) {
      People people = store.people();
      long ida = people.add("Ida", Role.KEEPER, SECRET).orElseThrow().id();
      long una = people.add("Una", Role.TEACHER, SECRET).orElseThrow().id();
      long jon = people.add("Jon", Role.BAKER, SECRET).orElseThrow().id();
      SchoolClass tuesday = people.make("Tuesday", una, "AAAAA-BBBBB");
      people.join(tuesday.id(), jon);
      long jons = store.of(Scope.baker(jon)).add(SomeBakes.traced(1).of(jon, tuesday.id()));
      long unas = store.of(Scope.baker(una)).add(SomeBakes.traced(2).of(una, tuesday.id()));
      store.of(Scope.baker(una)).addPhoto(unas, SomeBakes.photo());
      people.begin("token", una, NOON);

      assertThat(people.delete(una)).isTrue();

      assertThat(people.account(una)).isEmpty();
      assertThat(people.loggedIn("token", NOON)).isEmpty();
      assertThat(store.of(Scope.EVERYTHING).find(unas)).isEmpty();
      assertThat(store.of(Scope.EVERYTHING).find(jons)).isPresent();
      assertThat(people.schoolClass(tuesday.id())).isEmpty();
      assertThat(people.delete(una)).isFalse();

      assertThat(people.delete(ida)).as("the last keeper while others are there").isFalse();
      assertThat(people.role(ida, Role.BAKER)).isFalse();
      assertThat(people.role(jon, Role.KEEPER)).isTrue();
      assertThat(people.delete(ida)).isTrue();
      assertThat(people.delete(jon)).as("nobody is left behind").isTrue();
      assertThat(store.of(Scope.EVERYTHING).count()).isZero();
      assertThat(store.of(Scope.ONLY_BAKER).add(SomeBakes.tinLoaf())).isPositive();
    }
  }

  @ParameterizedTest
  @EnumSource
  void what_may_be_done_so_often_is_counted_for_all_at_once(StoreKind kind) throws Exception {
    try (LogStore one = SqlLogStore.open(kind.place(folder))) {
      Rate rate = new Rate(20, Duration.ofMinutes(15));
      ExecutorService threads = Executors.newFixedThreadPool(4);
      try {
        List<Callable<Boolean>> tries =
            IntStream.range(0, 60)
                .mapToObj(
                    i ->
                        (Callable<Boolean>)
                            () -> one.people().take("log-in of ida", rate, NOON).isEmpty())
                .toList();
        int allowed = 0;
        for (Future<Boolean> tried : threads.invokeAll(tries)) {
          allowed += tried.get() ? 1 : 0;
        }
        assertThat(allowed).isEqualTo(20);
      } finally {
        threads.shutdown();
      }
      People people = one.people();
      assertThat(people.take("log-in of ida", rate, NOON))
          .hasValueSatisfying(wait -> assertThat(wait).isEqualTo(Duration.ofSeconds(45)));
      assertThat(people.take("log-in of ida", rate, NOON.plusSeconds(45))).isEmpty();
      assertThat(people.take("log-in of ida", rate, NOON.plusSeconds(46))).isPresent();
      assertThat(people.take("log-in of jon", rate, NOON)).isEmpty();
      people.forgive("log-in of ida");
      assertThat(people.take("log-in of ida", rate, NOON)).isEmpty();
    }
  }
}
