package crumbtrail.lessons;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.SeenSign;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What can be asked about a mystery loaf, and what a sheet says once it was asked. */
final class Clues {
  static final String RECIPE = "recipe";
  static final String VESSEL = "vessel";
  static final String TALK = "talk";

  private static final Clue RECIPE_CLUE = new Clue(RECIPE, "What was done", "Ask for the recipe");

  /** What was done, each with the keys of the process that answer it. */
  private static final Map<Clue, List<String>> DONE = new LinkedHashMap<>();

  /** What came out, each by the place of the signs that answer it. */
  private static final List<Clue> LOOKS =
      List.of(
          look("dough", "Ask how the dough felt"),
          look("proof", "Ask how it rose"),
          look("oven", "Ask what it did in the oven"),
          look("shape", "Look at the loaf from outside"),
          look("crust", "Look at the crust"),
          look("crumb", "Cut it and look at the crumb"),
          look("flavour", "Smell and taste it"),
          look("keeping", "Ask how it kept"),
          look("starter", "Ask how the starter was"));

  /** Asked of every loaf; the others only where there is something to tell. */
  private static final Set<String> ALWAYS = Set.of("dough", "proof", "crust", "crumb", "shape");

  static {
    done(
        "kitchen", "Ask how warm kitchen and ingredients were", "room", "altitude", "temperatures");
    done("mixing", "Ask how it was mixed", "mixing");
    done("first-rise", "Ask about the first rise", "bulk");
    done("shaping", "Ask how it was shaped", "shaping");
    done(VESSEL, "Ask what it was baked in", "vessel");
    done("final-proof", "Ask about the final proof", "proof");
    done("bake", "Ask how it was baked", "baking");
    done("after", "Ask what was done after the bake", "cooling", "storage");
    done(TALK, "Ask what else comes to mind", "remarks");
  }

  private Clues() {}

  private static Clue look(String place, String ask) {
    return new Clue(place, "What came out", ask);
  }

  private static void done(String key, String ask, String... fields) {
    DONE.put(new Clue(key, "What was done", ask), List.of(fields));
  }

  /** All that can be asked about a bake, given the places at which something is to be seen. */
  static List<Clue> of(BakeSheet whole, Set<String> places) {
    ObjectNode process = SheetWriter.node(whole).withObjectProperty("process");
    List<Clue> clues = new ArrayList<>();
    if (!whole.formula().isEmpty()) {
      clues.add(RECIPE_CLUE);
    }
    DONE.forEach(
        (clue, fields) -> {
          if (fields.stream().anyMatch(process::has)) {
            clues.add(clue);
          }
        });
    LOOKS.stream()
        .filter(clue -> ALWAYS.contains(clue.key()) || places.contains(clue.key()))
        .forEach(clues::add);
    return clues;
  }

  /** The fields of the process that answer a clue. */
  static List<String> fields(String clue) {
    return DONE.entrySet().stream()
        .filter(entry -> entry.getKey().key().equals(clue))
        .flatMap(entry -> entry.getValue().stream())
        .toList();
  }

  /** The clue that brings a field of the process to light: "bulk[0].time". */
  static String clueOf(String field) {
    String top = field.replaceAll("[.\\[].*", "");
    return DONE.entrySet().stream()
        .filter(entry -> entry.getValue().contains(top))
        .map(entry -> entry.getKey().key())
        .findFirst()
        .orElse("mixing");
  }

  /** The sheet as far as it is known in a round. */
  static BakeSheet known(MysteryRound round) {
    MysteryLoaf loaf = round.loaf();
    ObjectNode whole = SheetWriter.node(loaf.whole());
    ObjectNode known = whole.objectNode();
    known.put("style", loaf.whole().style());
    if (round.asked().contains(RECIPE)) {
      known.set("formula", whole.get("formula"));
      if (whole.has("preferments")) {
        known.set("preferments", whole.get("preferments"));
      }
    }
    ObjectNode process = known.putObject("process");
    ObjectNode all = whole.withObjectProperty("process");
    for (String clue : round.asked()) {
      fields(clue).stream().filter(all::has).forEach(field -> process.set(field, all.get(field)));
    }
    ArrayNode seen = known.putArray("seen");
    loaf.complaint().forEach(sign -> add(seen, sign));
    ArrayNode notSeen = known.putArray("notSeen");
    for (String clue : round.asked()) {
      loaf.signs().getOrDefault(clue, List.of()).forEach(sign -> add(seen, sign));
      loaf.absent().getOrDefault(clue, List.of()).forEach(notSeen::add);
    }
    return SheetReader.read(known).sheet().orElseThrow();
  }

  private static void add(ArrayNode seen, SeenSign sign) {
    if (sign.degree().isEmpty()) {
      seen.add(sign.words());
    } else {
      seen.addObject()
          .put("sign", sign.words())
          .put("degree", sign.degree().get().name().toLowerCase(java.util.Locale.ROOT));
    }
  }
}
