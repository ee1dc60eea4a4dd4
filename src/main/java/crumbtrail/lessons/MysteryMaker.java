package crumbtrail.lessons;

import crumbtrail.advice.Knob;
import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.MysteryKind;
import crumbtrail.knowledge.MysteryKind.Level;
import crumbtrail.knowledge.SignKind;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.SeenSign;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Draws mystery loaves: the same seed and level give the same loaf. */
final class MysteryMaker {
  /** Signs that no table names oftener are not drawn (our choice). */
  private static final double SELDOM = 0.1;

  private static final int FEWEST_SIGNS = 3;
  private static final int MOST_SIGNS = 6;
  private static final int CHOICES_EASY = 4;
  private static final int CHOICES_MIDDLING = 8;

  private final Pipeline pipeline;

  MysteryMaker(Pipeline pipeline) {
    this.pipeline = pipeline;
  }

  /**
   * @param cause key of the cause that it is to have, at any level where the level has none; empty
   *     for any cause
   */
  MysteryLoaf draw(long seed, Level level, Optional<String> cause) {
    List<MysteryKind> all = pipeline.catalogue().knowledge().mysteries();
    List<MysteryKind> fitting =
        Stream.of(
                all.stream().filter(one -> one.level() == level && fits(one, cause)).toList(),
                all.stream().filter(one -> fits(one, cause)).toList(),
                all)
            .filter(list -> !list.isEmpty())
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no mystery loaves are listed"));
    SplittableRandom random = new SplittableRandom(seed);
    return of(fitting.get(random.nextInt(fitting.size())), seed, level, random);
  }

  private static boolean fits(MysteryKind kind, Optional<String> cause) {
    return cause.map(key -> key.equals(kind.cause())).orElse(true);
  }

  MysteryLoaf of(MysteryKind kind, long seed, Level level, SplittableRandom random) {
    BakeSheet bake =
        CaseShelf.sheet(kind.sheet())
            .orElseThrow(() -> new IllegalStateException("there is no bake " + kind.sheet()));
    try (Reasoning reasoning = pipeline.open()) {
      BakeSheet whole = kind.asItWas() ? bake : broken(reasoning, kind, bake, random);
      List<String> others =
          bake.knownCauses().stream().filter(key -> !key.equals(kind.cause())).toList();
      return told(reasoning, kind.cause(), others, untitled(whole), seed, level);
    }
  }

  private BakeSheet broken(
      Reasoning reasoning, MysteryKind kind, BakeSheet bake, SplittableRandom random) {
    BakeSheet sound = bake.unseen();
    BakeSheet broken = sound;
    if (kind.turn() != null) {
      Knob knob = pipeline.knobs().named(kind.turn()).orElseThrow();
      broken = knob.turned(sound, reasoning.work(sound), kind.to());
    }
    // What a contented baker said of the sound bake is no longer true.
    broken = remarking(broken, kind.remark() == null ? List.of() : List.of(kind.remark()));
    List<SeenSign> signs =
        drawn(kind.cause(), reasoning.work(broken), random).stream()
            .map(key -> new SeenSign(key, Optional.empty()))
            .toList();
    return new BakeSheet(
        "",
        broken.style(),
        broken.formula(),
        broken.preferments(),
        broken.process(),
        signs,
        List.of(),
        List.of());
  }

  // Each sign by its chance; where too few came up, the likeliest of the others.
  private List<String> drawn(String cause, Workup workup, SplittableRandom random) {
    Map<String, Double> shares = pipeline.predicted().shares(cause);
    List<String> keys =
        shares.entrySet().stream()
            .filter(entry -> entry.getValue() >= SELDOM && fits(entry.getKey(), workup))
            .sorted(
                Map.Entry.<String, Double>comparingByValue()
                    .reversed()
                    .thenComparing(Map.Entry.comparingByKey()))
            .map(Map.Entry::getKey)
            .toList();
    TreeSet<String> drawn = new TreeSet<>();
    for (String key : keys) {
      if (random.nextDouble() < shares.get(key) && drawn.size() < MOST_SIGNS) {
        drawn.add(key);
      }
    }
    keys.stream().filter(key -> drawn.size() < FEWEST_SIGNS).forEach(drawn::add);
    return List.copyOf(drawn);
  }

  private boolean fits(String sign, Workup workup) {
    return pipeline.catalogue().sign(sign).isPresent()
        && pipeline
            .catalogue()
            .question(sign)
            .map(kind -> kind.fits(workup.style().tags()))
            .orElse(true);
  }

  private MysteryLoaf told(
      Reasoning reasoning,
      String cause,
      List<String> others,
      BakeSheet whole,
      long seed,
      Level level) {
    List<SeenSign> complaint = complaint(reasoning, cause, whole, level);
    Map<String, List<SeenSign>> signs = new HashMap<>();
    for (SeenSign sign : whole.seen()) {
      if (!complaint.contains(sign)) {
        signs.computeIfAbsent(place(reasoning, sign.words()), place -> new ArrayList<>()).add(sign);
      }
    }
    Map<String, List<String>> absent =
        whole.notSeen().stream().collect(Collectors.groupingBy(one -> place(reasoning, one)));
    TreeSet<String> places = new TreeSet<>(signs.keySet());
    places.addAll(absent.keySet());
    List<Clue> clues = Clues.of(whole, places);
    return new MysteryLoaf(
        seed,
        level,
        cause,
        others,
        whole,
        complaint,
        signs,
        absent,
        clues,
        choices(reasoning, cause, others, whole, level));
  }

  // An easy loaf begins with what tells most, a hard one with what tells least.
  private List<SeenSign> complaint(
      Reasoning reasoning, String cause, BakeSheet whole, Level level) {
    List<SeenSign> telling =
        whole.seen().stream()
            .sorted(
                Comparator.comparingDouble((SeenSign sign) -> -share(reasoning, cause, whole, sign))
                    .thenComparing(SeenSign::words))
            .toList();
    int size = telling.size();
    return switch (level) {
      case EASY -> telling.subList(0, Math.min(2, size));
      case MIDDLING ->
          telling.subList(Math.min(size / 2, Math.max(0, size - 1)), Math.min(size, size / 2 + 1));
      case HARD -> telling.subList(Math.max(0, size - 1), size);
    };
  }

  private double share(Reasoning reasoning, String cause, BakeSheet whole, SeenSign sign) {
    return pipeline.suspects(reasoning, alone(whole.style(), List.of(sign))).share(cause);
  }

  // What is not understood is told by the way.
  private String place(Reasoning reasoning, String words) {
    return reasoning
        .work(alone("", List.of(new SeenSign(words, Optional.empty()))))
        .heard()
        .signs()
        .stream()
        .map(Heard.Sign::key)
        .flatMap(key -> pipeline.catalogue().sign(key).stream())
        .map(SignKind::place)
        .findFirst()
        .orElse(Clues.TALK);
  }

  // The true cause among those that the whole bake makes likeliest.
  private List<String> choices(
      Reasoning reasoning, String cause, List<String> others, BakeSheet whole, Level level) {
    int most =
        switch (level) {
          case EASY -> CHOICES_EASY;
          case MIDDLING -> CHOICES_MIDDLING;
          case HARD -> 0;
        };
    if (most == 0) {
      return List.of();
    }
    Stream<String> likely = pipeline.suspects(reasoning, whole).first(3 * most).stream();
    List<String> chosen =
        Stream.concat(Stream.of(cause), likely.filter(key -> !others.contains(key)))
            .distinct()
            .limit(most)
            .toList();
    return chosen.stream().sorted(Comparator.comparing(pipeline::causeName)).toList();
  }

  private static BakeSheet alone(String style, List<SeenSign> seen) {
    BakeSheet empty = SheetReader.read("{\"seen\":[\"x\"]}").sheet().orElseThrow();
    return new BakeSheet(
        "", style, List.of(), List.of(), empty.process(), seen, List.of(), List.of());
  }

  private static BakeSheet untitled(BakeSheet bake) {
    return new BakeSheet(
        "",
        bake.style(),
        bake.formula(),
        bake.preferments(),
        bake.process(),
        bake.seen(),
        bake.notSeen(),
        List.of());
  }

  private static BakeSheet remarking(BakeSheet bake, List<String> remarks) {
    return bake.with(bake.process().withRemarks(remarks));
  }
}
