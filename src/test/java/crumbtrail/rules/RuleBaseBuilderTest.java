package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the build step leaves beside the classes. */
class RuleBaseBuilderTest {
  private static final FileTime LONG_AGO = FileTime.fromMillis(1_000_000_000_000L);

  @TempDir Path rules;
  @TempDir Path target;

  @BeforeEach
  void build() throws Exception {
    TinyRules.write(rules);
    assertThat(RuleBaseBuilder.build(rules, target)).isEqualTo(1);
  }

  @Test
  void nothing_is_written_again_when_nothing_has_changed() throws Exception {
    Path text = target.resolve(RuleBaseBuilder.TEXT);
    Files.setLastModifiedTime(text, LONG_AGO);

    assertThat(RuleBaseBuilder.build(rules, target)).isEqualTo(1);

    assertThat(Files.getLastModifiedTime(text)).isEqualTo(LONG_AGO);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        RuleBaseBuilder.PLAIN,
        RuleBaseBuilder.KNOWLEDGE,
        RuleBaseBuilder.PANTRY,
        RuleBaseBuilder.TEXT,
        RuleBaseBuilder.PLACES,
        RuleBaseBuilder.EDITION,
        RuleBaseBuilder.VERSION
      })
  void what_is_missing_is_written_though_the_rules_are_the_same(String file) throws Exception {
    byte[] before = Files.readAllBytes(target.resolve(file));
    Files.delete(target.resolve(file));

    RuleBaseBuilder.build(rules, target);

    assertThat(target.resolve(file)).hasBinaryContent(before);
  }
}
