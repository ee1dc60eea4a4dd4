package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.store.SqlLogStore;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every address of a shared log, asked by everybody about bakes of their own and of others. */
class WhoMayTest {
  /**
   * What is answered to: nobody, the baker, another baker of the class, the teacher of the class,
   * another teacher, a keeper. {id} is a bake that was given to the class, {own} one that was not.
   */
  private static final String MATRIX =
      """
      GET /log                             | 303 200 200 200 200 200
      GET /log?of={class}                  | 303 404 404 200 404 200
      GET /log?of=all                      | 303 403 403 403 403 200
      GET /log/bakes.zip                   | 303 200 200 200 200 200
      GET /log/{id}                        | 303 200 404 200 404 200
      GET /log/{own}                       | 303 200 404 404 404 200
      GET /log/{id}/findings               | 303 200 404 200 404 200
      GET /log/{own}/findings              | 303 200 404 404 404 200
      GET /log/{id}/delete                 | 303 200 404 403 404 200
      GET /log/{own}/delete                | 303 200 404 404 404 200
      GET /log/photos/{photo}              | 303 200 404 200 404 200
      GET /log/photos/{ownphoto}           | 303 200 404 404 404 200
      POST /log                            | 401 303 303 303 303 303
      POST /log class={class}              | 401 303 303 303 400 400
      POST /log/{id} note=x                | 401 303 404 403 404 403
      POST /log/{own} note=x               | 401 303 404 404 404 403
      POST /log/{own} class={class}        | 401 303 404 404 403 403
      POST /log/{own} class={otherclass}   | 401 403 403 403 404 403
      POST /log/{id}/causes                | 401 303 404 403 404 403
      POST /log/{own}/causes               | 401 303 404 404 404 403
      POST /log/{id}/delete                | 401 303 404 403 404 303
      POST /log/{own}/delete               | 401 303 404 404 404 303
      POST /log/{id}/photos                | 401 303 404 403 404 403
      POST /log/{own}/photos               | 401 303 404 404 404 403
      POST /log/{id}/photos/{photo}/delete | 401 303 404 403 404 303
      POST /log/{own}/photos/{ownphoto}/delete | 401 303 404 404 404 303
      GET /log/study                       | 303 503 503 503 503 503
      GET /log/study?of={class}            | 303 404 404 503 404 503
      GET /log/{id}/since                  | 303 200 404 200 404 200
      GET /log/{own}/since                 | 303 200 404 404 404 200
      GET /log/{id}/compare?better={own}   | 303 200 404 404 404 200
      GET /log/in                          | 200 200 200 200 200 200
      POST /log/in                         | 401 401 401 401 401 401
      POST /log/out                        | 401 303 303 303 303 303
      POST /log/out/everywhere             | 401 303 303 303 303 303
      GET /log/join                        | 200 200 200 200 200 200
      POST /log/join                       | 400 400 400 400 400 400
      GET /log/account                     | 303 200 200 200 200 200
      POST /log/account/password           | 401 400 400 400 400 400
      POST /log/account/leave class={class} | 401 303 303 303 303 303
      GET /log/account/delete              | 303 200 200 200 200 200
      POST /log/account/delete             | 401 400 400 400 400 400
      GET /log/classes                     | 303 403 403 200 200 200
      POST /log/classes name=New           | 401 403 403 303 303 303
      POST /log/classes/{class}/code       | 401 403 403 303 404 303
      POST /log/classes/{class}/close      | 401 403 403 303 404 303
      POST /log/classes/{class}/remove     | 401 403 403 303 404 303
      POST /log/classes/{class}/end        | 401 403 403 303 404 303
      GET /log/people                      | 303 403 403 403 403 200
      POST /log/people                     | 401 403 403 403 403 400
      POST /log/people/{person}/role role=teacher | 401 403 403 403 403 303
      POST /log/people/{person}/password password=a+longer+password | 401 403 403 403 403 303
      POST /log/people/{person}/delete name=Jon | 401 403 403 403 403 303
      """;

  @TempDir static Path folder;

  private static LogPlace place;
  private static WebFace face;
  private static Asker asker;

  private LogStore store;
  private List<Member> members;
  private MadeSchool school;

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

  @org.junit.jupiter.api.AfterEach
  void close() {
    store.close();
  }

  record Row(String method, String path, String field, List<Integer> answers) {
    @Override
    public String toString() {
      return method + " " + path + " " + field;
    }
  }

  /** One question to one member, since many of them change what is asked about. */
  record Question(Row row, int member) {}

  static List<Row> rows() {
    return MATRIX
        .lines()
        .map(
            line -> {
              String[] sides = line.split("\\|");
              String[] asked = sides[0].strip().split(" ");
              return new Row(
                  asked[0],
                  asked[1],
                  asked.length > 2 ? asked[2] : "",
                  Stream.of(sides[1].strip().split(" ")).map(Integer::valueOf).toList());
            })
        .toList();
  }

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
            .filter(route -> route.matches("(GET|POST|PUT|PATCH|DELETE) /log.*"))
            .map(route -> route.replaceAll("\\{\\w+}", "{}"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(served).isEqualTo(asked);
  }

  @ParameterizedTest
  @MethodSource("questions")
  void everybody_gets_what_is_theirs(Question question) throws Exception {
    Row row = question.row();
    HttpResponse<String> answer = ask(row, members.get(question.member()));
    assertThat(answer.statusCode())
        .as(answer.body())
        .isEqualTo(row.answers().get(question.member()));
    StoodIn.assertGuarded(answer);
    if (answer.statusCode() >= 400) {
      assertThat(answer.body()).doesNotContain("Tin loaf, class", "close near");
      assertThat(school.jonsBakes()).hasSize(2);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void a_form_that_was_made_for_somebody_else_is_refused(Row row) throws Exception {
    if (!row.method().equals("POST") || row.path().equals("/log/in")) {
      return;
    }
    // The baker, the teacher, the keeper: each with a form that was made for the baker next door.
    for (int one : List.of(1, 3, 5)) {
      Member member = members.get(one);
      Map<String, String> fields = fields(row);
      fields.put("seal", crumbtrail.people.Tokens.seal(members.get(2).token()));
      assertThat(send(row, member, fields).statusCode()).as("member %d", one).isIn(403, 404);
      fields.remove("seal");
      assertThat(send(row, member, fields).statusCode()).as("member %d", one).isIn(403, 404);
    }
    assertThat(school.jonsBakes()).hasSize(2).allMatch(bake -> bake.note().isEmpty());
    assertThat(store.people().account("Jon")).isPresent();
  }

  private HttpResponse<String> ask(Row row, Member member) throws Exception {
    if (row.method().equals("GET")) {
      return member.get(school.filled(row.path()));
    }
    Map<String, String> fields = fields(row);
    fields.put("seal", crumbtrail.people.Tokens.seal(member.token()));
    return send(row, member, fields);
  }

  private HttpResponse<String> send(Row row, Member member, Map<String, String> fields)
      throws Exception {
    String path = school.filled(row.path());
    if (!row.path().endsWith("/photos")) {
      return member.postUnsealed(path, fields);
    }
    String cookie = "crumbtrail=" + (member.token().isEmpty() ? "x" : member.token());
    return LogFace.upload(
        face.address().resolve(path),
        fields,
        SomeBakes.picture(4, 3, "png"),
        "Accept",
        "text/html",
        "Cookie",
        cookie);
  }

  private Map<String, String> fields(Row row) {
    Map<String, String> fields = new LinkedHashMap<>();
    if (row.path().equals("/log")) {
      fields.put("sheet", Tour.SHEET);
      fields.put("label", "A loaf");
      fields.put("baked", "2026-03-03");
    }
    if (!row.field().isEmpty()) {
      String[] field = school.filled(row.field()).split("=");
      fields.put(field[0], field[1].replace('+', ' '));
    }
    return fields;
  }
}
