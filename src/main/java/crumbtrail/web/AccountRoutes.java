package crumbtrail.web;

import crumbtrail.web.KeepForm.Choice;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;

/** One's own account. */
public final class AccountRoutes {
  private static final String PATH = "/log/account";

  private final PeopleGate gate;
  private final Accounts accounts;
  private final LogForms forms;

  AccountRoutes(PeopleGate gate, LogForms forms) {
    this.gate = gate;
    this.accounts = new Accounts(gate);
    this.forms = forms;
  }

  /**
   * The page.
   *
   * @param classes to which one belongs
   * @param fault what was wrong with what was sent, or empty
   */
  public record Page(List<Choice> classes, String fault) {}

  void register(RoutesConfig routes) {
    routes.get(PATH, ctx -> show(ctx, ""));
    routes.post(PATH + "/password", this::password);
    routes.post(PATH + "/leave", this::leave);
    routes.get(
        PATH + "/delete",
        ctx -> {
          gate.viewer(ctx);
          Rendering.page(ctx, "accountdelete.jte", Map.of("fault", ""));
        });
    routes.post(PATH + "/delete", this::delete);
  }

  private void show(Context ctx, String fault) {
    Viewer viewer = gate.viewer(ctx);
    if (!fault.isEmpty()) {
      ctx.status(400);
    }
    List<Choice> classes =
        gate.people().joinedBy(viewer.person().id()).stream()
            .map(one -> new Choice(String.valueOf(one.id()), one.name()))
            .toList();
    Rendering.page(
        ctx, "account.jte", Map.of("page", new Page(classes, fault), "done", LogRoutes.done(ctx)));
  }

  private void password(Context ctx) {
    Viewer viewer = gate.viewer(ctx);
    Map<String, String> fields = forms.read(ctx);
    Texts t = Texts.of(ctx);
    String password = fields.getOrDefault("password", "");
    if (!accounts.knows(ctx, viewer, fields.getOrDefault("old", ""))) {
      show(ctx, t.of("people.old.wrong"));
      return;
    }
    String fault =
        NewPassword.fault(password, fields.getOrDefault("again", ""), viewer.person().name(), t);
    if (!fault.isEmpty()) {
      show(ctx, fault);
      return;
    }
    accounts.renew(ctx, viewer, password);
    LogHouse.on(ctx, PATH + "?done=password");
  }

  private void leave(Context ctx) {
    Viewer viewer = gate.viewer(ctx);
    Map<String, String> fields = forms.read(ctx);
    Sight.number(fields.getOrDefault("class", ""))
        .ifPresent(one -> gate.people().leave(one, viewer.person().id()));
    LogHouse.on(ctx, PATH + "?done=left");
  }

  private void delete(Context ctx) {
    Viewer viewer = gate.viewer(ctx);
    Map<String, String> fields = forms.read(ctx);
    Texts t = Texts.of(ctx);
    String fault =
        accounts.knows(ctx, viewer, fields.getOrDefault("old", "")) ? "" : t.of("people.old.wrong");
    if (fault.isEmpty() && !gate.people().delete(viewer.person().id())) {
      fault = t.of("people.last.keeper");
    }
    if (!fault.isEmpty()) {
      ctx.status(400);
      Rendering.page(ctx, "accountdelete.jte", Map.of("fault", fault));
      return;
    }
    gate.forget(ctx);
    LogHouse.on(ctx, "/log/in?done=out");
  }
}
