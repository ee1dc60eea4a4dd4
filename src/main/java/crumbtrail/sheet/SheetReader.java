package crumbtrail.sheet;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.BakeSheet.SeenSign;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads bake sheets from JSON. Every way in (file, HTTP body, form) ends here. Nothing is thrown
 * for any text: a sheet that cannot be used comes back as the list of everything that is wrong with
 * it.
 *
 * <p>Besides what the contract names, these are taken: a {@code formula} that is one text with line
 * breaks, a top-level {@code recipe} text (a whole recipe as pasted, see {@link RecipeText}),
 * single values where a list could stand, {@code "yes"} and {@code "no"} for true and false.
 */
public final class SheetReader {

  static final List<String> SHEET =
      List.of(
          "title",
          "style",
          "formula",
          "recipe",
          "preferments",
          "process",
          "seen",
          "notSeen",
          "knownCauses");
  static final List<String> SIGN = List.of("sign", "words", "degree");
  private static final Pattern FLOUR = Pattern.compile("(?i)\\bflour\\b");
  static final Map<String, Degree> DEGREES =
      Map.ofEntries(
          Map.entry("slight", Degree.SLIGHT),
          Map.entry("slightly", Degree.SLIGHT),
          Map.entry("a little", Degree.SLIGHT),
          Map.entry("mild", Degree.SLIGHT),
          Map.entry("plain", Degree.PLAIN),
          Map.entry("plainly", Degree.PLAIN),
          Map.entry("medium", Degree.PLAIN),
          Map.entry("marked", Degree.MARKED),
          Map.entry("markedly", Degree.MARKED),
          Map.entry("strong", Degree.MARKED),
          Map.entry("very", Degree.MARKED));

  private static final JsonMapper MAPPER = mapper();

  private SheetReader() {}

  private static JsonMapper mapper() {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
            .disable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    mapper
        .getFactory()
        .setStreamReadConstraints(
            StreamReadConstraints.builder()
                .maxNestingDepth(SheetLimits.NESTING)
                .maxStringLength(SheetLimits.SHEET)
                .maxNumberLength(100)
                .maxNameLength(200)
                .build());
    return mapper;
  }

  /** Reads a sheet from its JSON text. */
  public static Reading read(String json) {
    if (json.length() > SheetLimits.SHEET) {
      return refused(
          "the sheet has " + json.length() + " characters",
          "write at most " + SheetLimits.SHEET + " characters");
    }
    if (json.isBlank()) {
      return refused("there is nothing here", "write a bake sheet as a JSON object");
    }
    try {
      return read(MAPPER.readTree(json));
    } catch (StreamConstraintsException e) {
      return refused(
          "the sheet has too many parts within each other, or a name or number that is too long",
          "write at most " + SheetLimits.NESTING + " parts within each other");
    } catch (JsonProcessingException e) {
      return new Reading(Optional.empty(), List.of(JsonFault.of(e)));
    }
  }

  /** Reads a sheet from JSON that has been taken apart already, or was built from a form. */
  public static Reading read(JsonNode node) {
    if (!node.isObject()) {
      return refused(
          Nodes.described(node) + " stands where a bake sheet should",
          "write a JSON object with formula or seen in it");
    }
    Problems problems = new Problems();
    BakeSheet sheet = sheet(Part.of("", node, problems, SHEET));
    List<Problem> found = problems.found();
    return new Reading(found.isEmpty() ? Optional.of(sheet) : Optional.empty(), found);
  }

  private static Reading refused(String what, String remedy) {
    return new Reading(Optional.empty(), List.of(new Problem("", what, remedy)));
  }

  private static BakeSheet sheet(Part part) {
    Problems problems = part.problems();
    List<FormulaLine> formula = new ArrayList<>();
    List<BakeSheet.Preferment> preferments = new ArrayList<>();
    List<String> remarks = new ArrayList<>();
    List<String> titles = new ArrayList<>();
    List<String> steps = new ArrayList<>();
    List<String> day = new ArrayList<>();
    part.text("title").ifPresent(titles::add);
    for (String key : List.of("formula", "recipe")) {
      JsonNode value = part.get(key);
      if (!Part.isNothing(value) && (key.equals("recipe") || value.isTextual())) {
        Part.text(part.path(key), value, SheetLimits.RECIPE, problems)
            .map(text -> RecipeText.read(part.path(key), text))
            .ifPresent(
                recipe -> {
                  formula.addAll(recipe.lines());
                  preferments.addAll(recipe.preferments());
                  titles.add(recipe.title());
                  remarks.addAll(recipe.remarks());
                  steps.addAll(recipe.steps());
                  day.addAll(recipe.day());
                  recipe.problems().forEach(problems::add);
                });
      } else if (key.equals("formula")) {
        formula.addAll(FormulaReader.lines(part, key));
      }
    }
    preferments.addAll(
        part.list("preferments", (place, node) -> FormulaReader.preferment(place, node, problems)));
    noFlour(formula, preferments).ifPresent(problems::add);
    titles.removeIf(String::isEmpty);
    titles.stream().skip(1).forEach(remarks::add);
    BakeProcess told = ProcessReader.read(part);
    // What the baker remarks was done; what the recipe asks for was done unless they say otherwise.
    BakeProcess process =
        MethodSteps.of(day).into(MethodSteps.of(told.remarks()).into(told)).withSteps(steps);
    remarks.addAll(problems.setAside());
    List<SeenSign> seen = seen(part);
    if (formula.isEmpty() && preferments.isEmpty() && seen.isEmpty() && problems.isEmpty()) {
      problems.add(
          "",
          "the sheet has neither a formula nor anything seen",
          "write at least \"formula\": [\"500 g bread flour\", …] or \"seen\": [\"dense crumb\"]");
    }
    return new BakeSheet(
        titles.isEmpty() ? "" : titles.get(0),
        part.text("style").orElse(""),
        formula,
        preferments,
        withRemarks(process, remarks),
        seen,
        part.texts("notSeen"),
        part.texts("knownCauses"));
  }

  /** A flour of nought beside others is left out; where no flour has any weight, it is a slip. */
  private static Optional<Problem> noFlour(
      List<FormulaLine> formula, List<BakeSheet.Preferment> preferments) {
    List<FormulaLine> flours =
        Stream.concat(
                formula.stream(),
                preferments.stream().flatMap(preferment -> preferment.formula().stream()))
            .filter(line -> FLOUR.matcher(line.ingredient()).find())
            .toList();
    boolean none =
        !flours.isEmpty()
            && flours.stream()
                .allMatch(line -> line.amount().filter(amount -> amount.high() <= 0).isPresent());
    return none
        ? Optional.of(
            new Problem(
                flours.get(0).where(),
                Problems.quoted(flours.get(0).written()) + " leaves the dough without any flour",
                "write how much flour went in, or no amount if nobody knows"))
        : Optional.empty();
  }

  private static BakeProcess withRemarks(BakeProcess process, List<String> more) {
    List<String> all = new ArrayList<>(process.remarks());
    all.addAll(more);
    return process.withRemarks(all);
  }

  private static List<SeenSign> seen(Part part) {
    JsonNode value = part.get("seen");
    if (value != null && value.isTextual()) {
      return part.texts("seen").stream()
          .map(words -> new SeenSign(words, Optional.empty()))
          .toList();
    }
    return part.list("seen", (place, node) -> sign(place, node, part.problems()));
  }

  private static Optional<SeenSign> sign(String where, JsonNode node, Problems problems) {
    if (!node.isObject()) {
      return Part.text(where, node, SheetLimits.TEXT, problems)
          .map(words -> new SeenSign(words, Optional.empty()));
    }
    Part part = Part.of(where, node, problems, SIGN);
    Optional<String> words = part.text("sign").or(() -> part.text("words"));
    if (words.isEmpty()) {
      problems.add(part.path("sign"), "no sign is named", "write what was seen");
    }
    Optional<String> degree = part.text("degree");
    Optional<Degree> known = degree.map(d -> DEGREES.get(d.toLowerCase(Locale.ROOT)));
    if (degree.isPresent() && known.isEmpty()) {
      problems.add(
          part.path("degree"),
          Problems.quoted(degree.get()) + " is no degree",
          "write slight, plain or marked");
    }
    return words.map(w -> new SeenSign(w, known));
  }
}
