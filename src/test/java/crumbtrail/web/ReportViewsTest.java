package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import crumbtrail.knowledge.FaultyKnowledge;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.Report;
import crumbtrail.report.Report.EvidenceLine;
import crumbtrail.report.Report.FormulaRow;
import crumbtrail.report.Report.FormulaTable;
import crumbtrail.report.Report.Hydration;
import crumbtrail.report.Report.RankedCause;
import crumbtrail.report.Report.Understood;
import crumbtrail.report.Report.WorkedReading;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The reports here are invented: the Tuesday class at the tide mill on Skarholm. */
class ReportViewsTest {

  @Test
  void anEmptyReportIsAnEmptyPage() {
    ReportView view = ReportViews.of(Samples.empty());
    assertThat(view.title()).isEmpty();
    assertThat(view.causes()).isEmpty();
    assertThat(view.formula()).isEmpty();
    assertThat(view.readings()).isEmpty();
  }

  @Test
  void evidenceIsPartedWithTheWeightiestFirst() {
    ReportView.Cause cause =
        view(
                evidence("much", 10),
                evidence("little", 3),
                evidence("some against", -3),
                evidence("most against", -20))
            .causes()
            .get(0);
    assertThat(cause.speaksFor())
        .extracting(ReportView.Evidence::because)
        .containsExactly("much", "little");
    assertThat(cause.speaksAgainst())
        .extracting(ReportView.Evidence::because)
        .containsExactly("most against", "some against");
    assertThat(cause.percent()).isEqualTo("83 %");
    assertThat(cause.bar()).isEqualTo(83);
  }

  @Test
  void whatTheKitchenMovedIsATable() {
    assertThat(view().kitchen()).isNull();
    KitchenView kitchen =
        KitchenView.of(
            moved(
                new Report.KitchenShift("a", "proofed too long", 3, 2, 1, 0.25, 0.5),
                new Report.KitchenShift("b", "salt left out", 0, 0, 3, 0.02, 0.01)),
            Texts.english());
    assertThat(kitchen.moved())
        .containsExactly(
            new KitchenView.Moved(
                "proofed too long", "2.0 times those elsewhere", "25 %, place 2", "50 %, place 1"),
            new KitchenView.Moved("salt left out", "as elsewhere", "2 %", "1 %, place 3"));
    assertThat(HtmlReport.page(moved()))
        .contains("By the odds of this kitchen", "moves nothing here");
    assertThat(HtmlReport.page(Samples.empty())).doesNotContain("odds of this kitchen");
    assertThat(HtmlReport.page(moved(new Report.KitchenShift("a", "one <b>", 3, 2, 1, 0.25, 0.5))))
        .contains("<th scope=\"row\">one &lt;b&gt;</th><td>25 %, place 2</td>");
  }

  private static Report moved(Report.KitchenShift... shifts) {
    return Samples.empty().movedBy(List.of(shifts));
  }

  @Test
  void keysBecomeNames() {
    ReportView view = view();
    assertThat(view.together()).containsExactly("proofed too long", "never heard of");
    assertThat(view.causes().get(0).explains())
        .containsExactly("top sunk or loaf collapsed", "pale crust");
    assertThat(view.unexplained()).containsExactly("sour flavour");
  }

  @Test
  void whatActsTogetherHowFirmItIsAndWhatToAskAreTold() {
    ReportView view = view();
    assertThat(view.togetherNotes())
        .extracting(ReportView.Said::text)
        .containsExactly(
            "That all of them were at work: 40 %.",
            "These act together: proofed too long and never heard of.", "Hand in hand.");
    assertThat(view.firmness()).hasSize(2).last().isEqualTo("Weigh the flour.");
    assertThat(view.firmness().get(0)).contains("300").contains("proofed too long in 91 %");
    assertThat(view.next().sheet()).isNull();
    assertThat(view.next().questions())
        .extracting(AskView.Ask::question, AskView.Ask::how)
        .containsExactly(tuple("Is it gummy?", "Cut it. (look)"));
  }

  @Test
  void figuresCarryUnitSpreadAndPlace() {
    assertThat(view().readings())
        .extracting(ReportView.Group::name)
        .containsExactly("formula", "other");
    assertThat(view().readingSources()).containsExactly("common practice");
    assertThat(view().readings().stream().flatMap(group -> group.readings().stream()))
        .containsExactly(
            new ReportView.Reading(
                "salt",
                "1.2 % (1.1–1.3)",
                "worked out",
                "1.8–2.2 %",
                "below",
                "[1]",
                "Salt on flour."),
            new ReportView.Reading("warmth gained", "-2 °C (-4 to 1)", "assumed", "", "", "", ""));
  }

  @Test
  void theFormulaKeepsTheBakersWords() {
    ReportView view = view();
    assertThat(view.formula())
        .containsExactly(
            new ReportView.Line("", "310 g water", "", "62 %", "310 g"),
            new ReportView.Line("poolish", "strong stuff", "bread flour", "20 %", "100 g"),
            new ReportView.Line("", "moon dust", "", "", ""));
    assertThat(view.formulaNotes())
        .extracting(ReportView.Said::text)
        .containsExactly(
            "Flour in all 500 g, dough 822 g.",
            "Hydration 62 % by the liquids poured in, 63.1 % with the water in everything else.",
            "The cups of line 2 are not its grams.");
  }

  private static EvidenceLine evidence(String because, double decibans) {
    return new EvidenceLine(
        "rule", null, "strand", decibans, because, List.of(), "common practice");
  }

  private static RankedCause cause(EvidenceLine... evidence) {
    return new RankedCause(
        "over-proofed",
        "proofed too long",
        "proof",
        0.83,
        null,
        "",
        "",
        "",
        List.of(evidence),
        List.of("collapsed-top", "pale-crust"),
        List.of());
  }

  private static ReportView view(EvidenceLine... evidence) {
    RankedCause cause = cause(evidence);
    Map<String, WorkedReading> workup =
        new java.util.LinkedHashMap<>(
            Map.of(
                "salt",
                new WorkedReading(
                    1.2,
                    "%",
                    1.1,
                    1.3,
                    "worked out",
                    1.8,
                    2.2,
                    "common practice",
                    "formula",
                    "Salt on flour.")));
    workup.put(
        "warmth-gained", new WorkedReading(-2, "°C", -4, 1, "assumed", null, null, null, "", ""));
    return ReportViews.of(report(cause, workup));
  }

  @Test
  void signsThatWereSeenAreDrawnOnTheirBread() throws FaultyKnowledge {
    LoafPictures pictures = LoafPictures.read(Path.of("rules"));
    Report report = report(cause(), Map.of());

    ReportView view = ReportViews.of(report, pictures);

    assertThat(view.drawn())
        .containsExactly(
            new ReportView.Drawn(
                "top sunk or loaf collapsed",
                pictures.of("collapsed-top", "white-tin-loaf").orElseThrow().svg()));
    assertThat(HtmlReport.page(report, pictures))
        .contains(view.drawn().get(0).svg(), "<figcaption>top sunk or loaf collapsed</figcaption>");
    assertThat(HtmlReport.page(report)).doesNotContain("id=\"drawn\"");
  }

  private static Report report(RankedCause cause, Map<String, WorkedReading> workup) {
    return new Report(
        "Tuesday",
        "white tin loaf",
        List.of(cause),
        List.of("over-proofed", "never-heard-of"),
        0.4,
        List.of(
            new Report.Joint(
                List.of("over-proofed", "never-heard-of"), "Hand in hand.", "common practice")),
        List.of("sour-flavour"),
        new Report.Firmness(
            300,
            Map.of("over-proofed", 0.91),
            List.of(
                new Report.Matter(
                    "1 cup flour", "120 g", "160 g", "hydration", "", "Weigh the flour."))),
        List.of(
            new Report.NextQuestion(
                "gummy-crumb", "Is it gummy?", "Cut it.", 0.4, "look", "yes or no")),
        List.of(),
        null,
        null,
        List.of(),
        List.of(
            new Understood("it caved in", "sign", "collapsed-top", "top sunk or loaf collapsed")),
        List.of(),
        new FormulaTable(
            500,
            Map.of("water", 62.0),
            new Hydration(62, 63.1),
            822,
            List.of(
                new FormulaRow("", "310 g water", "water", 310.0, 62.0),
                new FormulaRow("poolish", "strong stuff", "bread flour", 100.0, 20.0),
                new FormulaRow("", "moon dust", "", null, null)),
            List.of("The cups of line 2 are not its grams.")),
        workup,
        null,
        List.of(),
        "1");
  }
}
