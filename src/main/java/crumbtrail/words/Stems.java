package crumbtrail.words;

import java.util.HashMap;
import java.util.Map;
import org.tartarus.snowball.ext.EnglishStemmer;

/**
 * Brings the forms of a word together: British and American spelling, irregular forms, and for the
 * rest the Snowball stemmer for English. Not for use by several threads at once, since the stemmer
 * keeps a buffer.
 */
final class Stems {
  /** British beginnings of words and their American ones. */
  private static final String[] SPELLING =
      ("mould:mold colour:color flavour:flavor grey:gray centre:center odour:odor savour:savor"
              + " draught:draft litre:liter fibre:fiber yoghurt:yogurt aluminium:aluminum"
              + " vapour:vapor caramelis:carameliz pasteuris:pasteuriz demineralis:demineraliz"
              + " autolys:autolyz metre:meter anaemi:anemi centring:centering humour:humor"
              + " shrivell:shrivel unravell:unravel levell:level doughnut:donut")
          .split("[ :]");

  private static final String[] IRREGULAR = {
    "rise: rose risen arose arise",
    "sink: sank sunk sunken",
    "burn: burnt",
    "tear: tore torn",
    "stick: stuck",
    "fall: fell fallen",
    "blow: blew blown",
    "freeze: froze frozen",
    "eat: ate eaten",
    "shrink: shrank shrunk shrunken",
    "break: broke broken",
    "come: came",
    "go: went gone goes",
    "get: got gotten",
    "take: took taken",
    "forget: forgot forgotten",
    "hold: held",
    "keep: kept",
    "run: ran",
    "grow: grew grown",
    "feed: fed",
    "stand: stood",
    "spill: spilt",
    "smell: smelt",
    "spoil: spoilt",
    "spring: sprang sprung",
    "swell: swollen",
    "give: gave given",
    "make: made",
    "become: became",
    "lose: lost",
    "buy: bought",
    "throw: threw thrown",
    "stink: stank stunk",
    "loaf: loaves",
    "knife: knives",
    "half: halves halved",
    "hang: hung",
    "begin: began begun",
    "weep: wept",
    "shake: shook shaken",
    "dry: dried dries drying",
    // A dough that hardly moved is not a hard one.
    "scarcely: hardly barely",
    // What lies on a pizza is no form of "top".
    "garnish: topping toppings",
    // Bakers prove or proof their dough, by which side of the ocean they live on.
    "proof: prove proved proven proving proves proofs",
  };

  private static final String COMPARABLE =
      "flat dense grey gray pale dry wet soft hard big small dark light heavy sticky thick thin fast"
          + " slow warm cool cold hot tight loose long short high low sour weak strong old young new"
          + " coarse chewy tough damp gummy crumbly rough large wide deep late full salty stiff firm"
          + " slack moist close stale rich sweet yeasty bland brown dull open quick early puffy squat"
          + " black white red tacky runny soggy fluffy airy smooth spongy lumpy stringy";

  private static final Map<String, String> BASE_OF_IRREGULAR = new HashMap<>();
  private static final Map<String, String> BASE_OF_COMPARED = new HashMap<>();
  private static final int SHORTEST_SPELLING = 4;

  static {
    for (String line : IRREGULAR) {
      int colon = line.indexOf(':');
      for (String form : line.substring(colon + 2).split(" ")) {
        BASE_OF_IRREGULAR.put(form, line.substring(0, colon));
      }
    }
    for (String word : COMPARABLE.split(" ")) {
      compare(word);
    }
  }

  private final EnglishStemmer stemmer = new EnglishStemmer();

  /** The common stem of a word's forms; never empty for a word that is not. */
  String of(String word) {
    String spelled = spelled(word);
    stemmer.setCurrent(BASE_OF_IRREGULAR.getOrDefault(spelled, spelled));
    stemmer.stem();
    return stemmer.getCurrent();
  }

  /** For "flatter" or "flattest" the stem of "flat"; null for words that compare nothing. */
  String ofBase(String word) {
    String base = BASE_OF_COMPARED.get(word);
    return base == null ? null : of(base);
  }

  private static String spelled(String word) {
    if (word.length() >= SHORTEST_SPELLING) {
      for (int i = 0; i < SPELLING.length; i += 2) {
        if (word.startsWith(SPELLING[i])) {
          return SPELLING[i + 1] + word.substring(SPELLING[i].length());
        }
      }
    }
    return word;
  }

  private static void compare(String base) {
    char last = base.charAt(base.length() - 1);
    String root = base;
    if (last == 'e') {
      root = base.substring(0, base.length() - 1);
    } else if (last == 'y' && "aeiou".indexOf(base.charAt(base.length() - 2)) < 0) {
      root = base.substring(0, base.length() - 1) + "i";
    }
    for (String ending : new String[] {"er", "est", "ish"}) {
      BASE_OF_COMPARED.put(root + ending, base);
      BASE_OF_COMPARED.put(base + last + ending, base);
      BASE_OF_COMPARED.put(base + ending, base);
    }
  }
}
