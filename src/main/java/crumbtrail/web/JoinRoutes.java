package crumbtrail.web;

import crumbtrail.people.Names;
import crumbtrail.people.Passwords;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Joining a class with its code, with the account that one has or with a new one. */
public final class JoinRoutes {
  private static final String PATH = "/log/join";

  private final PeopleGate gate;
  private final LogForms forms;

  JoinRoutes(PeopleGate gate, LogForms forms) {
    this.gate = gate;
    this.forms = forms;
  }

  /**
   * The page.
   *
   * @param account whether an account is made with it
   */
  public record Page(String code, String name, boolean account, List<String> faults) {}

  void register(RoutesConfig routes) {
    routes.get(
        PATH,
        ctx -> show(ctx, Optional.ofNullable(ctx.queryParam("code")).orElse(""), "", List.of()));
    routes.post(PATH, this::join);
  }

  private void show(Context ctx, String code, String name, List<String> faults) {
    if (!faults.isEmpty()) {
      ctx.status(400);
    }
    Rendering.page(
        ctx, "join.jte", Map.of("page", new Page(code, name, gate.known(ctx).isEmpty(), faults)));
  }

  private void join(Context ctx) {
    Optional<Viewer> viewer = gate.known(ctx);
    Map<String, String> fields = viewer.isPresent() ? forms.read(ctx) : forms.unsealed(ctx);
    Accounts accounts = new Accounts(gate);
    accounts.countJoining(ctx);
    String typed = fields.getOrDefault("code", "");
    Texts t = Texts.of(ctx);
    List<String> faults = new ArrayList<>();
    Optional<SchoolClass> schoolClass = accounts.byCode(typed);
    if (schoolClass.isEmpty()) {
      faults.add(t.of("people.join.wrong"));
    }
    String name = fields.getOrDefault("name", "");
    Optional<Person> person = viewer.map(Viewer::person);
    if (person.isEmpty()) {
      person = made(fields, name, faults, t);
    }
    if (!faults.isEmpty() || person.isEmpty()) {
      show(ctx, typed, name, faults);
      return;
    }
    gate.people().join(schoolClass.orElseThrow().id(), person.get().id());
    if (viewer.isEmpty()) {
      gate.letIn(ctx, person.get());
    }
    LogHouse.on(ctx, "/log/account?done=joined");
  }

  // An account is only made where everything else is right.
  private Optional<Person> made(
      Map<String, String> fields, String name, List<String> faults, Texts t) {
    String password = fields.getOrDefault("password", "");
    Optional<String> kept = Names.kept(name);
    if (kept.isEmpty()) {
      faults.add(t.of("people.name.fault", Names.LONGEST));
    }
    String fault = NewPassword.fault(password, fields.getOrDefault("again", ""), name, t);
    if (!fault.isEmpty()) {
      faults.add(fault);
    }
    if (!faults.isEmpty()) {
      return Optional.empty();
    }
    Optional<Person> person =
        gate.people().add(kept.orElseThrow(), Role.BAKER, Passwords.hash(password));
    if (person.isEmpty()) {
      faults.add(t.of("people.name.taken"));
    }
    return person;
  }
}
