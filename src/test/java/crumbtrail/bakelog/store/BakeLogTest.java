package crumbtrail.bakelog.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.Digest;
import crumbtrail.bakelog.Digested;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Page;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Sought;
import crumbtrail.bakelog.Verdict;
import crumbtrail.trends.Named;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.UUID;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a log keeps, finds and forgets, on every store. */
class BakeLogTest {
  @TempDir Path folder;

  private LogStore open(StoreKind kind) {
    return SqlLogStore.open(kind.place(folder));
  }

  @ParameterizedTest
  @EnumSource
  void a_bake_comes_back_exactly_as_it_went_in(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      Bake bake =
          SomeBakes.traced(0)
              .withNote("Crumb close near the base.\n\nOven light broken: 20 °C too cool?")
              .withOutcome(Outcome.FAILED)
              .withVerdicts(
                  Map.of("over-proofed", Verdict.RULED_OUT, "oven-too-cool", Verdict.CONFIRMED));

      long id = log.add(bake);

      assertThat(id).isPositive();
      assertThat(log.find(id)).contains(bake.numbered(id));
      assertThat(log.find(bake.uid())).contains(id);
      assertThat(log.find(id + 1)).isEmpty();
      assertThat(log.find(UUID.randomUUID())).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void the_hour_that_the_clock_of_this_machine_leaves_out_is_kept_too(StoreKind kind) {
    TimeZone usual = TimeZone.getDefault();
    TimeZone.setDefault(TimeZone.getTimeZone("Europe/Copenhagen"));
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      LocalDateTime leftOut = LocalDateTime.of(2026, 3, 29, 2, 30);

      long id = log.add(Bake.of(leftOut, "Night loaf", "", "{}"));

      assertThat(log.find(id).orElseThrow().baked()).isEqualTo(leftOut);
    } finally {
      TimeZone.setDefault(usual);
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_log_that_is_closed_and_opened_holds_what_it_held(StoreKind kind) {
    var place = kind.place(folder);
    Bake bake = SomeBakes.traced(1);
    long id;
    try (LogStore store = SqlLogStore.open(place)) {
      id = store.of(Scope.ONLY_BAKER).add(bake);
    }
    try (LogStore store = SqlLogStore.open(place)) {
      assertThat(store.of(Scope.ONLY_BAKER).find(id)).contains(bake.numbered(id));
    }
  }

  @ParameterizedTest
  @EnumSource
  void the_list_begins_with_the_latest_and_goes_on_page_by_page(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      for (int day : new int[] {3, 0, 4, 1, 2}) {
        log.add(SomeBakes.tinLoaf(day));
      }
      // Two of one minute: the later entry comes first.
      log.add(SomeBakes.tinLoaf(2));

      List<String> labels = new ArrayList<>();
      Page page = log.list(Sought.ALL, 4, null);
      assertThat(page.more()).isTrue();
      page.lines().forEach(line -> labels.add(line.label() + "/" + line.id()));
      page = log.list(Sought.ALL, 4, page.next().orElseThrow());
      page.lines().forEach(line -> labels.add(line.label() + "/" + line.id()));

      assertThat(page.more()).isFalse();
      assertThat(page.next()).isEmpty();
      assertThat(labels)
          .containsExactly(
              "Tin loaf, class 4/3",
              "Tin loaf, class 3/1",
              "Tin loaf, class 2/6",
              "Tin loaf, class 2/5",
              "Tin loaf, class 1/4",
              "Tin loaf, class 0/2");
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_bake_is_found_by_words_of_its_label_recipe_and_notes(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long rye = log.add(Bake.of(SomeBakes.TUESDAY, "Kväll på kvarnen", "Rye loaves", "{}"));
      long tin = log.add(SomeBakes.tinLoaf().withNote("The rye flour was old."));
      long bun = log.add(Bake.of(SomeBakes.TUESDAY, "Buns", "Buns", "{}"));

      assertThat(found(log, Sought.words("RYE"))).containsExactly(tin, rye);
      assertThat(found(log, Sought.words("kvall kvarnen"))).containsExactly(rye);
      assertThat(found(log, Sought.words("bun"))).containsExactly(bun);
      assertThat(found(log, Sought.words("rye buns"))).isEmpty();
      assertThat(found(log, Sought.words("...")))
          .as("no word, no condition")
          .containsExactly(bun, tin, rye);
      assertThat(found(log, Sought.words("'; drop table bake; --"))).isEmpty();

      log.change(tin, bake -> bake.withNote("A new sack."));
      assertThat(found(log, Sought.words("rye"))).containsExactly(rye);
      assertThat(found(log, Sought.words("sack"))).containsExactly(tin);
      assertThat(found(log, new Sought("loaf", "tin LOAF", null, null, null))).containsExactly(tin);
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_bake_is_found_by_what_it_is_called_now(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long id = log.add(SomeBakes.traced(0));
      LocalDateTime later = SomeBakes.TUESDAY.plusDays(40);

      Bake changed = log.change(id, bake -> bake.called("Stones", "Rye", later)).orElseThrow();

      assertThat(changed).isEqualTo(log.find(id).orElseThrow());
      assertThat(List.of(changed.label(), changed.recipe(), changed.baked()))
          .isEqualTo(List.of("Stones", "Rye", later));
      assertThat(changed.sheet()).isEqualTo(SomeBakes.traced(0).sheet());
      assertThat(found(log, Sought.words("stones"))).containsExactly(id);
      assertThat(found(log, Sought.words("tin"))).isEmpty();
      assertThat(found(log, Sought.recipe("rye"))).containsExactly(id);
      assertThat(found(log, Sought.recipe("tin loaf"))).isEmpty();
      // Words, causes and the list know the new day too.
      assertThat(found(log, new Sought("stones", null, null, later, null))).containsExactly(id);
      assertThat(found(log, new Sought(null, null, "over-proofed", later, null)))
          .containsExactly(id);
      assertThat(found(log, new Sought("stones", null, null, null, later))).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_bake_is_found_by_recipe_cause_and_time(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long first = log.add(SomeBakes.traced(0));
      long second =
          log.add(SomeBakes.traced(1).withVerdicts(Map.of("over-proofed", Verdict.RULED_OUT)));
      long third =
          log.add(SomeBakes.tinLoaf(2).withVerdicts(Map.of("over-proofed", Verdict.CONFIRMED)));
      long other = log.add(Bake.of(SomeBakes.TUESDAY, "Buns", "Buns", "{}"));

      assertThat(found(log, Sought.cause("over-proofed")))
          .as("confirmed, or first of the report and not ruled out")
          .containsExactly(third, first);
      assertThat(found(log, Sought.recipe(" tin loaf"))).containsExactly(third, second, first);
      LocalDateTime since = SomeBakes.TUESDAY.plusDays(1);
      assertThat(found(log, new Sought(null, null, null, since, null)))
          .containsExactly(third, second);
      assertThat(found(log, new Sought(null, null, null, null, since)))
          .containsExactly(other, first);
      assertThat(found(log, new Sought("tin", null, "over-proofed", since, null)))
          .containsExactly(third);
      assertThat(log.confirmed()).containsExactly(Map.entry("over-proofed", 1L));
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_bake_is_found_by_its_outcome_and_by_whether_it_was_judged(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long good = log.add(SomeBakes.tinLoaf(0).withOutcome(Outcome.GOOD));
      long judged =
          log.add(SomeBakes.tinLoaf(1).withVerdicts(Map.of("over-proofed", Verdict.CONFIRMED)));
      log.add(SomeBakes.traced(2).withVerdicts(Map.of("over-proofed", Verdict.RULED_OUT)));
      log.add(
          Bake.of(SomeBakes.TUESDAY, "Buns", "Buns", SomeBakes.SHEET).withOutcome(Outcome.GOOD));

      assertThat(found(log, Sought.recipe("Tin loaf", Outcome.GOOD))).containsExactly(good);
      assertThat(found(log, Sought.recipe("Tin loaf", Outcome.FAILED))).isEmpty();
      assertThat(found(log, Sought.judged(null))).containsExactly(judged);
      assertThat(found(log, Sought.judged(SomeBakes.TUESDAY.plusDays(1)))).containsExactly(judged);
      assertThat(found(log, Sought.judged(SomeBakes.TUESDAY.plusDays(2)))).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void from_when_a_kitchen_learns_is_kept_for_each_baker_alone(StoreKind kind) {
    LocalDateTime oven = LocalDateTime.of(2026, 3, 1, 6, 0, 7);
    try (LogStore store = open(kind)) {
      store.fill(filling -> filling.put(SomeBakes.traced(9).of(5, 50L), List.of()));
      BakeLog own = store.of(Scope.ONLY_BAKER);
      assertThat(own.learnsFrom()).isEmpty();

      own.learnFrom(1, oven.plusNanos(5));
      store.of(Scope.baker(5)).learnFrom(5, oven.plusDays(1));

      assertThat(own.learnsFrom()).containsExactly(Map.entry(1L, oven));
      assertThat(store.of(Scope.EVERYTHING).learnsFrom())
          .containsExactly(Map.entry(1L, oven), Map.entry(5L, oven.plusDays(1)));
      assertThat(store.of(Scope.schoolClass(50)).learnsFrom()).isEmpty();
      assertThatThrownBy(() -> own.learnFrom(5, null)).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> store.of(Scope.schoolClass(50)).learnFrom(5, null))
          .isInstanceOf(IllegalArgumentException.class);
      own.learnFrom(1, null);
      assertThat(own.learnsFrom()).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_list_line_tells_outcome_causes_and_photos(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long id = log.add(SomeBakes.traced(0).withOutcome(Outcome.FAIR));
      log.addPhoto(id, SomeBakes.photo());
      log.change(id, bake -> bake.withVerdicts(Map.of("salt-too-low", Verdict.CONFIRMED)));

      assertThat(log.list(Sought.ALL, 9, null).lines())
          .containsExactly(
              new BakeLine(
                  id,
                  Bake.ONLY_BAKER,
                  SomeBakes.TUESDAY,
                  "Tin loaf, class 0",
                  "Tin loaf",
                  Outcome.FAIR,
                  "over-proofed",
                  List.of("salt-too-low"),
                  1));
    }
  }

  @ParameterizedTest
  @EnumSource
  void the_numbers_of_a_report_are_there_without_the_report(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      log.add(SomeBakes.tinLoaf(0));
      log.add(SomeBakes.traced(1));

      List<Digested> digests = log.digests(Sought.recipe("tin loaf"), 10);

      assertThat(digests)
          .extracting(one -> one.line().label())
          .first()
          .isEqualTo("Tin loaf, class 1");
      Digest digest = digests.get(0).digest();
      assertThat(digest.readings())
          .containsExactly(Map.entry("hydration", 62.0), Map.entry("dough temperature", 25.5));
      assertThat(digest.ranking())
          .containsExactly(new Named("over-proofed", 0.83), new Named("under-baked", 0.1));
      assertThat(digests.get(1).digest()).isEqualTo(Digest.NONE);
    }
  }

  @ParameterizedTest
  @EnumSource
  void all_bakes_are_read_one_after_the_other(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      int many = 120;
      for (int day = 0; day < many; day++) {
        log.add(SomeBakes.traced(many - day));
      }

      List<Long> ids = log.bakes(0).map(Bake::id).toList();

      assertThat(ids).hasSize(many).isSorted().doesNotHaveDuplicates();
      assertThat(log.bakes(ids.get(100)).map(Bake::id).toList()).isEqualTo(ids.subList(101, many));
    }
  }

  @ParameterizedTest
  @EnumSource
  void photos_belong_to_their_bake_and_go_with_it(StoreKind kind) {
    try (LogStore store = open(kind)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long id = log.add(SomeBakes.tinLoaf());
      Photo photo = SomeBakes.photo();

      long number = log.addPhoto(id, photo).orElseThrow();
      long another = log.addPhoto(id, SomeBakes.photo()).orElseThrow();

      assertThat(log.photo(number).orElseThrow().picture()).isEqualTo(photo.picture());
      assertThat(log.find(id).orElseThrow().photos())
          .extracting(PhotoNote::id)
          .containsExactly(number, another);
      assertThat(log.addPhoto(id + 1, photo)).isEmpty();
      assertThat(log.deletePhoto(another)).isTrue();
      assertThat(log.deletePhoto(another)).isFalse();
      assertThat(log.delete(id)).isTrue();
      assertThat(log.photo(number)).isEmpty();
      assertThat(log.find(id)).isEmpty();
      assertThat(log.delete(id)).isFalse();
      assertThat(found(log, Sought.words("tin"))).isEmpty();
    }
  }

  @ParameterizedTest
  @EnumSource
  void nobody_sees_or_touches_what_belongs_to_others(StoreKind kind) {
    try (LogStore store = open(kind)) {
      store.fill(
          filling -> {
            filling.put(SomeBakes.traced(0).of(7, 70L), List.of());
            filling.put(SomeBakes.traced(1).of(8, 70L), List.of(SomeBakes.photo()));
            filling.put(SomeBakes.traced(2).of(8, null), List.of());
          });
      BakeLog keeper = store.of(Scope.EVERYTHING);
      Page all = keeper.list(Sought.ALL, 9, null);
      assertThat(all.lines()).extracting(BakeLine::owner).containsExactly(8L, 8L, 7L);
      long theirs = all.lines().get(1).id();
      long photo = keeper.find(theirs).orElseThrow().photos().get(0).id();
      BakeLog mine = store.of(Scope.baker(7));
      BakeLog schoolClass = store.of(Scope.schoolClass(70));

      assertThat(found(mine, Sought.ALL)).hasSize(1).doesNotContain(theirs);
      assertThat(found(mine, Sought.words("tin"))).hasSize(1).doesNotContain(theirs);
      assertThat(found(mine, Sought.cause("over-proofed"))).hasSize(1).doesNotContain(theirs);
      assertThat(mine.digests(Sought.ALL, 9)).hasSize(1);
      assertThat(mine.bakes(0)).hasSize(1);
      assertThat(mine.find(theirs)).isEmpty();
      assertThat(mine.find(keeper.find(theirs).orElseThrow().uid())).isEmpty();
      assertThat(mine.photo(photo)).isEmpty();
      assertThat(mine.addPhoto(theirs, SomeBakes.photo())).isEmpty();
      assertThat(mine.change(theirs, bake -> bake.withNote("was here"))).isEmpty();
      assertThat(mine.deletePhoto(photo)).isFalse();
      assertThat(mine.delete(theirs)).isFalse();
      assertThatThrownBy(() -> mine.add(SomeBakes.tinLoaf().of(8, null)))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(
              () -> mine.change(found(mine, Sought.ALL).get(0), bake -> bake.of(8, null)))
          .isInstanceOf(IllegalArgumentException.class);
      assertThat(found(schoolClass, Sought.words("tin"))).hasSize(2).contains(theirs);
      assertThat(found(schoolClass, Sought.cause("over-proofed"))).hasSize(2);
      assertThat(schoolClass.photo(photo)).isPresent();
      assertThat(keeper.find(theirs).orElseThrow().note()).isEmpty();
      assertThat(keeper.photo(photo)).isPresent();
    }
  }

  private static List<Long> found(BakeLog log, Sought sought) {
    return log.list(sought, 50, null).lines().stream().map(BakeLine::id).toList();
  }
}
