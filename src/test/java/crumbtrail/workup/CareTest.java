package crumbtrail.workup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbtrail.knowledge.ReadingKind;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A workup that leaves out what is not wanted, against the whole one, over all cases. */
class CareTest {
  // A rise takes longer steps where it is not asked when the dough was ready.
  private static final double STEPS = 0.003;

  @Test
  void any_reading_asked_for_alone_is_what_it_is_among_all() throws IOException {
    Set<String> met = new HashSet<>();
    for (BakeSheet sheet : sheets()) {
      Workup whole = Bakes.work(sheet, Care.FULL);
      for (ReadingKind kind : Bakes.CATALOGUE.knowledge().readings()) {
        String name = kind.name();
        same(
            name,
            Bakes.reading(Bakes.work(sheet, Care.ofOne(name)), name),
            Bakes.reading(whole, name));
      }
      whole.readings().forEach(reading -> met.add(reading.name()));
    }
    assertThat(met).contains("acidity", "mould hazard", "over-run height", "core at the cut");
  }

  @Test
  void what_is_not_wanted_and_dear_is_left_out() throws IOException {
    Set<String> left =
        sheets().stream()
            .flatMap(sheet -> missing(sheet).stream())
            .collect(Collectors.toCollection(HashSet::new));

    assertThat(left)
        .containsExactlyInAnyOrder(
            "acidity",
            "bake loss",
            "bulk ready after",
            "bulk schedule",
            "core at the cut",
            "core reached",
            "over-run height",
            "over-run rise",
            "proof ready after",
            "proof schedule",
            "rise by leavening",
            "rise by the clock",
            "rise by warmth",
            "set after");
  }

  @Test
  void courses_are_drawn_for_the_report_alone() {
    BakeSheet sheet =
        Bakes.sheet(
            """
            {'formula': ['500 g bread flour', '310 g water', '5 g instant yeast', '10 g salt'],
             'process': {'bulk': [{'time': '1 h', 'temperature': '26 C'}], 'proof': [{'time': '50 min'}],
                         'baking': {'stages': [{'time': '35 min', 'oven': '210 C'}]}}}
            """);

    assertThat(Bakes.work(sheet, Care.FULL).rise()).isPresent();
    assertThat(Bakes.work(sheet, Care.FULL).bake()).isPresent();
    for (Care care : List.of(Care.ofOne("core reached"), Care.ofDraw(Set.of("bulk ripeness")))) {
      assertThat(Bakes.work(sheet, care).rise()).isEmpty();
      assertThat(Bakes.work(sheet, care).bake()).isEmpty();
    }
  }

  private static void same(String name, Optional<Reading> alone, Optional<Reading> among) {
    assertThat(alone.map(Reading::known)).as(name).isEqualTo(among.map(Reading::known));
    if (among.isPresent()) {
      double value = among.get().value();
      double little = 1e-3 + STEPS * Math.abs(value);
      assertThat(alone.orElseThrow().value()).as(name).isCloseTo(value, within(little));
    }
  }

  private static Set<String> missing(BakeSheet sheet) {
    Set<String> names = names(Bakes.work(sheet, Care.FULL));
    names.removeAll(names(Bakes.work(sheet, Care.ofOne("bulk ripeness"))));
    return names;
  }

  private static Set<String> names(Workup workup) {
    return workup.readings().stream().map(Reading::name).collect(Collectors.toSet());
  }

  private static List<BakeSheet> sheets() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .sorted()
          .map(CareTest::sheet)
          .toList();
    }
  }

  private static BakeSheet sheet(Path file) {
    try {
      return SheetReader.read(Files.readString(file)).sheet().orElseThrow();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
