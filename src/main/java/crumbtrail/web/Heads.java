package crumbtrail.web;

import io.javalin.Javalin;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;

/** Whoever asks for the head of a page gets that of the page, not an empty one. */
final class Heads {
  private Heads() {}

  static void answer(Javalin app) {
    app.unsafe.internalRouter.allHttpHandlers().stream()
        .map(parsed -> parsed.endpoint)
        .filter(endpoint -> endpoint.method.equals(HandlerType.GET))
        .toList()
        .forEach(
            endpoint ->
                app.unsafe.internalRouter.addHttpEndpoint(
                    new Endpoint(HandlerType.HEAD, endpoint.path, endpoint.handler)));
  }
}
