package crumbtrail.formula;

import crumbtrail.pantry.Kind;
import crumbtrail.sheet.BakeSheet.Preferment;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Finds the lines of a dough that name a part given elsewhere on the sheet ("936 g poolish"), so
 * that the part is counted once.
 */
final class Pointers {
  private static final Set<String> FILLERS =
      Set.of(
          "all",
          "of",
          "the",
          "above",
          "from",
          "day",
          "before",
          "entire",
          "whole",
          "ripe",
          "active",
          "fermented",
          "overnight",
          "mature",
          "fed",
          "your",
          "my",
          "a",
          "an",
          "prepared",
          "build",
          "young",
          "bubbly",
          "cooled",
          "cool");

  private static final Pattern BRACKETS = Pattern.compile("\\([^)]*\\)");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

  private Pointers() {}

  /**
   * @param kinds the kinds of the parts, in the order of {@code parts}
   * @param self index of the part that the lines belong to, -1 for the dough itself
   * @return index of the part by index of the line
   */
  static Map<Integer, Integer> find(
      List<WeighedLine> lines, List<Preferment> parts, List<PartKind> kinds, int self) {
    Map<Integer, Integer> found = new HashMap<>();
    if (parts.isEmpty()) {
      return found;
    }
    List<Set<String>> names = parts.stream().map(part -> words(part.name())).toList();
    for (int i = 0; i < lines.size(); i++) {
      int part = byName(lines.get(i), names, self);
      if (part >= 0) {
        found.put(i, part);
      }
    }
    if (self >= 0) {
      return found;
    }
    for (int i = 0; i < lines.size(); i++) {
      if (!found.containsKey(i)) {
        int part = byKind(lines.get(i), kinds, found);
        if (part >= 0) {
          found.put(i, part);
        }
      }
    }
    return found;
  }

  private static int byName(WeighedLine line, List<Set<String>> names, int self) {
    Set<String> said = words(line.line().ingredient());
    for (int i = 0; i < names.size(); i++) {
      Set<String> name = names.get(i);
      if (i != self && !name.isEmpty() && said.equals(name)) {
        return i;
      }
    }
    for (int i = 0; i < names.size(); i++) {
      Set<String> name = names.get(i);
      // "rye sour" holds all of "sour"; "flour" must not hold all of a part called "rye flour".
      boolean within = !name.isEmpty() && said.containsAll(name);
      if (i != self && within && !line.isKind(Kind.FLOUR)) {
        return i;
      }
    }
    return -1;
  }

  /** A line that speaks of a sponge points to the only sponge there is, if no line names it. */
  private static int byKind(WeighedLine line, List<PartKind> kinds, Map<Integer, Integer> found) {
    PartKind spoken = spoken(line);
    if (spoken == PartKind.MAIN) {
      return -1;
    }
    int only = -1;
    boolean anyFerment = line.line().ingredient().toLowerCase(Locale.ROOT).contains("preferment");
    for (int i = 0; i < kinds.size(); i++) {
      if (kinds.get(i) == spoken || (anyFerment && kinds.get(i).fermented())) {
        if (only >= 0) {
          return -1;
        }
        only = i;
      }
    }
    return only >= 0 && !found.containsValue(only) ? only : -1;
  }

  private static PartKind spoken(WeighedLine line) {
    if (line.isKind(Kind.STARTER)) {
      return line.has("yeasted") ? PartKind.YEASTED : PartKind.LEVAIN;
    }
    return line.find().isPresent() ? PartKind.MAIN : PartKind.named(line.line().ingredient());
  }

  private static Set<String> words(String text) {
    String outside = BRACKETS.matcher(text.toLowerCase(Locale.ROOT)).replaceAll(" ");
    List<String> words = new ArrayList<>(List.of(BETWEEN_WORDS.split(outside)));
    words.removeIf(word -> word.isEmpty() || FILLERS.contains(word));
    return new HashSet<>(words);
  }
}
