package crumbtrail.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.handbook.Inline.Kind;
import org.junit.jupiter.api.Test;

class InlineTest {
  @Test
  void links_emphasis_and_code_are_taken_apart() {
    assertThat(Inline.of("From [salt](../causes/salt.md), *firmly*: `run`."))
        .containsExactly(
            new Inline("From ", "", Kind.PLAIN),
            new Inline("salt", "../causes/salt.md", Kind.PLAIN),
            new Inline(", ", "", Kind.PLAIN),
            new Inline("firmly", "", Kind.EMPHASIS),
            new Inline(": ", "", Kind.PLAIN),
            new Inline("run", "", Kind.CODE),
            new Inline(".", "", Kind.PLAIN));
  }

  @Test
  void words_without_marks_stay_as_they_are() {
    assertThat(Inline.of("3 * 4 and [open"))
        .containsExactly(new Inline("3 * 4 and [open", "", Kind.PLAIN));
  }
}
