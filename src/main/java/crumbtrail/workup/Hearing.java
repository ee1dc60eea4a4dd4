package crumbtrail.workup;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.knowledge.SignKind;
import crumbtrail.memory.Recent;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.BakeSheet.SeenSign;
import crumbtrail.words.Match;
import crumbtrail.words.PhraseBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds signs and circumstances in the baker's own words. Immutable; safe for use by many threads.
 */
public final class Hearing {
  /** A question about what might be done, or whether something is so. */
  private static final Pattern ASKED =
      Pattern.compile(
          "(?i)\\s*((should|would|could|might|shall) (i|it|we|a|the|more|less|this|that)\\b.*"
              + "|(is|was|are|were|do|does|did|can|will|has|have)\\b[^?.!]*\\?\\s*)");

  // The half of a clock is no half of a rise.
  private static final Pattern AND_A_HALF =
      Pattern.compile(
          "\\b((?:hours?|hrs?|minutes?|mins?|days?|one|two|three|four|five|six|seven|eight|ten|\\d+)) and"
              + " (?:a )?half\\b",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern HALF_AN_HOUR =
      Pattern.compile("\\bhalf(?: an|-an| a|-a)?[ -]hours?\\b", Pattern.CASE_INSENSITIVE);

  private static final String QUESTION = "question-asked";

  private final Catalogue catalogue;
  private final PhraseBook signs;
  private final PhraseBook circumstances;

  // A hundred what-ifs of one sheet are told in the same words.
  private final Recent<Said, Heard> lately = new Recent<>(256);

  /**
   * @param catalogue whose phrases to listen for
   */
  public Hearing(Catalogue catalogue) {
    this.catalogue = catalogue;
    Knowledge knowledge = catalogue.knowledge();
    signs =
        PhraseBook.of(
            knowledge.signs().stream().collect(Collectors.toMap(SignKind::key, SignKind::phrases)),
            knowledge.words());
    circumstances =
        PhraseBook.of(
            knowledge.circumstances().stream()
                .collect(Collectors.toMap(CircumstanceKind::key, CircumstanceKind::phrases)),
            knowledge.words());
  }

  /** Everything that the sheet says in words: signs, remarks, and fields that hold words. */
  public Heard hear(BakeSheet sheet) {
    return lately.of(
        new Said(
            sheet.seen(),
            sheet.notSeen(),
            sheet.process().remarks(),
            sheet.process().steps(),
            WordFields.of(sheet.process())),
        this::hear);
  }

  /** All that is said in words on a sheet. */
  private record Said(
      List<SeenSign> seen,
      List<String> notSeen,
      List<String> remarks,
      List<String> steps,
      Map<String, String> fields) {}

  private static String clocked(String words) {
    String whole = AND_A_HALF.matcher(words).replaceAll("$1");
    return HALF_AN_HOUR.matcher(whole).replaceAll("thirty minutes");
  }

  private Heard hear(Said said) {
    Ear ear = new Ear();
    said.seen().forEach(ear::seen);
    said.notSeen().forEach(ear::notSeen);
    said.remarks().forEach(ear::remark);
    said.steps().forEach(ear::step);
    said.fields().forEach(ear::field);
    return ear.heard();
  }

  private Optional<String> signKey(String words) {
    String key = words.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    return catalogue.sign(key).map(SignKind::key);
  }

  /** Collects what is understood of one sheet. */
  private final class Ear {
    private final Map<String, Heard.Sign> heardSigns = new LinkedHashMap<>();
    private final Map<String, Heard.Circumstance> heardCircumstances = new LinkedHashMap<>();
    private final List<String> notUnderstood = new ArrayList<>();

    void seen(SeenSign seen) {
      Optional<String> key = signKey(seen.words());
      if (key.isPresent()) {
        sign(key.get(), true, seen.degree().orElse(Degree.PLAIN), inWords(key.get(), seen.words()));
        return;
      }
      boolean understood = signs(seen.words(), seen.degree());
      understood |= circumstances(seen.words());
      if (!understood) {
        notUnderstood.add(seen.words());
      }
    }

    /** A key is nobody's words: a report quotes the name of its sign. */
    private String inWords(String key, String words) {
      return words.indexOf('-') >= 0
          ? catalogue.sign(key).map(SignKind::name).orElse(words)
          : words;
    }

    void notSeen(String words) {
      Optional<String> key = signKey(words);
      if (key.isPresent()) {
        sign(key.get(), false, Degree.PLAIN, inWords(key.get(), words));
        return;
      }
      List<Match> matches = signs.match(words);
      matches.forEach(match -> sign(match.key(), false, Degree.PLAIN, words));
      if (matches.isEmpty() && !missed(words) && circumstances.match(words).isEmpty()) {
        notUnderstood.add(words);
      }
    }

    /** What a baker looked for in vain may be a fault by its absence: oven spring, bubbles. */
    private boolean missed(String words) {
      List<Match> faults =
          signs.match("no " + words).stream().filter(match -> !match.negated()).toList();
      faults.forEach(match -> sign(match.key(), true, Degree.PLAIN, "no " + words));
      return !faults.isEmpty();
    }

    void remark(String words) {
      if (catalogue.circumstance(words.strip()).isPresent()) {
        circumstance(words.strip(), words);
        return;
      }
      boolean understood = circumstances(words);
      understood |= signs(words, Optional.empty());
      if (!understood) {
        notUnderstood.add(words);
      }
    }

    // What is to be done says nothing of how it came out: "until golden" was seen by nobody.
    void step(String words) {
      circumstances.match(clocked(words)).stream()
          .filter(match -> !match.negated() && planned(match.key()))
          .forEach(match -> circumstance(match.key(), match.spoken()));
    }

    private boolean planned(String key) {
      return catalogue.circumstance(key).map(CircumstanceKind::planned).orElse(false);
    }

    // The words of a field mean something in their place; that nothing is found in them is no
    // failure to understand.
    void field(String path, String text) {
      String spoken = path.replace('.', ' ') + ": " + text;
      catalogue.knowledge().fields().stream()
          .filter(hint -> hint.field().equals(path) && hint.saidBy(text))
          .forEach(hint -> circumstance(hint.circumstance(), spoken));
      // A single word ("good", "light") speaks of its field and of nothing else.
      circumstances.match(text).stream()
          .filter(match -> !match.negated() && match.terms() > 1)
          .forEach(match -> circumstance(match.key(), spoken));
    }

    private boolean signs(String words, Optional<Degree> degree) {
      List<Match> matches = signs.match(clocked(words));
      for (Match match : matches) {
        Degree said = Degree.valueOf(match.degree().name());
        sign(match.key(), !match.negated(), degree.orElse(said), match.spoken());
      }
      return !matches.isEmpty();
    }

    private boolean circumstances(String words) {
      // "Should I use less yeast?" says nothing of what was done.
      if (ASKED.matcher(words).matches()) {
        circumstance(QUESTION, words);
        return true;
      }
      List<Match> matches = circumstances.match(clocked(words));
      matches.stream()
          .filter(match -> !match.negated())
          .forEach(match -> circumstance(match.key(), match.spoken()));
      return !matches.isEmpty();
    }

    private void sign(String key, boolean seen, Degree degree, String words) {
      heardSigns.merge(
          key, new Heard.Sign(key, seen, degree, words), (old, other) -> stronger(old, other));
    }

    // What was seen once was seen; of two sightings the more marked one counts.
    private static Heard.Sign stronger(Heard.Sign old, Heard.Sign other) {
      if (old.seen() != other.seen()) {
        return old.seen() ? old : other;
      }
      return other.degree().compareTo(old.degree()) > 0 ? other : old;
    }

    private void circumstance(String key, String words) {
      if (catalogue.circumstance(key).isPresent()) {
        heardCircumstances.putIfAbsent(key, new Heard.Circumstance(key, words));
      }
    }

    Heard heard() {
      return new Heard(
          List.copyOf(heardSigns.values()),
          List.copyOf(heardCircumstances.values()),
          notUnderstood);
    }
  }
}
