package crumbtrail.study;

import crumbtrail.bakelog.Digested;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.lessons.Syllabus;
import crumbtrail.study.Trends.Count;
import crumbtrail.study.Trends.ToLearn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Counts the causes of some bakes, and finds what is worth learning about them. */
final class CauseCounts {
  /** What was not confirmed in so many judged bakes is taken for learnt. Our choice. */
  private static final int LATELY = 10;

  private final List<Digested> bakes;
  private final List<Digested> judged;
  private final Catalogue catalogue;

  /**
   * @param bakes the earliest first
   */
  CauseCounts(List<Digested> bakes, Catalogue catalogue) {
    this.bakes = bakes;
    this.judged = bakes.stream().filter(bake -> !bake.line().confirmed().isEmpty()).toList();
    this.catalogue = catalogue;
  }

  int judged() {
    return judged.size();
  }

  List<Count> confirmed() {
    return counts(judged, bake -> bake.line().confirmed());
  }

  List<Count> namedFirst() {
    return counts(
        bakes,
        bake -> bake.line().firstCause() == null ? List.of() : List.of(bake.line().firstCause()));
  }

  private List<Count> counts(List<Digested> from, Function<Digested, List<String>> causes) {
    Map<String, Count> counts = new LinkedHashMap<>();
    for (Digested bake : from) {
      for (String cause : causes.apply(bake)) {
        int before = counts.containsKey(cause) ? counts.get(cause).bakes() : 0;
        counts.put(cause, new Count(cause, name(cause), before + 1, bake.line().id()));
      }
    }
    return counts.values().stream()
        .sorted(Comparator.comparingInt((Count one) -> -one.bakes()).thenComparing(Count::cause))
        .toList();
  }

  private String name(String cause) {
    return catalogue.cause(cause).map(Cause::name).orElse(cause);
  }

  /**
   * Lessons by the number of bakes in which what they teach was confirmed; those whose causes have
   * not come up lately stand last.
   */
  List<ToLearn> learn() {
    Syllabus syllabus = Syllabus.of(catalogue.knowledge());
    Map<String, Optional<Syllabus.Lesson>> lessons = new LinkedHashMap<>();
    Map<String, List<Count>> groups = new LinkedHashMap<>();
    for (Count count : confirmed()) {
      Optional<Syllabus.Lesson> lesson = syllabus.nearest(count.cause(), catalogue);
      String group = lesson.map(one -> "lesson " + one.number()).orElse(count.cause());
      lessons.put(group, lesson);
      groups.computeIfAbsent(group, key -> new ArrayList<>()).add(count);
    }
    List<ToLearn> learn = new ArrayList<>();
    groups.forEach((group, causes) -> learn.add(toLearn(lessons.get(group), causes)));
    // The sort is stable, and what comes up oftenest was put in first.
    learn.sort(
        Comparator.comparing((ToLearn one) -> !one.lately()).thenComparing(one -> -one.bakes()));
    return learn;
  }

  private ToLearn toLearn(Optional<Syllabus.Lesson> lesson, List<Count> causes) {
    Set<String> keys = new HashSet<>();
    causes.forEach(count -> keys.add(count.cause()));
    int bakesWith = 0;
    int last = 0;
    for (int place = 0; place < judged.size(); place++) {
      if (judged.get(place).line().confirmed().stream().anyMatch(keys::contains)) {
        bakesWith++;
        last = place;
      }
    }
    return new ToLearn(
        lesson.map(Syllabus.Lesson::number).orElse(null),
        lesson.map(Syllabus.Lesson::title).orElse(causes.get(0).name()),
        causes,
        bakesWith,
        judged.get(last).line().id(),
        judged.size() - last <= LATELY);
  }
}
