package crumbtrail.web;

import crumbtrail.api.LogReader;
import crumbtrail.api.PeopleTold.LoggedIn;
import crumbtrail.api.PeopleTold.PersonLine;
import crumbtrail.people.Names;
import crumbtrail.people.Passwords;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the addresses of accounts and classes share.
 *
 * @param shared lets people in; empty where there is nothing to log in to
 * @param bodies reads what is sent
 */
record PeopleDesk(Optional<PeopleGate> shared, LogBodies bodies) {
  private static final String JSON = "application/json";
  private static final int LONGEST = 4096;

  PeopleGate gate() {
    return shared.orElseThrow(() -> new Refusal(404, "There is nothing to log in to here."));
  }

  Accounts accounts() {
    return new Accounts(gate());
  }

  /** Whoever changes something, counted. */
  Viewer changing(Context ctx, Role role) {
    PeopleGate gate = gate();
    bodies.checkOrigin(ctx);
    Viewer viewer = gate.viewer(ctx, role);
    gate.count(ctx, viewer);
    return viewer;
  }

  /** What was sent. */
  LogReader read(Context ctx, String... keys) {
    bodies.checkOrigin(ctx);
    return new LogReader(bodies.json(ctx, LONGEST), List.of(keys));
  }

  /** A text that must be there; an empty one where that was noted as a fault. */
  static String text(LogReader reader, String key) {
    int before = reader.problems().size();
    Optional<String> text = reader.text(key, 2 * Passwords.LONGEST);
    if (text.isEmpty() && reader.problems().size() == before) {
      reader.add(key, "this is missing", "write {\"" + key + "\": …}");
    }
    return text.orElse("");
  }

  /** A name that must be there. */
  static String name(LogReader reader) {
    String name = text(reader, "name");
    Optional<String> kept = Names.kept(name);
    if (kept.isEmpty() && !name.isEmpty()) {
      reader.add(
          "name",
          "this cannot be a name",
          "write 1 to " + Names.LONGEST + " letters, digits, blanks and signs such as - or ’");
    }
    return kept.orElse("");
  }

  /** A password that somebody of this name chooses. */
  static String newPassword(LogReader reader, String name) {
    String password = text(reader, "password");
    if (!password.isEmpty()) {
      Passwords.fault(password, name)
          .ifPresent(
              fault ->
                  reader.add(
                      "password",
                      switch (fault) {
                        case TOO_SHORT -> "this is too short";
                        case TOO_LONG -> "this is too long";
                        case THE_NAME -> "this is the name";
                      },
                      "write %d to %d characters"
                          .formatted(Passwords.SHORTEST, Passwords.LONGEST)));
    }
    return password;
  }

  /** A role; that of a baker where it cannot be read, which is noted. */
  static Role role(LogReader reader) {
    String said = text(reader, "role");
    return Arrays.stream(Role.values())
        .filter(one -> word(one).equals(said))
        .findFirst()
        .orElseGet(
            () -> {
              reader.add("role", "this is no role", "write baker, teacher or keeper");
              return Role.BAKER;
            });
  }

  /** Refuses what has anything wrong with it, and tells all of it. */
  static void check(LogReader reader) {
    if (!reader.problems().isEmpty()) {
      throw new Refusal(
          400,
          reader.problems().stream()
                  .map(
                      one ->
                          (one.where().isEmpty() ? "" : one.where() + ": ")
                              + one.what()
                              + "; "
                              + one.remedy())
                  .collect(Collectors.joining(". "))
              + ".");
    }
  }

  /** Logs somebody in. */
  void letIn(Context ctx, Person person) {
    answer(ctx, new LoggedIn(gate().begin(person), person.name(), word(person.role())));
  }

  static PersonLine line(Person person) {
    return new PersonLine(person.id(), person.name(), word(person.role()));
  }

  static String word(Role role) {
    return role.name().toLowerCase(Locale.ROOT);
  }

  /** Answers with what is only read. */
  static void show(Context ctx, Object found) {
    Freshness.exact(ctx, JSON, ApiJson.text(found));
  }

  /** Answers with what became of a change. */
  static void answer(Context ctx, Object done) {
    ctx.header("Cache-Control", "no-store").contentType(JSON).result(ApiJson.text(done));
  }
}
