package crumbtrail.web;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packaged jar serving its pages, as a baker starts it. */
record Served(Process process, URI address) implements AutoCloseable {

  private static final Pattern LINE = Pattern.compile("Crumbtrail listens on (http://\\S+)");

  static Path jar() {
    return Path.of(System.getProperty("crumbtrail.jar", "target/crumbtrail.jar"));
  }

  static Served start() throws IOException {
    Process process =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-jar",
                jar().toString(),
                "serve",
                "--port",
                "0")
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
    for (String line = out.readLine(); line != null; line = out.readLine()) {
      Matcher matcher = LINE.matcher(line);
      if (matcher.find()) {
        return new Served(process, URI.create(matcher.group(1)));
      }
    }
    throw new IllegalStateException("The server ended without saying where it listens");
  }

  @Override
  public void close() {
    process.destroy();
    try {
      if (!process.waitFor(15, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
