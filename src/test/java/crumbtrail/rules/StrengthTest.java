package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.rules.WrittenRule.Strength;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StrengthTest {
  /** The engine goes by the sentence file, the pages by the word; both must weigh the same. */
  @ParameterizedTest
  @EnumSource(Strength.class)
  void a_word_weighs_what_its_sentence_says(Strength strength) throws IOException {
    String word = strength.words();
    assertThat(Files.readAllLines(Path.of("rules/sentences/bread.dsl")))
        .filteredOn(
            line -> line.startsWith("[then]") && line.toLowerCase(Locale.ROOT).contains(word))
        .isNotEmpty()
        .allSatisfy(
            line ->
                assertThat(
                        Math.abs(Double.parseDouble(line.replaceAll(".*, (-?[0-9.]+)\\);", "$1"))))
                    .isEqualTo(strength.decibans()));
  }
}
