package crumbtrail.rules;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Fault;
import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.Places;
import java.io.IOException;
import java.io.InputStream;
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
    ObjectMapper json = new ObjectMapper();
    try (InputStream knowledge = resource(RuleBaseBuilder.KNOWLEDGE);
        InputStream text = resource(RuleBaseBuilder.TEXT)) {
      Text written = json.readValue(text, Text.class);
      return new RuleBook(
          new Catalogue(json.readValue(knowledge, Knowledge.class)),
          written.places(),
          written.rules());
    } catch (IOException fault) {
      throw new UncheckedIOException("the program's own rules cannot be read", fault);
    }
  }

  /** What these rules and catalogues lack to be complete; see {@link RuleGuards}. */
  public List<Fault> faults() {
    return new RuleGuards(this).faults();
  }

  /** What a rule writer may want to look at; not faults. */
  public List<Fault> hints() {
    return new RuleGuards(this).hints();
  }

  /** What is kept beside the catalogues in the compiled form. */
  Text text() {
    return new Text(places, rules);
  }

  private static InputStream resource(String name) throws IOException {
    InputStream in = RuleBook.class.getResourceAsStream(name);
    if (in == null) {
      throw new IOException(name + " is missing; build with: mvn package");
    }
    return in;
  }

  /** The form in which the rules are kept beside the compiled base. */
  record Text(Places places, List<WrittenRule> rules) {}
}
