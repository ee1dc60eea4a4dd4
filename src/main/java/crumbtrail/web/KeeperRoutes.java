package crumbtrail.web;

import crumbtrail.people.Names;
import crumbtrail.people.Passwords;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Accounts, for those who keep the log. */
public final class KeeperRoutes {
  private static final String PATH = "/log/people";
  private static final int MOST = 100;

  private final PeopleGate gate;
  private final LogForms forms;

  KeeperRoutes(PeopleGate gate, LogForms forms) {
    this.gate = gate;
    this.forms = forms;
  }

  /**
   * The page.
   *
   * @param after how many people stand on the pages before
   * @param more whether others follow
   */
  public record Page(
      List<Person> people, int after, boolean more, String name, String role, List<String> faults) {

    /** All roles, as forms have them. */
    public static List<String> roles() {
      return Stream.of(Role.values()).map(one -> one.name().toLowerCase(Locale.ROOT)).toList();
    }

    /** Where the next page begins. */
    public int next() {
      return after + people.size();
    }
  }

  void register(RoutesConfig routes) {
    routes.get(PATH, ctx -> show(ctx, "", "", List.of()));
    routes.post(PATH, this::add);
    routes.post(PATH + "/{id}/role", this::role);
    routes.post(PATH + "/{id}/password", this::password);
    routes.post(PATH + "/{id}/delete", this::delete);
  }

  private void show(Context ctx, String name, String role, List<String> faults) {
    gate.viewer(ctx, Role.KEEPER);
    if (!faults.isEmpty()) {
      ctx.status(400);
    }
    String asked = String.valueOf(ctx.queryParam("after"));
    int after = asked.matches("\\d{1,7}") ? Integer.parseInt(asked) : 0;
    List<Person> people = gate.people().everybody(MOST + 1, after);
    boolean more = people.size() > MOST;
    Rendering.page(
        ctx,
        "people.jte",
        Map.of(
            "page",
            new Page(more ? people.subList(0, MOST) : people, after, more, name, role, faults),
            "done",
            LogRoutes.done(ctx)));
  }

  private void add(Context ctx) {
    gate.viewer(ctx, Role.KEEPER);
    Map<String, String> fields = forms.read(ctx);
    Texts t = Texts.of(ctx);
    String name = fields.getOrDefault("name", "");
    String password = fields.getOrDefault("password", "");
    List<String> faults = new ArrayList<>();
    Optional<String> kept = Names.kept(name);
    if (kept.isEmpty()) {
      faults.add(t.of("people.name.fault", Names.LONGEST));
    }
    String fault = NewPassword.fault(password, password, name, t);
    if (!fault.isEmpty()) {
      faults.add(fault);
    }
    String role = fields.getOrDefault("role", "");
    if (faults.isEmpty()
        && gate.people().add(kept.orElseThrow(), role(role), Passwords.hash(password)).isEmpty()) {
      faults.add(t.of("people.name.taken"));
    }
    if (!faults.isEmpty()) {
      show(ctx, name, role, faults);
      return;
    }
    LogHouse.on(ctx, PATH + "?done=added");
  }

  private static Role role(String typed) {
    return Page.roles().contains(typed) ? Role.valueOf(typed.toUpperCase(Locale.ROOT)) : Role.BAKER;
  }

  private void role(Context ctx) {
    gate.viewer(ctx, Role.KEEPER);
    Map<String, String> fields = forms.read(ctx);
    Person person = new Accounts(gate).person(ctx);
    if (!gate.people().role(person.id(), role(fields.getOrDefault("role", "")))) {
      show(ctx, "", "", List.of(Texts.of(ctx).of("people.last.keeper")));
      return;
    }
    LogHouse.on(ctx, PATH + "?done=role");
  }

  // Whoever forgot it gets another from a keeper, and is out everywhere.
  private void password(Context ctx) {
    gate.viewer(ctx, Role.KEEPER);
    String password = forms.read(ctx).getOrDefault("password", "");
    Person person = new Accounts(gate).person(ctx);
    String fault = NewPassword.fault(password, password, person.name(), Texts.of(ctx));
    if (!fault.isEmpty()) {
      show(ctx, "", "", List.of(fault));
      return;
    }
    new Accounts(gate).reset(person, password);
    LogHouse.on(ctx, PATH + "?done=password");
  }

  private void delete(Context ctx) {
    gate.viewer(ctx, Role.KEEPER);
    Map<String, String> fields = forms.read(ctx);
    Person person = new Accounts(gate).person(ctx);
    Texts t = Texts.of(ctx);
    // The name is typed, so that nobody is deleted by a slip.
    if (!Names.key(fields.getOrDefault("name", "")).equals(Names.key(person.name()))) {
      show(ctx, "", "", List.of(t.of("people.delete.name")));
    } else if (!gate.people().delete(person.id())) {
      show(ctx, "", "", List.of(t.of("people.last.keeper")));
    } else {
      LogHouse.on(ctx, PATH + "?done=persongone");
    }
  }
}
