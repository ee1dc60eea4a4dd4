package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.Places;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/**
 * The rules as they are written, with the catalogues they speak of; for those who read rules rather
 * than run them. Immutable.
 *
 * @param catalogue causes, signs, circumstances and the rest
 * @param places where each entry of the catalogues stands
 * @param rules every rule, in the order of files and lines
 */
public record RuleBook(Catalogue catalogue, Places places, List<WrittenRule> rules) {
  public RuleBook {
    rules = List.copyOf(rules);
  }

  /**
   * Reads and checks a rules folder, without compiling it.
   *
   * @throws FaultyKnowledge with every fault that would keep the rules from being compiled
   */
  public static RuleBook read(Path folder) throws FaultyKnowledge {
    return RuleFolder.read(folder).book();
  }

  /** The rules that the program was built with. */
  public static RuleBook bundled() {
    RuleBase.Parts parts = RuleBase::resource;
    try {
      Knowledge knowledge = parts.read(RuleBaseBuilder.KNOWLEDGE, Knowledge.class).get(0);
      return new RuleBook(
          new Catalogue(knowledge),
          places(parts),
          parts.read(RuleBaseBuilder.TEXT, WrittenRule.class));
    } catch (IOException fault) {
      throw new UncheckedIOException("the program's own rules cannot be read", fault);
    }
  }

  /** Where each entry of the catalogues stands, as it is kept beside the compiled form. */
  static Places places(RuleBase.Parts parts) throws IOException {
    return parts.read(RuleBaseBuilder.PLACES, Places.class).get(0);
  }

  /** What these rules and catalogues lack to be complete; see {@link RuleGuards}. */
  public List<Fault> faults() {
    return new RuleGuards(this).faults();
  }

  /** What a rule writer may want to look at; not faults. */
  public List<Fault> hints() {
    return new RuleGuards(this).hints();
  }
}
