package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.KnowledgeFolder;
import crumbtrail.knowledge.Places;
import crumbtrail.pantry.Pantry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A rules folder read and checked: catalogues, sentences and rules, not yet compiled.
 *
 * @param catalogue the catalogues
 * @param places where the entries of the catalogues stand
 * @param pantry the ingredients
 * @param sentences text of the sentence file
 * @param files text of each rule file by name
 * @param rules every rule
 * @param edition what the folder calls its edition, empty where it does not say
 */
record RuleFolder(
    Catalogue catalogue,
    Places places,
    Pantry pantry,
    String sentences,
    Map<String, String> files,
    List<RuleText> rules,
    String edition) {

  static final String SENTENCES = "sentences/bread.dsl";
  private static final String STAGES = "stages";

  RuleFolder {
    files = new LinkedHashMap<>(files);
    rules = List.copyOf(rules);
  }

  /**
   * Reads and checks a folder.
   *
   * @throws FaultyKnowledge with every fault of every file
   */
  static RuleFolder read(Path folder) throws FaultyKnowledge {
    Catalogue catalogue = new Catalogue(KnowledgeFolder.read(folder));
    List<Fault> faults = new ArrayList<>();
    String sentences = text(folder, SENTENCES, faults);
    Map<String, String> files = new LinkedHashMap<>();
    for (String name : names(folder, faults)) {
      files.put(name, text(folder, name, faults));
    }
    List<RuleText> rules = new ArrayList<>();
    files.forEach((name, text) -> rules.addAll(RuleFile.read(name, text, faults)));
    String edition = Edition.of(folder, faults);
    Sentences known = new Sentences(sentences);
    faults.addAll(known.faults());
    faults.addAll(new RuleCheck(catalogue, known).faults(rules));
    faults.addAll(RuleTwins.faults(rules));
    if (rules.isEmpty() && faults.isEmpty()) {
      faults.add(new Fault(STAGES, 0, "there are no rules", "Put rule files (*.dslr) there"));
    }
    if (!faults.isEmpty()) {
      throw new FaultyKnowledge(faults);
    }
    return new RuleFolder(
        catalogue,
        KnowledgeFolder.places(folder),
        pantry(folder),
        sentences,
        files,
        rules,
        edition);
  }

  /** The rules as those want them who read them rather than run them. */
  RuleBook book() {
    return new RuleBook(catalogue, places, RuleMeaning.of(rules, new Sentences(sentences)));
  }

  /** The rules in a form that needs no compiler; none where a sentence means more than that. */
  List<PlainRule> plain() {
    return PlainRule.of(rules, new Sentences(sentences));
  }

  private static Pantry pantry(Path folder) throws FaultyKnowledge {
    try {
      return Pantry.read(folder.resolve("pantry"));
    } catch (IOException | RuntimeException fault) {
      throw new FaultyKnowledge(
          List.of(new Fault("pantry", 0, String.valueOf(fault.getMessage()), "Mend that row")));
    }
  }

  private static List<String> names(Path folder, List<Fault> faults) {
    try (Stream<Path> files = Files.list(folder.resolve(STAGES))) {
      return files
          .map(file -> STAGES + "/" + file.getFileName())
          .filter(name -> name.endsWith(".dslr"))
          .sorted()
          .toList();
    } catch (IOException fault) {
      faults.add(new Fault(STAGES, 0, "no such folder", "Put rule files (*.dslr) there"));
      return List.of();
    }
  }

  private static String text(Path folder, String name, List<Fault> faults) {
    try {
      return Files.readString(folder.resolve(name)).replace("\r\n", "\n");
    } catch (IOException fault) {
      faults.add(
          new Fault(name, 0, "cannot be read: " + fault.getMessage(), "Put it there in UTF-8"));
      return "";
    }
  }
}
