package crumbtrail.web;

import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.Page;
import crumbtrail.bakelog.Place;
import crumbtrail.bakelog.Sought;
import crumbtrail.web.KeepForm.Choice;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The list of the log, ready to be drawn.
 *
 * @param asked what was looked for, as it was typed
 * @param lines the bakes of this page
 * @param older address of the page with older bakes, empty on the last
 * @param first address of the first page, empty on it
 * @param causes that can be looked for
 * @param shelves whose bakes can be listed; none where there is only one
 * @param faults what of the search could not be understood, by name of the field
 */
public record LogList(
    Map<String, String> asked,
    List<Line> lines,
    String older,
    String first,
    List<CauseNamer.Named> causes,
    List<Choice> shelves,
    Map<String, String> faults) {

  /** The fields of the search, as they stand in the address. */
  static final List<String> FIELDS = List.of("of", "words", "recipe", "cause", "since", "until");

  private static final String AFTER = "after";

  /**
   * A bake.
   *
   * @param day when it was baked
   * @param outcome "good", "fair", "failed" or empty
   * @param cause name of the cause that was confirmed or came first, or empty
   * @param confirmed whether the cause was confirmed
   */
  public record Line(
      long id,
      String day,
      String label,
      String recipe,
      String outcome,
      String cause,
      boolean confirmed,
      int photos) {}

  /** What the search asks for, with what could not be understood left out. */
  static Sought sought(Map<String, String> asked) {
    return new Sought(
        blankToNull(asked.get("words")),
        blankToNull(asked.get("recipe")),
        blankToNull(asked.get("cause")),
        day(asked, "since").map(LocalDate::atStartOfDay).orElse(null),
        day(asked, "until").map(one -> one.plusDays(1).atStartOfDay()).orElse(null));
  }

  static LogList of(
      Map<String, String> asked, Page page, CauseNamer causes, List<Choice> shelves, Texts t) {
    Map<String, String> faults = new LinkedHashMap<>();
    for (String field : List.of("since", "until")) {
      if (!asked.getOrDefault(field, "").isBlank() && day(asked, field).isEmpty()) {
        faults.put(field, t.of("keep.baked.fault"));
      }
    }
    return new LogList(
        asked,
        page.lines().stream().map(line -> line(line, causes, t)).toList(),
        page.next().map(place -> address(asked, written(place))).orElse(""),
        asked.getOrDefault(AFTER, "").isEmpty() ? "" : address(asked, ""),
        causes.all(t),
        shelves,
        faults);
  }

  private static Line line(BakeLine line, CauseNamer causes, Texts t) {
    boolean confirmed = !line.confirmed().isEmpty();
    String cause =
        confirmed
            ? line.confirmed().stream()
                .map(key -> causes.name(key, t))
                .collect(Collectors.joining(", "))
            : Optional.ofNullable(line.firstCause()).map(key -> causes.name(key, t)).orElse("");
    return new Line(
        line.id(),
        Days.shown(line.baked(), t),
        line.label(),
        line.recipe(),
        KeepForm.typed(line.outcome()),
        cause,
        confirmed,
        line.photos());
  }

  /** What was typed into a field. */
  public String asked(String field) {
    return asked.getOrDefault(field, "");
  }

  /** Whether anything at all was looked for. */
  public boolean searched() {
    return FIELDS.stream().skip(1).anyMatch(field -> !asked(field).isBlank());
  }

  /** Whether more was asked than for words. */
  public boolean narrowed() {
    return FIELDS.stream().skip(2).anyMatch(field -> !asked(field).isBlank());
  }

  /** Where the page begins; null for the first, and for a place that is none. */
  static Place after(Map<String, String> asked) {
    String[] parts = asked.getOrDefault(AFTER, "").split("_", 2);
    try {
      return parts.length < 2
          ? null
          : Sight.number(parts[1])
              .map(id -> new Place(LocalDateTime.parse(parts[0]), id))
              .orElse(null);
    } catch (DateTimeException fault) {
      return null;
    }
  }

  /** A place as it stands in an address. */
  static String written(Place place) {
    return place.baked() + "_" + place.id();
  }

  private static String address(Map<String, String> asked, String after) {
    Map<String, String> all = new LinkedHashMap<>();
    FIELDS.forEach(field -> all.put(field, asked.getOrDefault(field, "")));
    all.put(AFTER, after);
    String query =
        all.entrySet().stream()
            .filter(one -> !one.getValue().isEmpty())
            .map(
                one ->
                    one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"));
    return "/log" + (query.isEmpty() ? "" : "?" + query);
  }

  private static Optional<LocalDate> day(Map<String, String> asked, String field) {
    return Days.typed(asked.getOrDefault(field, ""));
  }

  private static String blankToNull(String text) {
    return text == null || text.isBlank() ? null : text.strip();
  }
}
