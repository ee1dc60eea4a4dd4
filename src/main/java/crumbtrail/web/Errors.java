package crumbtrail.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpResponseException;
import java.nio.channels.ClosedChannelException;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import org.eclipse.jetty.io.EofException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Turns whatever ends a request badly into problem details, or into a page where a person asked for
 * one. Neither ever shows an exception: the log has it, under the number that the answer gives.
 */
final class Errors {

  private static final Logger LOG = LoggerFactory.getLogger(Errors.class);

  private Errors() {}

  static void register(JavalinConfig config) {
    config.routes.exception(
        Refusal.class,
        (e, ctx) -> answer(ctx, ProblemDetails.of(e.status(), e.getMessage(), e.problems())));
    config.routes.exception(HttpResponseException.class, Errors::refused);
    config.routes.exception(
        Exception.class,
        (e, ctx) ->
            answer(
                ctx, clientLeft(e) ? ProblemDetails.of(400, "The request broke off.") : logged(e)));
    config.router.javaLangErrorHandler(
        (res, error) -> {
          // No context here: an overflowing stack or heap left none that could be trusted.
          res.setStatus(500);
          res.setContentType(ProblemDetails.TYPE);
          byte[] body = logged(error).json().getBytes(java.nio.charset.StandardCharsets.UTF_8);
          try {
            res.getOutputStream().write(body);
          } catch (java.io.IOException e) {
            LOG.debug("The answer could not be sent", e);
          }
        });
  }

  // No fault of ours, and no line in the log for each client that goes away.
  private static boolean clientLeft(Throwable fault) {
    for (Throwable at = fault; at != null; at = at.getCause()) {
      if (at instanceof ClosedChannelException
          || at instanceof EofException
          || at instanceof TimeoutException) {
        return true;
      }
    }
    return false;
  }

  private static void refused(HttpResponseException e, Context ctx) {
    int status = e.getStatus();
    if (status == 405) {
      ctx.header("Allow", allowed(e));
      if (ctx.method().equals(HandlerType.OPTIONS)) {
        ctx.status(204);
        return;
      }
    }
    String detail =
        switch (status) {
          case 404 -> "There is nothing at this address.";
          case 405 -> "This address does not take that method.";
          case 413 -> "The body is longer than " + WebFace.BODY_LIMIT + " bytes.";
          default -> "The request cannot be answered.";
        };
    answer(ctx, ProblemDetails.of(status, detail));
  }

  // The router tells which methods the address has; every address can be asked for its options.
  private static String allowed(HttpResponseException e) {
    return e.getDetails().values().stream()
        .flatMap(methods -> Arrays.stream(methods.split(",")))
        .map(String::strip)
        .collect(Collectors.collectingAndThen(Collectors.toCollection(TreeSet::new), Errors::list));
  }

  private static String list(Set<String> methods) {
    methods.add("OPTIONS");
    return String.join(", ", methods);
  }

  /**
   * Logs a fault of the program and returns its problem details with the number of the incident.
   */
  static ProblemDetails logged(Throwable fault) {
    String incident = UUID.randomUUID().toString().substring(0, 8);
    LOG.error("Incident {}", incident, fault);
    return ProblemDetails.fault(incident);
  }

  /** Answers with problem details, or with a page where a person asked for one. */
  static void answer(Context ctx, ProblemDetails problem) {
    ctx.status(problem.status());
    if (wantsPage(ctx)) {
      Rendering.page(ctx, "error.jte", Map.of("problem", problem));
    } else {
      ctx.contentType(ProblemDetails.TYPE).result(problem.json());
    }
  }

  private static boolean wantsPage(Context ctx) {
    String accept = ctx.header("Accept");
    return !ctx.path().startsWith("/api/") && accept != null && accept.contains("text/html");
  }
}
