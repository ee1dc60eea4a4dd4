package crumbtrail.rules;

import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.Places;
import crumbtrail.pantry.Ingredient;
import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Build step: checks and compiles the rules folder and writes the result where the jar is packed
 * from.
 *
 * <p>Arguments: the rules folder, the folder to write to.
 */
public final class RuleBaseBuilder {
  /** Rules that need no compiler; none where some of them do. */
  static final String PLAIN = "rules-plain-1.bin";

  /** The compiled rules, where they are not plain. */
  static final String MODULE = "rulebase.bin";

  /** Numbers rise when what is in a file changes its shape: an older program's are not ours. */
  static final String KNOWLEDGE = "knowledge-2.bin";

  static final String PANTRY = "pantry-1.bin";
  static final String TEXT = "rules-3.bin";
  static final String PLACES = "places-1.bin";

  static final String VERSION = "version.txt";

  /** What the folder calls its edition; none where it does not say. */
  static final String EDITION = "edition.txt";

  private RuleBaseBuilder() {}

  /** Runs the build step; the exit status is 1 if the rules cannot be used. */
  @SuppressWarnings("SystemOut") // a build step speaks to the build's log
  public static void main(String[] arguments) throws IOException {
    try {
      int rules = build(Path.of(arguments[0]), Path.of(arguments[1]));
      System.out.println("Rule base: " + rules + " rules checked and compiled");
    } catch (FaultyKnowledge fault) {
      System.err.println("The rules folder has " + fault.faults().size() + " fault(s):");
      fault.faults().forEach(System.err::println);
      System.exit(1);
    }
  }

  /** Writes what is not up to date or not whole; the number of rules. */
  static int build(Path rules, Path target) throws FaultyKnowledge, IOException {
    String version = FolderHash.of(rules);
    Path stamp = target.resolve(VERSION);
    RuleFolder folder = RuleFolder.read(rules);
    if (Files.exists(stamp)
        && Files.readString(stamp).equals(version)
        && whole(target, folder.plain().isEmpty())) {
      return folder.rules().size();
    }
    Files.createDirectories(target);
    write(folder, version, target);
    return folder.rules().size();
  }

  /** Whether all is there: an older build wrote fewer files, and a hand may have taken one away. */
  private static boolean whole(Path target, boolean compiled) {
    return complete(target)
        && Files.exists(target.resolve(EDITION))
        && (!compiled || Files.exists(target.resolve(MODULE)));
  }

  /** Whether a folder has all that this program wants of it, and not an older one. */
  static boolean complete(Path target) {
    return Stream.of(TEXT, PLACES, KNOWLEDGE, PANTRY, PLAIN)
        .allMatch(name -> Files.exists(target.resolve(name)));
  }

  /**
   * Writes a checked folder's compiled form. The version is written last, so that it vouches for
   * the rest.
   */
  static void write(RuleFolder folder, String version, Path target)
      throws FaultyKnowledge, IOException {
    List<PlainRule> plain = folder.plain();
    if (plain.isEmpty()) {
      Files.write(target.resolve(MODULE), RuleCompiler.compile(folder, version));
    } else {
      Files.deleteIfExists(target.resolve(MODULE));
    }
    try (DataOutputStream out =
        new DataOutputStream(
            new BufferedOutputStream(Files.newOutputStream(target.resolve(PLAIN))))) {
      PlainRule.write(plain, out);
    }
    RuleBook book = folder.book();
    write(Knowledge.class, List.of(book.catalogue().knowledge()), target.resolve(KNOWLEDGE));
    write(Ingredient.class, folder.pantry().all(), target.resolve(PANTRY));
    write(WrittenRule.class, book.rules(), target.resolve(TEXT));
    write(Places.class, List.of(book.places()), target.resolve(PLACES));
    Files.writeString(target.resolve(EDITION), folder.edition());
    Files.writeString(target.resolve(VERSION), version);
  }

  private static <T extends Record> void write(Class<T> type, List<T> values, Path file)
      throws IOException {
    try (DataOutputStream out =
        new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
      PlainData.write(type, values, out);
    }
  }
}
