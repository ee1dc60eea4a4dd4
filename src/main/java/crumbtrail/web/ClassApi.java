package crumbtrail.web;

import crumbtrail.api.Endpoint;
import crumbtrail.api.Gone;
import crumbtrail.api.LogReader;
import crumbtrail.api.PeopleTold.TaughtClass;
import crumbtrail.api.PeopleTold.TaughtClasses;
import crumbtrail.api.SchoolEndpoints;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import crumbtrail.people.Tokens;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Classes, for programs of those who teach them. */
final class ClassApi {
  private final PeopleDesk desk;

  ClassApi(PeopleDesk desk) {
    this.desk = desk;
  }

  void bind(Map<Endpoint, Handler> bound) {
    bound.put(SchoolEndpoints.CLASSES, this::list);
    bound.put(SchoolEndpoints.MAKE_CLASS, this::make);
    bound.put(SchoolEndpoints.NEW_CODE, ctx -> code(ctx, Tokens.code()));
    bound.put(SchoolEndpoints.CLOSE, ctx -> code(ctx, null));
    bound.put(SchoolEndpoints.REMOVE, this::remove);
    bound.put(SchoolEndpoints.END_CLASS, this::end);
  }

  private void list(Context ctx) {
    Viewer viewer = desk.gate().viewer(ctx, Role.TEACHER);
    PeopleDesk.show(
        ctx,
        new TaughtClasses(
            desk.gate().people().taughtBy(viewer.person().id()).stream().map(this::told).toList()));
  }

  private TaughtClass told(SchoolClass one) {
    return new TaughtClass(
        one.id(),
        one.name(),
        one.code(),
        desk.gate().people().members(one.id()).stream().map(PeopleDesk::line).toList());
  }

  private void make(Context ctx) {
    Viewer viewer = desk.changing(ctx, Role.TEACHER);
    LogReader reader = desk.read(ctx, "name");
    String name = PeopleDesk.name(reader);
    PeopleDesk.check(reader);
    PeopleDesk.answer(
        ctx, told(desk.gate().people().make(name, viewer.person().id(), Tokens.code())));
  }

  private SchoolClass changed(Context ctx) {
    desk.changing(ctx, Role.TEACHER);
    return desk.accounts().taught(ctx);
  }

  private void code(Context ctx, @Nullable String code) {
    SchoolClass taught = changed(ctx);
    desk.gate().people().code(taught.id(), code);
    PeopleDesk.answer(
        ctx, told(new SchoolClass(taught.id(), taught.name(), taught.teacher(), code)));
  }

  private void remove(Context ctx) {
    SchoolClass taught = changed(ctx);
    long baker = LogHouse.id(ctx, "baker");
    if (desk.gate().people().members(taught.id()).stream().noneMatch(one -> one.id() == baker)) {
      throw new Refusal(404, "There is nobody of this number in the class.");
    }
    desk.gate().people().leave(taught.id(), baker);
    PeopleDesk.answer(ctx, told(taught));
  }

  private void end(Context ctx) {
    SchoolClass taught = changed(ctx);
    desk.gate().people().end(taught.id());
    PeopleDesk.answer(ctx, new Gone("class " + taught.id()));
  }
}
