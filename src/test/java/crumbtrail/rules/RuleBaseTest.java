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
  void the_first_use_compiles_and_says_so_and_the_second_is_quiet() throws Exception {
    RuleBase first = RuleBase.of(folder, cache, told::add);
    assertThat(told).hasSize(3);
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
