package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A sentence that asks a reading for more than its sight holds would have unlike bakes merged. */
class SightsTest {
  private static final Set<String> SEEN =
      Set.of(
          "value",
          "belowUsual()",
          "aboveUsual()",
          "farBelowUsual()",
          "farAboveUsual()",
          "withinUsual()",
          "belowAllCustom()",
          "aboveAllCustom()");

  @Test
  void sentences_ask_readings_for_nothing_that_a_sight_does_not_hold() throws IOException {
    String sentences = Files.readString(Path.of("rules", "sentences", "bread.dsl"));
    Matcher asked =
        Pattern.compile("Reading\\(name == \"\\{reading}\", (.+)\\)$", Pattern.MULTILINE)
            .matcher(sentences);
    Set<String> all = new TreeSet<>();
    while (asked.find()) {
      for (String one : asked.group(1).split(", ")) {
        all.add(one.replaceAll(" [<>]=? .*", ""));
      }
    }
    assertThat(all).hasSizeGreaterThan(5);
    assertThat(SEEN).containsAll(all);
  }
}
