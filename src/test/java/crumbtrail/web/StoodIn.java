package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.advice.Wish;
import crumbtrail.compare.Comparison;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.Replied;
import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import java.net.URI;
import java.net.http.HttpResponse;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** A server with a stand-in for the pipeline, started once for the tests of a class. */
final class StoodIn implements BeforeAllCallback, BeforeEachCallback, AfterAllCallback {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final AtomicReference<Tracer> tracer = new AtomicReference<>();
  private volatile BooleanSupplier ready = () -> true;
  private WebFace face;
  private Asker asker;

  @Override
  public void beforeAll(ExtensionContext context) {
    face = WebFace.start(tracer(), "127.0.0.1", 0);
    asker = new Asker(face.address());
  }

  @Override
  public void beforeEach(ExtensionContext context) {
    ready = () -> true;
    made(Samples.making(Samples.everywhere("plain words")));
  }

  @Override
  public void afterAll(ExtensionContext context) {
    face.close();
  }

  URI address() {
    return face.address();
  }

  Asker asker() {
    return asker;
  }

  /** What works on sheets from now on, until the end of the test. */
  void made(Tracer other) {
    tracer.set(other);
  }

  /** When the rules are laid out, until the end of the test. */
  void readyWhen(BooleanSupplier other) {
    ready = other;
  }

  // Whatever stands in at the time of the question.
  Tracer tracer() {
    return new Tracer() {
      @Override
      public Traced<Report> trace(String sheet) {
        return tracer.get().trace(sheet);
      }

      @Override
      public boolean ready() {
        return ready.getAsBoolean();
      }

      @Override
      public Traced<Report> causes(String sheet) {
        return tracer.get().causes(sheet);
      }

      @Override
      public Traced<Comparison> compare(String before, String after) {
        return tracer.get().compare(before, after);
      }

      @Override
      public Traced<Replied> reply(String sheet, Set<String> passed, Reply reply) {
        return tracer.get().reply(sheet, passed, reply);
      }

      @Override
      public Traced<Report> precheck(String sheet) {
        return tracer.get().precheck(sheet);
      }

      @Override
      public Traced<Report.NextBakeSheet> next(String sheet, Wish wish) {
        return tracer.get().next(sheet, wish);
      }

      @Override
      public RecipeLayout layout(JsonNode sheet) {
        return tracer.get().layout(sheet);
      }
    };
  }

  /** The answer as a problem of this status. */
  static JsonNode problem(HttpResponse<String> response, int status)
      throws JsonProcessingException {
    assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type"))
        .hasValueSatisfying(type -> assertThat(type).startsWith("application/problem+json"));
    assertGuarded(response);
    JsonNode problem = JSON.readTree(response.body());
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(problem.path("title").asText()).isNotEmpty();
    assertThat(problem.path("detail").asText()).isNotEmpty();
    return problem;
  }

  /** Every answer carries the headers that guard it. */
  static void assertGuarded(HttpResponse<String> response) {
    SecurityHeaders.ALL.forEach(
        (name, value) -> {
          if (!name.equals("Cache-Control")) {
            assertThat(response.headers().allValues(name)).as(name).containsExactly(value);
          }
        });
    assertThat(response.headers().firstValue("Server")).isEmpty();
  }
}
