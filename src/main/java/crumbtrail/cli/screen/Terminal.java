package crumbtrail.cli.screen;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Where the program talks: which of its streams a person sits at, how wide the window is, and what
 * the environment says of colours. Found out when it is first asked for.
 */
public final class Terminal {
  /** The narrowest page that is written. */
  public static final int NARROWEST = 60;

  /** The widest: longer lines are hard to read. */
  public static final int WIDEST = 120;

  /** The width where nobody says otherwise. */
  public static final int USUAL = 80;

  private static final int IN = 1;
  private static final int OUT = 2;
  private static final int ERR = 4;
  private static final int UNKNOWN = -1;
  private static final String ASK =
      "n=0; [ -t 0 ] && n=1; [ -t 1 ] && n=$((n+2)); [ -t 2 ] && n=$((n+4)); exit $n";

  private final Map<String, String> environment;
  private int streams;
  private int width;

  private Terminal(Map<String, String> environment, int streams, int width) {
    this.environment = environment;
    this.streams = streams;
    this.width = width;
  }

  /** The one at which this program was started. */
  public static Terminal here() {
    return new Terminal(System.getenv(), UNKNOWN, UNKNOWN);
  }

  /** No terminal at any stream, and an empty environment. */
  public static Terminal piped() {
    return new Terminal(Map.of(), 0, USUAL);
  }

  /** A terminal at every stream. */
  public static Terminal of(int columns, Map<String, String> environment) {
    return new Terminal(environment, IN | OUT | ERR, columns);
  }

  /** Whether a person types the answers. */
  public boolean typed() {
    return (streams() & IN) != 0;
  }

  /** Whether standard output is read on a screen. */
  public boolean read() {
    return (streams() & OUT) != 0;
  }

  /** Whether standard error is read on a screen. */
  public boolean watched() {
    return (streams() & ERR) != 0;
  }

  /** Columns of a page, from {@value #NARROWEST} to {@value #WIDEST}. */
  public int width() {
    return Math.max(NARROWEST, Math.min(WIDEST, columns()));
  }

  /** Whether the environment wants colours where the command line does not say. */
  public boolean wantsColour() {
    if (!said("NO_COLOR").isEmpty()) {
      return false;
    }
    if (!said("CLICOLOR_FORCE").isEmpty() && !said("CLICOLOR_FORCE").equals("0")) {
      return true;
    }
    return !said("CLICOLOR").equals("0") && !said("TERM").equals("dumb") && read();
  }

  private String said(String name) {
    return environment.getOrDefault(name, "");
  }

  private int columns() {
    String said = said("COLUMNS").strip();
    if (said.matches("[1-9]\\d{0,4}")) {
      return Integer.parseInt(said);
    }
    if (!read()) {
      return USUAL;
    }
    if (width == UNKNOWN) {
      width = asked();
    }
    return width;
  }

  private int streams() {
    if (streams == UNKNOWN) {
      streams = tested();
    }
    return streams;
  }

  // Java knows only whether both ends are a terminal, or in later versions not even that. A shell
  // that inherits the streams tells each of them; where there is none, plain text is always right.
  private static int tested() {
    try {
      return new ProcessBuilder("sh", "-c", ASK).inheritIO().start().waitFor();
    } catch (IOException noShell) {
      return 0;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return 0;
    }
  }

  private static int asked() {
    try {
      Process asked = new ProcessBuilder("sh", "-c", "stty size </dev/tty 2>/dev/null").start();
      String said = new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      asked.waitFor(1, TimeUnit.SECONDS);
      String columns = said.strip().replaceFirst("^\\d+ ", "");
      // A serial line that does not know its size says nought.
      return columns.matches("[1-9]\\d{0,4}") ? Integer.parseInt(columns) : USUAL;
    } catch (IOException noShell) {
      return USUAL;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return USUAL;
    }
  }
}
