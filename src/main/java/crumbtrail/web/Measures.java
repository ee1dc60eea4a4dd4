package crumbtrail.web;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import io.prometheus.metrics.config.EscapingScheme;
import io.prometheus.metrics.core.metrics.Counter;
import io.prometheus.metrics.core.metrics.Histogram;
import io.prometheus.metrics.expositionformats.PrometheusTextFormatWriter;
import io.prometheus.metrics.instrumentation.jvm.JvmGarbageCollectorMetrics;
import io.prometheus.metrics.instrumentation.jvm.JvmMemoryMetrics;
import io.prometheus.metrics.instrumentation.jvm.JvmThreadsMetrics;
import io.prometheus.metrics.instrumentation.jvm.ProcessMetrics;
import io.prometheus.metrics.model.registry.PrometheusRegistry;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Set;

/**
 * What is counted and measured while a server runs, for whoever watches it. Labels are ours: the
 * template of a route and never what was asked of it, so that neither words of a baker nor made-up
 * addresses end up in them.
 */
final class Measures {
  private static final String TYPE = PrometheusTextFormatWriter.CONTENT_TYPE;

  private static final Set<String> METHODS =
      Set.of("GET", "HEAD", "POST", "PUT", "PATCH", "DELETE", "OPTIONS");

  /** Seconds; a report of causes takes milliseconds, a whole one up to a tenth of a second. */
  private static final double[] BOUNDS = {
    0.002, 0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 10
  };

  private final PrometheusRegistry registry = new PrometheusRegistry();
  private final Watchers watchers;
  private final Counter requests;
  private final Histogram seconds;
  private final Counter sheets;

  Measures(Watchers watchers) {
    this.watchers = watchers;
    requests =
        Counter.builder()
            .name("crumbtrail_http_requests_total")
            .help("Requests answered, by method, template of the route, and status")
            .labelNames("method", "route", "status")
            .register(registry);
    seconds =
        Histogram.builder()
            .name("crumbtrail_http_request_seconds")
            .help("From the request to its answer, by template of the route")
            .labelNames("route")
            .classicOnly()
            .classicUpperBounds(BOUNDS)
            .register(registry);
    sheets =
        Counter.builder()
            .name("crumbtrail_sheets_total")
            .help("Bake sheets worked on, by what was asked of them and whether they could be read")
            .labelNames("work", "outcome")
            .register(registry);
    if (watchers != Watchers.NOBODY) {
      JvmMemoryMetrics.builder().register(registry);
      JvmGarbageCollectorMetrics.builder().register(registry);
      JvmThreadsMetrics.builder().register(registry);
      ProcessMetrics.builder().register(registry);
    }
  }

  void register(JavalinConfig config) {
    config.requestLogger.http((ctx, millis) -> count(ctx, millis));
  }

  /** A tracer that is counted. */
  Tracer counting(Tracer tracer) {
    return new CountedTracer(
        tracer, (work, made) -> sheets.labelValues(work, made ? "made" : "refused").inc());
  }

  /** Answers with all of them, if whoever asks may read them. */
  void tell(Context ctx) throws IOException {
    if (watchers == Watchers.NOBODY) {
      throw new Refusal(404, "There is nothing at this address.");
    }
    if (!watchers.admit(ctx)) {
      throw new Refusal(403, "Measures are told on the machine of the server only.");
    }
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    PrometheusTextFormatWriter.create()
        .write(text, registry.scrape(), EscapingScheme.UNDERSCORE_ESCAPING);
    ctx.contentType(TYPE).result(text.toByteArray());
  }

  private void count(Context ctx, float millis) {
    String route = route(ctx);
    requests.labelValues(method(ctx.method()), route, String.valueOf(ctx.statusCode())).inc();
    seconds.labelValues(route).observe(millis / 1000);
  }

  private static String method(HandlerType method) {
    return METHODS.contains(method.name()) ? method.name() : "other";
  }

  private static String route(Context ctx) {
    Endpoint found = ctx.endpoints().lastHttpEndpoint();
    if (found != null) {
      return found.path;
    }
    return ctx.statusCode() < 400 && ctx.path().startsWith("/assets/") ? "/assets" : "none";
  }
}
