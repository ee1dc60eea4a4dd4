package crumbtrail.words;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Phrases by which things are recognised in free sentences. A phrase is a row of terms, all of
 * which must occur close together in one clause, in any order:
 *
 * <ul>
 *   <li>{@code word}: the word in any of its forms, small slips of spelling allowed
 *   <li>{@code a|b|c}: any of these
 *   <li>{@code <class>}: any word of that class
 *   <li>{@code "two words"}: side by side, in this order
 *   <li>{@code not}: something in the clause denies the words ("no", "never", "without", "refused
 *       to", "barely" …)
 *   <li>{@code a > b}: in this order
 *   <li>{@code alone}: nothing else is said; for words such as "dry" that could be said of anything
 * </ul>
 *
 * <p>Of phrases over the same words the one with most terms wins. Three word classes have a meaning
 * of their own, if they are there: {@code subject} (parts that a sentence can be about), {@code
 * praise} (makes a phrase a good report) and {@code approval} (ends a good report).
 *
 * <p>Immutable, and safe for use by many threads.
 */
public final class PhraseBook {
  /** Characters of a text that are read; the rest is reported as not understood. */
  public static final int LONGEST_TEXT = 2000;

  private final Vocabulary vocabulary = new Vocabulary();
  private final Set<String> keys;
  private final Context context;
  private final Finder finder;
  private final Remembered remembered = new Remembered();

  private PhraseBook(Map<String, List<String>> phrases, Map<String, List<String>> classes) {
    Stems stemmer = new Stems();
    TermIndex index = new TermIndex(vocabulary, stemmer);
    PhraseSyntax syntax = new PhraseSyntax(classes);
    List<Phrase> compiled = new ArrayList<>();
    phrases.forEach(
        (key, written) ->
            written.forEach(phrase -> compiled.add(compile(key, phrase, syntax, index))));
    keys = Set.copyOf(phrases.keySet());
    Set<String> subjects = new HashSet<>();
    for (String subject : classes.getOrDefault("subject", List.of())) {
      String stem = stemmer.of(subject);
      subjects.add(stem);
      vocabulary.learn(subject, stem);
    }
    context =
        new Context(
            subjects,
            Set.copyOf(classes.getOrDefault("praise", List.of())),
            Set.copyOf(classes.getOrDefault("approval", List.of())));
    finder = new Finder(index, anchored(compiled), context);
  }

  /**
   * Compiles phrases.
   *
   * @param phrases the phrases of each key
   * @param classes the words of each class
   * @throws IllegalArgumentException naming key and phrase when a phrase cannot be read
   */
  public static PhraseBook of(
      Map<String, List<String>> phrases, Map<String, List<String>> classes) {
    return new PhraseBook(phrases, classes);
  }

  private static Phrase compile(String key, String written, PhraseSyntax syntax, TermIndex index) {
    PhraseSyntax.Parsed parsed = syntax.parse(key, written);
    List<Integer> terms = new ArrayList<>();
    parsed.terms().forEach((term, words) -> terms.add(index.number(term, words)));
    return new Phrase(key, terms, parsed.ordered(), parsed.denied(), parsed.alone());
  }

  /** Each phrase under the one of its terms that the fewest phrases share. */
  private static Map<Integer, List<Phrase>> anchored(List<Phrase> phrases) {
    Map<Integer, Integer> uses = new HashMap<>();
    phrases.forEach(phrase -> phrase.terms().forEach(term -> uses.merge(term, 1, Integer::sum)));
    Map<Integer, List<Phrase>> byAnchor = new HashMap<>();
    for (Phrase phrase : phrases) {
      int anchor = phrase.terms().get(0);
      for (int term : phrase.terms()) {
        anchor = uses.get(term) < uses.get(anchor) ? term : anchor;
      }
      byAnchor.computeIfAbsent(anchor, a -> new ArrayList<>(2)).add(phrase);
    }
    return byAnchor;
  }

  /** What is said in a text. A text that is one of the keys is understood as that. */
  public List<Match> match(String text) {
    return hear(text).matches();
  }

  /** What is said in a text, and what in it was not understood. Never throws. */
  public Heard hear(String text) {
    return remembered.of(text.strip(), this::hearAnew);
  }

  private Heard hearAnew(String trimmed) {
    String key = trimmed.toLowerCase(Locale.ROOT).replace(' ', '-');
    if (keys.contains(key)) {
      return new Heard(List.of(new Match(key, false, Degree.PLAIN, 1, trimmed)), List.of());
    }
    String read = trimmed.substring(0, Math.min(LONGEST_TEXT, trimmed.length()));
    Hearing hearing = new Hearing(read);
    Stems stemmer = new Stems();
    for (Clause clause : Tokens.clauses(read)) {
      hear(new Clause(known(clause.tokens(), stemmer), clause.parts()), hearing);
    }
    if (trimmed.length() > LONGEST_TEXT) {
      hearing.missed.add(trimmed.substring(LONGEST_TEXT));
    }
    return new Heard(List.copyOf(hearing.matches.values()), hearing.missed);
  }

  private List<Token> known(List<Token> tokens, Stems stemmer) {
    return tokens.stream()
        .map(token -> token.withStems(vocabulary.stems(token.word(), stemmer)))
        .toList();
  }

  /** What was found so far. */
  private static final class Hearing {
    final String text;
    final Map<String, Match> matches = new LinkedHashMap<>();
    final List<String> missed = new ArrayList<>();

    Hearing(String text) {
      this.text = text;
    }

    /** The words as written, without a leading "and". */
    String spoken(List<Token> tokens) {
      int first = tokens.size() > 1 && Grammar.JOINTS.contains(tokens.get(0).word()) ? 1 : 0;
      return text.substring(tokens.get(first).start(), tokens.get(tokens.size() - 1).end());
    }
  }

  /** What was found in a row of words. */
  private record Found(Finder.Finds finds, Denial denial) {
    List<Candidate> candidates() {
      return finds.kept();
    }
  }

  private Found find(List<Token> tokens, boolean bare) {
    Denial denial = new Denial(tokens);
    return new Found(finder.find(tokens, denial, bare), denial);
  }

  private void hear(Clause clause, Hearing hearing) {
    int parts = clause.parts().size();
    boolean bare = parts == 1 || !context.anySubject(clause.tokens());
    List<Found> found = new ArrayList<>();
    for (int part = 0; part < parts; part++) {
      found.add(find(clause.part(part), bare));
    }
    int start = 0;
    boolean stands = false;
    for (int part = 0; part < parts; part++) {
      boolean own = !found.get(part).candidates().isEmpty() || context.praise(clause.part(part));
      if (own && stands && !continuesDenial(clause, start, part)) {
        report(clause, start, part, found, hearing);
        start = part;
      }
      stands |= own;
    }
    report(clause, start, parts, found, hearing);
  }

  /** "not sour, yeasty or bitter": the denial goes on after the comma. */
  private boolean continuesDenial(Clause clause, int start, int part) {
    List<Token> tokens = clause.part(part);
    boolean or = tokens.stream().anyMatch(token -> token.is("or") || token.is("nor"));
    boolean verb = tokens.stream().anyMatch(token -> Grammar.DENIERS.contains(token.word()));
    List<Token> before =
        clause.tokens().subList(clause.parts().get(start), clause.parts().get(part));
    return or && !verb && before.stream().anyMatch(token -> Grammar.DENIERS.contains(token.word()));
  }

  private void report(Clause clause, int from, int to, List<Found> parts, Hearing hearing) {
    int begin = clause.parts().get(from);
    List<Token> tokens = clause.tokens().subList(begin, clause.end(to - 1));
    boolean bare = clause.parts().size() == 1 || !context.anySubject(clause.tokens());
    Found found = to - from == 1 ? parts.get(from) : find(tokens, bare);
    if (found.candidates().isEmpty() && anyFound(parts.subList(from, to))) {
      for (int part = from; part < to; part++) {
        report(clause, part, part + 1, parts, hearing);
      }
      return;
    }
    BitSet heard = found.finds.heard();
    for (Candidate candidate : found.candidates()) {
      boolean negated =
          candidate.denier() < 0 && found.denial.denied(candidate, found.candidates());
      Degree degree = Degrees.of(candidate, tokens, found.denial);
      Match match =
          new Match(
              candidate.phrase().key(),
              negated,
              degree,
              candidate.phrase().size(),
              hearing.spoken(tokens));
      hearing.matches.merge(match.key(), match, PhraseBook::stronger);
    }
    if (heard.isEmpty()) {
      if (!context.praise(tokens) && telling(tokens)) {
        hearing.missed.add(hearing.spoken(tokens));
      }
      return;
    }
    for (int part = from; part < to; part++) {
      int first = clause.parts().get(part) - begin;
      int end = clause.end(part) - begin;
      List<Token> words = clause.part(part);
      if (heard.get(first, end).isEmpty() && !context.praise(words) && telling(words)) {
        hearing.missed.add(hearing.spoken(words));
      }
    }
  }

  /** Whether a part made sense alone that makes none among its neighbours. */
  private static boolean anyFound(List<Found> parts) {
    return parts.size() > 1 && parts.stream().anyMatch(part -> !part.candidates().isEmpty());
  }

  private static Match stronger(Match one, Match other) {
    if (one.negated() != other.negated()) {
      return one.negated() ? other : one;
    }
    return other.degree().compareTo(one.degree()) > 0 ? other : one;
  }

  private static boolean telling(List<Token> tokens) {
    return tokens.stream()
        .map(Token::word)
        .anyMatch(word -> !Grammar.STOP.contains(word) && !Grammar.FILLER.contains(word));
  }
}
