package crumbtrail.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.api.Endpoint.Body;
import crumbtrail.api.Endpoint.Parameter;
import crumbtrail.api.Endpoint.Shape;
import crumbtrail.api.Endpoint.Topic;
import crumbtrail.report.Report;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The description of the interface for programs as OpenAPI 3.1. */
public final class OpenApi {
  private static final String JSON = "application/json";
  private static final String TEXT = "text/plain";
  private static final String PROBLEM = "application/problem+json";
  private static final String TOKEN = "token";
  private static final String RESPONSES = "#/components/responses/";

  // What every address can answer with.
  private static final Set<ProblemKind> ALWAYS =
      EnumSet.of(
          ProblemKind.METHOD_NOT_ALLOWED,
          ProblemKind.NOT_ACCEPTABLE,
          ProblemKind.MISDIRECTED,
          ProblemKind.PROGRAM_FAULT);

  private final Schemas schemas = new Schemas();
  private final ObjectNode document;

  private OpenApi(Collection<Endpoint> endpoints) {
    document = JsonNodeFactory.instance.objectNode();
    document.put("openapi", "3.1.1");
    document
        .putObject("info")
        .put("title", "Crumbtrail")
        .put("summary", "Why did my bake fail, and what do I change?")
        .put(
            "description",
            "Bake sheets in, answers out. Nothing that is sent is kept, but for what is put into"
                + " the bake log. Errors are problem details as in RFC 9457.")
        .put("version", "1")
        .putObject("license")
        .put("name", "Apache-2.0")
        .put("identifier", "Apache-2.0");
    document.putArray("servers").addObject().put("url", "/");
    ArrayNode tags = document.putArray("tags");
    for (Topic topic : Topic.values()) {
      tags.addObject().put("name", topic.title()).put("description", topic.about());
    }
    ObjectNode paths = document.putObject("paths");
    for (Endpoint endpoint : endpoints) {
      paths
          .withObjectProperty(endpoint.path())
          .set(endpoint.method().toLowerCase(Locale.ROOT), operation(endpoint));
    }
    ObjectNode components = document.putObject("components");
    ObjectNode responses = components.putObject("responses");
    for (ProblemKind kind : ProblemKind.values()) {
      responses.set(String.valueOf(kind.status()), problem(kind.status()));
    }
    components
        .putObject("securitySchemes")
        .putObject(TOKEN)
        .put("type", "http")
        .put("scheme", "bearer")
        .put("description", "The token of a log-in, where several people share the log.");
    // The report stands on its own too, whether an address answers with it or not.
    schemas.of(Shape.one(Report.class));
    components.set("schemas", schemas.all());
  }

  /** The description of these addresses. */
  public static ObjectNode of(Collection<Endpoint> endpoints) {
    return new OpenApi(endpoints).document;
  }

  /** The schema of the bake sheet, to stand alone. */
  public static ObjectNode sheetSchema(ObjectNode openApi) {
    return Schemas.alone(all(openApi), "BakeSheet", "/schemas/bake-sheet.json");
  }

  /** The schema of the report, to stand alone. */
  public static ObjectNode reportSchema(ObjectNode openApi) {
    return Schemas.alone(all(openApi), "Report", "/schemas/report.json");
  }

  private static ObjectNode all(ObjectNode openApi) {
    return (ObjectNode) openApi.at("/components/schemas");
  }

  private ObjectNode operation(Endpoint endpoint) {
    ObjectNode operation = JsonNodeFactory.instance.objectNode();
    operation.putArray("tags").add(endpoint.topic().title());
    operation.put("operationId", endpoint.id());
    operation.put("summary", endpoint.summary());
    operation.put("description", endpoint.detail());
    if (!endpoint.parameters().isEmpty()) {
      ArrayNode parameters = operation.putArray("parameters");
      endpoint.parameters().forEach(one -> parameters.add(parameter(one)));
    }
    if (endpoint.access() != Endpoint.Access.FREE) {
      ArrayNode security = operation.putArray("security");
      if (endpoint.access() == Endpoint.Access.KEEPS_LOG) {
        // Where one person keeps the log, nobody logs in.
        security.addObject();
      }
      security.addObject().putArray(TOKEN);
    }
    if (!endpoint.takes().isEmpty()) {
      ObjectNode body = operation.putObject("requestBody").put("required", true);
      ObjectNode content = body.putObject("content");
      for (Body one : endpoint.takes()) {
        ObjectNode media = content.putObject(one.type());
        media.set("schema", schemas.of(one.shape()));
        if (one.type().equals(endpoint.example().type())) {
          media.set("example", Examples.value(endpoint.example()));
        }
      }
    }
    ObjectNode responses = operation.putObject("responses");
    ObjectNode made = responses.putObject("200").put("description", endpoint.summary());
    boolean text = endpoint.answers().equals(List.of(Shape.one(String.class)));
    if (endpoint.stands() && !text) {
      made.set("headers", headers());
      responses
          .putObject("304")
          .put("description", "What the client has is still so (If-None-Match)");
    }
    made.putObject("content")
        .putObject(text ? TEXT : JSON)
        .set("schema", answer(endpoint.answers()));
    Set<ProblemKind> refusals = EnumSet.copyOf(ALWAYS);
    refusals.addAll(endpoint.refusals());
    for (ProblemKind kind : refusals) {
      String status = String.valueOf(kind.status());
      responses.set(status, reference(RESPONSES + status));
    }
    return operation;
  }

  private static ObjectNode headers() {
    ObjectNode headers = JsonNodeFactory.instance.objectNode();
    headers
        .putObject("ETag")
        .put("description", "Changes when the answer does")
        .putObject("schema")
        .put("type", "string");
    return headers;
  }

  private ObjectNode answer(List<Shape> shapes) {
    if (shapes.size() == 1) {
      return schemas.of(shapes.get(0));
    }
    ObjectNode any = JsonNodeFactory.instance.objectNode();
    ArrayNode choices = any.putArray("anyOf");
    shapes.forEach(shape -> choices.add(schemas.of(shape)));
    return any;
  }

  private static ObjectNode parameter(Parameter parameter) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("name", parameter.name());
    node.put("in", parameter.in());
    node.put("description", parameter.what());
    node.put("required", parameter.in().equals("path"));
    node.putObject("schema").put("type", "string");
    return node.put("example", parameter.example());
  }

  private ObjectNode problem(int status) {
    StringBuilder words = new StringBuilder();
    for (ProblemKind kind : ProblemKind.values()) {
      if (kind.status() == status) {
        words.append(words.isEmpty() ? "" : " Or: ").append(kind.title()).append(". ");
        words.append(kind.meaning());
      }
    }
    ObjectNode response = JsonNodeFactory.instance.objectNode();
    response.put("description", words.toString());
    response
        .putObject("content")
        .putObject(PROBLEM)
        .set("schema", schemas.of(Shape.one(ProblemAnswer.class)));
    return response;
  }

  private static ObjectNode reference(String to) {
    return JsonNodeFactory.instance.objectNode().put("$ref", to);
  }
}
