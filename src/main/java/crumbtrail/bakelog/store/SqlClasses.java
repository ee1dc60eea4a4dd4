package crumbtrail.bakelog.store;

import crumbtrail.people.Person;
import crumbtrail.people.SchoolClass;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Classes in a database. */
final class SqlClasses {
  private static final String CLASS =
      "select c.id, c.name, c.teacher_id, c.code from school_class c";

  private final Work work;

  SqlClasses(Work work) {
    this.work = work;
  }

  SchoolClass make(String name, long teacher, String code) {
    return work.write(
        handle ->
            new SchoolClass(
                handle
                    .createUpdate(
                        "insert into school_class (name, teacher_id, code)"
                            + " values (:name, :teacher, :code)")
                    .bind("name", name)
                    .bind("teacher", teacher)
                    .bind("code", code)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one(),
                name,
                teacher,
                code));
  }

  List<SchoolClass> taughtBy(long teacher) {
    return classes(CLASS + " where c.teacher_id = ? order by c.name, c.id", teacher);
  }

  List<SchoolClass> joinedBy(long baker) {
    return classes(
        CLASS
            + " join class_member m on m.class_id = c.id where m.baker_id = ?"
            + " order by c.name, c.id",
        baker);
  }

  Optional<SchoolClass> schoolClass(long id) {
    return classes(CLASS + " where c.id = ?", id).stream().findFirst();
  }

  Optional<SchoolClass> byCode(String code) {
    return classes(CLASS + " where c.code = ?", code).stream().findFirst();
  }

  private List<SchoolClass> classes(String sql, Object value) {
    return work.read(
        handle ->
            handle
                .select(sql, value)
                .map(
                    (row, context) -> {
                      long teacher = row.getLong("teacher_id");
                      return new SchoolClass(
                          row.getLong("id"),
                          row.getString("name"),
                          row.wasNull() ? null : teacher,
                          row.getString("code"));
                    })
                .list());
  }

  boolean code(long schoolClass, @Nullable String code) {
    return work.write(
        handle ->
            handle
                    .createUpdate("update school_class set code = :code where id = :id")
                    .bind("code", code)
                    .bind("id", schoolClass)
                    .execute()
                > 0);
  }

  void join(long schoolClass, long baker) {
    work.write(
        handle ->
            handle.execute(
                "insert into class_member (class_id, baker_id)"
                    + " select c.id, b.id from school_class c, baker b where c.id = ? and b.id = ?"
                    + " and not exists (select 1 from class_member m"
                    + " where m.class_id = c.id and m.baker_id = b.id)",
                schoolClass,
                baker));
  }

  void leave(long schoolClass, long baker) {
    work.write(
        handle -> {
          takenBack(handle, "class_id = ? and owner_id = ?", schoolClass, baker);
          return handle.execute(
              "delete from class_member where class_id = ? and baker_id = ?", schoolClass, baker);
        });
  }

  List<Person> members(long schoolClass) {
    return work.read(
        handle ->
            handle
                .select(
                    PeopleRows.PERSON
                        + " join class_member m on m.baker_id = a.baker_id where m.class_id = ?"
                        + " order by a.name_key",
                    schoolClass)
                .map((row, context) -> PeopleRows.account(row).person())
                .list());
  }

  boolean end(long schoolClass) {
    return work.write(handle -> ended(handle, schoolClass));
  }

  static boolean ended(Handle handle, long schoolClass) {
    takenBack(handle, "class_id = ?", schoolClass);
    return handle.execute("delete from school_class where id = ?", schoolClass) > 0;
  }

  // The class stands beside words and causes too.
  private static void takenBack(Handle handle, String which, Object... values) {
    for (String table : List.of("bake", "bake_word", "bake_cause")) {
      handle.execute("update " + table + " set class_id = null where " + which, values);
    }
  }
}
