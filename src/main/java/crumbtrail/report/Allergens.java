package crumbtrail.report;

import crumbtrail.knowledge.Allergen;
import crumbtrail.knowledge.Knowledge;
import crumbtrail.pantry.Find;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which allergens the lines of a formula name. What a bought ingredient holds that its name does
 * not tell (a margarine with milk, an improver with soya) is not known here.
 */
final class Allergens {
  private Allergens() {}

  /** The lines of the dough and of all that goes into it. */
  static Stream<FormulaLine> lines(BakeSheet sheet) {
    return Stream.concat(
        sheet.formula().stream(),
        sheet.preferments().stream().flatMap(part -> part.formula().stream()));
  }

  /** The allergens, in the order of the catalogue. */
  static List<Allergen> in(Knowledge knowledge, Pantry pantry, BakeSheet sheet) {
    Set<Allergen> held =
        lines(sheet)
            .flatMap(line -> in(knowledge.allergens(), pantry, line))
            .collect(Collectors.toSet());
    return knowledge.allergens().stream().filter(held::contains).toList();
  }

  private static Stream<Allergen> in(List<Allergen> all, Pantry pantry, FormulaLine line) {
    List<Allergen> named = all.stream().filter(one -> named(one, line.written())).toList();
    Optional<Find> find = pantry.find(line.ingredient());
    // "Lupin flour" is taken for flour by a guess; its own word says better what it is.
    if (find.isEmpty() || (find.get().assumed() && !named.isEmpty())) {
      return named.stream();
    }
    String key = find.get().ingredient().key();
    return Stream.concat(named.stream(), all.stream().filter(one -> one.pantry().contains(key)));
  }

  private static boolean named(Allergen allergen, String written) {
    String said = WholeWords.without(written, allergen.spare());
    return allergen.words().stream().anyMatch(word -> WholeWords.holds(said, word));
  }

  /** In words: "wheat, egg (US and EU lists); rye, barley or oats (EU list)". */
  static String told(List<Allergen> allergens) {
    Map<String, List<String>> byList = new LinkedHashMap<>();
    for (String lists : List.of("US and EU lists", "US list", "EU list")) {
      List<String> names =
          allergens.stream().filter(one -> lists(one).equals(lists)).map(Allergen::name).toList();
      if (!names.isEmpty()) {
        byList.put(lists, names);
      }
    }
    return byList.entrySet().stream()
        .map(entry -> String.join(", ", entry.getValue()) + " (" + entry.getKey() + ")")
        .collect(Collectors.joining("; "));
  }

  private static String lists(Allergen allergen) {
    if (allergen.us() == null) {
      return "EU list";
    }
    return allergen.eu() == null ? "US list" : "US and EU lists";
  }
}
