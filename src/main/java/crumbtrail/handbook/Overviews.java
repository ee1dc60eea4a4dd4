package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.SignKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The pages that lead to the others: the front page, and one for each stage of the bake. */
final class Overviews {
  static final List<String> STAGES =
      List.of(
          "ingredients",
          "formula",
          "mixing",
          "bulk",
          "shaping",
          "proof",
          "baking",
          "cooling",
          "keeping");
  private static final int LEADING = 3;

  private final Catalogue catalogue;
  private final Witnesses witnesses;
  private final Plain plain;

  Overviews(Catalogue catalogue, Witnesses witnesses) {
    this.catalogue = catalogue;
    this.witnesses = witnesses;
    this.plain = new Plain(catalogue);
  }

  List<Cause> causes(String stage) {
    return catalogue.knowledge().causes().stream()
        .filter(cause -> cause.stage().equals(stage))
        .toList();
  }

  Leaf stage(String stage) {
    Page page = new Page(catalogue, "Causes: " + stage);
    page.paragraph("What can go wrong here, what it is, and the signs that speak for it most.");
    List<List<String>> rows = new ArrayList<>();
    for (Cause cause : causes(stage)) {
      String signs =
          witnesses.signsOf(cause.key()).entrySet().stream()
              .filter(sign -> sign.getValue().decibans() > 0)
              .sorted(Map.Entry.comparingByValue(Witnesses.STRONGEST_FIRST))
              .limit(LEADING)
              .map(sign -> plain.sign(sign.getKey()))
              .collect(Collectors.joining(", "));
      rows.add(List.of(plain.cause(cause.key()), cause.what(), signs));
    }
    page.table(List.of("cause", "what it is", "shows most by"), rows);
    return page.paragraph("Back to [the handbook](../README.md).").end();
  }

  Leaf front() {
    Page page = new Page(catalogue, "The handbook");
    page.paragraph(
        """
        Every cause and every sign that the rules know, written from the rules themselves by
        `crumbtrail rules handbook`; what stands here is what the program goes by. How the words
        become a ranking is in [how it reasons](../how-it-reasons.md); how to add to it, in
        [adding a rule](../adding-a-rule.md).""");
    page.paragraph(
        """
        How strongly an observation speaks is told in words: *hardly*, *faintly* (about two to one),
        *plainly* (four to one), *firmly* (ten to one and more), *surely* (a hundred to one), *beyond
        doubt*, and *rules it out*. Where published tables name sign and cause together, the pages say how many independent ones do.""");
    page.paragraph(
        "Also: [which signs go with which causes](matrix.md), as tables and as"
            + " [one sheet](matrix.csv), and [where each rule speaks](coverage.md).");
    page.heading("Causes by stage");
    page.list(
        STAGES.stream()
            .map(
                stage ->
                    "[%s](stages/%s.md): %s"
                        .formatted(
                            stage,
                            stage,
                            causes(stage).stream()
                                .map(cause -> link("causes", cause.key(), cause.name()))
                                .collect(Collectors.joining(", "))))
            .toList());
    page.heading("Signs by place");
    List<SignKind> signs = catalogue.knowledge().signs();
    page.list(
        signs.stream()
            .map(SignKind::place)
            .distinct()
            .map(
                place ->
                    place
                        + ": "
                        + signs.stream()
                            .filter(sign -> sign.place().equals(place))
                            .map(sign -> link("signs", sign.key(), sign.name()))
                            .collect(Collectors.joining(", ")))
            .toList());
    return page.end();
  }

  private static String link(String folder, String key, String name) {
    return "[" + name + "](" + folder + "/" + key + ".md)";
  }
}
