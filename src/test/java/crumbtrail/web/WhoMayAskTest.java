package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.store.SqlLogStore;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every address for programs of a shared log, asked by everybody. */
class WhoMayAskTest {
  /**
   * What is answered to: nobody, the baker, another baker of the class, the teacher of the class,
   * another teacher, a keeper. {id} is a bake that was given to the class, {own} one that was not.
   * After the address stands what is sent.
   */
  private static final String MATRIX =
      """
      GET bakes                             | 401 200 200 200 200 200
      GET bakes?of={class}                  | 401 404 404 200 404 200
      GET bakes?of=all                      | 401 403 403 403 403 200
      POST bakes {"sheet":{"formula":["500 g flour"]}} | 401 200 200 200 200 200
      POST bakes {"sheet":{"formula":["500 g flour"]},"schoolClass":{class}} | 401 200 200 200 403 403
      GET bakes/{id}                        | 401 200 404 200 404 200
      GET bakes/{own}                       | 401 200 404 404 404 200
      PATCH bakes/{id} {"note":"x"}         | 401 200 404 403 404 403
      PATCH bakes/{own} {"note":"x"}        | 401 200 404 404 404 403
      DELETE bakes/{id}                     | 401 200 404 403 404 200
      DELETE bakes/{own}                    | 401 200 404 404 404 200
      POST bakes/{id}/photos {"picture":"x"} | 401 400 404 400 404 400
      GET photos/{photo}                    | 401 200 404 200 404 200
      GET photos/{ownphoto}                 | 401 200 404 404 404 200
      DELETE photos/{photo}                 | 401 200 404 403 404 200
      DELETE photos/{ownphoto}              | 401 200 404 404 404 200
      GET bakes/{id}/since                  | 401 200 404 200 404 200
      GET bakes/{own}/since                 | 401 200 404 404 404 200
      GET bakes/{id}/compare?better={own}   | 401 200 404 404 404 200
      GET trends?of={class}                 | 401 404 404 503 404 503
      GET learnt                            | 401 503 503 503 503 503
      GET calibration?of={class}            | 401 404 404 200 404 200
      POST session {}                       | 400 400 400 400 400 400
      DELETE session                        | 401 200 200 200 200 200
      DELETE sessions                       | 401 200 200 200 200 200
      POST account {"code":"AAAAA-BBBBB"}   | 400 400 400 400 400 400
      GET account                           | 401 200 200 200 200 200
      PATCH account {"old":"x","password":"a longer password"} | 401 400 400 400 400 400
      POST account/classes {"code":"AAAAA-BBBBB"} | 401 200 200 200 200 200
      DELETE account/classes/{class}        | 401 200 200 404 404 404
      POST account/delete {"password":"x"}  | 401 400 400 400 400 400
      GET classes                           | 401 403 403 200 200 200
      POST classes {"name":"New"}           | 401 403 403 200 200 200
      POST classes/{class}/code             | 401 403 403 200 404 200
      DELETE classes/{class}/code           | 401 403 403 200 404 200
      DELETE classes/{class}/members/{person} | 401 403 403 200 404 200
      DELETE classes/{class}                | 401 403 403 200 404 200
      GET people                            | 401 403 403 403 403 200
      POST people {"name":"Pia","role":"baker","password":"a longer password"} | 401 403 403 403 403 200
      PATCH people/{person} {"role":"teacher"} | 401 403 403 403 403 200
      DELETE people/{person}?name=Jon       | 401 403 403 403 403 200
      """;

  @TempDir static Path folder;

  private static LogPlace place;
  private static WebFace face;
  private static Asker asker;

  private LogStore store;
  private MadeSchool school;
  private List<Member> members;

  @BeforeAll
  static void serve() {
    place = LogFace.file(folder);
    face = LogFace.bare(new LogServing(new LogDoor(() -> SqlLogStore.open(place)), true, false));
    asker = new Asker(face.address());
  }

  @AfterAll
  static void stop() {
    face.close();
  }

  @BeforeEach
  void school() {
    store = SqlLogStore.open(place);
    school = MadeSchool.anew(store);
    members = school.members(asker);
  }

  @AfterEach
  void close() {
    store.close();
  }

  record Row(String method, String path, String body, List<Integer> answers) {}

  static List<Row> rows() {
    return MATRIX
        .lines()
        .map(
            line -> {
              String[] sides = line.split("\\|");
              String[] asked = sides[0].strip().split(" ", 3);
              return new Row(
                  asked[0],
                  "/api/log/" + asked[1],
                  asked.length > 2 ? asked[2] : "",
                  Stream.of(sides[1].strip().split(" ")).map(Integer::valueOf).toList());
            })
        .toList();
  }

  /** One question to one member, since many of them change what is asked about. */
  record Question(Row row, int member) {}

  static Stream<Question> questions() {
    return rows().stream()
        .flatMap(
            row ->
                Stream.iterate(0, member -> member < 6, member -> member + 1)
                    .map(member -> new Question(row, member)));
  }

  @Test
  void every_address_is_in_the_matrix() {
    Set<String> asked =
        rows().stream()
            .map(row -> row.method() + " " + row.path().replaceFirst("\\?.*", ""))
            .map(row -> row.replaceAll("\\{\\w+}", "{}"))
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> served =
        face.routes().stream()
            .filter(route -> route.matches("(GET|POST|PUT|PATCH|DELETE) /api/log/.*"))
            .map(route -> route.replaceAll("\\{\\w+}", "{}"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(served).isEqualTo(asked);
  }

  @ParameterizedTest
  @MethodSource("questions")
  void everybody_gets_what_is_theirs(Question question) {
    Row row = question.row();
    HttpResponse<String> answer = ask(row, question.member());
    assertThat(answer.statusCode())
        .as(answer.body())
        .isEqualTo(row.answers().get(question.member()));
    StoodIn.assertGuarded(answer);
    if (answer.statusCode() >= 400) {
      assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
      assertThat(answer.body()).doesNotContain("Tin loaf, class", "close near");
      assertThat(school.jonsBakes()).hasSize(2);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void a_page_of_another_origin_changes_nothing(Row row) {
    if (row.method().equals("GET")) {
      return;
    }
    HttpResponse<String> answer = ask(row, 5, "Origin", "http://evil.example");
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(403);
    assertThat(school.jonsBakes()).hasSize(2);
    assertThat(store.people().account("Jon")).isPresent();
  }

  private HttpResponse<String> ask(Row row, int member, String... more) {
    String token = members.get(member).token();
    List<String> headers = new java.util.ArrayList<>(List.of(more));
    if (!token.isEmpty()) {
      headers.addAll(List.of("Authorization", "Bearer " + token));
    }
    String path = school.filled(row.path());
    String[] all = headers.toArray(String[]::new);
    return row.body().isEmpty()
        ? asker.method(row.method(), path, all)
        : asker.send(row.method(), path, Asker.JSON, school.filled(row.body()), all);
  }
}
