package crumbtrail.api;

import crumbtrail.api.Mystery.CauseTold;
import crumbtrail.knowledge.LessonKind;
import crumbtrail.knowledge.MysteryKind.Level;
import crumbtrail.lessons.Clue;
import crumbtrail.lessons.Course;
import crumbtrail.lessons.Mysteries;
import crumbtrail.lessons.MysteryLoaf;
import crumbtrail.lessons.MysteryRound;
import crumbtrail.lessons.School;
import crumbtrail.lessons.Turn;
import crumbtrail.lessons.Variation;
import crumbtrail.lessons.Variation.Named;
import crumbtrail.lessons.Verdict;
import crumbtrail.sheet.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Lessons, mystery loaves and knobs, for programs.
 *
 * @param school works them out
 */
public record Classroom(School school) {
  /** In place of a cause, by those who give up. */
  public static final String GIVE_UP = "give-up";

  /**
   * A lesson in a list.
   *
   * @param number from 1
   * @param title plain words
   * @param cause key of the cause that it teaches
   * @param look what to watch while the knob is turned
   * @param bake name of the bake whose knob is turned
   * @param turn key of the knob
   * @param range how far it is turned
   * @param mystery the loaf to end with
   */
  public record LessonLine(
      int number,
      String title,
      String cause,
      String look,
      String bake,
      String turn,
      String range,
      LoafName mystery) {}

  /**
   * A lesson.
   *
   * @param lesson its line in the list
   * @param last number of the last lesson
   * @param cause what it teaches
   * @param variation what moves as the knob is turned
   */
  public record Lesson(LessonLine lesson, int last, CauseTold cause, Variation variation) {}

  /** What a mystery loaf is drawn by: its level, and which of the level it is. */
  public record LoafName(String level, long seed) {}

  /** All lessons in order. */
  public List<LessonLine> lessons() {
    List<LessonLine> lines = new ArrayList<>();
    for (LessonKind kind : school.course().all()) {
      lines.add(line(lines.size() + 1, kind));
    }
    return lines;
  }

  /** A lesson by its number, from 1. */
  public Optional<Lesson> lesson(String number) {
    Course course = school.course();
    int place = number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0;
    if (place < 1 || place > course.all().size()) {
      return Optional.empty();
    }
    Course.Lesson lesson = course.lesson(place);
    return Optional.of(
        new Lesson(
            line(place, lesson.kind()),
            course.all().size(),
            CauseTold.of(lesson.cause()),
            course.variation(lesson)));
  }

  private static LessonLine line(int number, LessonKind kind) {
    return new LessonLine(
        number,
        kind.title(),
        kind.cause(),
        kind.look(),
        kind.sheet(),
        kind.turn(),
        kind.range(),
        new LoafName(kind.level().word(), kind.seed()));
  }

  /**
   * Turns one quantity of a bake, or two.
   *
   * @param json a {@link VaryRequest}
   * @return a {@link Variation} or a {@link crumbtrail.lessons.Board}
   */
  public Outcome<Object> vary(String json) {
    VaryReader reader = new VaryReader(school.vary());
    return reader.read(json).map(this::turned).orElseGet(() -> Outcome.refused(reader.problems()));
  }

  private Outcome<Object> turned(VaryReader.Wanted wanted) {
    List<Turn> turns = wanted.turns();
    return Outcome.made(
        turns.size() == 1
            ? school.vary().along(wanted.sheet(), turns.get(0), wanted.steps())
            : school.vary().over(wanted.sheet(), turns.get(0), turns.get(1), wanted.steps()));
  }

  /**
   * A mystery loaf as far as it is known.
   *
   * @param level its level, empty for an easy one
   * @param asked keys of what was asked, parted by commas; may be empty
   * @param named key of the cause that is named, {@link #GIVE_UP}, or empty
   */
  public Outcome<Mystery> mystery(long seed, String level, String asked, String named) {
    Optional<Level> known = level(level);
    if (known.isEmpty()) {
      return refused("level", "there is no such level", "write easy, middling or hard");
    }
    Mysteries mysteries = school.mysteries();
    MysteryLoaf loaf = mysteries.loaf(seed, known.get());
    MysteryRound round = MysteryRound.of(loaf);
    for (String clue : asked.isEmpty() ? new String[0] : asked.split(",", -1)) {
      if (loaf.clues().stream().noneMatch(one -> one.key().equals(clue))) {
        return refused("asked", "this cannot be asked of this loaf", "ask one of: " + clues(loaf));
      }
      round = round.ask(clue);
    }
    boolean nameable =
        named.isEmpty()
            || named.equals(GIVE_UP)
            || mysteries.nameable(loaf).stream().anyMatch(one -> one.key().equals(named));
    return nameable
        ? Outcome.made(told(round, named))
        : refused("named", "this cause cannot be named", "write a key of nameable, or give-up");
  }

  private Mystery told(MysteryRound round, String named) {
    Mysteries mysteries = school.mysteries();
    MysteryLoaf loaf = round.loaf();
    return new Mystery(
        loaf.seed(),
        loaf.level().word(),
        mysteries.bread(loaf),
        mysteries.complaint(loaf),
        mysteries.told(round).stream().map(Mystery.Told::of).toList(),
        round.open(),
        mysteries.nameable(loaf).stream().map(one -> new Named(one.key(), one.name())).toList(),
        named.isEmpty() ? null : ending(round, named.equals(GIVE_UP) ? "" : named));
  }

  private Mystery.Ending ending(MysteryRound round, String named) {
    Mysteries mysteries = school.mysteries();
    Verdict verdict = mysteries.verdict(round, named);
    return new Mystery.Ending(
        named.isEmpty()
            ? "gave up"
            : verdict.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '),
        named,
        CauseTold.of(mysteries.cause(verdict.cause())),
        verdict.others().stream().map(key -> new Named(key, mysteries.cause(key).name())).toList(),
        verdict.shareNamed(),
        verdict.shareTrue(),
        verdict.start(),
        verdict.asked(),
        verdict.better());
  }

  private static Optional<Level> level(String word) {
    return Arrays.stream(Level.values())
        .filter(level -> level.word().equals(word.isEmpty() ? "easy" : word))
        .findFirst();
  }

  private static String clues(MysteryLoaf loaf) {
    return loaf.clues().stream().map(Clue::key).collect(Collectors.joining(", "));
  }

  private static <T> Outcome<T> refused(String where, String what, String remedy) {
    return Outcome.refused(List.of(new Problem(where, what, remedy)));
  }
}
