package crumbtrail.pantry;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Brings ingredient names to one form, so that spelling, number and word order do not matter. */
final class Names {
  /** Words written both apart and together. */
  private static final Map<String, String> JOINED =
      Map.ofEntries(
          Map.entry("whole wheat", "wholewheat"),
          Map.entry("whole meal", "wholemeal"),
          Map.entry("whole grain", "wholegrain"),
          Map.entry("all purpose", "allpurpose"),
          Map.entry("self raising", "selfraising"),
          Map.entry("self rising", "selfrising"),
          Map.entry("butter milk", "buttermilk"),
          Map.entry("corn starch", "cornstarch"),
          Map.entry("corn meal", "cornmeal"),
          Map.entry("oat meal", "oatmeal"),
          Map.entry("sour dough", "sourdough"),
          Map.entry("flax seed", "flaxseed"),
          Map.entry("non fat", "nonfat"),
          Map.entry("non diastatic", "nondiastatic"),
          Map.entry("fast action", "fastaction"),
          Map.entry("fast acting", "fastaction"),
          Map.entry("fastacting", "fastaction"),
          Map.entry("quick acting", "quickacting"),
          Map.entry("rapid rise", "rapidrise"),
          Map.entry("quick rise", "quickrise"),
          Map.entry("easy bake", "easybake"),
          Map.entry("easy blend", "easyblend"),
          Map.entry("bread machine", "breadmachine"),
          Map.entry("breadmaker", "breadmachine"),
          Map.entry("bread maker", "breadmachine"),
          Map.entry("gluten free", "glutenfree"));

  /** One spelling for words with several. */
  private static final Map<String, String> SPELLED =
      Map.ofEntries(
          Map.entry("yogurt", "yoghurt"),
          Map.entry("yoghourt", "yoghurt"),
          Map.entry("dried", "dry"),
          Map.entry("fiber", "fibre"),
          Map.entry("castor", "caster"),
          Map.entry("iodized", "iodised"),
          Map.entry("caramelized", "caramelised"),
          Map.entry("flavored", "flavoured"),
          Map.entry("flower", "flour"),
          Map.entry("skimmed", "skim"),
          Map.entry("soya", "soy"),
          Map.entry("typ", "type"),
          Map.entry("superfine", "caster"),
          Map.entry("aubergine", "eggplant"));

  private static final Set<String> STOP =
      Set.of("of", "the", "a", "an", "and", "some", "your", "my", "about", "or", "s", "ca");

  /** Words that say how, not what: they never change which ingredient is meant. */
  private static final Set<String> HARMLESS =
      Set.of(
          "organic",
          "warm",
          "lukewarm",
          "cold",
          "hot",
          "cool",
          "tepid",
          "fresh",
          "ripe",
          "active",
          "bubbly",
          "fed",
          "mature",
          "large",
          "medium",
          "small",
          "big",
          "fine",
          "finely",
          "good",
          "quality",
          "best",
          "local",
          "plain",
          "unbleached",
          "bleached",
          "soft",
          "room",
          "temperature",
          "raw",
          "pure",
          "natural",
          "extra",
          "free",
          "range",
          "white",
          "thick",
          "level",
          "heaped",
          "scant",
          "generous",
          "your",
          "favourite",
          "homemade",
          "more",
          "plus",
          "total",
          "remaining",
          "rest",
          "pcs",
          "approx",
          "filtered",
          "tap",
          "strong",
          "boiling",
          "stoneground",
          "stone",
          "ground",
          "milled",
          "additional",
          "optional",
          "whole",
          "liquid",
          "iced",
          "unsalted",
          "light",
          "dark",
          "thin",
          "mild",
          "beaten",
          "frozen",
          "heritage",
          "commercial",
          "regular",
          "normal",
          "ordinary",
          "standard",
          "bakers",
          "baker",
          "chilled",
          "own",
          "first",
          "second",
          "main",
          "dough",
          "final",
          "type",
          "powder",
          "scald");

  private static final LevenshteinDistance DISTANCE = new LevenshteinDistance(2);

  private Names() {}

  /** The words of a name in their one form, in order, without the ones that say nothing. */
  static List<String> words(String name) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("['’]s\\b", "s")
            .replaceAll("[^a-z0-9]+", " ")
            .strip();
    List<String> raw = new ArrayList<>();
    for (String word : plain.split(" ", -1)) {
      if (word.isEmpty()) {
        continue;
      }
      String last = raw.isEmpty() ? "" : raw.get(raw.size() - 1);
      String joined = JOINED.get(last + " " + word);
      if (joined != null) {
        raw.set(raw.size() - 1, joined);
      } else {
        raw.add(JOINED.getOrDefault(word, word));
      }
    }
    return raw.stream()
        .filter(word -> !STOP.contains(word))
        .map(Names::singular)
        .map(word -> SPELLED.getOrDefault(word, word))
        .toList();
  }

  static boolean harmless(String word) {
    return HARMLESS.contains(word)
        || word.chars().allMatch(Character::isDigit)
        || (word.length() > 4 && (word.endsWith("ed") || word.endsWith("ly")));
  }

  /**
   * Whether two words are the same but for a small slip: one letter in words of five to seven, two
   * in longer ones, or two neighbouring letters swapped.
   */
  static boolean near(String one, String other) {
    int length = Math.min(one.length(), other.length());
    if (length < 5 || one.charAt(0) != other.charAt(0)) {
      return false;
    }
    int distance = DISTANCE.apply(one, other);
    if (distance < 0) {
      return false;
    }
    return distance <= (length >= 8 ? 2 : 1) || (distance == 2 && sameLetters(one, other));
  }

  private static boolean sameLetters(String one, String other) {
    return one.chars().sorted().boxed().toList().equals(other.chars().sorted().boxed().toList());
  }

  private static String singular(String word) {
    if (word.length() < 4 || word.endsWith("ss")) {
      return word;
    }
    if (word.endsWith("ies")) {
      return word.substring(0, word.length() - 3) + "y";
    }
    if (word.endsWith("oes") || word.endsWith("ches") || word.endsWith("shes")) {
      return word.substring(0, word.length() - 2);
    }
    return word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
  }
}
