package crumbtrail.rules;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A rule that needs no compiler: all its patterns are {@link PlainPattern plain}, and all that it
 * does is to speak for or against causes.
 *
 * @param name its name
 * @param preface what it says whatever it matched
 * @param patterns in the engine's language
 * @param words what it says of causes
 */
record PlainRule(String name, Testimony.Preface preface, List<String> patterns, List<Word> words) {
  private static final Pattern SPEAKING =
      Pattern.compile("testimony\\.hear\\(drools\\.getMatch\\(\\), \"([^\"]+)\", (-?\\d+)\\);");

  PlainRule {
    patterns = List.copyOf(patterns);
    words = List.copyOf(words);
  }

  /**
   * What it says of a cause.
   *
   * @param cause as the rule writes it
   * @param decibans for it, or below nought against it
   */
  record Word(String cause, double decibans) {}

  /**
   * The plain form of a rule.
   *
   * @return empty if a compiler is needed
   */
  static Optional<PlainRule> of(RuleText rule, Sentences sentences) {
    List<String> patterns = new ArrayList<>();
    for (RuleText.Sentence sentence : rule.conditions()) {
      sentences
          .meaning(sentence.words())
          .filter(pattern -> PlainPattern.of(pattern).isPresent())
          .ifPresent(patterns::add);
    }
    List<Word> words = new ArrayList<>();
    for (RuleText.Sentence sentence : rule.consequences()) {
      sentences
          .doing(sentence.words())
          .map(SPEAKING::matcher)
          .filter(Matcher::matches)
          .ifPresent(said -> words.add(new Word(said.group(1), Double.parseDouble(said.group(2)))));
    }
    boolean plain =
        patterns.size() == rule.conditions().size()
            && words.size() == rule.consequences().size()
            && !rule.conditions().isEmpty();
    return plain
        ? Optional.of(
            new PlainRule(
                rule.name(),
                new Testimony.Preface(
                    rule.metadata().getOrDefault("strand", ""),
                    rule.metadata().getOrDefault("lesson", ""),
                    rule.metadata().getOrDefault("source", "")),
                patterns,
                words))
        : Optional.empty();
  }

  /**
   * The plain forms of all rules.
   *
   * @return none if any of them needs a compiler
   */
  static List<PlainRule> of(List<RuleText> rules, Sentences sentences) {
    List<PlainRule> plain = new ArrayList<>();
    for (RuleText rule : rules) {
      Optional<PlainRule> one = of(rule, sentences);
      if (one.isEmpty()) {
        return List.of();
      }
      plain.add(one.get());
    }
    return plain;
  }

  /** Writes rules so that they are read in no time. */
  static void write(List<PlainRule> rules, DataOutputStream out) throws IOException {
    out.writeInt(rules.size());
    for (PlainRule rule : rules) {
      out.writeUTF(rule.name);
      out.writeUTF(rule.preface.strand());
      out.writeUTF(rule.preface.lesson());
      out.writeUTF(rule.preface.source());
      out.writeByte(rule.patterns.size());
      for (String pattern : rule.patterns) {
        out.writeUTF(pattern);
      }
      out.writeByte(rule.words.size());
      for (Word word : rule.words) {
        out.writeUTF(word.cause);
        out.writeDouble(word.decibans);
      }
    }
  }

  /** Reads what {@link #write} wrote. */
  static List<PlainRule> read(DataInputStream in) throws IOException {
    List<PlainRule> rules = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      String name = in.readUTF();
      Testimony.Preface preface = new Testimony.Preface(in.readUTF(), in.readUTF(), in.readUTF());
      List<String> patterns = new ArrayList<>();
      for (int more = in.readByte(); more > 0; more--) {
        patterns.add(in.readUTF());
      }
      List<Word> words = new ArrayList<>();
      for (int more = in.readByte(); more > 0; more--) {
        words.add(new Word(in.readUTF(), in.readDouble()));
      }
      rules.add(new PlainRule(name, preface, patterns, words));
    }
    return rules;
  }
}
