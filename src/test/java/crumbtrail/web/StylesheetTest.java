package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class StylesheetTest {
  private static final Pattern BARE = Pattern.compile("(?m)^(\\.[a-z-]+) \\{$");

  /** Two pages that gave one name to different things once made the bars of findings vanish. */
  @Test
  void a_class_gets_its_looks_in_one_place() throws IOException {
    String styles = Files.readString(Path.of("src/main/resources/public/crumbtrail.css"));
    List<String> names = new ArrayList<>();
    Matcher bare = BARE.matcher(styles);
    while (bare.find()) {
      names.add(bare.group(1));
    }

    assertThat(names).hasSizeGreaterThan(50).doesNotHaveDuplicates();
  }
}
