package crumbtrail.findings;

import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.TinyRules;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.workup.SheetWorkup;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/**
 * A few rules, small enough to reckon what-ifs by hand. Priors: over-proofed everyday (-10), salt
 * too low common (-13), dead yeast rare (-20); surely is 20 decibans, firmly 10.
 */
abstract class TinyKitchen {
  private static final String QUESTIONS =
      """
      - {about: sour-smell, ask: "Is it sour?", often: sometimes}
      - {about: pale-crust, ask: "Is it pale?", how: "By day.", cost: measure, often: often}
      - {about: flat-top, ask: "Is it flat?", unless: [sticky-dough, salt, cut-warm]}
      - {about: thick-crust, ask: "Is it thick?", breads: [rye]}
      - {about: yeast-old, ask: "Was it old?", how: "Its date.", cost: remember, often: seldom}
      - {about: oven-cold, ask: "Was it heated?", how: "Think.", cost: bake again, no: flour-swapped}
      - {about: proof time, ask: "How long?", how: "A clock.", field: "proof[0].time", cost: remember}
      """;

  static RuleBase rules;
  Reasoning reasoning;

  @BeforeAll
  static void lay_out(@TempDir Path folder, @TempDir Path cache)
      throws IOException, FaultyKnowledge {
    TinyRules.write(folder);
    TinyRules.file(folder, "questions.yaml", QUESTIONS);
    TinyRules.file(folder, "readings.yaml", Files.readString(Path.of("rules", "readings.yaml")));
    TinyRules.file(
        folder,
        "circumstances/all.yaml",
        TinyRules.CIRCUMSTANCES.replace(
            "phrases: [cut warm]", "outcome: true, phrases: [cut warm]"));
    TinyRules.file(
        folder,
        "styles/all.yaml",
        TinyRules.STYLES.replace(
            "    salt: {low",
            "    proof time: {low: 40, high: 80, source: common practice}\n    salt: {low"));
    String dense = rule("dense", "The baker saw \"dense crumb\"", "Suspect \"yeast dead\" surely");
    TinyRules.file(
        folder,
        "stages/more.dslr",
        dense
            + rule("sour", "The baker saw \"sour smell\"", "Doubt \"yeast dead\" firmly")
            + rule("flat", "The baker saw \"flat top\"", "Suspect \"yeast dead\" firmly")
            + rule("thick", "The baker saw \"thick crust\"", "Suspect \"yeast dead\" firmly")
            + rule(
                "not pale",
                "The baker looked for \"pale crust\" and did not see it",
                "Doubt \"yeast dead\" firmly")
            + rule("holes", "The baker saw \"large holes\"", "Suspect \"over proofed\" firmly")
            + rule("old", "It happened that \"yeast old\"", "Suspect \"yeast dead\" firmly")
            + rule("swapped", "It happened that \"flour swapped\"", "Doubt \"yeast dead\" firmly")
            + rule("long", "The proof time is over 90 min", "Suspect \"over proofed\" surely")
            + rule(
                "brisk",
                "The proof time is between 9 min and 11 min",
                "Doubt \"yeast dead\" firmly")
            + rule(
                "late",
                "The proof time is between 109 min and 111 min",
                "Suspect \"yeast dead\" firmly"));
    rules = RuleBase.of(folder, cache, said -> {});
  }

  private static String rule(String name, String when, String then) {
    return TinyRules.rule(name, when, then) + "\n";
  }

  @BeforeEach
  void open() {
    reasoning =
        new Reasoning(
            new SheetWorkup(rules.catalogue(), rules.pantry()),
            rules,
            new Ranking(rules.catalogue(), Weights.of(rules.catalogue())));
  }

  @AfterEach
  void close() {
    reasoning.close();
  }

  static BakeSheet sheet(String json) {
    return SheetReader.read(json).sheet().orElseThrow();
  }

  static final BakeSheet DENSE = sheet("{\"style\": \"yeast bread\", \"seen\": [\"dense crumb\"]}");

  static final BakeSheet HUMMED = sheet("{\"seen\": [\"it hummed a tune\"]}");

  static String timed(String proof) {
    return """
        {"style": "yeast bread", "seen": ["dense crumb"],
         "process": {"proof": [{"time": "%s", "temperature": "26 C"}]}}
        """
        .formatted(proof);
  }

  static BakeSheet told(String seen, String not) {
    String more = seen.isEmpty() ? "" : ", " + seen;
    return sheet(
        "{\"style\": \"yeast bread\", \"seen\": [\"dense crumb\"%s], \"notSeen\": [%s]}"
            .formatted(more, not));
  }
}
