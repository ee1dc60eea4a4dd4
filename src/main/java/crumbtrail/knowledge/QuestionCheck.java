package crumbtrail.knowledge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Looks whether each question is about something that the catalogues know, and is whole. */
final class QuestionCheck {
  private static final String FILE = "questions.yaml";

  private final Places places;
  private final Set<String> signs;
  private final Set<String> circumstances;
  private final Set<String> readings;
  private final Set<String> tags;
  private final List<Fault> faults = new ArrayList<>();

  private QuestionCheck(Knowledge knowledge, Places places) {
    this.places = places;
    signs = knowledge.signs().stream().map(SignKind::key).collect(Collectors.toSet());
    circumstances =
        knowledge.circumstances().stream().map(CircumstanceKind::key).collect(Collectors.toSet());
    readings = knowledge.readings().stream().map(ReadingKind::name).collect(Collectors.toSet());
    tags =
        knowledge.styles().stream()
            .flatMap(style -> style.tags().stream())
            .collect(Collectors.toSet());
  }

  /**
   * @param unread the catalogues that could not be read in full; while there is one, nothing is
   *     said of questions
   * @param places where the entries stand
   */
  static List<Fault> faults(Knowledge knowledge, Set<String> unread, Places places) {
    if (!unread.isEmpty()) {
      return List.of();
    }
    QuestionCheck check = new QuestionCheck(knowledge, places);
    Set<String> met = new HashSet<>();
    for (QuestionKind question : knowledge.questions()) {
      if (!met.add(question.about())) {
        check.fault(
            question, "\"" + question.about() + "\" is asked for twice", "Keep one of the two");
      }
      check.question(question);
    }
    return check.faults;
  }

  private void question(QuestionKind question) {
    String about = "\"" + question.about() + "\"";
    boolean sign = signs.contains(question.about());
    boolean circumstance = circumstances.contains(question.about());
    boolean reading = readings.contains(question.about());
    if (!sign && !circumstance && !reading) {
      fault(
          question,
          about + " is neither sign, circumstance nor reading",
          "Use a key of a catalogue");
      return;
    }
    if (question.ask() == null || question.ask().isBlank()) {
      fault(question, about + " has no question", "Put it under ask");
    }
    if (!sign && (question.how() == null || question.cost() == null)) {
      fault(
          question,
          about + " does not say how to find out, or at what cost",
          "Give it how and cost");
    }
    if (reading == (question.field() == null)) {
      fault(
          question,
          about + ": a field goes with a reading, and a reading with a field",
          "Mend field");
    }
    if (question.no() != null && !(circumstance && circumstances.contains(question.no()))) {
      fault(question, about + ": \"" + question.no() + "\" is no circumstance", "Mend no");
    }
    for (String key : question.unless()) {
      if (!signs.contains(key) && !circumstances.contains(key) && !readings.contains(key)) {
        fault(
            question,
            about + ": \"" + key + "\" is neither sign, circumstance nor reading",
            "Mend unless");
      }
    }
    List<String> families = new ArrayList<>(question.breads());
    families.addAll(question.not());
    for (String tag : families) {
      if (!tags.contains(tag)) {
        fault(question, about + ": no bread is \"" + tag + "\"", "Use a tag of a style");
      }
    }
  }

  private void fault(QuestionKind question, String what, String remedy) {
    faults.add(places.fault(FILE, question.about(), "", what, remedy));
  }
}
