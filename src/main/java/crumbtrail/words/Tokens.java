package crumbtrail.words;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Cuts a text into clauses of words. One pass, no backtracking. */
final class Tokens {
  private static final String FULL_BREAKS = ";.!?:()[]{}\n\r\"“”—–•";
  private static final String PART_BREAKS = ",/+&";
  private static final Map<String, String> BARE =
      Map.ofEntries(
          Map.entry("didnt", "did"),
          Map.entry("doesnt", "does"),
          Map.entry("dont", "do"),
          Map.entry("wasnt", "was"),
          Map.entry("isnt", "is"),
          Map.entry("wont", "will"),
          Map.entry("couldnt", "could"),
          Map.entry("wouldnt", "would"),
          Map.entry("hasnt", "has"),
          Map.entry("havent", "have"),
          Map.entry("hadnt", "had"),
          Map.entry("cant", "can"),
          Map.entry("cannot", "can"),
          Map.entry("arent", "are"),
          Map.entry("werent", "were"),
          Map.entry("shouldnt", "should"),
          Map.entry("aint", "is"));

  private final String text;
  private final List<Clause> clauses = new ArrayList<>();
  private List<Token> tokens = new ArrayList<>();
  private List<Integer> parts = new ArrayList<>(List.of(0));
  private int at;

  private Tokens(String text) {
    this.text = text;
  }

  /** The clauses of a text, those without a word left out. */
  static List<Clause> clauses(String text) {
    Tokens tokens = new Tokens(text);
    tokens.run();
    return tokens.clauses;
  }

  private void run() {
    while (at < text.length()) {
      char c = text.charAt(at);
      if (Character.isLetterOrDigit(c)) {
        word();
      } else {
        if (FULL_BREAKS.indexOf(c) >= 0 || (c == '-' && spaced())) {
          close();
        } else if (PART_BREAKS.indexOf(c) >= 0) {
          part();
        }
        at++;
      }
    }
    close();
  }

  /** A hyphen between spaces is a dash. */
  private boolean spaced() {
    return at > 0
        && at + 1 < text.length()
        && Character.isWhitespace(text.charAt(at - 1))
        && (Character.isWhitespace(text.charAt(at + 1)) || text.charAt(at + 1) == '-');
  }

  private void word() {
    int start = at;
    StringBuilder letters = new StringBuilder();
    while (at < text.length()) {
      char c = text.charAt(at);
      if (Character.isLetterOrDigit(c)) {
        plain(c, letters);
      } else if (apostrophe(c)
          && between(Character.isLetter(before()), Character.isLetter(after()))) {
        letters.append('\'');
      } else if (!((c == '.' || c == ',')
          && between(Character.isDigit(before()), Character.isDigit(after())))) {
        break;
      } else {
        letters.append('.');
      }
      at++;
    }
    boolean compound = at < text.length() && text.charAt(at) == '-' && Character.isLetter(after());
    add(letters.toString(), start, compound);
  }

  private static boolean between(boolean left, boolean right) {
    return left && right;
  }

  private char before() {
    return at > 0 ? text.charAt(at - 1) : ' ';
  }

  private char after() {
    return at + 1 < text.length() ? text.charAt(at + 1) : ' ';
  }

  private static boolean apostrophe(char c) {
    return c == '\'' || c == '’' || c == '‘' || c == '`' || c == '´';
  }

  private static void plain(char c, StringBuilder letters) {
    if (c < 128) {
      letters.append(Character.toLowerCase(c));
      return;
    }
    String apart = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFD);
    for (int i = 0; i < apart.length(); i++) {
      if (Character.isLetterOrDigit(apart.charAt(i))) {
        letters.append(String.valueOf(apart.charAt(i)).toLowerCase(Locale.ROOT));
      }
    }
  }

  private void add(String word, int start, boolean compound) {
    if (word.isEmpty()) {
      return;
    }
    String base = word;
    boolean denied = false;
    if (word.endsWith("n't")) {
      base = word.substring(0, word.length() - 3);
      base = base.equals("ca") ? "can" : base.equals("wo") ? "will" : base;
      denied = true;
    } else if (BARE.containsKey(word)) {
      base = BARE.get(word);
      denied = true;
    } else if (word.indexOf('\'') > 0) {
      base = word.substring(0, word.indexOf('\''));
    }
    if (turns(base)) {
      return;
    }
    joint(base);
    int last = tokens.size() - 1;
    if (last >= 0 && tokens.get(last).is("non") && Compounds.NON.contains(base)) {
      tokens.set(last, new Token("non" + base, tokens.get(last).start(), at, compound, List.of()));
      return;
    }
    int cut = Compounds.cut(base);
    if (cut > 0) {
      tokens.add(new Token(base.substring(0, cut), start, at, true, List.of()));
      base = base.substring(cut);
    }
    tokens.add(new Token(base, start, at, compound, List.of()));
    if (denied) {
      tokens.add(new Token("not", start, at, false, List.of()));
    }
  }

  /** Breaks the clause at "but" and its like, which say nothing themselves. */
  private boolean turns(String word) {
    if (!Grammar.TURNS.contains(word)) {
      return false;
    }
    int last = tokens.size() - 1;
    if (word.equals("though") && last >= 0 && tokens.get(last).is("even")) {
      tokens.remove(last);
    }
    close();
    return true;
  }

  /** Parts the clause where the coming word asks for it. */
  private void joint(String word) {
    String last = tokens.isEmpty() ? "" : tokens.get(tokens.size() - 1).word();
    boolean yet = word.equals("yet") && !last.equals("not") && !Grammar.STOP.contains(last);
    boolean so = last.equals("so") && Grammar.BEGINNERS.contains(word) && tokens.size() > 1;
    if (yet || so || Grammar.JOINTS.contains(word)) {
      part();
    }
  }

  private void part() {
    if (tokens.size() > parts.get(parts.size() - 1)) {
      parts.add(tokens.size());
    }
  }

  private void close() {
    while (parts.size() > 1 && parts.get(parts.size() - 1) >= tokens.size()) {
      parts.remove(parts.size() - 1);
    }
    if (!tokens.isEmpty()) {
      clauses.add(new Clause(tokens, parts));
    }
    tokens = new ArrayList<>();
    parts = new ArrayList<>(List.of(0));
  }
}
