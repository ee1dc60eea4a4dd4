package crumbtrail.bakelog.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.Sought;
import crumbtrail.bakelog.Verdict;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.bakelog.store.StoreKind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A log that is written out and put back is the same log. */
class ExportRestoreTest {
  @TempDir Path folder;

  private LogStore store(StoreKind kind, String name) throws IOException {
    return SqlLogStore.open(kind.place(Files.createDirectories(folder.resolve(name))));
  }

  private static List<Long> fill(LogStore store) {
    store.fill(
        filling -> filling.put(SomeBakes.traced(9).of(5, 50L).withNote("of a class"), List.of()));
    BakeLog log = store.of(Scope.ONLY_BAKER);
    List<Long> ids = new ArrayList<>();
    for (int day = 0; day < 60; day++) {
      ids.add(log.add(day % 2 == 0 ? SomeBakes.traced(day) : SomeBakes.tinLoaf(day)));
    }
    log.change(
        ids.get(0),
        bake ->
            bake.withOutcome(Outcome.GOOD)
                .withNote("Zwei Zeilen\n„Übermaß“\tend")
                .withVerdicts(
                    Map.of("under-baked", Verdict.RULED_OUT, "salt-too-low", Verdict.CONFIRMED)));
    log.addPhoto(ids.get(0), SomeBakes.photo());
    log.addPhoto(ids.get(0), SomeBakes.photo());
    log.delete(ids.get(3));
    log.learnFrom(1, SomeBakes.TUESDAY.plusDays(20));
    return ids;
  }

  @ParameterizedTest
  @CsvSource({
    "H2, POSTGRES, log.zip",
    "POSTGRES, H2, log",
    "H2, H2, log",
    "POSTGRES, POSTGRES, log.zip"
  })
  void what_comes_back_is_identical(StoreKind from, StoreKind to, String name) throws IOException {
    Path out = folder.resolve(name);
    Path again = folder.resolve("again");
    try (LogStore first = store(from, "first");
        LogStore second = store(to, "second")) {
      List<Long> ids = fill(first);

      LogExport.Count count = LogExport.write(first, Scope.EVERYTHING, out, done -> {});
      LogRestore.Count restored = LogRestore.read(out, second, done -> {});

      assertThat(count).isEqualTo(new LogExport.Count(60, 2));
      assertThat(restored).isEqualTo(new LogRestore.Count(60, 0));
      assertThat(all(second)).isEqualTo(all(first));
      assertThat(second.of(Scope.EVERYTHING).learnsFrom())
          .containsExactly(Map.entry(1L, SomeBakes.TUESDAY.plusDays(20)));
      // What is found by words, causes and numbers is made anew and must be the same too.
      BakeLog here = first.of(Scope.ONLY_BAKER);
      BakeLog there = second.of(Scope.ONLY_BAKER);
      for (Sought sought :
          List.of(Sought.ALL, Sought.words("ubermass"), Sought.cause("over-proofed"))) {
        assertThat(there.list(sought, 99, null)).isEqualTo(here.list(sought, 99, null));
        assertThat(there.digests(sought, 99)).isEqualTo(here.digests(sought, 99));
      }
      LogExport.write(second, Scope.EVERYTHING, again, done -> {});
      assertThat(Files.readAllBytes(again.resolve(Bundle.BAKES)))
          .isEqualTo(Files.readAllBytes(bakes(out)));
      assertThat(pictures(second)).isEqualTo(pictures(first)).hasSize(2);
      assertThat(there.add(SomeBakes.tinLoaf(99)))
          .as("numbers go on where they were")
          .isGreaterThan(ids.get(59));
    }
  }

  @ParameterizedTest
  @EnumSource
  void what_is_there_already_stays_as_it_is(StoreKind kind) throws IOException {
    Path out = folder.resolve("out.zip");
    try (LogStore store = store(kind, "log")) {
      List<Long> ids = fill(store);
      LogExport.write(store, Scope.EVERYTHING, out, done -> {});
      BakeLog log = store.of(Scope.ONLY_BAKER);
      log.delete(ids.get(7));
      log.change(ids.get(8), bake -> bake.withNote("since then"));
      log.learnFrom(1, SomeBakes.TUESDAY.plusDays(30));

      assertThat(LogRestore.read(out, store, done -> {})).isEqualTo(new LogRestore.Count(1, 59));
      assertThat(log.learnsFrom()).containsValue(SomeBakes.TUESDAY.plusDays(30));

      assertThat(log.find(ids.get(8)).orElseThrow().note()).isEqualTo("since then");
      assertThat(log.list(Sought.words("class 7"), 9, null).lines()).hasSize(1);
    }
  }

  @ParameterizedTest
  @EnumSource
  void a_broken_bundle_is_put_back_not_at_all(StoreKind kind) throws IOException {
    Path out = folder.resolve("out");
    try (LogStore store = store(kind, "log");
        LogStore empty = store(kind, "empty")) {
      fill(store);
      LogExport.write(store, Scope.EVERYTHING, out, done -> {});
      Path bakes = out.resolve(Bundle.BAKES);
      String lines = Files.readString(bakes);

      Files.writeString(bakes, lines.substring(0, lines.lastIndexOf("{\"id\"")));
      assertBroken(out, empty, "59 bakes of 60");
      Files.writeString(bakes, lines.substring(0, lines.length() / 2));
      assertBroken(out, empty, "bakes.jsonl, line ");
      Files.writeString(bakes, lines);
      try (Stream<Path> photos = Files.list(out.resolve(Bundle.PHOTOS))) {
        Path photo = photos.findFirst().orElseThrow();
        byte[] picture = Files.readAllBytes(photo);
        Files.writeString(photo, "<script>");
        assertBroken(out, empty, "is not the one that was written out");
        Files.delete(photo);
        assertBroken(out, empty, "of \"Tin loaf, class 0\" is missing");
        Files.write(photo, picture);
      }
      Files.delete(out.resolve(Bundle.ABOUT));
      assertBroken(out, empty, "about.json");
      Path torn = folder.resolve("torn.zip");
      Files.writeString(torn, "PK torn");
      assertBroken(torn, empty, "no whole zip file");
    }
  }

  private static void assertBroken(Path place, LogStore store, String said) {
    assertThatThrownBy(() -> LogRestore.read(place, store, done -> {}))
        .isInstanceOf(LogRestore.Broken.class)
        .hasMessageContaining(said);
    assertThat(store.of(Scope.EVERYTHING).bakes(0)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void a_log_is_written_out_as_it_was_at_one_moment(StoreKind kind) throws IOException {
    Path out = folder.resolve("out.zip");
    try (LogStore store = store(kind, "log")) {
      List<Long> ids = fill(store);
      BakeLog log = store.of(Scope.ONLY_BAKER);

      LogExport.Count count =
          LogExport.write(
              store,
              Scope.EVERYTHING,
              out,
              done -> {
                // Somebody goes on with the log between one bake and the next.
                log.add(SomeBakes.tinLoaf(100 + (int) done));
                if (done == 2) {
                  log.delete(ids.get(50));
                  log.change(ids.get(55), bake -> bake.withNote("too late"));
                }
              });

      assertThat(count.bakes()).isEqualTo(60);
      try (Bundle bundle = Bundle.open(out)) {
        String lines = new String(bundle.read(Bundle.BAKES).readAllBytes(), StandardCharsets.UTF_8);
        assertThat(lines.lines()).hasSize(60);
        assertThat(lines)
            .contains("class 50")
            .doesNotContain("too late")
            .doesNotContain("class 101");
      }
      assertThat(log.bakes(0)).hasSize(59 + 59);
    }
  }

  private static List<Bake> all(LogStore store) {
    // Photos are numbered by the store; their name is what stays.
    return store
        .of(Scope.EVERYTHING)
        .bakes(0)
        .map(
            bake ->
                bake.withPhotos(
                    bake.photos().stream()
                        .map(
                            one ->
                                new PhotoNote(
                                    0,
                                    one.uid(),
                                    one.kind(),
                                    one.width(),
                                    one.height(),
                                    one.bytes()))
                        .toList()))
        .toList();
  }

  private static Map<String, String> pictures(LogStore store) {
    BakeLog log = store.of(Scope.EVERYTHING);
    Map<String, String> pictures = new TreeMap<>();
    log.bakes(0)
        .flatMap(bake -> bake.photos().stream())
        .forEach(
            note ->
                pictures.put(
                    note.file(),
                    HexFormat.of().formatHex(log.photo(note.id()).orElseThrow().picture())));
    return pictures;
  }

  private Path bakes(Path out) throws IOException {
    if (Files.isDirectory(out)) {
      return out.resolve(Bundle.BAKES);
    }
    Path copy = folder.resolve("unpacked.jsonl");
    try (Bundle bundle = Bundle.open(out)) {
      Files.write(copy, bundle.read(Bundle.BAKES).readAllBytes());
    }
    return copy;
  }
}
