package crumbtrail.lessons;

import crumbtrail.findings.Findings;
import crumbtrail.findings.NextQuestions;
import crumbtrail.findings.Question;
import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.MysteryKind.Level;
import crumbtrail.knowledge.QuestionKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.lessons.Verdict.Observation;
import crumbtrail.lessons.Verdict.Outcome;
import crumbtrail.lessons.Verdict.Suspect;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Loaves that failed for a hidden reason. Rounds are plain data, so that a terminal and a page can
 * both carry them on. Safe for use by many threads.
 */
public final class Mysteries {
  /** A cause with so much of the suspicion is named without asking on (our choice). */
  private static final double SURE = 0.85;

  /** Who has not seen it by then asks somebody else; and each step costs many runs (our choice). */
  private static final int MOST_ASKED = 6;

  private static final int LIKELIEST = 3;
  private static final int QUESTIONS = 40;

  private final Pipeline pipeline;
  private final MysteryMaker maker;
  private final ClueWords words;

  /**
   * @param rules the rule base
   */
  public Mysteries(RuleBase rules) {
    this(new Pipeline(rules));
  }

  Mysteries(Pipeline pipeline) {
    this.pipeline = pipeline;
    this.maker = new MysteryMaker(pipeline);
    this.words = new ClueWords(pipeline.catalogue());
  }

  /** A loaf of a level; the same seed gives the same loaf. */
  public MysteryLoaf loaf(long seed, Level level) {
    return maker.draw(seed, level, Optional.empty());
  }

  /** A loaf with a cause, of the level if there is one. */
  public MysteryLoaf loaf(long seed, Level level, String cause) {
    return maker.draw(seed, level, Optional.of(cause));
  }

  /** What kind of bread it was. */
  public String bread(MysteryLoaf loaf) {
    return loaf.whole().style().isBlank() ? "bread" : loaf.whole().style();
  }

  /** What the baker says first. */
  public List<String> complaint(MysteryLoaf loaf) {
    return loaf.complaint().stream().map(words::said).toList();
  }

  /** The answer to a clue. */
  public List<String> answer(MysteryLoaf loaf, String clue) {
    return words.answer(loaf, clue);
  }

  /** The causes that may be named: those to choose from, or all, by name. */
  public List<Cause> nameable(MysteryLoaf loaf) {
    return pipeline.catalogue().knowledge().causes().stream()
        .filter(cause -> loaf.choices().isEmpty() || loaf.choices().contains(cause.key()))
        .sorted(Comparator.comparing(Cause::name))
        .toList();
  }

  /**
   * A cause by its key.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Cause cause(String key) {
    return pipeline
        .catalogue()
        .cause(key)
        .orElseThrow(() -> new IllegalArgumentException("there is no cause " + key));
  }

  /** All that was asked in a round, with what it taught. */
  public List<Observation> told(MysteryRound round) {
    try (Reasoning reasoning = pipeline.open()) {
      return told(reasoning, round.loaf(), round.asked());
    }
  }

  /**
   * The end of a round.
   *
   * @param named key of the cause that the learner names, empty if they give up
   */
  public Verdict verdict(MysteryRound round, String named) {
    MysteryLoaf loaf = round.loaf();
    try (Reasoning reasoning = pipeline.open()) {
      Suspects known = pipeline.suspects(reasoning, Clues.known(round));
      Suspects start = pipeline.suspects(reasoning, Clues.known(MysteryRound.of(loaf)));
      return new Verdict(
          outcome(loaf, named),
          named,
          loaf.cause(),
          loaf.others(),
          known.share(named),
          known.share(loaf.cause()),
          start.bits(),
          told(reasoning, loaf, round.asked()),
          told(reasoning, loaf, better(reasoning, loaf)));
    }
  }

  private List<Observation> told(Reasoning reasoning, MysteryLoaf loaf, List<String> asked) {
    List<Observation> told = new ArrayList<>();
    MysteryRound round = MysteryRound.of(loaf);
    double before = pipeline.suspects(reasoning, Clues.known(round)).bits();
    for (String key : asked) {
      round = round.ask(key);
      Suspects now = pipeline.suspects(reasoning, Clues.known(round));
      told.add(
          new Observation(
              clue(loaf, key), words.answer(loaf, key), before, now.bits(), likeliest(now)));
      before = now.bits();
    }
    return told;
  }

  private static Clue clue(MysteryLoaf loaf, String key) {
    return loaf.clues().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
  }

  private List<Suspect> likeliest(Suspects suspects) {
    return suspects.first(LIKELIEST).stream()
        .map(key -> new Suspect(key, pipeline.causeName(key), suspects.share(key)))
        .toList();
  }

  private Outcome outcome(MysteryLoaf loaf, String named) {
    if (named.equals(loaf.cause())) {
      return Outcome.RIGHT;
    }
    if (loaf.others().contains(named)) {
      return Outcome.ALSO_AT_WORK;
    }
    boolean akin = refines(named, loaf.cause()) || refines(loaf.cause(), named);
    return akin ? Outcome.NEAR : Outcome.WRONG;
  }

  private boolean refines(String finer, String coarser) {
    return pipeline
        .catalogue()
        .cause(finer)
        .map(cause -> cause.refines().contains(coarser))
        .orElse(false);
  }

  // Recipe and tin first, since whoever is asked for help has them before them; then whatever
  // question
  // promises most bits for its cost, by what is known so far and not by what will come out.
  private List<String> better(Reasoning reasoning, MysteryLoaf loaf) {
    MysteryRound round = MysteryRound.of(loaf).ask(Clues.RECIPE).ask(Clues.VESSEL);
    while (!round.open().isEmpty() && round.asked().size() < MOST_ASKED) {
      BakeSheet known = Clues.known(round);
      Workup workup = reasoning.work(known);
      Findings findings = reasoning.judge(workup);
      Suspects suspects = pipeline.suspects(workup, findings);
      if (suspects.share(suspects.first(1).get(0)) >= SURE) {
        break;
      }
      Optional<String> next =
          promising(
              NextQuestions.of(reasoning, known, workup, findings, Set.of(), QUESTIONS),
              round.open());
      if (next.isEmpty()) {
        break;
      }
      round = round.ask(next.get());
    }
    return round.asked();
  }

  private Optional<String> promising(List<Question> questions, List<Clue> open) {
    Map<String, Double> worth = new HashMap<>();
    for (Question question : questions) {
      worth.merge(clueOf(question.about()), question.worth(), Double::sum);
    }
    return open.stream()
        .map(Clue::key)
        .filter(worth::containsKey)
        .max(
            Comparator.comparingDouble((String key) -> worth.get(key))
                .thenComparing(Comparator.reverseOrder()));
  }

  private String clueOf(String about) {
    Catalogue catalogue = pipeline.catalogue();
    Optional<String> place = catalogue.sign(about).map(SignKind::place);
    if (place.isPresent()) {
      return place.get();
    }
    return catalogue.question(about).map(QuestionKind::field).map(Clues::clueOf).orElse(Clues.TALK);
  }
}
