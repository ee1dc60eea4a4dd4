package crumbtrail.web;

import crumbtrail.api.Endpoint;
import crumbtrail.bakelog.LogFault;
import crumbtrail.picture.LoafPictures;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A log of bakes and how it is served.
 *
 * @param door the way to it
 * @param people whether several people keep their bakes in it and have to log in
 * @param behindProxy whether a proxy stands before the server and says who asks, and how
 */
public record LogServing(LogDoor door, boolean people, boolean behindProxy) {

  /** The log of whoever uses this machine. */
  public static LogServing own(LogDoor door) {
    return new LogServing(door, false, false);
  }

  /** Registers the pages; answers with what binds the addresses for programs. */
  Consumer<Map<Endpoint, Handler>> register(
      RoutesConfig routes, Guards guards, Tracer tracer, CauseNamer causes, LoafPictures pictures) {
    PeopleGate shared =
        people ? new PeopleGate(() -> door.store().people(), new Proxy(behindProxy)) : null;
    Gate gate = shared == null ? Gate.OPEN : shared;
    Classes classes = shared == null ? Classes.NONE : shared;
    LogForms forms = new LogForms(guards, gate);
    LogHouse house = new LogHouse(door, gate, forms, tracer, causes, pictures);
    routes.exception(LogFault.class, this::broken);
    if (shared != null) {
      new LogInRoutes(shared, forms).register(routes);
      new JoinRoutes(shared, forms).register(routes);
      new AccountRoutes(shared, forms).register(routes);
      new ClassRoutes(shared, forms).register(routes);
      new KeeperRoutes(shared, forms).register(routes);
    }
    new KeepRoutes(house, classes).register(routes);
    new PhotoRoutes(house, guards).register(routes);
    StudyRoutes study = new StudyRoutes(house);
    study.register(routes);
    new LogRoutes(house, classes).register(routes);
    LogApi api = new LogApi(house, classes, guards);
    PeopleDesk desk = new PeopleDesk(Optional.ofNullable(shared), new LogBodies(guards));
    return bound -> {
      api.bind(bound);
      new StudyApi(house, study).bind(bound);
      new SessionApi(desk).bind(bound);
      new ClassApi(desk).bind(bound);
      new KeeperApi(desk).bind(bound);
    };
  }

  // On a shared server it is nobody's business where the log is.
  private void broken(LogFault fault, Context ctx) {
    String incident = Errors.logged(fault).incident();
    String detail =
        people
            ? "The bake log cannot be used now. What was acknowledged is safe. The log of the"
                + " server has more under "
                + incident
                + "."
            : fault.getMessage() + " " + fault.remedy();
    Errors.answer(ctx, ProblemDetails.of(503, detail));
  }
}
