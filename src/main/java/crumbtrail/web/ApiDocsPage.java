package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.api.Endpoint;
import crumbtrail.api.Endpoint.Topic;
import crumbtrail.api.ProblemKind;
import java.util.ArrayList;
import java.util.List;

/**
 * The page that describes the interface for programs.
 *
 * @param groups the addresses by topic
 * @param problems the kinds of problems
 * @param shapes what bodies and answers look like
 */
public record ApiDocsPage(List<Group> groups, List<ProblemKind> problems, List<ApiShape> shapes) {
  private static final String SERVER = "http://127.0.0.1:7280";

  /** Addresses of one topic. */
  public record Group(Topic topic, List<Entry> entries) {}

  /**
   * An address.
   *
   * @param curl a request that works, for a shell
   * @param takes names of the shapes of its bodies, each with its media type
   * @param answers names of the shapes of its answers
   */
  public record Entry(Endpoint endpoint, String curl, List<Link> takes, List<Link> answers) {}

  /**
   * The name of a shape.
   *
   * @param before words before the name
   * @param shape name of the shape, empty where there is only the words
   */
  public record Link(String before, String shape) {}

  static ApiDocsPage of(List<Endpoint> endpoints, JsonNode openApi) {
    List<Group> groups = new ArrayList<>();
    for (Topic topic : Topic.values()) {
      List<Entry> entries =
          endpoints.stream()
              .filter(endpoint -> endpoint.topic() == topic)
              .map(ApiDocsPage::entry)
              .toList();
      if (!entries.isEmpty()) {
        groups.add(new Group(topic, entries));
      }
    }
    return new ApiDocsPage(
        groups, List.of(ProblemKind.values()), ApiShape.all(openApi.at("/components/schemas")));
  }

  private static Entry entry(Endpoint endpoint) {
    return new Entry(
        endpoint,
        endpoint.curl(SERVER),
        endpoint.takes().stream().map(body -> link(body.type() + ": ", body.shape())).toList(),
        endpoint.answers().stream().map(shape -> link("", shape)).toList());
  }

  private static Link link(String before, Endpoint.Shape shape) {
    if (shape.type() == String.class) {
      return new Link(before + "text", "");
    }
    if (shape.type() == JsonNode.class) {
      return new Link(before + "an object", "");
    }
    return new Link(before + (shape.list() ? "list of " : ""), shape.type().getSimpleName());
  }
}
