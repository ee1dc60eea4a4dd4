package crumbtrail.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/**
 * A script of another project, served from its web jar, so that no page asks another server.
 *
 * @param address where it is served; it holds the version, so that it may be kept for good
 * @param script its text
 */
record Library(String address, String script) {

  /** htmx, which swaps parts of a page for others that the server made. */
  static Library htmx() {
    String version = version("/META-INF/maven/org.webjars.npm/htmx.org/pom.properties");
    return new Library(
        "/assets/htmx-" + version + ".js",
        text("/META-INF/resources/webjars/htmx.org/" + version + "/dist/htmx.min.js"));
  }

  private static String version(String properties) {
    Properties all = new Properties();
    try (InputStream in = open(properties)) {
      all.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all.getProperty("version");
  }

  private static String text(String resource) {
    try (InputStream in = open(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InputStream open(String resource) {
    InputStream in = Library.class.getResourceAsStream(resource);
    if (in == null) {
      throw new IllegalStateException("The web jar of a script is missing: " + resource);
    }
    return in;
  }
}
