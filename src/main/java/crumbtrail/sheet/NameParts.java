package crumbtrail.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of an ingredient line without its amounts, sorted into name, size and notes.
 *
 * @param name cleaned, as the baker spelt it: "bread flour"
 * @param size in lower case, empty if the line states none
 */
record NameParts(String name, String size, List<String> notes) {
  private static final Pattern FRONT = Pattern.compile("^(?:[^\\p{L}\\p{N}%\"']+|of )+");
  private static final Pattern BACK = Pattern.compile("[-,:;.…= ]+$");
  private static final Pattern BLANKS = Pattern.compile(" {2,}");

  private static final Pattern SPLIT = Pattern.compile(" ?[,;] ?| - | ?: ");
  private static final Set<String> SIZED =
      Set.of("egg", "eggs", "yolk", "yolks", "white", "whites", "potato", "potatoes");

  NameParts {
    notes = List.copyOf(notes);
  }

  /**
   * @param counted whether the line counts pieces, so that any size word is a size
   */
  static NameParts of(String rest, boolean counted) {
    List<String> notes = new ArrayList<>();
    String head = rest;
    Matcher remark = LineWords.REMARK.matcher(rest);
    if (remark.find()) {
      head = rest.substring(0, remark.start());
    }
    List<String> segments = new ArrayList<>();
    for (String segment : SPLIT.split(head, -1)) {
      String trimmed = trim(segment);
      if (!trimmed.isEmpty()) {
        segments.add(trimmed);
      }
    }
    String name = "";
    for (String segment : segments) {
      List<String> states = new ArrayList<>();
      String kept = takeStates(segment, states);
      if (name.isEmpty()) {
        name = kept;
        notes.addAll(states);
      } else if (isIdentifying(kept)) {
        name = kept + " " + name;
        notes.addAll(states);
      } else {
        notes.add(segment);
      }
    }
    if (head.length() < rest.length()) {
      notes.add(trim(rest.substring(head.length())));
    }
    String size = sizeIn(name, counted);
    return new NameParts(trim(withoutSize(name, size)), size.replace('-', ' '), notes);
  }

  private static boolean isIdentifying(String segment) {
    String[] words = segment.toLowerCase(Locale.ROOT).split(" ", -1);
    for (String word : words) {
      if (!LineWords.IDENTIFYING.contains(word)) {
        return false;
      }
    }
    return words.length <= 4;
  }

  /** Takes the state words out of a segment: "warm whole milk" is whole milk, warm. */
  private static String takeStates(String segment, List<String> states) {
    String[] words = segment.split(" ", -1);
    StringBuilder kept = new StringBuilder();
    String held = "";
    for (int i = 0; i < words.length; i++) {
      String next = i + 1 < words.length ? lower(words[i + 1]) : "";
      String word = lower(words[i]);
      if (LineWords.ADVERBS.contains(word)
          && (LineWords.STATES.contains(next) || LineWords.ADVERBS.contains(next))) {
        held = held.isEmpty() ? words[i] : held + " " + words[i];
      } else if (isState(word, next)) {
        states.add(held.isEmpty() ? words[i] : held + " " + words[i]);
        held = "";
      } else if (!(word.equals("and") && (kept.length() == 0 || isState(next, "")))) {
        kept.append(kept.length() > 0 ? " " : "").append(words[i]);
      }
    }
    return kept.toString();
  }

  private static boolean isState(String word, String next) {
    return switch (word) {
      // Dry yeast is called active, a ripe starter is active.
      case "active" -> !next.equals("dry") && !next.equals("dried") && !next.isEmpty();
      case "soft" -> next.equals("butter") || next.equals("margarine");
      default -> LineWords.STATES.contains(word);
    };
  }

  private static String sizeIn(String name, boolean counted) {
    String lower = " " + lower(name) + " ";
    boolean sized = false;
    for (String word : lower.strip().split(" ", -1)) {
      sized |= SIZED.contains(word);
    }
    if (!sized && !counted) {
      return "";
    }
    for (String size : LineWords.SIZES) {
      if (lower.contains(" " + size + " ")) {
        return size.equals("xl") ? "extra large" : size;
      }
    }
    return "";
  }

  private static String withoutSize(String name, String size) {
    if (size.isEmpty()) {
      return name;
    }
    String words = size.equals("extra large") ? "(?:extra large|xl)" : size;
    return name.replaceFirst("(?i)(?<!\\S)" + words + "(?!\\S)", "");
  }

  private static String trim(String text) {
    String bare = FRONT.matcher(text).replaceFirst("");
    bare = BACK.matcher(bare).replaceFirst("");
    return BLANKS.matcher(bare).replaceAll(" ").strip();
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
