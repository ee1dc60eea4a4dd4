package crumbtrail.web;

import crumbtrail.knowledge.KnobKind;
import crumbtrail.lessons.CaseShelf;
import crumbtrail.lessons.School;
import crumbtrail.lessons.Turn;
import crumbtrail.lessons.Variation;
import crumbtrail.lessons.Vary;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The page on which a knob is turned: what was asked, what came of it.
 *
 * @param bake name of an invented bake, empty if the baker's own is turned
 * @param bakes names and titles of the invented bakes that are offered
 * @param kept the fields of the baker's own sheet, to be sent again
 * @param knobs all that can be turned
 * @param asked what was asked
 * @param faults what is wrong with it, in sentences
 * @param view null where there is nothing to show
 */
public record VaryPage(
    String bake,
    List<Choice> bakes,
    Map<String, String> kept,
    List<Choice> knobs,
    Asked asked,
    List<String> faults,
    VaryView view) {

  /** Sound bakes, whose faults come only from what is turned. */
  private static final List<Choice> BAKES =
      List.of(
          new Choice("healthy-tin-loaf", "a white tin loaf"),
          new Choice("healthy-whole-wheat-tin", "a whole-wheat tin loaf"),
          new Choice("healthy-hearth-loaf", "a white hearth loaf"),
          new Choice("healthy-baguettes", "baguettes"),
          new Choice("healthy-sourdough", "a sourdough loaf"),
          new Choice("healthy-rye", "a rye bread with wheat"),
          new Choice("healthy-soft-rolls", "soft rolls"),
          new Choice("healthy-brioche", "a brioche"),
          new Choice("healthy-pizza", "a pizza"));

  /** Something to choose: its key and its words. */
  public record Choice(String key, String words) {}

  /** What was asked: one knob and its range, and perhaps another. */
  public record Asked(String turn, String range, String second, String secondRange) {}

  /** Reads what was asked and turns what can be turned. */
  static VaryPage of(School school, Map<String, String> fields) {
    Vary vary = school.vary();
    BakeForm form = new BakeForm(fields);
    boolean own = !form.typed().isEmpty();
    String bake = own ? "" : fields.getOrDefault("bake", BAKES.get(0).key());
    Asked asked =
        new Asked(
            fields.getOrDefault("turn", ""),
            fields.getOrDefault("range", "").strip(),
            fields.getOrDefault("second", ""),
            fields.getOrDefault("secondRange", "").strip());
    List<String> faults = new ArrayList<>();
    Optional<BakeSheet> sheet = own ? own(form, faults) : CaseShelf.sheet(bake);
    if (!own && sheet.isEmpty()) {
      faults.add("There is no such bake; choose one of the list.");
    }
    Optional<Turn> first = turn(vary, asked.turn(), asked.range(), faults);
    Optional<Turn> second = turn(vary, asked.second(), asked.secondRange(), faults);
    VaryView view = null;
    if (faults.isEmpty() && sheet.isPresent() && first.isPresent()) {
      view =
          second.isPresent()
              ? VaryView.of(vary.over(sheet.get(), first.get(), second.get(), Vary.AS_USUAL))
              : along(school, sheet.get(), first.get());
    }
    return new VaryPage(bake, BAKES, form.typed(), choices(vary), asked, faults, view);
  }

  private static VaryView along(School school, BakeSheet sheet, Turn turn) {
    Variation variation = school.vary().along(sheet, turn, Vary.AS_USUAL);
    return VaryView.of(variation, school.drawings().of(variation));
  }

  private static Optional<BakeSheet> own(BakeForm form, List<String> faults) {
    Reading reading = SheetReader.read(form.sheetJson());
    reading.problems().forEach(problem -> faults.add(sentence(problem)));
    return reading.sheet();
  }

  // An empty range is all that makes sense for the knob.
  private static Optional<Turn> turn(Vary vary, String key, String range, List<String> faults) {
    if (key.isBlank()) {
      return Optional.empty();
    }
    Optional<KnobKind> knob = vary.knob(key);
    if (knob.isEmpty()) {
      faults.add("There is no such quantity; choose one of the list.");
      return Optional.empty();
    }
    Turn.Reading reading =
        Turn.read(knob.get(), range.isEmpty() ? Turn.example(knob.get()) : range);
    reading.problems().forEach(problem -> faults.add(sentence(problem)));
    return reading.turn();
  }

  private static String sentence(Problem problem) {
    return LessonWords.capital(problem.what()) + ": " + problem.remedy() + ".";
  }

  private static List<Choice> choices(Vary vary) {
    return vary.knobs().stream()
        .map(knob -> new Choice(knob.key(), knob.name() + " (" + Turn.example(knob) + ")"))
        .toList();
  }
}
