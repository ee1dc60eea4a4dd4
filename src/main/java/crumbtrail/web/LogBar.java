package crumbtrail.web;

import crumbtrail.people.Person;
import crumbtrail.people.Role;
import io.javalin.http.Context;

/**
 * What a page of a shared log says of whoever is logged in.
 *
 * @param name their name
 * @param teacher whether they look after classes
 * @param keeper whether they look after accounts
 */
public record LogBar(String name, boolean teacher, boolean keeper) {
  private static final String NAME = "bar";

  static void attend(Context ctx, Person person) {
    ctx.attribute(
        NAME, new LogBar(person.name(), person.may(Role.TEACHER), person.may(Role.KEEPER)));
  }

  /** What a request was handed; null where nobody is logged in. */
  static LogBar of(Context ctx) {
    return ctx.attribute(NAME);
  }
}
