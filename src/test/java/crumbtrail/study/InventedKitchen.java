package crumbtrail.study;

import crumbtrail.findings.Finding;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Weights;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Published;
import crumbtrail.rules.Evidence;
import crumbtrail.rules.Facts;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleRun;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.trends.Foretold;
import crumbtrail.trends.Named;
import crumbtrail.workup.Heard;
import crumbtrail.workup.SheetWorkup;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Kitchens that nobody has: each bake has one cause, drawn by the odds of all kitchens or with one
 * cause more frequent, and shows one to three of its signs, drawn by how many published tables name
 * them. Nothing else is known of a bake, so that the ranking is often in doubt.
 */
final class InventedKitchen {
  private static final int LOAVES = 25;
  private static final int TABLES = 4;
  private static final int NAMED = 8;
  private static final double COMMON = 0.04;

  private final Catalogue catalogue;
  private final Weights weights;
  private final Map<String, Double> shares = new TreeMap<>();
  private final Map<String, List<Loaf>> loaves = new TreeMap<>();

  record Loaf(String cause, List<Evidence> evidence, Set<String> seen, List<String> tags) {}

  InventedKitchen(RuleBase rules, long seed) {
    this.catalogue = rules.catalogue();
    this.weights = Weights.of(catalogue);
    Map<String, Map<String, Integer>> signs = new TreeMap<>();
    Map<String, Set<String>> tables = new HashMap<>();
    for (Published pair : catalogue.knowledge().published()) {
      signs
          .computeIfAbsent(pair.cause(), key -> new TreeMap<>())
          .merge(pair.sign(), 1, Integer::sum);
      tables.computeIfAbsent(pair.cause(), key -> new TreeSet<>()).add(pair.source());
    }
    Random random = new Random(seed);
    SheetWorkup workups = new SheetWorkup(catalogue, rules.pantry());
    try (RuleRun run = rules.open()) {
      for (Cause cause : catalogue.knowledge().causes()) {
        String key = cause.key();
        if (tables.getOrDefault(key, Set.of()).size() >= TABLES) {
          shares.put(key, 1 / (1 + Math.pow(10, -weights.prior(cause, List.of()) / 10)));
          List<Loaf> some = new ArrayList<>();
          for (int one = 0; one < LOAVES; one++) {
            some.add(loaf(key, drawn(signs.get(key), random), workups, run));
          }
          loaves.put(key, some);
        }
      }
    }
  }

  private static Set<String> drawn(Map<String, Integer> signs, Random random) {
    int wanted = Math.min(signs.size(), 1 + random.nextInt(3));
    int all = signs.values().stream().mapToInt(Integer::intValue).sum();
    Set<String> drawn = new TreeSet<>();
    while (drawn.size() < wanted) {
      int at = random.nextInt(all);
      for (Map.Entry<String, Integer> sign : signs.entrySet()) {
        at -= sign.getValue();
        if (at < 0) {
          drawn.add(sign.getKey());
          break;
        }
      }
    }
    return drawn;
  }

  private static Loaf loaf(String cause, Set<String> signs, SheetWorkup workups, RuleRun run) {
    String seen = signs.stream().map(sign -> '"' + sign + '"').collect(Collectors.joining(","));
    BakeSheet sheet = SheetReader.read("{\"seen\":[" + seen + "]}").sheet().orElseThrow();
    Workup workup = workups.work(sheet);
    List<Evidence> evidence =
        run.evidence(Facts.of(workup)).values().stream().flatMap(List::stream).toList();
    Set<String> heard =
        workup.heard().signs().stream()
            .filter(Heard.Sign::seen)
            .map(Heard.Sign::key)
            .collect(Collectors.toSet());
    return new Loaf(cause, evidence, heard, List.copyOf(workup.style().tags()));
  }

  /** Causes that spoil one bake in twenty-five or more. */
  List<String> common() {
    return shares.entrySet().stream()
        .filter(share -> share.getValue() > COMMON)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** So many bakes of a kitchen in which one cause is so many times as frequent as elsewhere. */
  List<Loaf> bakes(int many, String frequent, double times, Random random) {
    List<Loaf> bakes = new ArrayList<>();
    double all = 0;
    for (String cause : shares.keySet()) {
      all += share(cause, frequent, times);
    }
    while (bakes.size() < many) {
      double at = random.nextDouble() * all;
      for (String cause : shares.keySet()) {
        at -= share(cause, frequent, times);
        if (at < 0) {
          bakes.add(loaves.get(cause).get(random.nextInt(LOAVES)));
          break;
        }
      }
    }
    return bakes;
  }

  private double share(String cause, String frequent, double times) {
    return shares.get(cause) * (cause.equals(frequent) ? times : 1);
  }

  /** What the ranking says of some bakes, by the odds of a kitchen, and what they had. */
  List<Foretold.Bake> judged(List<Loaf> bakes, Map<String, Double> kitchen) {
    Ranking ranking = new Ranking(catalogue, weights.in(kitchen));
    return bakes.stream()
        .map(
            loaf ->
                new Foretold.Bake(
                    ranking.rank(loaf.evidence(), loaf.seen(), loaf.tags()).ranked().stream()
                        .limit(NAMED)
                        .map(InventedKitchen::named)
                        .toList(),
                    Set.of(loaf.cause())))
        .toList();
  }

  private static Named named(Finding finding) {
    return new Named(finding.cause().key(), finding.probability());
  }
}
