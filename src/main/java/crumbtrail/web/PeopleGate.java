package crumbtrail.web;

import crumbtrail.people.People;
import crumbtrail.people.Person;
import crumbtrail.people.Rate;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import crumbtrail.people.Tokens;
import crumbtrail.web.KeepForm.Choice;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Lets in whoever is logged in. A browser shows a cookie, a program a bearer token; both stand for
 * a row in the store, so that every server on that store knows them.
 */
final class PeopleGate implements Gate, Classes {
  private static final String VIEWER = "viewer";
  private static final String BEARER = "Bearer ";

  private final Supplier<People> people;
  private final Proxy proxy;

  PeopleGate(Supplier<People> people, Proxy proxy) {
    this.people = people;
    this.proxy = proxy;
  }

  People people() {
    return people.get();
  }

  @Override
  public Viewer viewer(Context ctx) {
    return known(ctx).orElseThrow(LoggedOut::new);
  }

  @Override
  public Optional<Viewer> known(Context ctx) {
    Viewer known = ctx.attribute(VIEWER);
    if (known != null) {
      return Optional.of(known);
    }
    String token = token(ctx);
    if (token.isEmpty()) {
      return Optional.empty();
    }
    Optional<Viewer> found = people().loggedIn(Tokens.hash(token), Instant.now()).map(this::viewer);
    found.ifPresent(
        one -> {
          ctx.attribute(VIEWER, one);
          Seals.attend(ctx, Tokens.seal(token));
          LogBar.attend(ctx, one.person());
        });
    return found;
  }

  private Viewer viewer(Person person) {
    List<Long> taught =
        person.may(Role.TEACHER)
            ? people().taughtBy(person.id()).stream().map(SchoolClass::id).toList()
            : List.of();
    return new Viewer(person, taught, true);
  }

  /**
   * Whoever asks, if they have at least this role.
   *
   * @throws Refusal if they have not
   */
  Viewer viewer(Context ctx, Role role) {
    Viewer viewer = viewer(ctx);
    if (!viewer.person().may(role)) {
      throw new Refusal(
          403,
          role == Role.KEEPER
              ? "This is for keepers of the log."
              : "This is for teachers and keepers of the log.");
    }
    return viewer;
  }

  @Override
  public void checkSeal(Context ctx, Map<String, String> fields) {
    Viewer viewer = viewer(ctx);
    if (!Tokens.same(Seals.of(ctx), fields.getOrDefault(LogForms.SEAL, ""))) {
      throw new Refusal(
          403, "The form was made for another log-in. Open the page again and send it from there.");
    }
    count(ctx, viewer);
  }

  @Override
  public void count(Context ctx, Viewer viewer) {
    limit(ctx, "posts " + viewer.person().id(), Rate.POSTS);
  }

  /**
   * Counts one more of something.
   *
   * @throws Refusal if it is too often
   */
  void limit(Context ctx, String name, Rate rate) {
    people().take(name, rate, Instant.now()).ifPresent(wait -> refuse(ctx, wait));
  }

  private static void refuse(Context ctx, Duration wait) {
    long seconds = Math.max(1, wait.toSeconds() + 1);
    ctx.header("Retry-After", String.valueOf(seconds));
    throw new Refusal(429, "Too many tries. Wait " + seconds + " seconds and try again.");
  }

  /** From where somebody asks. */
  String peer(Context ctx) {
    return proxy.peer(ctx);
  }

  // Programs send no cookies, and pages no bearer tokens: a page of another origin can use neither.
  String token(Context ctx) {
    if (ctx.path().startsWith("/api/")) {
      String said = String.valueOf(ctx.header("Authorization"));
      return said.startsWith(BEARER) ? said.substring(BEARER.length()).strip() : "";
    }
    String cookie = ctx.cookie(cookieName(ctx));
    return cookie == null ? "" : cookie;
  }

  // A browser takes a name with this beginning only in cipher, for the whole site, from itself.
  private String cookieName(Context ctx) {
    return proxy.secure(ctx) ? "__Host-crumbtrail" : "crumbtrail";
  }

  /** Logs somebody in and returns their token. */
  String begin(Person person) {
    String token = Tokens.fresh();
    people().begin(Tokens.hash(token), person.id(), Instant.now());
    return token;
  }

  /** Logs a browser in, under a token that nobody has seen before. */
  void letIn(Context ctx, Person person) {
    String token = begin(person);
    ctx.cookie(cookie(ctx, token, -1));
    ctx.attribute(VIEWER, viewer(person));
    Seals.attend(ctx, Tokens.seal(token));
    LogBar.attend(ctx, person);
  }

  /** Logs out whoever asks. */
  void letOut(Context ctx) {
    String token = token(ctx);
    if (!token.isEmpty()) {
      people().end(Tokens.hash(token));
    }
    forget(ctx);
  }

  /** Takes the cookie back. */
  void forget(Context ctx) {
    ctx.cookie(cookie(ctx, "", 0));
  }

  // Without an age it ends with the browser, since a school has machines that many use.
  private Cookie cookie(Context ctx, String value, int age) {
    return new Cookie(
        cookieName(ctx), value, "/", age, proxy.secure(ctx), true, null, SameSite.LAX);
  }

  @Override
  public List<Choice> joined(Viewer viewer) {
    List<Choice> all = new ArrayList<>();
    people().joinedBy(viewer.person().id()).forEach(one -> all.add(choice(one)));
    people().taughtBy(viewer.person().id()).forEach(one -> all.add(choice(one)));
    return all.stream().distinct().toList();
  }

  private static Choice choice(SchoolClass one) {
    return new Choice(String.valueOf(one.id()), one.name());
  }

  @Override
  public List<Choice> shelves(Viewer viewer, Texts t) {
    if (!viewer.person().may(Role.TEACHER)) {
      return List.of();
    }
    List<Choice> all = new ArrayList<>();
    all.add(new Choice(Sight.OWN, t.of("log.whose.own")));
    people().taughtBy(viewer.person().id()).forEach(one -> all.add(choice(one)));
    if (viewer.person().may(Role.KEEPER)) {
      all.add(new Choice(Sight.ALL, t.of("log.whose.all")));
    }
    return all;
  }

  @Override
  public String baker(long owner) {
    return people().account(owner).map(one -> one.person().name()).orElse("–");
  }
}
