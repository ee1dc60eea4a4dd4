package crumbtrail.bakelog.store;

import crumbtrail.bakelog.LogWords;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Place;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Sought;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/**
 * Looks bakes up, the latest first. The search starts from one table, the leading one, whose index
 * yields the bakes that can match in the order of the list, so that a page is done when it is full:
 * the rarest word, or the cause, or the bakes themselves. Everything else is looked at bake by
 * bake.
 */
final class ListQuery {
  /** A word that more bakes have than this is as good as any other such word. */
  private static final int OFTEN = 20_000;

  private final Handle handle;
  private final Scope scope;
  private final Sought sought;
  private final List<String> conditions = new ArrayList<>();
  private final Map<String, @Nullable Object> values = new LinkedHashMap<>();

  ListQuery(Handle handle, Scope scope, Sought sought) {
    this.handle = handle;
    this.scope = scope;
    this.sought = sought;
  }

  /** What is done to the name of a recipe before it is compared. */
  static String recipeKey(String recipe) {
    return recipe.strip().toLowerCase(Locale.ROOT);
  }

  /**
   * The query.
   *
   * @param columns of the bake {@code b} and its paper {@code p}
   * @param paper whether there are columns of {@code p} among them
   */
  Query of(String columns, boolean paper, int most, @Nullable Place after) {
    List<String> words = new ArrayList<>(LogWords.of(sought.words() == null ? "" : sought.words()));
    String tables = "bake b";
    String time = "b.baked";
    String number = "b.id";
    // With everything in view there is no owner or class with which an index begins.
    boolean within = !scope.equals(Scope.EVERYTHING);
    if (within && !words.isEmpty()) {
      String rarest = words.stream().min(Comparator.comparingInt(this::bakesWith)).orElseThrow();
      words.remove(rarest);
      where("l.word = :lead", "lead", rarest);
      tables = "bake_word l join bake b on b.id = l.bake_id";
    } else if (within && sought.cause() != null) {
      where("l.cause = :lead", "lead", sought.cause());
      conditions.add("l.standing <> 'RULED_OUT'");
      tables = "bake_cause l join bake b on b.id = l.bake_id";
    }
    boolean led = !tables.equals("bake b");
    if (led) {
      owned("l");
    } else if (scope.owner() != null && sought.equals(Sought.judged(sought.since()))) {
      // Whose they are was asked within; asked again, it misleads the planner.
      tables = judged(most) + " l join bake b on b.id = l.bake_id";
      led = true;
    } else {
      owned("b");
    }
    if (led) {
      time = "l.baked";
      number = "l.bake_id";
    }
    filter(words, tables, time);
    if (after != null) {
      where(time + " <= :after", "after", after.baked());
      conditions.add("(" + time + " < :after or " + number + " < :afterId)");
      values.put("afterId", after.id());
    }
    String sql =
        "select "
            + columns
            + " from "
            + tables
            + (paper ? " join bake_paper p on p.bake_id = b.id" : "")
            + (conditions.isEmpty() ? "" : " where " + String.join(" and ", conditions))
            + " order by "
            + time
            + " desc, "
            + number
            + " desc limit "
            + most;
    Query query = handle.createQuery(sql);
    values.forEach((name, value) -> query.bind(name, Rows.exactly(value)));
    return query;
  }

  // The latest of which a cause was confirmed, straight off the index; of one, more may have been.
  private String judged(int most) {
    values.put("owner", scope.owner());
    if (scope.schoolClass() != null) {
      values.put("class", scope.schoolClass());
    }
    return "(select distinct c.baked, c.bake_id from bake_cause c"
        + " where c.owner_id = :owner and c.standing = 'CONFIRMED'"
        + (scope.schoolClass() == null ? "" : " and c.class_id = :class")
        + (sought.since() == null ? "" : " and c.baked >= :since")
        + " order by c.baked desc, c.bake_id desc limit "
        + most
        + ")";
  }

  private void owned(String table) {
    if (scope.owner() != null) {
      where(table + ".owner_id = :owner", "owner", scope.owner());
    }
    if (scope.schoolClass() != null) {
      where(table + ".class_id = :class", "class", scope.schoolClass());
    }
  }

  private void filter(List<String> words, String tables, String time) {
    for (int i = 0; i < words.size(); i++) {
      where(
          "exists (select 1 from bake_word w where w.bake_id = b.id and w.word = :word" + i + ")",
          "word" + i,
          words.get(i));
    }
    if (sought.cause() != null && !tables.startsWith("bake_cause")) {
      where(
          "exists (select 1 from bake_cause c where c.bake_id = b.id and c.cause = :cause"
              + " and c.standing <> 'RULED_OUT')",
          "cause",
          sought.cause());
    }
    if (sought.recipe() != null) {
      where("b.recipe_key = :recipe", "recipe", recipeKey(sought.recipe()));
    }
    Outcome outcome = sought.outcome();
    if (outcome != null) {
      where("b.outcome = :outcome", "outcome", outcome.name());
    }
    if (sought.judged() && !tables.startsWith("(")) {
      conditions.add(
          "exists (select 1 from bake_cause j where j.bake_id = b.id"
              + " and j.standing = 'CONFIRMED')");
    }
    LocalDateTime since = sought.since();
    if (since != null) {
      where(time + " >= :since", "since", since);
    }
    LocalDateTime until = sought.until();
    if (until != null) {
      where(time + " < :until", "until", until);
    }
  }

  private void where(String condition, String name, @Nullable Object value) {
    conditions.add(condition);
    values.put(name, value);
  }

  private int bakesWith(String word) {
    Query query =
        handle.createQuery(
            "select count(*) from (select 1 from bake_word where word = :word"
                + (scope.owner() == null ? "" : " and owner_id = :owner")
                + (scope.schoolClass() == null ? "" : " and class_id = :class")
                + " limit "
                + OFTEN
                + ") few");
    query.bind("word", word);
    if (scope.owner() != null) {
      query.bind("owner", scope.owner());
    }
    if (scope.schoolClass() != null) {
      query.bind("class", scope.schoolClass());
    }
    return query.mapTo(Integer.class).one();
  }
}
