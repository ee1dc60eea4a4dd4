package crumbtrail.web;

import crumbtrail.api.Endpoint;
import crumbtrail.api.Gone;
import crumbtrail.api.LogReader;
import crumbtrail.api.PeopleTold.Everybody;
import crumbtrail.api.SchoolEndpoints;
import crumbtrail.people.Names;
import crumbtrail.people.Passwords;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Accounts, for programs of those who keep the log. */
final class KeeperApi {
  static final String LAST = "The log would be without a keeper. Make somebody else one first.";

  private static final int MOST = 100;

  private final PeopleDesk desk;

  KeeperApi(PeopleDesk desk) {
    this.desk = desk;
  }

  void bind(Map<Endpoint, Handler> bound) {
    bound.put(SchoolEndpoints.PEOPLE, this::list);
    bound.put(SchoolEndpoints.ADD_PERSON, this::add);
    bound.put(SchoolEndpoints.CHANGE_PERSON, this::change);
    bound.put(SchoolEndpoints.DELETE_PERSON, this::delete);
  }

  private void list(Context ctx) {
    desk.gate().viewer(ctx, Role.KEEPER);
    String asked = Optional.ofNullable(ctx.queryParam("after")).orElse("0");
    if (!asked.matches("\\d{1,7}")) {
      throw new Refusal(400, "The query parameter after: write what the part before said as next.");
    }
    int after = Integer.parseInt(asked);
    List<Person> people = desk.gate().people().everybody(MOST + 1, after);
    boolean more = people.size() > MOST;
    PeopleDesk.show(
        ctx,
        new Everybody(
            people.stream().limit(MOST).map(PeopleDesk::line).toList(),
            more ? after + MOST : null));
  }

  private void add(Context ctx) {
    desk.changing(ctx, Role.KEEPER);
    LogReader reader = desk.read(ctx, "name", "role", "password");
    String name = PeopleDesk.name(reader);
    String password = PeopleDesk.newPassword(reader, name);
    Role role = PeopleDesk.role(reader);
    PeopleDesk.check(reader);
    PeopleDesk.answer(
        ctx,
        PeopleDesk.line(
            desk.gate()
                .people()
                .add(name, role, Passwords.hash(password))
                .orElseThrow(
                    () -> new Refusal(400, "name: somebody has it already; take another."))));
  }

  private void change(Context ctx) {
    desk.changing(ctx, Role.KEEPER);
    Person person = desk.accounts().person(ctx);
    LogReader reader = desk.read(ctx, "role", "password");
    Optional<Role> role = reader.tree("role").map(said -> PeopleDesk.role(reader));
    Optional<String> password =
        reader.tree("password").map(said -> PeopleDesk.newPassword(reader, person.name()));
    PeopleDesk.check(reader);
    if (role.isPresent() && !desk.gate().people().role(person.id(), role.get())) {
      throw new Refusal(400, LAST);
    }
    password.ifPresent(one -> desk.accounts().reset(person, one));
    PeopleDesk.answer(
        ctx, PeopleDesk.line(new Person(person.id(), person.name(), role.orElse(person.role()))));
  }

  private void delete(Context ctx) {
    desk.changing(ctx, Role.KEEPER);
    Person person = desk.accounts().person(ctx);
    String name = Optional.ofNullable(ctx.queryParam("name")).orElse("");
    if (!Names.key(name).equals(Names.key(person.name()))) {
      throw new Refusal(400, "The query parameter name: write the name of the account.");
    }
    if (!desk.gate().people().delete(person.id())) {
      throw new Refusal(400, LAST);
    }
    PeopleDesk.answer(ctx, new Gone("account " + person.id()));
  }
}
