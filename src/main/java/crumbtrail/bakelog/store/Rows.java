package crumbtrail.bakelog.store;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.Outcome;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Traced;
import crumbtrail.bakelog.Verdict;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.argument.Argument;
import org.jspecify.annotations.Nullable;

/** Makes records of rows. */
final class Rows {
  static final String LINE =
      "b.id, b.owner_id, b.baked, b.label, b.recipe, b.outcome, b.first_cause";
  static final String BAKE =
      "b.id, b.uid, b.owner_id, b.class_id, b.baked, b.noted, b.label, b.recipe, b.note, b.outcome,"
          + " p.sheet, p.rule_base, p.report";
  static final String PHOTO = "id, uid, bake_id, kind, width, height, bytes";

  private Rows() {}

  /** A value as it is, where the library would send it through a type that knows of time zones. */
  static Argument exactly(@Nullable Object value) {
    return (position, statement, context) -> statement.setObject(position, value);
  }

  static BakeLine line(ResultSet row) throws SQLException {
    return new BakeLine(
        row.getLong("id"),
        row.getLong("owner_id"),
        row.getObject("baked", LocalDateTime.class),
        row.getString("label"),
        row.getString("recipe"),
        outcome(row),
        row.getString("first_cause"),
        List.of(),
        0);
  }

  static Bake bake(ResultSet row) throws SQLException {
    long schoolClass = row.getLong("class_id");
    Long inClass = row.wasNull() ? null : schoolClass;
    byte[] report = row.getBytes("report");
    return new Bake(
        row.getLong("id"),
        row.getObject("uid", UUID.class),
        row.getLong("owner_id"),
        inClass,
        row.getObject("baked", LocalDateTime.class),
        row.getObject("noted", OffsetDateTime.class).toInstant(),
        row.getString("label"),
        row.getString("recipe"),
        row.getString("note"),
        outcome(row),
        Map.of(),
        row.getString("sheet"),
        report == null
            ? null
            : new Traced(Packed.text(report), Objects.requireNonNull(row.getString("rule_base"))),
        List.of());
  }

  static PhotoNote photoNote(ResultSet row) throws SQLException {
    return new PhotoNote(
        row.getLong("id"),
        row.getObject("uid", UUID.class),
        row.getString("kind"),
        row.getInt("width"),
        row.getInt("height"),
        row.getInt("bytes"));
  }

  static Photo photo(ResultSet row) throws SQLException {
    return new Photo(photoNote(row), row.getBytes("picture"));
  }

  private static @Nullable Outcome outcome(ResultSet row) throws SQLException {
    String word = row.getString("outcome");
    return word == null ? null : Outcome.valueOf(word);
  }

  /** Gives bakes their verdicts and photos, all at once. */
  static List<Bake> completed(Handle handle, List<Bake> bakes) {
    if (bakes.isEmpty()) {
      return bakes;
    }
    List<Long> ids = bakes.stream().map(Bake::id).toList();
    Map<Long, Map<String, Verdict>> verdicts = new HashMap<>();
    handle
        .createQuery(
            "select bake_id, cause, standing from bake_cause"
                + " where bake_id in (<ids>) and standing <> 'FIRST'")
        .bindList("ids", ids)
        .map(
            (row, context) ->
                verdicts
                    .computeIfAbsent(row.getLong(1), id -> new HashMap<>())
                    .put(row.getString(2), Verdict.valueOf(row.getString(3))))
        .list();
    Map<Long, List<PhotoNote>> photos = new HashMap<>();
    handle
        .createQuery("select " + PHOTO + " from photo where bake_id in (<ids>) order by id")
        .bindList("ids", ids)
        .map(
            (row, context) ->
                photos
                    .computeIfAbsent(row.getLong("bake_id"), id -> new ArrayList<>())
                    .add(photoNote(row)))
        .list();
    return bakes.stream()
        .map(
            bake ->
                bake.withVerdicts(verdicts.getOrDefault(bake.id(), Map.of()))
                    .withPhotos(photos.getOrDefault(bake.id(), List.of())))
        .toList();
  }

  /** Gives lines their confirmed causes and the count of their photos, all at once. */
  static List<BakeLine> completedLines(Handle handle, List<BakeLine> lines) {
    if (lines.isEmpty()) {
      return lines;
    }
    Collection<Long> ids = lines.stream().map(BakeLine::id).toList();
    Map<Long, List<String>> confirmed = new HashMap<>();
    handle
        .createQuery(
            "select bake_id, cause from bake_cause"
                + " where bake_id in (<ids>) and standing = 'CONFIRMED' order by cause")
        .bindList("ids", ids)
        .map(
            (row, context) ->
                confirmed
                    .computeIfAbsent(row.getLong(1), id -> new ArrayList<>())
                    .add(row.getString(2)))
        .list();
    Map<Long, Integer> photos = new HashMap<>();
    handle
        .createQuery(
            "select bake_id, count(*) from photo where bake_id in (<ids>) group by bake_id")
        .bindList("ids", ids)
        .map((row, context) -> photos.put(row.getLong(1), row.getInt(2)))
        .list();
    return lines.stream()
        .map(
            line ->
                new BakeLine(
                    line.id(),
                    line.owner(),
                    line.baked(),
                    line.label(),
                    line.recipe(),
                    line.outcome(),
                    line.firstCause(),
                    confirmed.getOrDefault(line.id(), List.of()),
                    photos.getOrDefault(line.id(), 0)))
        .toList();
  }
}
