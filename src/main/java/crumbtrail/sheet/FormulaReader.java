package crumbtrail.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.memory.Recent;
import crumbtrail.quantity.PlainText;
import crumbtrail.quantity.Quantities;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the formula of a bake sheet and its preferments. */
final class FormulaReader {

  static final List<String> LINE = List.of("ingredient", "amount", "note");
  static final List<String> PREFERMENT = List.of("name", "formula", "stages");

  // Sheets share most of their lines, and a what-if reads all but one of them as they were.
  private static final Recent<Text, List<LineReading>> LATELY = new Recent<>(2048);

  /** A line and where it stands. */
  private record Text(String where, String written) {}

  private FormulaReader() {}

  /** Reads the lines of a formula that is a list of texts and objects. */
  static List<FormulaLine> lines(Part part, String key) {
    List<FormulaLine> lines = new ArrayList<>();
    part.list(key, SheetLimits.LINES, (place, node) -> entry(place, node, part.problems()))
        .forEach(lines::addAll);
    return lines;
  }

  private static Optional<List<FormulaLine>> entry(String where, JsonNode node, Problems problems) {
    if (node.isTextual()) {
      Text text = new Text(where, node.textValue());
      List<LineReading> readings =
          text.written().length() > IngredientLine.LONGEST
              ? readings(text)
              : LATELY.of(text, FormulaReader::readings);
      return lines(readings, problems);
    }
    if (node.isObject()) {
      return ofParts(where, node, problems).flatMap(reading -> lines(List.of(reading), problems));
    }
    problems.add(
        where,
        Nodes.described(node) + " stands where an ingredient should",
        "write a line such as \"500 g bread flour\"");
    return Optional.empty();
  }

  private static Optional<List<FormulaLine>> lines(List<LineReading> readings, Problems problems) {
    readings.forEach(reading -> reading.problem().ifPresent(problems::add));
    List<FormulaLine> lines =
        readings.stream().flatMap(reading -> reading.line().stream()).toList();
    return lines.isEmpty() ? Optional.empty() : Optional.of(lines);
  }

  /** One entry is one ingredient, or a few in a row: "500 g flour, 310 g water". */
  private static List<LineReading> readings(Text text) {
    List<LineReading> several = RecipeLine.several(text.where(), text.written());
    return several.isEmpty()
        ? List.of(IngredientLine.parse(text.where(), text.written()))
        : several;
  }

  private static Optional<LineReading> ofParts(String where, JsonNode node, Problems problems) {
    Part part = Part.of(where, node, problems, LINE);
    Optional<String> name = part.text("ingredient");
    String note = part.text("note").orElse("");
    JsonNode amount = part.get("amount");
    if (amount != null && amount.isNumber()) {
      problems.add(
          part.path("amount"),
          "the number " + Nodes.shown(amount.asText()) + " has no unit",
          "write the amount in quotation marks with its unit, such as \"6 g\" or \"1 tsp\"");
      return Optional.empty();
    }
    Optional<String> written = part.text("amount");
    if (name.isEmpty()) {
      problems.add(
          part.path("ingredient"), "the ingredient has no name", "write what it is, such as flour");
      return Optional.empty();
    }
    if (written.isPresent() && !AmountText.isAmount(written.get())) {
      problems.add(
          part.path("amount"),
          Quantities.unbelievable(PlainText.of(written.get()), LineAmounts.KINDS)
              .orElse(Problems.quoted(written.get()) + " is no amount"),
          "write a weight, a volume, a number of pieces or a percentage of flour, such as \"6 g\"");
      return Optional.empty();
    }
    return Optional.of(IngredientLine.ofParts(where, name.get(), written.orElse(""), note));
  }

  static Optional<BakeSheet.Preferment> preferment(String where, JsonNode node, Problems problems) {
    if (!node.isObject()) {
      problems.add(
          where,
          Nodes.described(node) + " stands where a preferment should",
          "write an object with name, formula and stages");
      return Optional.empty();
    }
    Part part = Part.of(where, node, problems, PREFERMENT);
    return Optional.of(
        new BakeSheet.Preferment(
            part.text("name").orElse("preferment"),
            lines(part, "formula"),
            part.list("stages", (place, stage) -> ProcessReader.stage(place, stage, problems))));
  }
}
