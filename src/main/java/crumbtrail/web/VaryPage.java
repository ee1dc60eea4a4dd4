package crumbtrail.web;

import crumbtrail.knowledge.KnobKind;
import crumbtrail.lessons.CaseShelf;
import crumbtrail.lessons.School;
import crumbtrail.lessons.Turn;
import crumbtrail.lessons.Variation;
import crumbtrail.lessons.Vary;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.FormulaLine;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The page on which a knob is turned: what was asked, what came of it.
 *
 * @param bake name of an invented bake, empty if the baker's own is turned
 * @param bakes names and titles of the invented bakes that are offered
 * @param whose whose bake is turned: its name and its formula in one line; empty if none is
 * @param example a range that would do for the knob that was chosen
 * @param kept the fields of the baker's own sheet, to be sent again
 * @param knobs all that can be turned
 * @param asked what was asked
 * @param faults what is wrong with it, in sentences
 * @param view null where there is nothing to show
 */
public record VaryPage(
    String bake,
    List<Choice> bakes,
    String whose,
    String example,
    Map<String, String> kept,
    List<Dial> knobs,
    Asked asked,
    List<String> faults,
    VaryView view) {

  /** Sound bakes, whose faults come only from what is turned. */
  private static final List<String> BAKES =
      List.of(
          "healthy-tin-loaf",
          "healthy-whole-wheat-tin",
          "healthy-hearth-loaf",
          "healthy-baguettes",
          "healthy-sourdough",
          "healthy-rye",
          "healthy-soft-rolls",
          "healthy-brioche",
          "healthy-pizza");

  /** Something to choose: its key and its words. */
  public record Choice(String key, String words) {}

  /** A knob to choose, and a range that would do for it on this bake. */
  public record Dial(String key, String words, String range) {}

  /** What was asked: one knob and its range, and perhaps another. */
  public record Asked(String turn, String range, String second, String secondRange) {}

  /** Reads what was asked and turns what can be turned. */
  static VaryPage of(School school, Map<String, String> fields, Texts t) {
    Vary vary = school.vary();
    BakeForm form = new BakeForm(fields);
    // The page of a report sends the whole sheet, the form its fields.
    Map<String, String> kept =
        fields.containsKey("sheet") ? Map.of("sheet", fields.get("sheet")) : form.typed();
    boolean own = !kept.isEmpty();
    String bake = own ? "" : fields.getOrDefault("bake", BAKES.get(0));
    Asked asked =
        new Asked(
            fields.getOrDefault("turn", ""),
            fields.getOrDefault("range", "").strip(),
            fields.getOrDefault("second", ""),
            fields.getOrDefault("secondRange", "").strip());
    List<String> faults = new ArrayList<>();
    Optional<BakeSheet> sheet =
        own ? own(kept.getOrDefault("sheet", ""), form, faults) : CaseShelf.sheet(bake);
    if (!own && sheet.isEmpty()) {
      faults.add(t.of("vary.nobake"));
    }
    Map<String, Turn> around = sheet.map(vary::around).orElse(Map.of());
    Optional<Turn> first = turn(vary, asked.turn(), asked.range(), around, faults, t);
    Optional<Turn> second = turn(vary, asked.second(), asked.secondRange(), around, faults, t);
    VaryView view = null;
    if (faults.isEmpty() && sheet.isPresent() && first.isPresent()) {
      view =
          second.isPresent()
              ? VaryView.of(vary.over(sheet.get(), first.get(), second.get(), Vary.AS_USUAL), t)
              : along(school, sheet.get(), first.get(), t);
    }
    return new VaryPage(
        bake,
        bakes(t),
        sheet.map(VaryPage::whose).orElse(""),
        range(vary.knob(asked.turn()).orElse(vary.knobs().get(0)), around),
        kept,
        choices(vary, around, t),
        asked,
        faults,
        view);
  }

  private static String whose(BakeSheet sheet) {
    String name = sheet.title().isBlank() ? sheet.style() : sheet.title();
    String formula =
        sheet.formula().stream().map(FormulaLine::written).collect(Collectors.joining(", "));
    return Stream.of(name, formula)
        .filter(part -> !part.isBlank())
        .collect(Collectors.joining(": "));
  }

  private static VaryView along(School school, BakeSheet sheet, Turn turn, Texts t) {
    Variation variation = school.vary().along(sheet, turn, Vary.AS_USUAL);
    return VaryView.of(variation, school.drawings().of(variation), t);
  }

  private static Optional<BakeSheet> own(String whole, BakeForm form, List<String> faults) {
    Reading reading = SheetReader.read(whole.isEmpty() ? form.sheetJson() : whole);
    reading.problems().forEach(problem -> faults.add(sentence(problem)));
    return reading.sheet();
  }

  private static String range(KnobKind knob, Map<String, Turn> around) {
    return around.containsKey(knob.key()) ? around.get(knob.key()).written() : Turn.example(knob);
  }

  // An empty range is that around where the bake stands.
  private static Optional<Turn> turn(
      Vary vary, String key, String range, Map<String, Turn> around, List<String> faults, Texts t) {
    if (key.isBlank()) {
      return Optional.empty();
    }
    Optional<KnobKind> knob = vary.knob(key);
    if (knob.isEmpty()) {
      faults.add(t.of("vary.noknob"));
      return Optional.empty();
    }
    Turn.Reading reading =
        Turn.read(knob.get(), range.isEmpty() ? range(knob.get(), around) : range);
    reading.problems().forEach(problem -> faults.add(sentence(problem)));
    return reading.turn();
  }

  private static String sentence(Problem problem) {
    return LessonWords.capital(problem.what()) + ": " + problem.remedy() + ".";
  }

  private static List<Dial> choices(Vary vary, Map<String, Turn> around, Texts t) {
    return vary.knobs().stream()
        .map(knob -> new Dial(knob.key(), t.name(knob.name()), range(knob, around)))
        .toList();
  }

  private static List<Choice> bakes(Texts t) {
    return BAKES.stream().map(key -> new Choice(key, t.of("vary.bake." + key))).toList();
  }
}
