package crumbtrail.bakelog.exchange;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Verdict;
import crumbtrail.sheet.BakeSheet;
import java.io.BufferedReader;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Bakes of a table. Some columns are the log's own; every other one is a place on the bake sheet,
 * written as a path of keys: {@code formula}, {@code process.bulk}, {@code process.mixing.time}.
 * Where the sheet has a list, entries stand in one cell with a semicolon between them.
 */
final class CsvBakes implements LogImport.Source {
  private static final String WHEN = "when";
  private static final Set<String> OWN =
      Set.of(WHEN, "label", "recipe", "note", "outcome", "confirmed", "ruledOut");
  private static final Set<String> LISTS =
      Set.of(
          "formula",
          "seen",
          "notSeen",
          "process.bulk",
          "process.proof",
          "process.baking.stages",
          "process.remarks");

  private final MappingIterator<String[]> rows;
  private final List<String> headings;
  private final LocalDateTime usual;
  private long number = 1;
  private boolean over;

  private CsvBakes(MappingIterator<String[]> rows, List<String> headings, LocalDateTime usual) {
    this.rows = rows;
    this.headings = headings;
    this.usual = usual;
  }

  /** A table whose headings have been read. */
  static CsvBakes of(BufferedReader text, LocalDateTime when) throws IOException, BadLine {
    MappingIterator<String[]> rows =
        new CsvMapper()
            .readerFor(String[].class)
            .with(CsvParser.Feature.WRAP_AS_ARRAY)
            .with(CsvParser.Feature.TRIM_SPACES)
            .readValues(text);
    List<String> headings = headings(rows);
    if (headings.stream().allMatch(OWN::contains)) {
      throw new BadLine(
          "headings",
          "no column belongs to the bake sheet",
          "name at least formula or seen; entries in a cell are parted by semicolons");
    }
    return new CsvBakes(rows, headings, when);
  }

  private static List<String> headings(MappingIterator<String[]> rows) throws BadLine {
    try {
      if (rows.hasNextValue()) {
        return Arrays.stream(rows.nextValue()).map(String::strip).toList();
      }
    } catch (IOException fault) {
      throw new BadLine(
          "headings", "the row of headings cannot be read", "close every quote that it opens");
    }
    throw new BadLine("", "the table is empty", "begin it with a row of headings");
  }

  @Override
  public Optional<Bake> next() throws BadLine {
    if (over || !more()) {
      return Optional.empty();
    }
    number++;
    try {
      return Optional.of(bake(rows.nextValue()));
    } catch (IOException fault) {
      throw new BadLine("", "the row cannot be read", "put quotes around cells with commas");
    }
  }

  // Where a quote stays open, nobody can tell where the next row begins.
  private boolean more() throws BadLine {
    try {
      return rows.hasNextValue();
    } catch (IOException fault) {
      over = true;
      throw new BadLine(
          "", "the table cannot be read from here on", "close every quote that it opens");
    }
  }

  @Override
  public long line() {
    return number;
  }

  private Bake bake(String[] cells) throws BadLine {
    Map<String, String> own = new TreeMap<>();
    ObjectNode sheet = JsonNodeFactory.instance.objectNode();
    for (int i = 0; i < Math.min(cells.length, headings.size()); i++) {
      String cell = cells[i].strip();
      String heading = headings.get(i);
      if (cell.isEmpty()) {
        continue;
      }
      if (OWN.contains(heading)) {
        own.put(heading, cell);
      } else {
        place(sheet, heading, cell);
      }
    }
    String label = own.getOrDefault("label", sheet.path("title").asText(""));
    if (!label.isEmpty() && !sheet.has("title")) {
      sheet.put("title", label);
    }
    String written = sheet.toString();
    BakeSheet read = LogImport.sheet(written);
    return Bake.of(
            when(own.get(WHEN)),
            label.isEmpty() ? read.style() : label,
            own.getOrDefault("recipe", label),
            written)
        .named(LogImport.named(own + written))
        .withNote(own.getOrDefault("note", ""))
        .withOutcome(outcome(own.get("outcome")))
        .withVerdicts(verdicts(own));
  }

  private static void place(ObjectNode sheet, String heading, String cell) {
    // A heading of nothing but points leads nowhere; the sheet's reader says so.
    String[] path = heading.replace(".", "").isEmpty() ? new String[] {"."} : heading.split("\\.");
    ObjectNode at = sheet;
    for (int i = 0; i < path.length - 1; i++) {
      at = at.path(path[i]) instanceof ObjectNode there ? there : at.putObject(path[i]);
    }
    String key = path[path.length - 1];
    if (LISTS.contains(heading)) {
      ArrayNode list = at.putArray(key);
      entries(cell).forEach(list::add);
    } else if (cell.equals("true") || cell.equals("false")) {
      at.put(key, Boolean.parseBoolean(cell));
    } else {
      at.put(key, cell);
    }
  }

  private static List<String> entries(String cell) {
    return Arrays.stream(cell.split(";")).map(String::strip).filter(one -> !one.isEmpty()).toList();
  }

  private LocalDateTime when(@Nullable String cell) throws BadLine {
    if (cell == null) {
      return usual;
    }
    try {
      return cell.length() > "2026-03-01".length()
          ? LocalDateTime.parse(cell.replace(' ', 'T'))
          : LocalDate.parse(cell).atTime(12, 0);
    } catch (DateTimeParseException fault) {
      throw new BadLine(
          WHEN, "\"" + cell + "\" is no day", "write it as 2026-03-01 or 2026-03-01 14:30");
    }
  }

  private static @Nullable Outcome outcome(@Nullable String cell) throws BadLine {
    try {
      return cell == null ? null : BakeJson.outcome(cell);
    } catch (IllegalArgumentException fault) {
      throw new BadLine(
          "outcome",
          "there is no outcome \"" + cell + "\"",
          "write one of "
              + String.join(
                  ", ",
                  Arrays.stream(Outcome.values())
                      .map(one -> one.name().toLowerCase(Locale.ROOT))
                      .toList()));
    }
  }

  private static Map<String, Verdict> verdicts(Map<String, String> own) {
    Map<String, Verdict> verdicts = new TreeMap<>();
    List<String> ruledOut = new ArrayList<>(entries(own.getOrDefault("ruledOut", "")));
    ruledOut.forEach(cause -> verdicts.put(cause, Verdict.RULED_OUT));
    entries(own.getOrDefault("confirmed", ""))
        .forEach(cause -> verdicts.put(cause, Verdict.CONFIRMED));
    return verdicts;
  }
}
