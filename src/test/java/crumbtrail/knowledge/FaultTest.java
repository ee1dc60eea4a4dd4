package crumbtrail.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FaultTest {
  private static final Fault ONE = new Fault("signs/all.yaml", 3, "it is odd", "Make it even");
  private static final Fault WHOLE = new Fault("words", 0, "no such folder", "Put it there");

  @Test
  void a_fault_reads_as_file_line_what_and_remedy() {
    assertThat(ONE).hasToString("signs/all.yaml:3: it is odd. Make it even");
    assertThat(WHOLE).hasToString("words: no such folder. Put it there");
  }

  @Test
  void faulty_knowledge_says_every_fault_on_a_line_of_its_own() {
    FaultyKnowledge faulty = new FaultyKnowledge(List.of(ONE, WHOLE));

    assertThat(faulty.faults()).containsExactly(ONE, WHOLE);
    assertThat(faulty.getMessage().lines()).containsExactly(ONE.toString(), WHOLE.toString());
  }
}
