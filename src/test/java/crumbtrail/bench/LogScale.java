package crumbtrail.bench;

import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Place;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Sought;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.rules.RuleBook;
import crumbtrail.study.Kitchen;
import crumbtrail.study.OwnRecord;
import crumbtrail.study.Trends;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * How fast a log of a million bakes answers on PostgreSQL. One baker has half of them, which is far
 * more than anybody bakes; the others lie with 2,000 bakers in 100 classes. Arguments: how many
 * bakes, how many of the latest have a report, and the address of an empty database; a server of
 * the tests is started where there is none. Prints a table for {@code docs/operations.md}.
 */
public final class LogScale {
  private static final int ROUNDS = 400;
  private static final int PAGE = 50;
  private static final Catalogue CATALOGUE = RuleBook.bundled().catalogue();

  private final LogStore store;
  private final int bakes;
  private final int reports;
  private final Random random = new Random(4);

  private LogScale(LogStore store, int bakes, int reports) {
    this.store = store;
    this.bakes = bakes;
    this.reports = reports;
  }

  /** Loads and measures; prints a table. */
  public static void main(String[] arguments) throws Exception {
    int bakes = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
    int reports = arguments.length > 1 ? Integer.parseInt(arguments[1]) : bakes / 10;
    try (EmbeddedPostgres server = arguments.length > 2 ? null : EmbeddedPostgres.start()) {
      run(
          server == null ? arguments[2] : server.getJdbcUrl("postgres", "postgres"),
          bakes,
          reports);
    }
  }

  private static void run(String url, int bakes, int reports) throws Exception {
    LogPlace place = LogPlace.of(url, Map.of());
    try (LogStore store = SqlLogStore.open(place)) {
      if (store.of(Scope.EVERYTHING).list(Sought.ALL, 1, null).lines().isEmpty()) {
        long start = System.nanoTime();
        ManyBakes.load(url, bakes, reports);
        System.out.printf(
            Locale.ROOT,
            "loaded %,d bakes in %d s%n",
            bakes,
            (System.nanoTime() - start) / 1_000_000_000);
      }
      new LogScale(store, bakes, reports).measure();
    }
  }

  private void measure() {
    BakeLog large = store.of(Scope.baker(1));
    System.out.printf(
        Locale.ROOT,
        "Milliseconds of %d calls each, one after the other, on %d processors:%n%n",
        ROUNDS,
        Runtime.getRuntime().availableProcessors());
    System.out.println("| | median | 95 % below | largest |");
    System.out.println("|---|---|---|---|");
    time("list, first 50: one baker's 500,000", () -> large.list(Sought.ALL, PAGE, null));
    time("list, one of 2,000 bakers", () -> small().list(Sought.ALL, PAGE, null));
    time("list, a class", () -> oneClass().list(Sought.ALL, PAGE, null));
    time("list, everything", () -> store.of(Scope.EVERYTHING).list(Sought.ALL, PAGE, null));
    time("list, a page somewhere in the 500,000", () -> large.list(Sought.ALL, PAGE, somewhere()));
    time("search, one word of 500,000", () -> large.list(Sought.words(word()), PAGE, null));
    time(
        "search, two words of 500,000",
        () -> large.list(Sought.words(word() + " " + word()), PAGE, null));
    time(
        "search, two words of one of 2,000",
        () -> small().list(Sought.words(word() + " " + word()), PAGE, null));
    time("search, one word of a class", () -> oneClass().list(Sought.words(word()), PAGE, null));
    time("by recipe, of 500,000", () -> large.list(Sought.recipe(recipe()), PAGE, null));
    time("by cause, of 500,000", () -> large.list(Sought.cause(cause()), PAGE, null));
    time(
        "by word, cause and year, of 500,000",
        () ->
            large.list(
                new Sought(
                    word(), null, cause(), somewhere().baked().minusYears(1), somewhere().baked()),
                PAGE,
                null));
    time("two bakes with their reports, to compare", this::compare);
    time(
        "numbers of the last 200 bakes of a recipe",
        () -> large.digests(Sought.recipe(recipe()), 200));
    time("the last good bake of a recipe before one", () -> since(Outcome.GOOD));
    time("the same where none ever was", () -> since(Outcome.FAIR));
    time(
        "trends of a recipe, 200 of 500,000 bakes",
        () -> Trends.of(large, recipe(), 200, CATALOGUE));
    time("trends, 200 of a class", () -> Trends.of(oneClass(), null, 200, CATALOGUE));
    time("trends of a recipe, of a class", () -> Trends.of(oneClass(), recipe(), 200, CATALOGUE));
    time("what was learnt, one of 2,000", this::learnt);
    time("what was learnt, 500 of 500,000 bakes", () -> Kitchen.of(large, 1, CATALOGUE));
    time("how well foretold, one of 2,000", () -> OwnRecord.of(small(), 500));
    time("how well foretold, 500 of 500,000", () -> OwnRecord.of(large, 500));
    time("confirmed causes, one of 2,000", () -> small().confirmed());
    time("confirmed causes, a class", () -> oneClass().confirmed());
    time("confirmed causes, of 500,000", large::confirmed);
  }

  private Object since(Outcome outcome) {
    return store.of(Scope.baker(1)).list(Sought.recipe(recipe(), outcome), 1, somewhere());
  }

  private Object learnt() {
    long baker = 2L + random.nextInt(ManyBakes.BAKERS);
    return Kitchen.of(store.of(Scope.baker(baker)), baker, CATALOGUE);
  }

  private Object compare() {
    BakeLog all = store.of(Scope.EVERYTHING);
    return List.of(
        all.find(bakes - random.nextInt(reports)).orElseThrow(),
        all.find(bakes - random.nextInt(reports)).orElseThrow());
  }

  private BakeLog small() {
    return store.of(Scope.baker(2 + random.nextInt(ManyBakes.BAKERS)));
  }

  private BakeLog oneClass() {
    return store.of(Scope.schoolClass(1 + random.nextInt(ManyBakes.CLASSES)));
  }

  private Place somewhere() {
    LocalDateTime baked = ManyBakes.LATEST.minusMinutes(random.nextInt(3_600_000));
    return new Place(baked, 0);
  }

  private String word() {
    return ManyBakes.word(random);
  }

  private String recipe() {
    return ManyBakes.recipe(random);
  }

  private String cause() {
    return ManyBakes.cause(random);
  }

  private interface Asked {
    @Nullable Object answer();
  }

  private static void time(String what, Asked asked) {
    List<Long> times = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      long start = System.nanoTime();
      asked.answer();
      times.add(System.nanoTime() - start);
    }
    times.sort(null);
    System.out.printf(
        Locale.ROOT,
        "| %s | %.1f | %.1f | %.1f |%n",
        what,
        times.get(ROUNDS / 2) / 1e6,
        times.get(ROUNDS * 95 / 100) / 1e6,
        times.get(ROUNDS - 1) / 1e6);
  }
}
