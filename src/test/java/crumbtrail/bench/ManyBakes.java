package crumbtrail.bench;

import crumbtrail.bakelog.Digests;
import crumbtrail.bakelog.LogWords;
import crumbtrail.knowledge.Cause;
import crumbtrail.report.JsonReport;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;
import crumbtrail.sheet.SheetReader;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.postgresql.PGConnection;
import org.postgresql.copy.PGCopyOutputStream;

/** Fills a database with invented bakes, by the way that takes many rows at once. */
final class ManyBakes {
  static final int BAKERS = 2_000;
  static final int CLASSES = 100;
  static final LocalDateTime LATEST = LocalDateTime.of(2026, 11, 1, 12, 0);

  private static final int RECIPES = 300;
  private static final int SHEETS = 8;

  /** Few words stand in many notes, most stand in few. */
  private static final int WORDS = 5_000;

  private static final List<String> CAUSES =
      RuleBook.bundled().catalogue().knowledge().causes().stream().map(Cause::key).toList();

  private ManyBakes() {}

  static String word(Random random) {
    return "word" + often(random, WORDS);
  }

  static String recipe(Random random) {
    return "Recipe " + often(random, RECIPES);
  }

  static String cause(Random random) {
    return CAUSES.get(often(random, CAUSES.size()));
  }

  // The first of a thousand is drawn about a hundred times as often as the hundredth.
  private static int often(Random random, int of) {
    return (int) Math.floor(Math.pow(of + 1, random.nextDouble())) - 1;
  }

  private record Paper(String sheet, String report, String digest) {}

  static void load(String url, int bakes, int reports) throws Exception {
    List<Paper> papers = papers();
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement()) {
      statement.execute(
          "insert into baker (id, name) select i, '' from generate_series(2, "
              + (BAKERS + 1)
              + ") i");
      statement.execute(
          "insert into school_class (id, name) select i, '' from generate_series(1, "
              + CLASSES
              + ") i");
      // Rows that are known to fit together need not be looked up one by one, and an index is made
      // sooner of all rows than row by row.
      statement.execute("set session_replication_role = replica");
      List<String> indexes = dropped(statement);
      for (String table : List.of("bake", "bake_paper", "bake_word", "bake_cause")) {
        copy(connection, table, bakes, reports, papers);
      }
      for (String index : indexes) {
        statement.execute(index);
      }
      statement.execute("set session_replication_role = origin");
      statement.execute("alter table bake alter column id restart with " + (bakes + 1));
      statement.execute("vacuum analyze");
    }
  }

  private static List<String> dropped(Statement statement) throws SQLException {
    List<String> indexes = new ArrayList<>();
    List<String> names = new ArrayList<>();
    try (ResultSet rows =
        statement.executeQuery(
            "select indexname, indexdef from pg_indexes where tablename like 'bake%'"
                + " and indexdef not like '%UNIQUE%' and tablename <> 'bake_log_schema'")) {
      while (rows.next()) {
        names.add(rows.getString(1));
        indexes.add(rows.getString(2));
      }
    }
    for (String name : names) {
      statement.execute("drop index " + name);
    }
    return indexes;
  }

  // Reports of real size: sheets of the project, traced.
  private static List<Paper> papers() throws IOException {
    PostMortem postMortem = new PostMortem(RuleBase.bundled());
    List<Paper> papers = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("cases"))) {
      for (Path file :
          files.filter(one -> one.toString().endsWith(".json")).sorted().limit(SHEETS).toList()) {
        String sheet = Files.readString(file);
        String report =
            JsonReport.line(postMortem.trace(SheetReader.read(sheet).sheet().orElseThrow()));
        papers.add(
            new Paper(
                escaped(sheet),
                "\\\\x" + HexFormat.of().formatHex(packed(report)),
                escaped(Digests.write(Digests.ofReport(report)))));
      }
    }
    return papers;
  }

  private static byte[] packed(String text) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (GZIPOutputStream packing = new GZIPOutputStream(bytes)) {
      packing.write(text.getBytes(StandardCharsets.UTF_8));
    }
    return bytes.toByteArray();
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\").replace("\n", "\\n").replace("\t", "\\t").replace("\r", "");
  }

  private static void copy(
      Connection connection, String table, int bakes, int reports, List<Paper> papers)
      throws SQLException, IOException {
    String columns =
        switch (table) {
          case "bake" ->
              "id, uid, owner_id, class_id, baked, noted, label, recipe, recipe_key, note, outcome,"
                  + " first_cause";
          case "bake_paper" -> "bake_id, sheet, rule_base, report, digest";
          case "bake_word" -> "bake_id, word, owner_id, baked, class_id";
          default -> "bake_id, cause, standing, owner_id, baked, class_id";
        };
    try (OutputStream out =
        new PGCopyOutputStream(
            connection.unwrap(PGConnection.class),
            "copy " + table + " (" + columns + ") from stdin")) {
      for (int id = 1; id <= bakes; id++) {
        out.write(rows(table, new Invented(id, bakes), id > bakes - reports, papers));
      }
    }
  }

  private static byte[] rows(String table, Invented bake, boolean report, List<Paper> papers) {
    Paper paper = papers.get(bake.id % papers.size());
    String keyed = "\t" + bake.owner + "\t" + bake.baked + "\t" + bake.schoolClass() + "\n";
    StringBuilder rows = new StringBuilder();
    switch (table) {
      case "bake" -> rows.append(bake.row());
      case "bake_paper" ->
          rows.append(bake.id + "\t" + paper.sheet() + "\t" + "abc123\t")
              .append(report ? paper.report() : "\\N")
              .append("\t" + paper.digest() + "\n");
      case "bake_word" ->
          LogWords.of(bake.label, bake.recipe, bake.note)
              .forEach(word -> rows.append(bake.id + "\t" + word + keyed));
      default -> {
        rows.append(bake.id + "\t" + bake.first + "\tFIRST" + keyed);
        bake.confirmed.forEach(
            cause -> rows.append(bake.id + "\t" + cause + "\tCONFIRMED" + keyed));
      }
    }
    return rows.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** One bake, the same whenever its number is asked for. */
  private static final class Invented {
    private final int id;
    private final int owner;
    private final String baked;
    private final String label;
    private final String recipe;
    private final String note;
    private final String first;
    private final TreeSet<String> confirmed = new TreeSet<>();
    private final UUID uid;

    Invented(int id, int bakes) {
      Random random = new Random(id);
      this.id = id;
      this.uid = new UUID(random.nextLong(), random.nextLong());
      this.owner = id % 2 == 0 ? 1 : 2 + random.nextInt(BAKERS);
      // Ten years, more or less in the order of the numbers.
      long minutes = (long) ((bakes - id) * (5_200_000.0 / bakes)) + random.nextInt(10_000);
      this.baked = LATEST.minusMinutes(minutes).toString().replace('T', ' ');
      this.recipe = ManyBakes.recipe(random);
      this.label = recipe + " " + word(random);
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(16); i >= 0; i--) {
        text.append(word(random)).append(' ');
      }
      this.note = text.toString().strip();
      this.first = cause(random);
      if (random.nextInt(2) == 0) {
        confirmed.add(cause(random));
        confirmed.remove(first);
      }
    }

    private String schoolClass() {
      return owner == 1 ? "\\N" : "" + (1 + owner % CLASSES);
    }

    private String row() {
      String outcome = id % 3 == 0 ? "GOOD" : id % 3 == 1 ? "FAILED" : "\\N";
      return String.join(
          "\t",
          "" + id,
          uid.toString(),
          "" + owner,
          schoolClass(),
          baked,
          baked + "Z",
          label,
          recipe,
          recipe.toLowerCase(Locale.ROOT),
          note,
          outcome,
          first + "\n");
    }
  }
}
