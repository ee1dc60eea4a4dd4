package crumbtrail.web;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.openqa.selenium.chrome.ChromeDriver;

/** Looks a page over by the rules of axe-core: WCAG 2.0 to 2.2, A and AA, and its good practice. */
final class Axe {
  private static final String RULES = read("/axe.min.js");

  private static final String ALL =
      "{type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa',"
          + " 'best-practice']}";

  // Drawings are images as a whole; looking at each of their strokes would take minutes. One line
  // for each fault: the rule, where, and what would do.
  private static final String RUN =
      """
      const done = arguments[arguments.length - 1];
      axe.run({include: [document], exclude: [['.loaves svg > *'], ['.drawn svg > *']]}, {resultTypes: ['violations'], runOnly: %s}).then(
        result => done(result.violations.map(fault => fault.id + ': ' + fault.nodes.slice(0, 4).map(
          node => node.target.join(' ') + ' ' + node.failureSummary.replace(/\\s+/g, ' ')).join(' | '))),
        wrong => done(['axe itself failed: ' + wrong]));
      """;

  private Axe() {}

  /** What is wrong with the page as it stands; empty if nothing is. */
  static List<String> faults(ChromeDriver page) {
    return faults(page, ALL);
  }

  /** The same of some rules only, which are named. */
  static List<String> faults(ChromeDriver page, List<String> rules) {
    return faults(
        page,
        rules.stream()
            .map(rule -> "'" + rule + "'")
            .collect(Collectors.joining(", ", "{type: 'rule', values: [", "]}")));
  }

  private static List<String> faults(ChromeDriver page, String rules) {
    if (page.executeScript("return !window.axe").equals(true)) {
      page.executeScript(RULES);
    }
    return ((List<?>) page.executeAsyncScript(RUN.formatted(rules)))
        .stream().map(String::valueOf).toList();
  }

  private static String read(String name) {
    try (InputStream in = AxeBuilder.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
