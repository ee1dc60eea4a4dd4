package crumbtrail.web;

import crumbtrail.api.BakeEndpoints;
import crumbtrail.api.Endpoint;
import crumbtrail.api.Endpoint.Topic;
import crumbtrail.api.LogEndpoints;
import crumbtrail.api.LookUpEndpoints;
import crumbtrail.api.PeopleEndpoints;
import crumbtrail.api.ProblemKind;
import crumbtrail.api.StudyEndpoints;
import java.util.List;
import java.util.stream.Stream;

/** Writes {@code docs/api.md} from the descriptions of the addresses. */
final class ApiPage {
  static final String SERVER = "http://127.0.0.1:7280";

  private final StringBuilder page = new StringBuilder();

  private ApiPage() {}

  static String write() {
    ApiPage page = new ApiPage();
    page.opening();
    List<Endpoint> all =
        Stream.of(
                BakeEndpoints.ALL,
                LogEndpoints.ALL,
                StudyEndpoints.ALL,
                PeopleEndpoints.ALL,
                LookUpEndpoints.ALL)
            .flatMap(List::stream)
            .toList();
    for (Topic topic : Topic.values()) {
      page.line("## " + topic.title()).line("").line(topic.about()).line("");
      all.stream().filter(one -> one.topic() == topic).forEach(page::endpoint);
    }
    page.problems();
    return page.page.toString();
  }

  private void opening() {
    page.append(
        """
        # The interface for programs

        `crumbtrail serve` answers programs with JSON. Everything that the pages do can be asked for. Nothing that is sent is
        kept, but for what is put into the bake log. While it runs, `/openapi.json` describes all of it as OpenAPI 3.1 and `/api/docs` as a page;
        `/schemas/bake-sheet.json` and `/schemas/report.json` are JSON Schemas (2020-12). All of these, and this page, are
        written from the descriptions by which the addresses are registered.

        A test runs every example of this page against a server and compares the part of the answer that is shown; a list
        shows its first entries.

        ## How it keeps to HTTP

        - A body is `application/json` in UTF-8, 64 KiB at most, for the log 384 KiB. `POST /api/layout` takes `text/plain` too.
        - Answers are `application/json`. An `Accept` that leaves it out is refused with 406.
        - What is only read carries an `ETag` and may be kept; asked for again with `If-None-Match` it is answered with 304
          while it holds. Answers about a bake are `no-store`. What is kept carries an `ETag` too, which `If-Match` takes.
        - Longer answers are compressed with gzip for those who accept it.
        - `HEAD` answers as `GET` does, without the body; `OPTIONS` names the methods of an address in `Allow`.
        - Browsers are kept from calling it out of pages of another origin.
        - Where several people share a log ([operations.md](operations.md)), requests to the log carry the token of a log-in:
          `Authorization: Bearer TOKEN`. Cookies are for pages alone. No browser sends a token by itself, so that a page of
          another origin has nothing to misuse, and no second secret is needed against it. Below, `$TOKEN` stands for the
          token that *Log in* answered with.

        """);
  }

  private void endpoint(Endpoint one) {
    line("### " + one.summary()).line("");
    line("`" + one.method() + " " + one.path() + "`").line("");
    line(one.detail()).line("");
    if (!one.parameters().isEmpty()) {
      line("| parameter | where | what it is | such as |").line("|---|---|---|---|");
      one.parameters()
          .forEach(
              parameter ->
                  line(
                      "| `%s` | %s | %s | `%s` |"
                          .formatted(
                              parameter.name(),
                              parameter.in(),
                              parameter.what(),
                              parameter.example())));
      line("");
    }
    example(one.curl(SERVER), one.example().shown());
  }

  private void problems() {
    line("## Problems").line("");
    line(
        "Errors are problem details as in RFC 9457, `application/problem+json`. Their `type` leads");
    line("to a section of `/api/docs`.").line("");
    line("| status | title | what it means |").line("|---|---|---|");
    for (ProblemKind kind : ProblemKind.values()) {
      line("| %d | %s | %s |".formatted(kind.status(), kind.title(), kind.meaning()));
    }
    line("").line("A key that nobody knows:").line("");
    example(
        "curl -s " + SERVER + "/api/causes/moon-phase",
        "{\"type\": \"/api/docs#problem-not-found\", \"title\": \"Not found\", \"status\": 404}");
    line("A sheet with something wrong about it:").line("");
    example(
        new Endpoint.Example(
                "/api/trace", "application/json", "{\"formula\": [\"500 g flour\", 310]}", "")
            .curl(SERVER),
        "{\"type\": \"/api/docs#problem-bake-sheet\", \"status\": 400,\n"
            + " \"problems\": [{\"where\": \"formula[1]\"}]}");
  }

  private void example(String curl, String shown) {
    line("```sh").line(curl).line("```").line("");
    line("```json").line(shown).line("```").line("");
  }

  private ApiPage line(String line) {
    page.append(line).append('\n');
    return this;
  }
}
