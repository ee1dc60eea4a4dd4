package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.QuestionKind;
import crumbtrail.knowledge.QuestionKind.Cost;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.SignKind;
import crumbtrail.knowledge.Style;
import crumbtrail.rules.WrittenRule;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Reading.Known;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What to look at next. Each question that is still open is put to the pipeline with each of its
 * answers, and weighed by what the answer is expected to teach for what it costs.
 *
 * <p>Safe for use by many threads, each with a reasoning of its own: they share the questions out
 * among themselves.
 */
public final class NextQuestions {
  /** Questions that would teach less are not worth a baker's time: our choice. */
  private static final double LEAST_BITS = 0.002;

  /** The causes between which a question is to decide: the first in the ranking. */
  private static final int LEADING = 8;

  /** How many signs are tried in one run of the rules: few enough for two to share them. */
  private static final int TOGETHER = 8;

  /** An amount is below what is usual, usual, or above it (our choice). */
  private static final double[] LOW_USUAL_HIGH = {0.25, 0.5, 0.25};

  /** How far outside the usual range an unusual amount is taken, in widths of the range. */
  private static final double OUTSIDE = 0.75;

  private final Function<String, List<WrittenRule>> rulesOn;
  private final Predicate<String> mindsSilence;
  private final Catalogue catalogue;
  private final BakeSheet sheet;
  private final Workup workup;
  private final List<Cause> causes;
  private final Set<String> concerned = new HashSet<>();
  private final Beliefs now;
  private final Set<String> answered = new HashSet<>();
  private final Queue<Function<Reasoning, List<Question>>> open = new ConcurrentLinkedQueue<>();
  private final Queue<Question> worth = new ConcurrentLinkedQueue<>();

  /**
   * The questions that are open on a sheet, none of them weighed yet.
   *
   * @param findings on the sheet as it stands
   * @param passed what was asked before, to no avail
   */
  public NextQuestions(
      Reasoning reasoning, BakeSheet sheet, Workup workup, Findings findings, Set<String> passed) {
    this.rulesOn = reasoning::rulesOn;
    this.mindsSilence = reasoning::mindsSilence;
    this.catalogue = reasoning.catalogue();
    this.sheet = sheet;
    this.workup = workup;
    this.causes =
        findings.ranked().isEmpty()
            ? catalogue.knowledge().causes()
            : findings.ranked().stream().limit(LEADING).map(Finding::cause).toList();
    causes.forEach(this::concern);
    this.now = beliefs(findings);
    answered.addAll(passed);
    workup.heard().signs().forEach(sign -> answered.add(sign.key()));
    workup.heard().circumstances().forEach(one -> answered.add(one.key()));
    circumstances();
    readings();
    signs();
  }

  /**
   * The questions most worth asking, best first.
   *
   * @param findings on the sheet as it stands
   * @param passed what was asked before, to no avail
   * @param most how many at most
   */
  public static List<Question> of(
      Reasoning reasoning,
      BakeSheet sheet,
      Workup workup,
      Findings findings,
      Set<String> passed,
      int most) {
    NextQuestions next = new NextQuestions(reasoning, sheet, workup, findings, passed);
    next.weigh(reasoning);
    return next.best(most);
  }

  /** Weighs questions for as long as there are any that nobody else has begun. */
  public void weigh(Reasoning reasoning) {
    Function<Reasoning, List<Question>> next = open.poll();
    while (next != null) {
      worth.addAll(next.apply(reasoning));
      next = open.poll();
    }
  }

  /** The best of those weighed, best first; the order in which they were weighed never shows. */
  public List<Question> best(int most) {
    return worth.stream()
        .sorted(
            Comparator.comparingDouble(Question::worth).reversed().thenComparing(Question::about))
        .limit(most)
        .toList();
  }

  // Signs that no rule misses while nothing is said of them are tried a handful at a time.
  private void signs() {
    List<Tried> together = new ArrayList<>();
    for (SignKind sign : catalogue.knowledge().signs()) {
      QuestionKind kind = catalogue.question(sign.key()).orElseGet(() -> QuestionKind.plain(sign));
      if (open(kind) && bears(sign.key())) {
        Tried tried = new Tried(sign, kind, heedsNo(sign.key()));
        if (mindsSilence.test(sign.key())) {
          open.add(reasoning -> alone(reasoning, tried));
        } else {
          together.add(tried);
        }
      }
    }
    for (int from = 0; from < together.size(); from += TOGETHER) {
      List<Tried> some = together.subList(from, Math.min(together.size(), from + TOGETHER));
      open.add(reasoning -> together(reasoning, some));
    }
  }

  /** A sign that is asked about, and whether a no to it says anything. */
  private record Tried(SignKind sign, QuestionKind kind, boolean heedsNo) {
    List<Heard.Sign> answers() {
      return heedsNo ? List.of(seen(true), seen(false)) : List.of(seen(true));
    }

    private Heard.Sign seen(boolean yes) {
      return new Heard.Sign(sign.key(), yes, Degree.PLAIN, sign.key());
    }
  }

  private List<Question> alone(Reasoning reasoning, Tried tried) {
    return worth(
        tried,
        tried.answers().stream().map(answer -> reasoning.beliefs(workup, answer, causes)).toList());
  }

  private List<Question> together(Reasoning reasoning, List<Tried> some) {
    List<Heard.Sign> answers = some.stream().flatMap(one -> one.answers().stream()).toList();
    List<Beliefs> all = reasoning.beliefs(workup, answers, causes);
    List<Question> worth = new ArrayList<>();
    int from = 0;
    for (Tried tried : some) {
      int to = from + tried.answers().size();
      worth.addAll(worth(tried, all.subList(from, to)));
      from = to;
    }
    return worth;
  }

  private List<Question> worth(Tried tried, List<Beliefs> answers) {
    QuestionKind kind = tried.kind();
    return worth(
        kind,
        kind.how() == null ? tried.sign().look() : kind.how(),
        kind.cost() == null ? Cost.of(tried.sign().place()) : kind.cost(),
        yesNo(kind),
        List.of(answers.get(0), tried.heedsNo() ? answers.get(1) : now));
  }

  private void circumstances() {
    for (QuestionKind kind : catalogue.knowledge().questions()) {
      if (catalogue.circumstance(kind.about()).isPresent()
          && open(kind)
          && (bears(kind.about()) || (kind.no() != null && bears(kind.no())))) {
        open.add(reasoning -> circumstance(reasoning, kind));
      }
    }
  }

  private List<Question> circumstance(Reasoning reasoning, QuestionKind kind) {
    Beliefs yes = beliefs(answered(reasoning, answer(kind, true)));
    Beliefs no = kind.no() == null ? now : beliefs(answered(reasoning, answer(kind, false)));
    return worth(kind, kind.how(), kind.cost(), yesNo(kind), List.of(yes, no));
  }

  private static Findings answered(Reasoning reasoning, BakeSheet altered) {
    return reasoning.standing(reasoning.work(altered));
  }

  private BakeSheet answer(QuestionKind kind, boolean yes) {
    return Answers.with(sheet, catalogue, kind.about(), yes, Optional.empty());
  }

  private void readings() {
    for (QuestionKind kind : catalogue.knowledge().questions()) {
      Optional<ReadingKind> reading = catalogue.reading(kind.about());
      if (reading.isPresent() && open(kind) && missing(kind.about())) {
        Optional<Style.Range> usual =
            workup.style().range(kind.about()).or(() -> Optional.ofNullable(reading.get().usual()));
        usual.ifPresent(
            range -> open.add(reasoning -> reading(reasoning, kind, reading.get(), range)));
      }
    }
  }

  private List<Question> reading(
      Reasoning reasoning, QuestionKind kind, ReadingKind reading, Style.Range usual) {
    double width = Math.max(usual.high() - usual.low(), 0.1 * Math.abs(usual.high()));
    double[] amounts = {
      Math.max(0, usual.low() - OUTSIDE * width), usual.middle(), usual.high() + OUTSIDE * width
    };
    List<Beliefs> answers = new ArrayList<>();
    for (double amount : amounts) {
      String text = String.format(Locale.ROOT, "%.4g %s", amount, reading.unit());
      Answers.with(sheet, catalogue, kind.about(), text)
          .sheet()
          .map(altered -> beliefs(answered(reasoning, altered)))
          .ifPresent(answers::add);
    }
    return answers.size() == amounts.length
        ? worth(kind, kind.how(), kind.cost(), LOW_USUAL_HIGH, answers)
        : List.of();
  }

  // A question that no rule ties to a leading cause, or to a coarser form of one, is not tried.
  private boolean bears(String key) {
    return rulesOn.apply(key).stream()
        .flatMap(rule -> rule.verdicts().stream())
        .anyMatch(verdict -> concerned.contains(verdict.cause()));
  }

  // Where no rule looks for its absence, a no leaves everything as it is.
  private boolean heedsNo(String sign) {
    return rulesOn.apply(sign).stream()
        .anyMatch(
            rule ->
                rule.looksAt(WrittenRule.Kind.SIGN_ABSENT, sign)
                    || rule.looksAt(WrittenRule.Kind.SIGN_UNSPOKEN, sign));
  }

  private void concern(Cause cause) {
    if (concerned.add(cause.key())) {
      cause.refines().forEach(coarser -> catalogue.cause(coarser).ifPresent(this::concern));
    }
  }

  private static double[] yesNo(QuestionKind kind) {
    return new double[] {kind.often().share(), 1 - kind.often().share()};
  }

  private boolean missing(String name) {
    return workup.readings().stream()
        .filter(reading -> reading.name().equals(name))
        .map(Reading::known)
        .allMatch(known -> known == Known.ASSUMED);
  }

  private boolean open(QuestionKind kind) {
    return kind.fits(workup.style().tags())
        && !answered.contains(kind.about())
        && (kind.no() == null || !answered.contains(kind.no()))
        && kind.unless().stream().noneMatch(this::holds);
  }

  // What was looked for and not seen answers no other question.
  private boolean holds(String key) {
    return workup.heard().signs().stream().anyMatch(sign -> sign.seen() && sign.key().equals(key))
        || workup.heard().circumstances().stream().anyMatch(one -> one.key().equals(key))
        || workup.readings().stream()
            .anyMatch(
                one -> one.name().equals(key) && one.known() != Known.ASSUMED && one.value() > 0);
  }

  private List<Question> worth(
      QuestionKind kind, String how, Cost cost, double[] shares, List<Beliefs> answers) {
    double bits = now.bits(shares, answers);
    return bits < LEAST_BITS
        ? List.of()
        : List.of(new Question(kind.about(), kind.ask(), how, bits, cost, kind.field() != null));
  }

  private Beliefs beliefs(Findings findings) {
    return Beliefs.of(causes, findings);
  }
}
