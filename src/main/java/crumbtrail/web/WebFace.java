package crumbtrail.web;

import crumbtrail.api.Shelf;
import crumbtrail.bakelog.PhotoMaker;
import crumbtrail.handbook.Leaves;
import crumbtrail.lessons.School;
import crumbtrail.memory.Once;
import crumbtrail.picture.LoafPictures;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.Handler;
import io.javalin.http.staticfiles.Location;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jetty.server.NetworkConnectionLimit;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The pages and the programming interface, served over HTTP. */
public final class WebFace implements AutoCloseable {

  /** The longest body that is read, in bytes; a long recipe with its process is under 8,000. */
  public static final int BODY_LIMIT = 64 * 1024;

  /** How long a stop waits for answers that are being worked out. */
  private static final long STOP_MILLIS = 5_000;

  private final Javalin app;
  private final String host;
  private final Optional<LogServing> log;

  private WebFace(Javalin app, String host, Optional<LogServing> log) {
    this.app = app;
    this.host = host;
    this.log = log;
  }

  /**
   * Starts serving. Returns when requests are taken; a hook stops the server, letting running
   * answers finish, when the program is asked to end.
   *
   * @param tracer does the work; called from several threads
   * @param host the address to listen on
   * @param port 0 for any free one
   * @throws IllegalArgumentException if there is no such host
   * @throws RuntimeException if the port is taken
   */
  public static WebFace start(Tracer tracer, String host, int port) {
    return start(tracer, Doorway.at(host, port));
  }

  /** Starts serving with nothing but what works on sheets. */
  static WebFace start(Tracer tracer, Doorway doorway) {
    return start(tracer, Stock.only(LoafPictures.none()), Optional.empty(), doorway);
  }

  /** Starts serving a log of bakes, without what teaches. */
  static WebFace start(
      Tracer tracer, LoafPictures pictures, Optional<LogServing> log, String host, int port) {
    return start(tracer, Stock.only(pictures), log, Doorway.at(host, port));
  }

  /**
   * Starts serving, with the pages that teach and with pictures.
   *
   * @param school works the lessons out; called from several threads
   * @param pictures of the signs that reports speak of
   */
  public static WebFace start(
      Tracer tracer, School school, LoafPictures pictures, String host, int port) {
    return start(
        tracer, Stock.only(pictures).with(school), Optional.empty(), Doorway.at(host, port));
  }

  /**
   * Starts serving all there is.
   *
   * @param shelf what the rules know, to be looked up
   */
  public static WebFace start(
      Tracer tracer, School school, Shelf shelf, LoafPictures pictures, String host, int port) {
    return start(
        tracer,
        Stock.only(pictures).with(school).with(shelf),
        Optional.empty(),
        Doorway.at(host, port));
  }

  /**
   * Starts serving all there is, and the handbook.
   *
   * @param shelf what the rules know, to be looked up
   * @param leaves the pages of the handbook
   */
  public static WebFace start(
      Tracer tracer,
      School school,
      Shelf shelf,
      Leaves leaves,
      LoafPictures pictures,
      String host,
      int port) {
    return start(tracer, school, shelf, leaves, pictures, Optional.empty(), Doorway.at(host, port));
  }

  /**
   * Starts serving all there is, and a log of bakes.
   *
   * @param log closed with the server; empty where bakes are not kept
   */
  public static WebFace start(
      Tracer tracer,
      School school,
      Shelf shelf,
      Leaves leaves,
      LoafPictures pictures,
      Optional<LogServing> log,
      Doorway doorway) {
    return start(tracer, Stock.only(pictures).with(school).with(shelf).with(leaves), log, doorway);
  }

  /**
   * Starts serving all there is, of which nothing need be there yet.
   *
   * @param work does the work; called from several threads
   * @param stock what there is beside it
   * @param log closed with the server; empty where bakes are not kept
   */
  public static WebFace start(Tracer work, Stock stock, Optional<LogServing> log, Doorway doorway) {
    LoafPictures pictures = stock.pictures();
    Visits visits = doorway.visits();
    boolean proxied = visits.behindProxy() || log.map(LogServing::behindProxy).orElse(false);
    Guards guards = new Guards(isLoopback(doorway.host()) && !proxied);
    Measures measures = new Measures(doorway.watchers());
    Readiness readiness = new Readiness(work, log.map(LogServing::door));
    Tracer tracer = measures.counting(work);
    Javalin app =
        Javalin.create(
            config -> {
              configure(
                  config,
                  doorway,
                  new Routes(tracer, pictures, guards),
                  new Tongues(stock.catalogue()));
              measures.register(config);
              visits.limit(doorway.host()).ifPresent(one -> config.routes.before(one::check));
              stock
                  .catalogue()
                  .map(one -> new Once<>(() -> Teaching.of(one.get().knowledge())))
                  .ifPresent(one -> config.routes.before(ctx -> Teaching.attend(ctx, one)));
              stock
                  .school()
                  .ifPresent(one -> new LessonRoutes(one, guards).register(config.routes));
              stock
                  .leaves()
                  .ifPresent(one -> new LeafRoutes(one, pictures).register(config.routes));
              CauseNamer causes = new CauseNamer(stock.catalogue());
              Consumer<Map<crumbtrail.api.Endpoint, Handler>> logApi =
                  log.map(one -> one.register(config.routes, guards, tracer, causes, pictures))
                      .orElse(bound -> {});
              if (log.isEmpty()) {
                config.routes.get("/log", ctx -> Rendering.page(ctx, "nolog.jte"));
              }
              new ApiRoutes(
                      tracer, stock.school(), stock.shelf(), logApi, readiness, measures, guards)
                  .register(config.routes);
            });
    Heads.answer(app);
    app.start(doorway.host(), doorway.port());
    WebFace face = new WebFace(app, doorway.host(), log);
    Runtime.getRuntime().addShutdownHook(new Thread(face::close, "stop-serving"));
    return face;
  }

  /** Where the form page is. */
  public URI address() {
    String name = host.contains(":") ? "[" + host + "]" : host;
    return URI.create("http://" + name + ":" + app.port() + "/");
  }

  /** Stops taking requests, waits a little for those that run, and frees the port. */
  @Override
  public void close() {
    app.stop();
    log.ifPresent(one -> one.door().close());
  }

  /** Method and path of every route, for tests. */
  List<String> routes() {
    return app.unsafe.internalRouter.allHttpHandlers().stream()
        .map(parsed -> parsed.endpoint)
        .filter(endpoint -> endpoint.method.isHttpMethod())
        .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
        .toList();
  }

  private static void configure(
      JavalinConfig config, Doorway doorway, Routes routes, Tongues tongues) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.maxRequestSize = BODY_LIMIT;
    config.http.strictContentTypes = true;
    config.http.prefer405over404 = true;
    config.jetty.multipartConfig.maxFileSize(PhotoMaker.MOST_BYTES, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxTotalRequestSize(
        PhotoMaker.MOST_BYTES + BODY_LIMIT, SizeUnit.BYTES);
    config.jetty.multipartConfig.maxInMemoryFileSize(BODY_LIMIT, SizeUnit.BYTES);
    config.jetty.threadPool = new QueuedThreadPool(doorway.workers());
    SlowClients slow = new SlowClients(doorway.patience());
    config.jetty.addConnector((server, http) -> doorway.connector(server, http, slow));
    config.jetty.modifyHttpConfiguration(
        http -> {
          http.setSendServerVersion(false);
          http.addCustomizer(new SecurityHeaders());
        });
    config.jetty.modifyServletContextHandler(context -> context.setErrorHandler(new BareErrors()));
    config.jetty.modifyServer(
        server -> {
          server.setErrorHandler(new BareErrors());
          server.setStopTimeout(STOP_MILLIS);
          server.addBean(new NetworkConnectionLimit(doorway.connections(), server));
          server.insertHandler(slow);
          // A short body is waited for without a worker.
          server.insertHandler(
              new EagerContentHandler(
                  new EagerContentHandler.RetainedContentLoaderFactory(BODY_LIMIT, -1, false)));
          slow.watch(server);
        });
    config.staticFiles.add(
        files -> {
          files.directory = "/public";
          files.hostedPath = "/assets";
          files.location = Location.CLASSPATH;
          files.headers = Map.of("Cache-Control", "no-cache");
        });
    // What is compressed for some must not be kept for others.
    config.routes.before(ctx -> ctx.header("Vary", "Accept-Encoding"));
    config.routes.before(tongues::choose);
    Rendering.load();
    Errors.register(config);
    routes.register(config.routes);
  }

  /**
   * Whether only this machine can reach a server that listens there.
   *
   * @throws IllegalArgumentException if there is no such host
   */
  public static boolean isLoopback(String host) {
    try {
      return InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException e) {
      throw new IllegalArgumentException("There is no host " + host, e);
    }
  }
}
