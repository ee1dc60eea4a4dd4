package crumbtrail.rules;

import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.report.PostMortem;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Rules and facts of this project for what measures the engine. Run from the project's root. */
final class SomeRules {
  private SomeRules() {}

  /** So many of the rules, taken evenly from all stages. */
  static List<PlainRule> plain(int rules) {
    List<PlainRule> all;
    try {
      all = RuleFolder.read(Path.of("rules")).plain();
    } catch (FaultyKnowledge fault) {
      throw new IllegalStateException("the rules cannot be used", fault);
    }
    int wanted = Math.min(rules, all.size());
    return IntStream.range(0, wanted)
        .mapToObj(at -> all.get((int) ((long) at * all.size() / wanted)))
        .toList();
  }

  /** The facts of every case, by the name of its file. */
  static Map<String, List<Object>> facts() {
    PostMortem postMortem = new PostMortem(RuleBase.bundled());
    SheetWorkup workups =
        new SheetWorkup(postMortem.rules().catalogue(), postMortem.rules().pantry());
    Map<String, List<Object>> facts = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".json")).sorted().toList()) {
        facts.put(
            file.getFileName().toString().replace(".json", ""),
            Facts.of(workups.work(SheetReader.read(Files.readString(file)).sheet().orElseThrow())));
      }
    } catch (IOException fault) {
      throw new IllegalStateException("the cases cannot be read", fault);
    }
    return facts;
  }
}
