package crumbtrail.sheet;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** The words that ingredient lines are made of besides names and amounts. */
final class LineWords {

  /** What was done to an ingredient, or how warm it was: a note, not part of its name. */
  static final Set<String> STATES =
      Set.of(
          "lukewarm",
          "warm",
          "warmish",
          "cold",
          "hot",
          "boiling",
          "tepid",
          "cool",
          "cooled",
          "chilled",
          "ice-cold",
          "hand-hot",
          "iced",
          "room-temperature",
          "scalded",
          "melted",
          "softened",
          "sifted",
          "unsifted",
          "beaten",
          "chopped",
          "diced",
          "crumbled",
          "cubed",
          "grated",
          "toasted",
          "warmed",
          "heaped",
          "level",
          "packed",
          "dissolved",
          "proofed",
          "bubbly",
          "ripe",
          "fed",
          "unfed",
          "mature",
          "well-fed",
          "divided",
          "optional",
          "drained",
          "rinsed",
          "spooned",
          "scooped",
          "levelled",
          "leveled",
          "separated",
          "cut");

  /** Words that only say how much of a state: they go where the state goes. */
  static final Set<String> ADVERBS =
      Set.of(
          "lightly",
          "finely",
          "roughly",
          "coarsely",
          "freshly",
          "thinly",
          "well",
          "very",
          "slightly",
          "firmly",
          "loosely",
          "barely",
          "gently",
          "just");

  /** Words that tell one ingredient from another, also when they follow after a comma. */
  static final Set<String> IDENTIFYING =
      Set.of(
          "all-purpose",
          "plain",
          "strong",
          "white",
          "wholemeal",
          "whole-wheat",
          "wholewheat",
          "whole",
          "wheat",
          "bread",
          "rye",
          "spelt",
          "fine",
          "coarse",
          "sea",
          "table",
          "kosher",
          "unsalted",
          "salted",
          "instant",
          "active",
          "dry",
          "dried",
          "fresh",
          "raw",
          "brown",
          "dark",
          "light",
          "granulated",
          "caster",
          "icing",
          "powdered",
          "diastatic",
          "skimmed",
          "semi-skimmed",
          "unbleached",
          "bleached",
          "stoneground",
          "medium",
          "extra",
          "virgin",
          "osmotolerant",
          "compressed",
          "nonfat",
          "non-fat",
          "low-fat",
          "full-fat",
          "vital",
          "fast-action",
          "quick",
          "rapid-rise",
          "flaky",
          "iodised",
          "iodized",
          "roasted",
          "smooth",
          "black",
          "golden",
          "rolled",
          "malted",
          "sifted-rye",
          "grain");

  /** Things that are weighed or measured, never counted: a bare number before them is no amount. */
  static final Set<String> MEASURED =
      Set.of(
          "flour",
          "flours",
          "water",
          "salt",
          "sugar",
          "milk",
          "oil",
          "yeast",
          "honey",
          "butter",
          "margarine",
          "lard",
          "shortening",
          "starter",
          "levain",
          "poolish",
          "biga",
          "sponge",
          "cream",
          "buttermilk",
          "yogurt",
          "yoghurt",
          "whey",
          "malt",
          "gluten",
          "bran",
          "oats",
          "semolina",
          "syrup",
          "molasses",
          "treacle",
          "vinegar",
          "beer",
          "juice",
          "wholemeal",
          "powder",
          "semola",
          "liquid");

  /** Things that hold an amount: "1 (7 g) packet". */
  static final String CONTAINERS =
      "(?:packets?|sachets?|envelopes?|packages?|pkgs?|packs?|cans?|tins?|jars?|cartons?|cubes?"
          + "|cakes?|blocks?|sticks?|bags?|bottles?|tubs?|box(?:es)?)";

  /** From here on a line speaks about the ingredient and no longer names it. */
  static final Pattern REMARK =
      Pattern.compile(
          "\\b(?:plus (?:more|extra|some|a (?:bit|little)|\\d)|and (?:more|extra) for"
              + "|or (?:to taste|more|less|so|as needed)|to taste|as (?:needed|required|desired)"
              + "|for (?:dusting|greasing|brushing|the|kneading|rolling|sprinkling|topping|oiling"
              + "|shaping|coating|your|a|work|later|glaz\\w+|egg wash)|at room temp"
              + "|room temperature|if (?:needed|desired|using|you)|straight from|from the|dissolved in"
              + "|mixed with|soaked in|cut (?:in|into)|such as|see |i used|enough to|about right)",
          Pattern.CASE_INSENSITIVE);

  /** The sizes in which eggs are sold, longest first. */
  static final List<String> SIZES =
      List.of("extra large", "extra-large", "xl", "small", "medium", "large", "jumbo");

  private LineWords() {}
}
