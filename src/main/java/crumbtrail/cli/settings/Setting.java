package crumbtrail.cli.settings;

import crumbtrail.web.Doorway;
import crumbtrail.web.Visits;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What can be set for a server and its log, by option, environment or file. */
public enum Setting {
  HOST("127.0.0.1", Kind.TEXT, "address to listen on"),
  PORT("7280", Kind.PORT, "port to listen on; 0 takes a free one"),
  LOG("a file among your own data", Kind.TEXT, "the bake log: a file, or a PostgreSQL server"),
  NO_LOG("no", Kind.YES_NO, "keep no bakes"),
  PEOPLE("no", Kind.YES_NO, "several people share the log and log in"),
  BEHIND_PROXY(
      "no",
      Kind.YES_NO,
      "a proxy stands before the server and nobody else reaches it: believe what it says in"
          + " X-Forwarded-For and X-Forwarded-Proto"),
  METRICS(
      "here",
      Kind.WATCHERS,
      "who may read /metrics: here (programs on this machine), anywhere, nobody"),
  WORKERS(
      String.valueOf(Doorway.WORKERS),
      Kind.WORKERS,
      "how many requests are worked on at once; one keeps a core busy"),
  CONNECTIONS(
      String.valueOf(Doorway.CONNECTIONS),
      Kind.COUNT,
      "how many connections may be open at once; more wait until one closes"),
  POSTS_A_MINUTE(
      String.valueOf(Visits.USUAL),
      Kind.POSTS,
      "how often one address may send something to be worked on, where others reach the server; 0"
          + " for no limit"),
  PATIENCE(
      String.valueOf(Doorway.PATIENCE.toSeconds()),
      Kind.SECONDS,
      "seconds that a connection may lie idle, and that a client has before it must keep up a speed"),
  RULES("the built-in ones", Kind.TEXT, "a rules folder of your own");

  private static final int MOST_PORT = 65_535;

  /** What a value may be. */
  enum Kind {
    TEXT("", "Write what is meant behind it."),
    PORT("whole number", "Write a number from 0 to 65535, such as 7280."),
    WORKERS("whole number", "Write a number from " + Doorway.FEWEST_WORKERS + " to 1000."),
    POSTS("whole number", "Write a number from 0 to " + Visits.MOST + "."),
    COUNT("whole number", "Write a number from 10 to 1000000."),
    SECONDS("number of seconds", "Write a number from 1 to 3600, such as 30."),
    YES_NO("yes or no", "Write yes or no."),
    WATCHERS("one of these", "Write here, anywhere or nobody.");

    private final String what;
    private final String remedy;

    Kind(String what, String remedy) {
      this.what = what;
      this.remedy = remedy;
    }

    boolean takes(String value) {
      return switch (this) {
        case TEXT -> !value.isBlank();
        case PORT -> within(value, 0, MOST_PORT);
        case WORKERS -> within(value, Doorway.FEWEST_WORKERS, 1000);
        case POSTS -> within(value, 0, Visits.MOST);
        case COUNT -> within(value, 10, 1_000_000);
        case SECONDS -> within(value, 1, 3600);
        case YES_NO -> value.matches("yes|no");
        case WATCHERS -> value.matches("here|anywhere|nobody");
      };
    }

    private static boolean within(String value, int least, int most) {
      return value.matches("\\d{1,7}")
          && Integer.parseInt(value) >= least
          && Integer.parseInt(value) <= most;
    }
  }

  private final String usual;
  private final Kind kind;
  private final String meaning;

  Setting(String usual, Kind kind, String meaning) {
    this.usual = usual;
    this.kind = kind;
    this.meaning = meaning;
  }

  /** Its name in a file. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Its name on the command line. */
  public String option() {
    return "--" + key();
  }

  /** Its name in the environment. */
  public String variable() {
    return "CRUMBTRAIL_" + name();
  }

  /** What holds where nothing is said. */
  public String usual() {
    return usual;
  }

  /** What it sets, without a full stop. */
  public String meaning() {
    return meaning;
  }

  /** Whether what is usual is a value that could be written. */
  boolean hasUsualValue() {
    return this != LOG && this != RULES;
  }

  /** Whether it is set by an option that takes no value. */
  boolean flag() {
    return kind == Kind.YES_NO;
  }

  /**
   * What is wrong with a value.
   *
   * @param where where it stands, for people
   */
  Optional<String> fault(String where, String value) {
    if (kind.takes(value)) {
      return Optional.empty();
    }
    // The address of a log may hold a password.
    String said = kind == Kind.TEXT ? "there is nothing" : "\"" + value + "\" is no " + kind.what;
    if (kind == Kind.YES_NO || kind == Kind.WATCHERS) {
      said = "\"" + value + "\" is not " + kind.what;
    }
    return Optional.of(where + ": " + said + ". " + kind.remedy);
  }

  static List<String> keys() {
    return Arrays.stream(values()).map(Setting::key).toList();
  }
}
