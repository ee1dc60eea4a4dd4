package crumbtrail.bakelog.store;

import static java.time.temporal.ChronoUnit.SECONDS;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLine;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.Digest;
import crumbtrail.bakelog.Digested;
import crumbtrail.bakelog.Digests;
import crumbtrail.bakelog.Page;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.Place;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.Sought;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jspecify.annotations.Nullable;

/** The bakes of one scope in a database. */
final class SqlBakeLog implements BakeLog {
  /** Bakes fetched at a time; a report takes about a tenth of a megabyte. */
  private static final int FETCHED = 50;

  private final Work work;
  private final Scope scope;

  SqlBakeLog(Work work, Scope scope) {
    this.work = work;
    this.scope = scope;
  }

  @Override
  public long add(Bake bake) {
    if (!scope.holds(bake.owner(), bake.schoolClass())) {
      throw new IllegalArgumentException("the bake lies outside of what this log may hold");
    }
    return work.write(handle -> Writing.insert(handle, bake, false));
  }

  @Override
  public Optional<Bake> find(long id) {
    return work.read(handle -> find(handle, id, ""));
  }

  @Override
  public Optional<Long> find(UUID uid) {
    return work.read(
        handle ->
            scoped(handle.createQuery("select b.id from bake b where b.uid = :uid" + owned()))
                .bind("uid", Rows.exactly(uid))
                .mapTo(Long.class)
                .findOne());
  }

  private Optional<Bake> find(Handle handle, long id, String lock) {
    List<Bake> found =
        scoped(
                handle.createQuery(
                    "select "
                        + Rows.BAKE
                        + " from bake b join bake_paper p on p.bake_id = b.id where b.id = :id"
                        + owned()
                        + lock))
            .bind("id", id)
            .map((row, context) -> Rows.bake(row))
            .list();
    return Rows.completed(handle, found).stream().findFirst();
  }

  @Override
  public Page list(Sought sought, int most, @Nullable Place after) {
    return work.read(
        handle -> {
          // One more than asked for tells whether there are more.
          List<BakeLine> lines =
              new ListQuery(handle, scope, sought)
                  .of(Rows.LINE, false, most + 1, after)
                  .map((row, context) -> Rows.line(row))
                  .list();
          boolean more = lines.size() > most;
          return new Page(Rows.completedLines(handle, more ? lines.subList(0, most) : lines), more);
        });
  }

  @Override
  public List<Digested> digests(Sought sought, int most) {
    return work.read(
        handle -> {
          Map<Long, Digest> digests = new LinkedHashMap<>();
          List<BakeLine> lines =
              new ListQuery(handle, scope, sought)
                  .of(Rows.LINE + ", p.digest", true, most, null)
                  .map(
                      (row, context) -> {
                        String digest = row.getString("digest");
                        BakeLine line = Rows.line(row);
                        digests.put(line.id(), digest == null ? Digest.NONE : Digests.read(digest));
                        return line;
                      })
                  .list();
          return Rows.completedLines(handle, lines).stream()
              .map(line -> new Digested(line, digests.getOrDefault(line.id(), Digest.NONE)))
              .toList();
        });
  }

  @Override
  public Stream<Bake> bakes(long after) {
    return Stream.iterate(
            fetch(after), some -> !some.isEmpty(), some -> fetch(some.get(some.size() - 1).id()))
        .flatMap(List::stream);
  }

  private List<Bake> fetch(long after) {
    return work.read(
        handle ->
            Rows.completed(
                handle,
                scoped(
                        handle.createQuery(
                            "select "
                                + Rows.BAKE
                                + " from bake b join bake_paper p on p.bake_id = b.id"
                                + " where b.id > :after"
                                + owned()
                                + " order by b.id limit "
                                + FETCHED))
                    .bind("after", after)
                    .map((row, context) -> Rows.bake(row))
                    .list()));
  }

  @Override
  public long count() {
    return work.read(
        handle ->
            scoped(handle.createQuery("select count(*) from bake b where true" + owned()))
                .mapTo(Long.class)
                .one());
  }

  @Override
  public Map<String, Long> confirmed() {
    return work.read(
        handle -> {
          Map<String, Long> counts = new LinkedHashMap<>();
          String sql = "select b.cause, count(*) from bake_cause b where b.standing = 'CONFIRMED'";
          scoped(handle.createQuery(sql + owned() + " group by 1 order by 2 desc, 1"))
              .map((row, context) -> counts.put(row.getString(1), row.getLong(2)))
              .list();
          return counts;
        });
  }

  @Override
  public Map<Long, LocalDateTime> learnsFrom() {
    if (scope.schoolClass() != null) {
      return Map.of();
    }
    return work.read(
        handle -> {
          Map<Long, LocalDateTime> marks = new TreeMap<>();
          String sql = "select id, learns_from from baker b where learns_from is not null";
          scoped(handle.createQuery(sql + (scope.owner() == null ? "" : " and id = :owner")))
              .map(
                  (row, context) ->
                      marks.put(row.getLong(1), row.getObject(2, LocalDateTime.class)))
              .list();
          return marks;
        });
  }

  @Override
  public void learnFrom(long baker, @Nullable LocalDateTime from) {
    if (!scope.holds(baker, scope.schoolClass()) || scope.schoolClass() != null) {
      throw new IllegalArgumentException("the kitchen lies outside of what this log may change");
    }
    work.write(
        handle ->
            handle
                .createUpdate("update baker set learns_from = :from where id = :baker")
                .bind("from", Rows.exactly(from == null ? null : from.truncatedTo(SECONDS)))
                .bind("baker", baker)
                .execute());
  }

  @Override
  public Optional<Bake> change(long id, UnaryOperator<Bake> change) {
    return work.write(
        handle -> {
          if (!locked(handle, id)) {
            return Optional.empty();
          }
          Bake before = find(handle, id, "").orElseThrow();
          Bake after = change.apply(before);
          if (!scope.holds(after.owner(), after.schoolClass())) {
            throw new IllegalArgumentException("the bake would leave what this log may hold");
          }
          Writing.update(handle, before, after);
          return Optional.of(after);
        });
  }

  // Whoever else wants to change this bake waits until the transaction is over.
  private boolean locked(Handle handle, long id) {
    return scoped(
            handle.createQuery(
                "select b.id from bake b where b.id = :id" + owned() + " for update"))
        .bind("id", id)
        .mapTo(Long.class)
        .findOne()
        .isPresent();
  }

  @Override
  public Optional<Long> addPhoto(long bake, Photo photo) {
    return work.write(
        handle ->
            locked(handle, bake)
                ? Optional.of(Writing.photo(handle, bake, photo))
                : Optional.empty());
  }

  @Override
  public Optional<Photo> photo(long id) {
    return work.read(
        handle ->
            scoped(
                    handle.createQuery(
                        "select f.* from photo f join bake b on b.id = f.bake_id where f.id = :id"
                            + owned()))
                .bind("id", id)
                .map((row, context) -> Rows.photo(row))
                .findOne());
  }

  @Override
  public boolean deletePhoto(long id) {
    return deleted(
        "delete from photo where id = :id and bake_id in (select b.id from bake b where true"
            + owned()
            + ")",
        id);
  }

  @Override
  public boolean delete(long id) {
    return deleted(
        "delete from bake where id in (select b.id from bake b where b.id = :id" + owned() + ")",
        id);
  }

  private boolean deleted(String sql, long id) {
    return work.write(
        handle -> {
          boolean gone = scoped(handle.createUpdate(sql)).bind("id", id).execute() > 0;
          if (gone) {
            Chores.wipe(handle);
          }
          return gone;
        });
  }

  private String owned() {
    return (scope.owner() == null ? "" : " and b.owner_id = :owner")
        + (scope.schoolClass() == null ? "" : " and b.class_id = :class");
  }

  private <S extends SqlStatement<S>> S scoped(S statement) {
    if (scope.owner() != null) {
      statement.bind("owner", scope.owner());
    }
    if (scope.schoolClass() != null) {
      statement.bind("class", scope.schoolClass());
    }
    return statement;
  }
}
