package crumbtrail.web;

import crumbtrail.people.Names;
import crumbtrail.people.Person;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import crumbtrail.people.Tokens;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Classes, for those who teach them. */
public final class ClassRoutes {
  private static final String PATH = "/log/classes";

  private final PeopleGate gate;
  private final LogForms forms;

  ClassRoutes(PeopleGate gate, LogForms forms) {
    this.gate = gate;
    this.forms = forms;
  }

  /** A class and who belongs to it. */
  public record Taught(SchoolClass schoolClass, List<Person> members) {}

  /** The page: classes, what was typed, and what was wrong with it. */
  public record Page(List<Taught> classes, String name, String fault) {}

  void register(RoutesConfig routes) {
    routes.get(PATH, ctx -> show(ctx, "", ""));
    routes.post(PATH, this::make);
    routes.post(PATH + "/{id}/code", ctx -> code(ctx, Optional.of(Tokens.code())));
    routes.post(PATH + "/{id}/close", ctx -> code(ctx, Optional.empty()));
    routes.post(PATH + "/{id}/remove", this::remove);
    routes.post(PATH + "/{id}/end", this::end);
  }

  private void show(Context ctx, String name, String fault) {
    Viewer viewer = gate.viewer(ctx, Role.TEACHER);
    if (!fault.isEmpty()) {
      ctx.status(400);
    }
    List<Taught> classes =
        gate.people().taughtBy(viewer.person().id()).stream()
            .map(one -> new Taught(one, gate.people().members(one.id())))
            .toList();
    Rendering.page(
        ctx,
        "classes.jte",
        Map.of("page", new Page(classes, name, fault), "done", LogRoutes.done(ctx)));
  }

  private void make(Context ctx) {
    Viewer viewer = gate.viewer(ctx, Role.TEACHER);
    String name = forms.read(ctx).getOrDefault("name", "");
    Optional<String> kept = Names.kept(name);
    if (kept.isEmpty()) {
      show(ctx, name, Texts.of(ctx).of("people.name.fault", Names.LONGEST));
      return;
    }
    gate.people().make(kept.get(), viewer.person().id(), Tokens.code());
    LogHouse.on(ctx, PATH + "?done=classmade");
  }

  private void code(Context ctx, Optional<String> code) {
    SchoolClass own = new Accounts(gate).taught(ctx);
    forms.read(ctx);
    gate.people().code(own.id(), code.orElse(null));
    LogHouse.on(ctx, PATH + "?done=" + (code.isPresent() ? "code" : "closed"));
  }

  private void remove(Context ctx) {
    SchoolClass own = new Accounts(gate).taught(ctx);
    Sight.number(forms.read(ctx).getOrDefault("baker", ""))
        .ifPresent(baker -> gate.people().leave(own.id(), baker));
    LogHouse.on(ctx, PATH + "?done=removed");
  }

  private void end(Context ctx) {
    SchoolClass own = new Accounts(gate).taught(ctx);
    forms.read(ctx);
    gate.people().end(own.id());
    LogHouse.on(ctx, PATH + "?done=ended");
  }
}
