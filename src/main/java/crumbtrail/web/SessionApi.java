package crumbtrail.web;

import crumbtrail.api.Endpoint;
import crumbtrail.api.Gone;
import crumbtrail.api.LogReader;
import crumbtrail.api.PeopleEndpoints;
import crumbtrail.api.PeopleTold.ClassName;
import crumbtrail.api.PeopleTold.OwnAccount;
import crumbtrail.people.Passwords;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import crumbtrail.people.Tokens;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Map;
import java.util.Optional;

/** Log-ins and one's own account, for programs. */
final class SessionApi {
  private final PeopleDesk desk;

  SessionApi(PeopleDesk desk) {
    this.desk = desk;
  }

  void bind(Map<Endpoint, Handler> bound) {
    bound.put(PeopleEndpoints.LOG_IN, this::logIn);
    bound.put(PeopleEndpoints.SIGN_UP, this::signUp);
    bound.put(PeopleEndpoints.ACCOUNT, ctx -> PeopleDesk.show(ctx, own(desk.gate().viewer(ctx))));
    bound.put(PeopleEndpoints.PASSWORD, this::password);
    bound.put(PeopleEndpoints.JOIN, this::join);
    bound.put(PeopleEndpoints.LEAVE, this::leave);
    bound.put(PeopleEndpoints.LOG_OUT, this::logOut);
    bound.put(PeopleEndpoints.LOG_OUT_EVERYWHERE, this::logOutEverywhere);
    bound.put(PeopleEndpoints.DELETE_ACCOUNT, this::delete);
  }

  private OwnAccount own(Viewer viewer) {
    Person person = viewer.person();
    return new OwnAccount(
        person.id(),
        person.name(),
        PeopleDesk.word(person.role()),
        desk.gate().people().joinedBy(person.id()).stream()
            .map(one -> new ClassName(one.id(), one.name()))
            .toList());
  }

  private void logIn(Context ctx) {
    Accounts accounts = desk.accounts();
    LogReader reader = desk.read(ctx, "name", "password");
    String name = PeopleDesk.text(reader, "name");
    String password = PeopleDesk.text(reader, "password");
    PeopleDesk.check(reader);
    desk.letIn(
        ctx,
        accounts
            .checked(ctx, name, password)
            .orElseThrow(() -> new Refusal(401, "Name and password do not belong together.")));
  }

  // The code is looked at first, so that nobody finds out names without one.
  private void signUp(Context ctx) {
    Accounts accounts = desk.accounts();
    LogReader reader = desk.read(ctx, "name", "password", "code");
    accounts.countJoining(ctx);
    String name = PeopleDesk.name(reader);
    String password = PeopleDesk.newPassword(reader, name);
    Optional<SchoolClass> joined = joined(accounts, reader);
    PeopleDesk.check(reader);
    Person person =
        desk.gate()
            .people()
            .add(name, Role.BAKER, Passwords.hash(password))
            .orElseThrow(() -> new Refusal(400, "name: somebody has it already; take another."));
    desk.gate().people().join(joined.orElseThrow().id(), person.id());
    desk.letIn(ctx, person);
  }

  private static Optional<SchoolClass> joined(Accounts accounts, LogReader reader) {
    String code = PeopleDesk.text(reader, "code");
    Optional<SchoolClass> found = code.isEmpty() ? Optional.empty() : accounts.byCode(code);
    if (found.isEmpty() && !code.isEmpty()) {
      reader.add("code", "no class is joined with it", "ask the teacher; a code can be old");
    }
    return found;
  }

  private void password(Context ctx) {
    Viewer viewer = desk.changing(ctx, Role.BAKER);
    LogReader reader = desk.read(ctx, "old", "password");
    String old = PeopleDesk.text(reader, "old");
    String password = PeopleDesk.newPassword(reader, viewer.person().name());
    PeopleDesk.check(reader);
    checkKnown(ctx, viewer, old);
    desk.accounts().renew(ctx, viewer, password);
    PeopleDesk.answer(ctx, own(viewer));
  }

  private void checkKnown(Context ctx, Viewer viewer, String password) {
    if (!desk.accounts().knows(ctx, viewer, password)) {
      throw new Refusal(400, "The present password is another.");
    }
  }

  private void join(Context ctx) {
    Viewer viewer = desk.changing(ctx, Role.BAKER);
    LogReader reader = desk.read(ctx, "code");
    desk.accounts().countJoining(ctx);
    Optional<SchoolClass> joined = joined(desk.accounts(), reader);
    PeopleDesk.check(reader);
    desk.gate().people().join(joined.orElseThrow().id(), viewer.person().id());
    PeopleDesk.answer(ctx, own(viewer));
  }

  private void leave(Context ctx) {
    Viewer viewer = desk.changing(ctx, Role.BAKER);
    long id = LogHouse.id(ctx, "id");
    if (desk.gate().people().joinedBy(viewer.person().id()).stream()
        .noneMatch(one -> one.id() == id)) {
      throw new Refusal(404, "You belong to no such class.");
    }
    desk.gate().people().leave(id, viewer.person().id());
    PeopleDesk.answer(ctx, own(viewer));
  }

  private void logOut(Context ctx) {
    PeopleGate gate = desk.gate();
    desk.changing(ctx, Role.BAKER);
    gate.people().end(Tokens.hash(gate.token(ctx)));
    PeopleDesk.answer(ctx, new Gone("log-in"));
  }

  private void logOutEverywhere(Context ctx) {
    Viewer viewer = desk.changing(ctx, Role.BAKER);
    desk.gate().people().endAll(viewer.person().id(), null);
    PeopleDesk.answer(ctx, new Gone("all log-ins"));
  }

  private void delete(Context ctx) {
    Viewer viewer = desk.changing(ctx, Role.BAKER);
    LogReader reader = desk.read(ctx, "password");
    String password = PeopleDesk.text(reader, "password");
    PeopleDesk.check(reader);
    checkKnown(ctx, viewer, password);
    if (!desk.gate().people().delete(viewer.person().id())) {
      throw new Refusal(400, KeeperApi.LAST);
    }
    PeopleDesk.answer(ctx, new Gone("account " + viewer.person().id()));
  }
}
