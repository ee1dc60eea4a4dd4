package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Reading.Known;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RuleBaseTest {
  private static final Reading THIN_SALT =
      Reading.of("salt", 1, 1, 1, Known.MEASURED, Optional.empty(), Reading.Scale.AMOUNT);

  @TempDir Path folder;
  @TempDir Path cache;
  private final List<String> told = new ArrayList<>();

  @BeforeEach
  void write_a_folder_without_faults() {
    TinyRules.write(folder);
  }

  @Test
  void the_first_use_says_what_it_does_and_the_second_is_quiet() throws Exception {
    RuleBase first = RuleBase.of(folder, cache, told::add);
    assertThat(told).hasSize(2);
    assertThat(told.get(1)).contains("1 rules");
    told.clear();

    RuleBase second = RuleBase.of(folder, cache, told::add);

    assertThat(told).isEmpty();
    assertThat(second.version()).isEqualTo(first.version());
    assertThat(second.run(List.of(THIN_SALT))).isEqualTo(first.run(List.of(THIN_SALT))).hasSize(1);
    assertThat(second.catalogue().knowledge()).isEqualTo(first.catalogue().knowledge());
    assertThat(second.pantry().all()).isEqualTo(first.pantry().all()).isNotEmpty();
  }

  @Test
  void a_changed_rule_is_compiled_anew_and_the_old_base_keeps_its_own() throws Exception {
    RuleBase old = RuleBase.of(folder, cache, told::add);
    TinyRules.file(
        folder,
        "stages/salt.dslr",
        TinyRules.rule("salt", "The salt is over 2 %", "Suspect \"salt too low\" firmly"));
    told.clear();

    RuleBase changed = RuleBase.of(folder, cache, told::add);

    assertThat(told).isNotEmpty();
    assertThat(changed.version()).isNotEqualTo(old.version());
    assertThat(changed.run(List.of(THIN_SALT))).isEmpty();
    assertThat(old.run(List.of(THIN_SALT))).hasSize(1);
  }

  @Test
  void a_faulty_folder_is_refused_with_every_fault_and_leaves_the_cache_alone() throws Exception {
    TinyRules.file(
        folder,
        "stages/faulty.dslr",
        TinyRules.rule("one", "The slat is under 1 %", "Suspect \"salt too low\" firmly")
            + TinyRules.rule("two", "The salt is under 1 %", "Suspect \"salt\" firmly"));

    FaultyKnowledge refused =
        catchThrowableOfType(FaultyKnowledge.class, () -> RuleBase.of(folder, cache, told::add));

    assertThat(refused.faults()).hasSize(2);
    assertThat(refused).hasMessageContaining("stages/faulty.dslr:6: ");
    assertThat(refused).hasMessageContaining("stages/faulty.dslr:17: ");
    assertThat(files(cache)).isEmpty();
  }

  /** The checks let this through; the engine does not, and says where. */
  @Test
  void what_only_the_engine_refuses_is_named_with_its_line_and_leaves_no_stamp() throws Exception {
    String broken =
        Files.readString(TinyRules.SENTENCES).replace("value < {limit}", "valeu < {limit}");
    TinyRules.file(folder, "sentences/bread.dsl", broken);

    FaultyKnowledge refused =
        catchThrowableOfType(FaultyKnowledge.class, () -> RuleBase.of(folder, cache, told::add));

    assertThat(refused.faults())
        .isNotEmpty()
        .allSatisfy(fault -> assertThat(fault.file()).startsWith("stages/salt.dslr"));
    assertThat(files(cache)).noneMatch(file -> file.endsWith(RuleBaseBuilder.VERSION));
  }

  /** A sentence of the sentence file may mean whatever the engine understands. */
  @Test
  void a_sentence_that_means_more_than_the_plain_ones_is_compiled() throws Exception {
    String more =
        Files.readString(TinyRules.SENTENCES)
            + "[when]Twice the {reading} is under {limit:[0-9.]+} {unit:[^,]+}"
            + "=Reading(name == \"{reading}\", 2 * value < {limit})\n";
    TinyRules.file(folder, "sentences/bread.dsl", more);
    TinyRules.file(
        folder,
        "stages/twice.dslr",
        TinyRules.rule(
            "twice", "Twice the salt is under 2.1 %", "Suspect \"salt too low\" firmly"));

    RuleBase base = RuleBase.of(folder, cache, told::add);

    assertThat(told).anyMatch(said -> said.startsWith("Compiling 2 rules"));
    assertThat(base.run(List.of(THIN_SALT))).extracting(Evidence::rule).contains("twice");
  }

  @Test
  void a_rule_that_breaks_off_is_named_and_the_others_still_count() throws Exception {
    String more =
        Files.readString(TinyRules.SENTENCES)
            + "[when]A broken look at {reading}"
            + "=Reading(name == \"{reading}\", usual.get().low() > 0)\n"
            + "[then]Fail=Integer.parseInt(\"no number\");\n";
    TinyRules.file(folder, "sentences/bread.dsl", more);
    TinyRules.file(
        folder,
        "stages/broken.dslr",
        TinyRules.rule("looks wrong", "A broken look at salt", "Suspect \"salt too low\" firmly")
            + TinyRules.rule("says wrong", "The salt is under 1.5 %", "Fail"));
    RuleBase base = RuleBase.of(folder, cache, told::add);

    List<Evidence> first = base.run(List.of(THIN_SALT));
    List<Evidence> again = base.run(List.of(THIN_SALT));

    assertThat(first).extracting(Evidence::rule).containsExactly("thin salt");
    assertThat(again).isEqualTo(first);
    assertThat(base.broken())
        .containsOnlyKeys("looks wrong", "says wrong")
        .containsEntry("says wrong", "NumberFormatException");
  }

  @Test
  void a_folder_that_is_not_there_is_an_error_of_reading() {
    Path nowhere = folder.resolve("nowhere");

    assertThat(
            catchThrowableOfType(IOException.class, () -> RuleBase.of(nowhere, cache, told::add)))
        .isNotNull();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).toList();
    }
  }
}
