package crumbtrail.study;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.Digested;
import crumbtrail.bakelog.Sought;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.trends.Foretold;
import crumbtrail.trends.KitchenOdds;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What was learnt of one kitchen from its log. Written to JSON as it stands.
 *
 * @param judged bakes from which it was learnt: a cause was confirmed, and a ranking is known
 * @param from only bakes of then and later count, null for all
 * @param causes what was learnt of each, the one most raised first
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Kitchen(int judged, @Nullable String from, List<OfCause> causes) {
  /** Older bakes than so many judged ones count no more: ovens and hands change. Our choice. */
  private static final int LATEST = 500;

  public Kitchen {
    causes = List.copyOf(causes);
  }

  /**
   * What was learnt of a cause.
   *
   * @param cause key
   * @param name plain words
   * @param foretold in so many of the judged bakes the rankings expected it
   * @param confirmed in so many it was
   * @param before its share of bakes as foretold, 0 to 1
   * @param share its share as learnt, 0 to 1
   * @param decibans by how much its log-odds move in this kitchen
   */
  public record OfCause(
      String cause,
      String name,
      double foretold,
      long confirmed,
      double before,
      double share,
      double decibans) {}

  /**
   * What a log teaches. What its bakes were foretold to be stands in their traces, which are always
   * made by the odds of all kitchens, so that nothing is learnt from what was learnt.
   *
   * @param baker whose kitchen it is: what he had forgotten does not count
   */
  public static Kitchen of(BakeLog log, long baker, Catalogue catalogue) {
    LocalDateTime from = log.learnsFrom().get(baker);
    List<Foretold.Bake> bakes = judged(log, from, LATEST);
    List<OfCause> causes =
        KitchenOdds.of(bakes).entrySet().stream()
            .map(one -> learnt(one.getKey(), one.getValue(), catalogue))
            .sorted(
                Comparator.comparingDouble((OfCause one) -> -one.decibans())
                    .thenComparing(OfCause::cause))
            .toList();
    return new Kitchen(bakes.size(), from == null ? null : from.toString(), causes);
  }

  private static OfCause learnt(String cause, KitchenOdds.Learnt learnt, Catalogue catalogue) {
    return new OfCause(
        cause,
        catalogue.cause(cause).map(Cause::name).orElse(cause),
        learnt.foretold(),
        learnt.confirmed(),
        learnt.before(),
        learnt.share(),
        learnt.decibans());
  }

  /** The latest judged bakes with what was foretold of them. */
  static List<Foretold.Bake> judged(BakeLog log, @Nullable LocalDateTime from, int most) {
    return log.digests(Sought.judged(from), most).stream()
        .filter(bake -> !bake.digest().ranking().isEmpty())
        .map(Kitchen::foretold)
        .toList();
  }

  private static Foretold.Bake foretold(Digested bake) {
    return new Foretold.Bake(bake.digest().ranking(), Set.copyOf(bake.line().confirmed()));
  }

  /** By how much the log-odds of causes move, decibans by key. */
  public Map<String, Double> odds() {
    Map<String, Double> odds = new LinkedHashMap<>();
    causes.forEach(one -> odds.put(one.cause(), one.decibans()));
    return odds;
  }
}
