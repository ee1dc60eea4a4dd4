package crumbtrail.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.ServiceLoader;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Holds every model to the numbers that others published, and keeps the page of them current. */
class CheckTablesTest {
  private static final Path PAGE = Path.of("docs/science/checks.md");

  private static List<PublishedChecks> all() {
    return ServiceLoader.load(PublishedChecks.class).stream()
        .map(ServiceLoader.Provider::get)
        .sorted(Comparator.comparing(PublishedChecks::title))
        .toList();
  }

  @TestFactory
  Stream<DynamicContainer> models_agree_with_what_others_published() {
    return all().stream()
        .map(
            model ->
                DynamicContainer.dynamicContainer(
                    model.title(),
                    model.checks().stream()
                        .map(check -> DynamicTest.dynamicTest(check.what(), () -> hold(check)))));
  }

  private static void hold(Check check) {
    if (check.missed()) {
      assertThat(check.holds())
          .as("listed as missed, but ours is %s %s: say so no longer", check.ours(), check.unit())
          .isFalse();
    } else {
      assertThat(check.ours())
          .as("%s (%s)", check.what(), check.source())
          .isCloseTo(check.published(), within(check.tolerance() * (1 + 1e-9) + 1e-12));
    }
  }

  @Test
  void the_page_of_checks_is_current() throws IOException {
    String page = page();
    if (Boolean.getBoolean("crumbtrail.write")) {
      Files.writeString(PAGE, page);
    }
    assertThat(PAGE)
        .as("out of date; write it anew: mvn test -Dtest=CheckTablesTest -Dcrumbtrail.write=true")
        .hasContent(page);
  }

  private static String page() {
    List<PublishedChecks> models = all();
    List<Check> checks = models.stream().flatMap(model -> model.checks().stream()).toList();
    long missed = checks.stream().filter(Check::missed).count();
    String tables = models.stream().map(CheckTablesTest::table).collect(Collectors.joining("\n"));
    return """
        # The models against published numbers

        Written by the tests that hold the models to these numbers. %d checks, %d of them missed (marked so, with what is
        known of the reason). *May differ* is the largest difference that counts as agreement; why it is that large stands
        in the last column.

        %s"""
        .formatted(checks.size(), missed, tables);
  }

  private static String table(PublishedChecks model) {
    return """
        ## %s

        | check | published | ours | difference | may differ | unit | source | why this much |
        |---|---|---|---|---|---|---|---|
        %s"""
        .formatted(
            model.title(),
            model.checks().stream().map(CheckTablesTest::row).collect(Collectors.joining()));
  }

  private static String row(Check check) {
    return "| %s | %s | %s | %s%s | %s | %s | %s | %s |%n"
        .formatted(
            check.what(),
            number(check.published()),
            number(check.ours()),
            number(check.error()),
            check.missed() ? " **missed**" : "",
            number(check.tolerance()),
            check.unit(),
            check.source(),
            check.argument());
  }

  private static String number(double value) {
    double size = Math.abs(value);
    String format = size >= 1000 ? "%.0f" : size >= 10 ? "%.1f" : size >= 0.1 ? "%.2f" : "%.3f";
    String text = String.format(Locale.ROOT, size == 0 ? "%.0f" : format, value);
    return text.matches("-0(\\.0+)?") ? text.substring(1) : text;
  }
}
