package crumbtrail.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules that are laid out without a compiler say what the engine's own compiler makes of them. */
class PlainNetworkTest {

  @Test
  void every_rule_says_the_same_as_when_the_engine_compiles_it() throws Exception {
    RuleFolder folder = RuleFolder.read(Path.of("rules"));
    byte[] module = RuleCompiler.compile(folder, "compared");
    byte[] plain = written(folder.plain());
    byte[] none = written(List.of());
    Network compiled =
        Network.begin(
            name -> stream(name.equals(RuleBaseBuilder.MODULE) ? module : none), "compared");
    Network straight = Network.begin(name -> stream(plain), "compared");
    SheetWorkup workups = new SheetWorkup(folder.catalogue(), folder.pantry());
    Set<String> spoke = new HashSet<>();

    try (RuleRun one = new RuleRun(compiled.base(), new HashMap<>(), new Broken());
        RuleRun other = new RuleRun(straight.base(), new HashMap<>(), new Broken())) {
      for (BakeSheet sheet : sheets()) {
        List<Object> facts = Facts.of(workups.work(sheet));
        assertThat(other.evidence(facts)).as(sheet.title()).isEqualTo(one.evidence(facts));
        one.evidence(facts).values().stream()
            .flatMap(List::stream)
            .map(Evidence::rule)
            .forEach(spoke::add);
      }
    }

    // All but a few rules have had their say in these bakes.
    assertThat(spoke.size()).isGreaterThan(folder.rules().size() * 9 / 10);
  }

  @Test
  void rules_are_read_as_they_were_written() throws Exception {
    List<PlainRule> plain = RuleFolder.read(Path.of("rules")).plain();

    assertThat(PlainRule.read(new DataInputStream(stream(written(plain))))).isEqualTo(plain);
  }

  private static List<BakeSheet> sheets() throws IOException {
    ObjectMapper json = new ObjectMapper();
    List<BakeSheet> sheets = new ArrayList<>();
    for (Path folder : List.of(Path.of("cases"), Path.of("src/test/resources/rule-probes"))) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
          JsonNode content = json.readTree(file.toFile());
          for (JsonNode one : content.isArray() ? content : List.of(content)) {
            SheetReader.read(one.toString()).sheet().ifPresent(sheets::add);
          }
        }
      }
    }
    return sheets;
  }

  private static InputStream stream(byte[] bytes) {
    return new ByteArrayInputStream(bytes);
  }

  private static byte[] written(List<PlainRule> rules) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PlainRule.write(rules, new DataOutputStream(bytes));
    return bytes.toByteArray();
  }
}
