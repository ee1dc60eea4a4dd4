package crumbtrail.web;

import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.MysteryKind.Level;
import crumbtrail.lessons.Clue;
import crumbtrail.lessons.Drawn;
import crumbtrail.lessons.Mysteries;
import crumbtrail.lessons.MysteryLoaf;
import crumbtrail.lessons.MysteryRound;
import crumbtrail.lessons.MysteryText;
import crumbtrail.lessons.School;
import crumbtrail.lessons.Verdict;
import crumbtrail.lessons.Verdict.Observation;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A mystery loaf on a page. All its state is in its address: the seed, the level, what was asked
 * and what was named.
 *
 * @param seed of the loaf
 * @param level its level
 * @param bread what kind of bread it was
 * @param complaint what the baker says first
 * @param asked keys of what was asked, parted by commas
 * @param answers what was asked and answered
 * @param open what can still be asked
 * @param nameable the causes that may be named
 * @param outcome what became of the guess, empty as long as none was made
 * @param others names of further causes that were at work
 * @param cause the true cause, null as long as none was named
 * @param start what was unknown at the start
 * @param better what a good diagnostician would have asked
 * @param loaf drawn as far as it is known, null where nothing of it can be seen
 */
public record MysteryPage(
    long seed,
    String level,
    String bread,
    List<String> complaint,
    String asked,
    List<Answer> answers,
    List<Clue> open,
    List<VaryPage.Choice> nameable,
    String outcome,
    List<String> others,
    Cause cause,
    String start,
    List<Answer> better,
    Drawn loaf) {

  private static final String GIVE_UP = "give-up";

  /**
   * An answer.
   *
   * @param ask what was asked
   * @param lines the answer
   * @param taught how much it taught, in bits
   * @param suspects the likeliest causes after it, empty as long as the round is open
   */
  public record Answer(String ask, List<String> lines, String taught, String suspects) {}

  /** The levels by name. */
  public static List<String> levels() {
    return Arrays.stream(Level.values()).map(Level::word).toList();
  }

  /**
   * @param seed which loaf
   * @param fields level, asked, ask and named, each of which may be missing
   */
  static MysteryPage of(School school, long seed, Map<String, String> fields, Texts t) {
    Mysteries mysteries = school.mysteries();
    MysteryLoaf loaf = mysteries.loaf(seed, level(fields.getOrDefault("level", "")));
    MysteryRound round = MysteryRound.of(loaf);
    for (String clue : fields.getOrDefault("asked", "").split(",", -1)) {
      round = round.ask(clue);
    }
    round = round.ask(fields.getOrDefault("ask", ""));
    String named = fields.getOrDefault("named", "");
    boolean known =
        named.equals(GIVE_UP)
            || mysteries.nameable(loaf).stream().anyMatch(cause -> cause.key().equals(named));
    return known ? ended(school, round, named, t) : open(school, round, t);
  }

  private static Level level(String word) {
    return Arrays.stream(Level.values())
        .filter(level -> level.word().equals(word.toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElse(Level.EASY);
  }

  private static MysteryPage open(School school, MysteryRound round, Texts t) {
    return page(
        school,
        round,
        answers(school.mysteries().told(round), false, t),
        "",
        null,
        "",
        List.of(),
        t);
  }

  private static MysteryPage ended(School school, MysteryRound round, String named, Texts t) {
    Mysteries mysteries = school.mysteries();
    boolean gaveUp = named.equals(GIVE_UP);
    Verdict verdict = mysteries.verdict(round, gaveUp ? "" : named);
    Cause cause = mysteries.cause(round.loaf().cause());
    return page(
        school,
        round,
        answers(verdict.asked(), true, t),
        gaveUp
            ? t.of("mystery.was", t.name(cause.name()))
            : t.of(
                "mystery.outcome." + verdict.outcome().name(),
                t.name(mysteries.cause(named).name()),
                t.name(cause.name())),
        cause,
        MysteryText.suspects(verdict.start()),
        answers(verdict.better(), true, t),
        t);
  }

  private static MysteryPage page(
      School school,
      MysteryRound round,
      List<Answer> answers,
      String outcome,
      Cause cause,
      String start,
      List<Answer> better,
      Texts t) {
    Mysteries mysteries = school.mysteries();
    MysteryLoaf loaf = round.loaf();
    return new MysteryPage(
        loaf.seed(),
        loaf.level().word(),
        t.name(mysteries.bread(loaf)),
        mysteries.complaint(loaf),
        String.join(",", round.asked()),
        answers,
        round.open(),
        mysteries.nameable(loaf).stream()
            .map(one -> new VaryPage.Choice(one.key(), t.name(one.name())))
            .toList(),
        outcome,
        loaf.others().stream().map(key -> t.name(mysteries.cause(key).name())).toList(),
        cause,
        start,
        better,
        school.drawings().of(round).orElse(null));
  }

  private static List<Answer> answers(List<Observation> told, boolean ended, Texts t) {
    return told.stream()
        .map(
            one ->
                new Answer(
                    one.clue().ask(),
                    one.lines(),
                    MysteryText.taught(one.before(), one.after()),
                    ended ? suspects(one, t) : ""))
        .toList();
  }

  private static String suspects(Observation one, Texts t) {
    return one.likeliest().stream()
        .filter(suspect -> suspect.share() >= 0.05)
        .map(
            suspect ->
                t.name(suspect.name()) + " " + t.number(LessonWords.percent(suspect.share())))
        .reduce((first, next) -> first + ", " + next)
        .orElse("");
  }
}
