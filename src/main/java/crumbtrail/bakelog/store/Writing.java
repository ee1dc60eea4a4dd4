package crumbtrail.bakelog.store;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.Digest;
import crumbtrail.bakelog.Digests;
import crumbtrail.bakelog.LogWords;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.Traced;
import crumbtrail.bakelog.Verdict;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.Update;
import org.jspecify.annotations.Nullable;

/** Makes rows of records. */
final class Writing {
  private static final String COLUMNS =
      "uid, owner_id, class_id, baked, noted, label, recipe, recipe_key, note, outcome, first_cause";
  private static final String VALUES =
      ":uid, :owner, :class, :baked, :noted, :label, :recipe, :recipeKey, :note, :outcome, :first";

  private Writing() {}

  /**
   * Inserts a bake with all that hangs from it, its photos excepted.
   *
   * @param keepId whether it has a number that it is to keep
   * @return its number
   */
  static long insert(Handle handle, Bake bake, boolean keepId) {
    Digest digest = digest(bake.traced());
    Update update =
        handle.createUpdate(
            keepId
                ? "insert into bake (id, " + COLUMNS + ") values (:id, " + VALUES + ")"
                : "insert into bake (" + COLUMNS + ") values (" + VALUES + ")");
    if (keepId) {
      update.bind("id", bake.id());
    }
    long id =
        bound(update, bake, digest).executeAndReturnGeneratedKeys("id").mapTo(Long.class).one();
    paper(
        handle.createUpdate(
            "insert into bake_paper (bake_id, sheet, rule_base, report, digest)"
                + " values (:id, :sheet, :ruleBase, :report, :digest)"),
        bake,
        digest,
        id);
    found(handle, bake, digest, id);
    return id;
  }

  /** Writes a bake over the one of the same number; its sheet stays as it was. */
  static void update(Handle handle, Bake before, Bake bake) {
    Digest digest = digest(bake.traced());
    bound(
            handle.createUpdate(
                "update bake set uid = :uid, owner_id = :owner, class_id = :class, baked = :baked,"
                    + " noted = :noted, label = :label, recipe = :recipe, recipe_key = :recipeKey,"
                    + " note = :note, outcome = :outcome, first_cause = :first where id = :id"),
            bake,
            digest)
        .bind("id", bake.id())
        .execute();
    if (bake.traced() == null || !bake.traced().equals(before.traced())) {
      paper(
          handle.createUpdate(
              "update bake_paper set sheet = :sheet, rule_base = :ruleBase, report = :report,"
                  + " digest = :digest where bake_id = :id"),
          bake,
          digest,
          bake.id());
    }
    handle.execute("delete from bake_word where bake_id = ?", bake.id());
    handle.execute("delete from bake_cause where bake_id = ?", bake.id());
    found(handle, bake, digest, bake.id());
  }

  static long photo(Handle handle, long bake, Photo photo) {
    return handle
        .createUpdate(
            "insert into photo (uid, bake_id, kind, width, height, bytes, picture)"
                + " values (:uid, :bake, :kind, :width, :height, :bytes, :picture)")
        .bind("uid", Rows.exactly(photo.note().uid()))
        .bind("bake", bake)
        .bind("kind", photo.note().kind())
        .bind("width", photo.note().width())
        .bind("height", photo.note().height())
        .bind("bytes", photo.note().bytes())
        .bind("picture", photo.picture())
        .executeAndReturnGeneratedKeys("id")
        .mapTo(Long.class)
        .one();
  }

  private static Digest digest(@Nullable Traced traced) {
    return traced == null ? Digest.NONE : Digests.ofReport(traced.report());
  }

  private static Update bound(Update update, Bake bake, Digest digest) {
    return update
        .bind("uid", Rows.exactly(bake.uid()))
        .bind("owner", bake.owner())
        .bind("class", bake.schoolClass())
        .bind("baked", Rows.exactly(bake.baked()))
        .bind("noted", Rows.exactly(bake.noted().atOffset(ZoneOffset.UTC)))
        .bind("label", bake.label())
        .bind("recipe", bake.recipe())
        .bind("recipeKey", ListQuery.recipeKey(bake.recipe()))
        .bind("note", bake.note())
        .bind("outcome", bake.outcome() == null ? null : bake.outcome().name())
        .bind("first", digest.firstCause().orElse(null));
  }

  private static void paper(Update update, Bake bake, Digest digest, long id) {
    Traced traced = bake.traced();
    update
        .bind("id", id)
        .bind("sheet", bake.sheet())
        .bind("ruleBase", traced == null ? null : traced.ruleBase())
        .bind("report", traced == null ? null : Packed.of(traced.report()))
        .bind("digest", traced == null ? null : Digests.write(digest))
        .execute();
  }

  // By what the bake is found.
  private static void found(Handle handle, Bake bake, Digest digest, long id) {
    Set<String> words = LogWords.of(bake.label(), bake.recipe(), bake.note());
    if (!words.isEmpty()) {
      PreparedBatch batch =
          handle.prepareBatch(
              "insert into bake_word (bake_id, word, owner_id, class_id, baked)"
                  + " values (:id, :what, :owner, :class, :baked)");
      words.forEach(word -> keyed(batch, bake, id).bind("what", word).add());
      batch.execute();
    }
    Map<String, String> causes = new TreeMap<>();
    digest.firstCause().ifPresent(first -> causes.put(first, "FIRST"));
    bake.verdicts().forEach((cause, verdict) -> causes.put(cause, standing(verdict)));
    if (!causes.isEmpty()) {
      PreparedBatch batch =
          handle.prepareBatch(
              "insert into bake_cause (bake_id, cause, standing, owner_id, class_id, baked)"
                  + " values (:id, :what, :standing, :owner, :class, :baked)");
      causes.forEach(
          (cause, standing) ->
              keyed(batch, bake, id).bind("what", cause).bind("standing", standing).add());
      batch.execute();
    }
  }

  private static PreparedBatch keyed(PreparedBatch batch, Bake bake, long id) {
    SqlStatement<PreparedBatch> statement = batch;
    return statement
        .bind("id", id)
        .bind("owner", bake.owner())
        .bind("class", bake.schoolClass())
        .bind("baked", Rows.exactly(bake.baked()));
  }

  private static String standing(Verdict verdict) {
    return verdict.name();
  }
}
