package crumbtrail.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Looks whether knobs and remedies hold together, and whether every cause has a remedy. */
final class RemedyCheck {
  private static final String KNOBS = "knobs.yaml";
  private static final String REMEDIES = "remedies";
  private static final Pattern AIM = Pattern.compile("usual|middle|low|high|-?\\d+(\\.\\d+)?");

  private final Knowledge knowledge;
  private final Places places;
  private final Set<String> causes;
  private final Set<String> circumstances;
  private final Set<String> readings;
  private final Set<String> knobs;
  private final Set<String> tags;
  private final Set<String> sources;
  private final List<Fault> faults = new ArrayList<>();

  private RemedyCheck(Knowledge knowledge, Places places) {
    this.knowledge = knowledge;
    this.places = places;
    causes = knowledge.causes().stream().map(Cause::key).collect(Collectors.toSet());
    circumstances =
        knowledge.circumstances().stream().map(CircumstanceKind::key).collect(Collectors.toSet());
    readings = knowledge.readings().stream().map(ReadingKind::name).collect(Collectors.toSet());
    knobs = knowledge.knobs().stream().map(KnobKind::key).collect(Collectors.toSet());
    tags =
        knowledge.styles().stream()
            .flatMap(style -> style.tags().stream())
            .collect(Collectors.toSet());
    sources = knowledge.sources().stream().map(Source::id).collect(Collectors.toSet());
  }

  /**
   * @param unread the catalogues that could not be read in full; while there is one, nothing is
   *     said
   */
  static List<Fault> faults(Knowledge knowledge, Set<String> unread, Places places) {
    boolean none = knowledge.knobs().isEmpty() && knowledge.remedies().isEmpty();
    if (none || !unread.isEmpty()) {
      return List.of();
    }
    RemedyCheck check = new RemedyCheck(knowledge, places);
    check.knobs();
    check.remedies();
    check.gaps();
    check.timetable();
    return check.faults;
  }

  private void knobs() {
    Set<String> met = new HashSet<>();
    for (KnobKind knob : knowledge.knobs()) {
      String name = "\"" + knob.key() + "\"";
      if (!met.add(knob.key())) {
        knob(knob, "key", name + " stands twice", "Keep one of the two");
      }
      if (knob.reading() != null && !readings.contains(knob.reading())) {
        knob(knob, "reading", unknown("reading", knob.reading(), readings), "Mend it");
      }
      if (!(knob.low() < knob.high()) || !(knob.step() > 0)) {
        knob(knob, "low", name + " goes nowhere", "Let low be under high, and step above nought");
      }
      if (knob.turns() == null || knob.more() == null || knob.less() == null) {
        knob(knob, "", name + " is not whole", "Give it turns, more and less");
      }
    }
  }

  private void knob(KnobKind knob, String part, String what, String remedy) {
    faults.add(places.fault(KNOBS, knob.key(), part, what, remedy));
  }

  private void remedies() {
    Map<String, Integer> place = new HashMap<>();
    for (Remedy remedy : knowledge.remedies()) {
      int which = place.merge(String.valueOf(remedy.cause()), 1, Integer::sum) - 1;
      remedy(remedy, which);
    }
    for (Cause cause : knowledge.causes()) {
      if (!place.containsKey(cause.key())) {
        faults.add(
            places.fault(
                "causes",
                cause.key(),
                "",
                "nothing can be done about \"" + cause.key() + "\"",
                "Write a remedy for it in rules/remedies"));
      }
    }
  }

  private void remedy(Remedy remedy, int which) {
    known(remedy, which, "cause", List.of(String.valueOf(remedy.cause())), causes);
    known(remedy, which, "turn", listed(remedy.turn()), knobs);
    known(remedy, which, "until", listed(remedy.until()), readings);
    known(remedy, which, "hold", remedy.hold(), circumstances);
    known(remedy, which, "drop", remedy.drop(), circumstances);
    known(remedy, which, "breads", remedy.breads(), tags);
    known(remedy, which, "not", remedy.not(), tags);
    if (remedy.source() != null && !remedy.source().equals("common practice")) {
      known(remedy, which, "source", List.of(remedy.source().split("; ", -1)), sources);
    }
    written(
        remedy,
        which,
        "to",
        remedy.to(),
        AIM.asMatchPredicate(),
        "usual, middle, low, high or a number");
    written(
        remedy, which, "step", remedy.step(), Remedy.Step::isStep, "such as \"+10 %\" or \"-3\"");
    if (remedy.why() == null || (remedy.turn() == null && remedy.does() == null)) {
      fault(remedy, which, "", "it does not say what to do, or not why", "Give it does and why");
    }
    if (remedy.turn() != null && remedy.to() == null && remedy.step() == null) {
      fault(remedy, which, "turn", "it does not say how far to turn", "Give it to or step");
    }
  }

  private void gaps() {
    for (GapKind gap : knowledge.gaps()) {
      Set<String> unknown = new HashSet<>(gap.without());
      unknown.removeAll(readings);
      Set<String> where = new HashSet<>(gap.where());
      where.removeAll(circumstances);
      Set<String> breads = new HashSet<>(gap.breads());
      breads.addAll(gap.not());
      breads.removeAll(tags);
      unknown.addAll(where);
      unknown.addAll(breads);
      if (!unknown.isEmpty()) {
        faults.add(
            places.fault("gaps.yaml", gap.key(), "", "nothing is known of " + unknown, "Mend it"));
      }
    }
  }

  private void timetable() {
    for (StepKind step : knowledge.timetable()) {
      for (String bread : step.breads()) {
        if (!tags.contains(bread)) {
          faults.add(
              places.fault(
                  "timetable.yaml",
                  step.name(),
                  "breads",
                  unknown("breads", bread, tags),
                  "Use a family of rules/styles"));
        }
      }
    }
  }

  private static List<String> listed(String key) {
    return key == null ? List.of() : List.of(key);
  }

  private void known(Remedy remedy, int which, String part, List<String> keys, Set<String> known) {
    for (String key : keys) {
      if (!known.contains(key)) {
        fault(remedy, which, part, unknown(part, key, known), "Use a key that there is");
      }
    }
  }

  private static String unknown(String part, String key, Set<String> known) {
    return part
        + ": there is no \""
        + key
        + "\", the nearest is \""
        + Nearest.of(key, known)
        + "\"";
  }

  private void written(
      Remedy remedy, int which, String part, String text, Predicate<String> form, String would) {
    if (text != null && !form.test(text.strip())) {
      fault(remedy, which, part, part + ": \"" + text + "\" is no aim", "Write " + would);
    }
  }

  private void fault(Remedy remedy, int which, String part, String what, String mend) {
    List<Places.Entry> entries = places.all(REMEDIES, String.valueOf(remedy.cause()));
    faults.add(
        which < entries.size()
            ? new Fault(entries.get(which).file(), entries.get(which).line(part), what, mend)
            : new Fault(REMEDIES, 0, what + " (" + remedy.cause() + ")", mend));
  }
}
