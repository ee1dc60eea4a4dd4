package crumbtrail.web;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.StoreScope;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A browser before the pages of the packaged program. Both are started by the first class that asks
 * for them and serve all the others; each test finds the browser as if nobody had used it.
 */
final class Visit implements BeforeAllCallback, BeforeEachCallback {
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private Both both;

  /** What is started once and ended when all tests are done. */
  private record Both(Browser browser, Served served) implements AutoCloseable {

    static Both start() {
      try {
        return new Both(Browser.start(), Served.start());
      } catch (IOException fault) {
        throw new IllegalStateException("The browser or the server does not start", fault);
      }
    }

    @Override
    public void close() throws IOException {
      served.close();
      browser.close();
    }
  }

  @Override
  public void beforeAll(ExtensionContext context) {
    // Of the session, since Maven runs each class by itself where several programs share the tests.
    both =
        context
            .getStore(StoreScope.LAUNCHER_SESSION, ExtensionContext.Namespace.GLOBAL)
            .getOrComputeIfAbsent(Both.class, key -> Both.start(), Both.class);
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    scripts(true);
    forget();
    browser().size(1200, 900);
    browser().scheme("light");
    page().manage().deleteAllCookies();
    page()
        .executeCdpCommand(
            "Storage.clearDataForOrigin",
            Map.of("origin", base(), "storageTypes", "local_storage,cookies"));
    page().get("about:blank");
    page()
        .executeCdpCommand(
            "Storage.clearDataForOrigin",
            Map.of("origin", base(), "storageTypes", "local_storage,cookies"));
    browser().console();
  }

  // A page that is left keeps its draft, and the browser may write that down after all was cleared.
  private void forget() {
    script(
        """
        try {
          localStorage.clear();
          sessionStorage.clear();
          Storage.prototype.setItem = () => {};
        } catch {
          // No page of ours.
        }
        """);
  }

  Browser browser() {
    return both.browser();
  }

  Served served() {
    return both.served();
  }

  ChromeDriver page() {
    return browser().driver();
  }

  /** The address of the server, without a slash at its end. */
  String base() {
    return served().address().toString().replaceFirst("/$", "");
  }

  /** Goes to an address of the server, which begins with a slash. */
  void open(String path) {
    page().get(base() + path);
  }

  /** Goes to a stop of the tour. */
  void stop(String name) {
    Tour.stops().stream()
        .filter(stop -> stop.name().equals(name))
        .findFirst()
        .orElseThrow()
        .visit(browser(), served());
  }

  void scripts(boolean run) {
    page().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
  }

  Object script(String script) {
    return browser().script(script);
  }

  /** Waits until a condition is true; a page that is being left answers nothing for a moment. */
  void until(String condition) {
    new WebDriverWait(page(), PATIENCE)
        .ignoring(JavascriptException.class, NoSuchElementException.class)
        .withMessage(() -> condition + " on " + page().getCurrentUrl() + ":\n" + state())
        .until(driver -> Boolean.TRUE.equals(script("return " + condition)));
  }

  // What a reader of a failed run would want to see.
  private String state() {
    return script(
            "return document.readyState + '\\n' + (document.body?.innerText ?? '') + '\\n'"
                + " + JSON.stringify(performance.getEntriesByType('resource')"
                + ".map(one => [one.name, one.duration, one.responseStatus]))")
        + "\n"
        + browser().console();
  }

  /**
   * Does what leads to another page, and waits until that is there: a busy browser may show the
   * page before for a while, with the same fields on it.
   */
  void leaving(Runnable act) {
    script("window.isLeft = true");
    act.run();
    until("!window.isLeft && document.readyState === 'complete'");
  }

  /** Presses what leads to another page, and waits for that. */
  void follow(String css) {
    follow(By.cssSelector(css));
  }

  void follow(By what) {
    leaving(() -> click(what));
  }

  /** Asks for the same page once more. */
  void reload() {
    leaving(() -> page().navigate().refresh());
  }

  /** A busy browser may still show the page before, so what is to be there is waited for. */
  WebElement awaited(By what) {
    return new WebDriverWait(page(), PATIENCE).until(there -> there.findElement(what));
  }

  void click(By what) {
    awaited(what).click();
  }

  void click(String css) {
    click(By.cssSelector(css));
  }

  String text(String css) {
    return new WebDriverWait(page(), PATIENCE)
        .ignoring(StaleElementReferenceException.class)
        .until(there -> there.findElement(By.cssSelector(css)).getText());
  }

  /** Waits until something says this, or begins with it; a page that is left may still be there. */
  void says(String css, String words) {
    new WebDriverWait(page(), PATIENCE)
        .ignoring(StaleElementReferenceException.class)
        .until(there -> there.findElement(By.cssSelector(css)).getText().startsWith(words));
  }

  List<String> texts(String css) {
    return page().findElements(By.cssSelector(css)).stream().map(WebElement::getText).toList();
  }

  void type(String id, String text) {
    awaited(By.id(id)).sendKeys(text);
  }

  String value(String id) {
    return awaited(By.id(id)).getDomProperty("value");
  }

  /** Sends the bake sheet off to find the cause. */
  void submit() {
    follow(".send.first button[type=submit]");
  }

  /** Opens the stages of the day; by script, since on a phone some lie under a button. */
  void openDay() {
    script("document.querySelectorAll('[id^=stage-]').forEach(one => one.open = true)");
  }

  void press(Keys key) {
    new Actions(page()).sendKeys(key).perform();
  }

  WebElement focused() {
    return page().switchTo().activeElement();
  }

  /** Runs a check on the page as paper shows it. */
  Object onPaper(String script) {
    page().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    try {
      return script(script);
    } finally {
      page().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", ""));
    }
  }
}
