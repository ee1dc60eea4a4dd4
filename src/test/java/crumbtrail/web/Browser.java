package crumbtrail.web;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A headless Chromium with a profile of its own. */
final class Browser implements AutoCloseable {

  private static final List<String> BROWSERS =
      List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");
  private static final List<String> DRIVERS =
      List.of("/usr/bin/chromedriver", "/usr/lib/chromium/chromedriver");

  /** Taller pictures take long and nobody looks at their end. */
  private static final int TALLEST = 6_000;

  private final ChromeDriver driver;
  private final Path profile;

  private Browser(ChromeDriver driver, Path profile) {
    this.driver = driver;
    this.profile = profile;
  }

  /** Starts the browser, or skips the test where there is none. */
  static Browser start() throws IOException {
    Optional<String> browser = firstOf(BROWSERS);
    Optional<String> chromeDriver = firstOf(DRIVERS);
    assumeTrue(
        browser.isPresent() && chromeDriver.isPresent(),
        "No Chromium with its driver found; install the packages chromium and chromium-driver");
    Path profile = Files.createTempDirectory("crumbtrail-browser");
    ChromeOptions options = new ChromeOptions();
    options.setBinary(browser.get());
    options.addArguments(
        "--headless",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--disable-dev-shm-usage",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    options.setCapability("goog:loggingPrefs", Map.of("browser", "ALL"));
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(Path.of(chromeDriver.get()).toFile())
            .build();
    return new Browser(new ChromeDriver(service, options), profile);
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Sets the size of the page in CSS pixels; narrower than any window can be made. */
  void size(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  void scheme(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  /** What the page wrote to the console: refused scripts, missing files, errors. */
  List<String> console() {
    return driver.manage().logs().get("browser").getAll().stream()
        .map(entry -> entry.getLevel() + " " + entry.getMessage())
        .toList();
  }

  /**
   * Keeps a picture of the page, its upper part where it is very tall, beside the packaged jar, for
   * people to look at.
   */
  void keepPicture(String name) throws IOException {
    int height = ((Number) script("return document.documentElement.scrollHeight")).intValue();
    int width = ((Number) script("return window.innerWidth")).intValue();
    size(width, Math.min(height, TALLEST));
    Files.write(shelf().resolve(name + ".png"), driver.getScreenshotAs(OutputType.BYTES));
  }

  /** Prints the page and returns the bytes of the PDF. */
  byte[] print(String name) throws IOException {
    Object data =
        driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true)).get("data");
    byte[] pdf = Base64.getDecoder().decode((String) data);
    Files.write(shelf().resolve(name + ".pdf"), pdf);
    return pdf;
  }

  /** Waits until a script answers true. */
  void until(String script) {
    new WebDriverWait(driver, Duration.ofSeconds(20)).until(page -> script(script).equals(true));
  }

  /** Forgets what pages were fetched before, so that the next is weighed whole. */
  void freshCache() {
    driver.executeCdpCommand("Network.clearBrowserCache", Map.of());
  }

  /** Bytes that the page and all that it fetched took on the way, headers with them. */
  long transferred() {
    return ((Number)
            script(
                "return performance.getEntriesByType('navigation')"
                    + ".concat(performance.getEntriesByType('resource'))"
                    + ".reduce((sum, one) => sum + one.transferSize, 0)"))
        .longValue();
  }

  /** How far things on the page have shifted since it began to be shown; 0 if they have not. */
  double shifted() {
    return ((Number)
            driver.executeAsyncScript(
                """
                const done = arguments[arguments.length - 1];
                let sum = 0;
                new PerformanceObserver(seen => seen.getEntries().forEach(one => sum += one.value))
                  .observe({type: 'layout-shift', buffered: true});
                requestAnimationFrame(() => setTimeout(() => done(sum), 100));
                """))
        .doubleValue();
  }

  /** Unfolds all that can be unfolded. */
  void unfold() {
    script("document.querySelectorAll('details').forEach(one => one.open = true)");
  }

  Object script(String script) {
    return driver.executeScript(script);
  }

  @Override
  public void close() throws IOException {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }

  private static Path shelf() throws IOException {
    return Files.createDirectories(Served.jar().resolveSibling("screenshots"));
  }

  private static Optional<String> firstOf(List<String> paths) {
    return paths.stream().filter(path -> Files.isExecutable(Path.of(path))).findFirst();
  }
}
