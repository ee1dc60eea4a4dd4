package crumbtrail.api;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.lessons.CaseShelf;
import crumbtrail.lessons.Turn;
import crumbtrail.lessons.Vary;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads what is to be turned, and notes everything that is wrong with it. */
final class VaryReader {
  private static final Set<String> KEYS = Set.of("sheet", "bake", "turn", "steps");

  private final Vary vary;
  private final List<Problem> problems = new ArrayList<>();

  VaryReader(Vary vary) {
    this.vary = vary;
  }

  /**
   * A request that can be answered.
   *
   * @param turns one or two
   */
  record Wanted(BakeSheet sheet, List<Turn> turns, int steps) {}

  List<Problem> problems() {
    return problems;
  }

  /** What is wanted; empty if there is any problem. */
  Optional<Wanted> read(String json) {
    JsonNode request = LogReader.parsed(json);
    if (!request.isObject()) {
      add("", "this is no JSON object", "write {\"sheet\": {…}, \"turn\": {\"salt\": \"0..4%\"}}");
      return Optional.empty();
    }
    request
        .properties()
        .forEach(
            entry -> {
              if (!KEYS.contains(entry.getKey())) {
                add(
                    shown(entry.getKey()),
                    "this key is not known here",
                    "write sheet or bake, turn, steps");
              }
            });
    Optional<BakeSheet> sheet = sheet(request);
    List<Turn> turns = turns(request.path("turn"));
    int steps = steps(request.path("steps"));
    return problems.isEmpty() && sheet.isPresent()
        ? Optional.of(new Wanted(sheet.get(), turns, steps))
        : Optional.empty();
  }

  private Optional<BakeSheet> sheet(JsonNode request) {
    JsonNode bake = request.path("bake");
    if (request.has("sheet") == request.has("bake")) {
      add("sheet", "a bake is to be turned, and one only", "write either sheet or bake");
      return Optional.empty();
    }
    if (request.has("bake")) {
      Optional<BakeSheet> known =
          bake.isTextual() ? CaseShelf.sheet(bake.textValue()) : Optional.empty();
      if (known.isEmpty()) {
        add("bake", "there is no such bake", "write a name that lessons use: healthy-tin-loaf");
      }
      return known;
    }
    Reading reading = SheetReader.read(request.path("sheet").toString());
    for (Problem one : reading.problems()) {
      add(one.where().isEmpty() ? "sheet" : "sheet." + one.where(), one.what(), one.remedy());
    }
    return reading.sheet();
  }

  private List<Turn> turns(JsonNode turn) {
    List<Turn> turns = new ArrayList<>();
    if (!turn.isObject() || turn.isEmpty() || turn.size() > 2) {
      add("turn", "one quantity or two can be turned", "write {\"salt\": \"0..4%\"}");
      return turns;
    }
    for (Map.Entry<String, JsonNode> one : turn.properties()) {
      String where = "turn." + shown(one.getKey());
      vary.knob(one.getKey())
          .ifPresentOrElse(
              knob -> {
                Turn.Reading reading = Turn.read(knob, one.getValue().asText());
                reading.turn().ifPresent(turns::add);
                reading.problems().forEach(fault -> add(where, fault.what(), fault.remedy()));
              },
              () -> add(where, "this cannot be turned", "turn one of: " + all()));
    }
    return turns;
  }

  private int steps(JsonNode steps) {
    if (steps.isMissingNode()) {
      return Vary.AS_USUAL;
    }
    if (!steps.isInt() || steps.intValue() < 2 || steps.intValue() > Vary.MOST_STEPS) {
      add("steps", "this is no number of steps", "write a number from 2 to " + Vary.MOST_STEPS);
    }
    return steps.intValue();
  }

  private String all() {
    return vary.knobs().stream().map(knob -> knob.key()).collect(Collectors.joining(", "));
  }

  private void add(String where, String what, String remedy) {
    problems.add(new Problem(where, what, remedy));
  }

  private static String shown(String key) {
    return key.length() <= 40 ? key : key.substring(0, 40) + "…";
  }
}
