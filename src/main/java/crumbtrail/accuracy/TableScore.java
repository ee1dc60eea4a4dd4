package crumbtrail.accuracy;

import crumbtrail.accuracy.Table.Pair;
import crumbtrail.findings.Finding;
import crumbtrail.findings.Ranking;
import crumbtrail.findings.Weights;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** How the ranking fares when it is asked what published tables answer. */
final class TableScore {
  /** A sign has this many first causes, or as many as are published for it. */
  private static final int FIRST_CAUSES = 8;

  private static final int FEWEST_SIGNS = 4;

  private final Judge judge;
  private final List<Table> tables;
  private final Map<Pair, Set<String>> naming = new TreeMap<>();
  private final Map<Set<String>, Judged> asked = new HashMap<>();

  TableScore(Judge judge, List<Table> tables) {
    this.judge = judge;
    this.tables = tables;
    for (Table table : tables) {
      for (Pair pair : table.pairs()) {
        naming.computeIfAbsent(pair, key -> new TreeSet<>()).add(table.lineage());
      }
    }
  }

  /**
   * A question put to the ranking.
   *
   * @param signs what is seen
   * @param cause what should come out
   * @param place where it came, 0 if nowhere
   * @param limit how far down still counts
   * @param odds share of the odds of all causes that it holds, 0 to 1
   */
  record Question(Set<String> signs, String cause, int place, int limit, double odds) {
    boolean within(int places) {
      return place > 0 && place <= places;
    }

    boolean hit() {
      return within(limit);
    }
  }

  /** Every pair that enough lineages name: is the cause among the first, given the sign alone? */
  List<Question> signs(Weights weights, int lineages) {
    Ranking ranking = new Ranking(judge.catalogue(), weights);
    List<Question> questions = new ArrayList<>();
    naming.forEach(
        (pair, names) -> {
          if (names.size() >= lineages) {
            int limit = Math.max(FIRST_CAUSES, causes(pair.sign(), null).size());
            questions.add(
                question(
                    ask(Set.of(pair.sign())), ranking, Set.of(pair.sign()), pair.cause(), limit));
          }
        });
    return questions;
  }

  /** Every cause with four or more published signs: does it come out, given all of them? */
  List<Question> causes(Weights weights) {
    Ranking ranking = new Ranking(judge.catalogue(), weights);
    List<Question> questions = new ArrayList<>();
    byCause(naming.keySet())
        .forEach(
            (cause, signs) -> {
              if (signs.size() >= FEWEST_SIGNS) {
                questions.add(question(ask(signs), ranking, signs, cause, 1));
              }
            });
    return questions;
  }

  /**
   * Each lineage's pairs, asked of weights that never saw it.
   *
   * @param others how many other lineages must name the pair too
   */
  List<Question> signsUnseen(Weights weights, int others) {
    List<Question> questions = new ArrayList<>();
    for (Table table : tables) {
      Ranking ranking = new Ranking(judge.catalogue(), weights.without(table.lineage()));
      Unseen unseen = unseen(table, weights);
      for (Pair pair : table.pairs()) {
        if (naming.get(pair).size() > others) {
          int limit = Math.max(FIRST_CAUSES, causes(pair.sign(), table.lineage()).size());
          Set<String> signs = Set.of(pair.sign());
          questions.add(question(ask(signs).without(unseen), ranking, signs, pair.cause(), limit));
        }
      }
    }
    return questions;
  }

  /** Each lineage's causes with two or more signs, asked of weights that never saw it. */
  List<Question> causesUnseen(Weights weights) {
    List<Question> questions = new ArrayList<>();
    for (Table table : tables) {
      Ranking ranking = new Ranking(judge.catalogue(), weights.without(table.lineage()));
      Unseen unseen = unseen(table, weights);
      byCause(table.pairs())
          .forEach(
              (cause, signs) -> {
                if (signs.size() >= 2) {
                  questions.add(
                      question(ask(signs).without(unseen), ranking, signs, cause, FIRST_CAUSES));
                }
              });
    }
    return questions;
  }

  private Unseen unseen(Table table, Weights weights) {
    return new Unseen(table.lineage(), weights, judge.catalogue().knowledge().sources());
  }

  private Set<String> causes(String sign, String left) {
    return naming.entrySet().stream()
        .filter(entry -> entry.getKey().sign().equals(sign))
        .filter(entry -> entry.getValue().stream().anyMatch(name -> !name.equals(left)))
        .map(entry -> entry.getKey().cause())
        .collect(Collectors.toSet());
  }

  private static Map<String, Set<String>> byCause(Collection<Pair> pairs) {
    Map<String, Set<String>> signs = new TreeMap<>();
    pairs.forEach(
        pair -> signs.computeIfAbsent(pair.cause(), key -> new TreeSet<>()).add(pair.sign()));
    return signs;
  }

  private Judged ask(Set<String> signs) {
    return asked.computeIfAbsent(Set.copyOf(signs), key -> judge.judge(sheet(signs)));
  }

  private static BakeSheet sheet(Collection<String> signs) {
    String seen =
        signs.stream().map(sign -> '"' + sign + '"').collect(Collectors.joining(", ", "[", "]"));
    return SheetReader.read("{\"seen\": " + seen + "}").sheet().orElseThrow();
  }

  private static Question question(
      Judged judged, Ranking ranking, Set<String> signs, String cause, int limit) {
    List<Finding> ranked = judged.ranked(ranking).ranked();
    double all = ranked.stream().mapToDouble(finding -> odds(finding)).sum();
    double own =
        ranked.stream()
            .filter(finding -> finding.cause().key().equals(cause))
            .mapToDouble(TableScore::odds)
            .sum();
    return new Question(
        signs, cause, Judged.place(ranked, List.of(cause)), limit, all == 0 ? 0 : own / all);
  }

  static double odds(Finding finding) {
    return Math.pow(10, Math.min(finding.decibans(), 60) / 10);
  }
}
