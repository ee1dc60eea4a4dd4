package crumbtrail.web;

import crumbtrail.api.Classroom;
import crumbtrail.api.Shelf;
import crumbtrail.handbook.Leaves;
import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.http.HandlerType;
import io.javalin.http.staticfiles.Location;
import io.javalin.router.Endpoint;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jetty.util.thread.QueuedThreadPool;

/** The pages and the programming interface, served over HTTP. */
public final class WebFace implements AutoCloseable {

  /** The longest body that is read, in bytes; a long recipe with its process is under 8,000. */
  public static final int BODY_LIMIT = 64 * 1024;

  /** Bounds how many sheets are worked on at once; working on one keeps a core busy. */
  private static final int THREADS = 32;

  /** How long a stop waits for answers that are being worked out. */
  private static final long STOP_MILLIS = 5_000;

  private final Javalin app;
  private final String host;

  private WebFace(Javalin app, String host) {
    this.app = app;
    this.host = host;
  }

  /**
   * Starts serving. Returns when requests are taken; a hook stops the server, letting running
   * answers finish, when the program is asked to end.
   *
   * @param tracer does the work; called from several threads
   * @param host the address to listen on, such as {@code 127.0.0.1}
   * @param port 0 for any free one
   * @throws IllegalArgumentException if there is no such host
   * @throws RuntimeException if the port is taken
   */
  public static WebFace start(Tracer tracer, String host, int port) {
    return start(
        tracer,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        LoafPictures.none(),
        host,
        port);
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
        tracer, Optional.of(school), Optional.empty(), Optional.empty(), pictures, host, port);
  }

  /**
   * Starts serving all there is.
   *
   * @param shelf what the rules know, to be looked up
   */
  public static WebFace start(
      Tracer tracer, School school, Shelf shelf, LoafPictures pictures, String host, int port) {
    return start(
        tracer, Optional.of(school), Optional.of(shelf), Optional.empty(), pictures, host, port);
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
    return start(
        tracer, Optional.of(school), Optional.of(shelf), Optional.of(leaves), pictures, host, port);
  }

  private static WebFace start(
      Tracer tracer,
      Optional<School> school,
      Optional<Shelf> shelf,
      Optional<Leaves> leaves,
      LoafPictures pictures,
      String host,
      int port) {
    Guards guards = new Guards(isLoopback(host));
    Javalin app =
        Javalin.create(
            config -> {
              configure(config, new Routes(tracer, pictures, guards), Tongues.of(shelf));
              shelf
                  .map(one -> Teaching.of(one.catalogue().knowledge()))
                  .ifPresent(one -> config.routes.before(one::attend));
              school.ifPresent(one -> new LessonRoutes(one, guards).register(config.routes));
              leaves.ifPresent(one -> new LeafRoutes(one, pictures).register(config.routes));
              new ApiRoutes(tracer, school.map(Classroom::new), shelf, guards)
                  .register(config.routes);
            });
    answerHeads(app);
    app.start(host, port);
    WebFace face = new WebFace(app, host);
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
  }

  // Whoever asks for the head of a page gets that of the page, not an empty one.
  private static void answerHeads(Javalin app) {
    app.unsafe.internalRouter.allHttpHandlers().stream()
        .map(parsed -> parsed.endpoint)
        .filter(endpoint -> endpoint.method.equals(HandlerType.GET))
        .toList()
        .forEach(
            endpoint ->
                app.unsafe.internalRouter.addHttpEndpoint(
                    new Endpoint(HandlerType.HEAD, endpoint.path, endpoint.handler)));
  }

  /** Method and path of every route, for tests. */
  List<String> routes() {
    return app.unsafe.internalRouter.allHttpHandlers().stream()
        .map(parsed -> parsed.endpoint)
        .filter(endpoint -> endpoint.method.isHttpMethod())
        .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
        .toList();
  }

  private static void configure(JavalinConfig config, Routes routes, Tongues tongues) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.maxRequestSize = BODY_LIMIT;
    config.http.strictContentTypes = true;
    config.http.prefer405over404 = true;
    config.jetty.threadPool = new QueuedThreadPool(THREADS);
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
        });
    config.staticFiles.add(
        files -> {
          files.directory = "/public";
          files.hostedPath = "/assets";
          files.location = Location.CLASSPATH;
          files.headers = Map.of("Cache-Control", "no-cache");
        });
    TemplateEngine templates = TemplateEngine.createPrecompiled(ContentType.Html);
    config.fileRenderer(
        (name, model, ctx) -> {
          Texts texts = Texts.of(ctx);
          ctx.header("Content-Language", texts.of("page.lang"));
          ctx.header("Vary", "Accept-Encoding, Accept-Language, Cookie");
          Map<String, Object> whole = new LinkedHashMap<>(model);
          whole.put("t", texts);
          StringOutput output = new StringOutput();
          templates.render(name, whole, output);
          return output.toString();
        });
    // What is compressed for some must not be kept for others.
    config.routes.before(ctx -> ctx.header("Vary", "Accept-Encoding"));
    config.routes.before(tongues::choose);
    Errors.register(config);
    routes.register(config.routes);
  }

  private static boolean isLoopback(String host) {
    try {
      return InetAddress.getByName(host).isLoopbackAddress();
    } catch (UnknownHostException e) {
      throw new IllegalArgumentException("There is no host " + host, e);
    }
  }
}
