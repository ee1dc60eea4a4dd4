package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderHashTest {
  @TempDir Path one;
  @TempDir Path other;

  @Test
  void equal_content_has_an_equal_name_wherever_it_lies() throws IOException {
    TinyRules.write(one);
    TinyRules.write(other);

    assertThat(FolderHash.of(one)).isEqualTo(FolderHash.of(other)).matches("[0-9a-f]{16}");
  }

  @Test
  void a_changed_letter_and_a_changed_file_name_change_the_name() throws IOException {
    TinyRules.write(one);
    String before = FolderHash.of(one);
    TinyRules.file(one, "cautions.yaml", TinyRules.CAUTIONS.replace("raw dough.", "raw Dough."));
    String letter = FolderHash.of(one);
    Files.move(one.resolve("stages/salt.dslr"), one.resolve("stages/sald.dslr"));

    assertThat(letter).isNotEqualTo(before);
    assertThat(FolderHash.of(one)).isNotEqualTo(letter).isNotEqualTo(before);
  }

  // printf 'B.yaml\0noughta-b.yaml\0onea/b.yaml\0two' | sha256sum
  @Test
  void names_are_told_with_slashes_and_ordered_by_letter() throws IOException {
    TinyRules.file(one, "a/b.yaml", "two");
    TinyRules.file(one, "a-b.yaml", "one");
    TinyRules.file(one, "B.yaml", "nought");

    assertThat(FolderHash.of(one)).isEqualTo("b7b105461f938c21");
  }
}
