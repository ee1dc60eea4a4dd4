package crumbtrail.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Runs commands and listens to what they write, as a shell would. */
final class Listening implements BeforeEachCallback, AfterEachCallback {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private InputStream usualIn;
  private PrintStream usualOut;
  private PrintStream usualErr;

  @Override
  public void beforeEach(ExtensionContext context) {
    usualIn = System.in;
    usualOut = System.out;
    usualErr = System.err;
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  @Override
  public void afterEach(ExtensionContext context) {
    System.setIn(usualIn);
    System.setOut(usualOut);
    System.setErr(usualErr);
  }

  /** Runs a command line; what was heard before is forgotten. */
  int run(String... arguments) {
    out.reset();
    err.reset();
    return Main.run(arguments);
  }

  /** Runs a command line with a text coming through a pipe. */
  int piped(String text, String... arguments) {
    System.setIn(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    return run(arguments);
  }

  String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  String err() {
    return err.toString(StandardCharsets.UTF_8);
  }
}
