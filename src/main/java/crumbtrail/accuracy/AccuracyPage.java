package crumbtrail.accuracy;

import crumbtrail.accuracy.Reliability.Claim;
import crumbtrail.accuracy.Reliability.Row;
import crumbtrail.accuracy.TableScore.Question;
import crumbtrail.findings.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes docs/accuracy.md. */
final class AccuracyPage {
  private static final int WORST = 25;

  private final Accuracy accuracy;

  AccuracyPage(Accuracy accuracy) {
    this.accuracy = accuracy;
  }

  String write() {
    List<Bake> real = accuracy.failures(true);
    List<Bake> own = accuracy.failures(false);
    List<List<Claim>> claims = accuracy.crossValidated();
    return """
        # How often it is right

        Written by `crumbtrail rules score` from the rules as they are. No rule mentions a bake. The headline figures are
        those of the first table: there every table of faults is judged by weights that never saw it or any copy of it, and
        every probability by a link fitted without the bake (the shares of the calibration were
        chosen with all). All other figures are in-sample: the rules were written from these tables, and some were mended after seeing which of these bakes went wrong.

        ## Judged by what never saw it

        | measured | number | result |
        |---|---|---|
        %s
        A sign has its first eight causes, or as many as the other tables name for it if they are more. A cause that only
        the table left out names for a sign cannot be found without it, unless we count it common practice.
        %d bakes stand behind these figures. With so few, a perfectly honest program
        would still show an error of some hundredths.

        ## Published tables, as they stand in the rules

        | measured | wanted | number | result |
        |---|---|---|---|
        %s
        ## Bakes with known causes

        A bake counts for a place if any one of its accepted causes stands there.

        | bakes | number | first | first three | first five | phrases not understood |
        |---|---|---|---|---|---|
        %s%s
        The real failures come from public pages, paraphrased; their addresses stand in src/test/resources/real-cases.
        Several give no signs at all, or only part of the formula. Our own cases are invented and show only that the
        parts hold together.

        ## Can the percentages be believed?

        Each row takes the claims of one tenth of the scale, cross-validated as above: what was stated, and how often it
        came true. First the first line of each report, then every line of every report.

        | first lines | stated | true |
        |---|---|---|
        %s
        | all lines | stated | true |
        |---|---|---|
        %s
        ## Real failures, one by one

        | bake | accepted causes | rank of the best | our first three |
        |---|---|---|---|
        %s
        ## Own cases whose known cause is not first

        | case | known cause | rank | our first three |
        |---|---|---|---|
        %s
        ## Healthy bakes

        Nothing was wrong with these; the most that any cause is given should stay under 30 %%.

        | bake | likeliest cause | given |
        |---|---|---|
        %s
        ## Pairs of sign and cause that the first eight miss

        | sign | cause | rank |
        |---|---|---|
        %s
        ## Causes that are not first, given all their published signs

        | cause | signs | rank |
        |---|---|---|
        %s"""
        .formatted(
            unseen(claims),
            claims.size(),
            published(),
            summary("real failures", real, accuracy.all(true)),
            summary("own cases", own, accuracy.all(false)),
            reliability(Reliability.byTenths(firstLines(claims))),
            reliability(Reliability.byTenths(allLines(claims))),
            rows(real),
            rows(own.stream().filter(bake -> accuracy.place(bake) != 1).toList()),
            healthy(),
            missedPairs(),
            missedCauses());
  }

  private String unseen(List<List<Claim>> claims) {
    List<Question> named = accuracy.signsUnseen(1);
    List<Question> all = accuracy.signsUnseen(0);
    List<Question> causes = accuracy.causesUnseen();
    List<Claim> first = firstLines(claims);
    List<Claim> lines = allLines(claims);
    return row(
            "pairs of a left-out table that another table names too: cause among the first",
            share(named, 0))
        + row("all pairs of a left-out table: cause among the first", share(all, 0))
        + row("causes of a left-out table, given its signs (two or more): first", share(causes, 1))
        + row("… in the first three", share(causes, 3))
        + row("… in the first eight", share(causes, 8))
        + row("Brier score of the first line", number(first.size(), Reliability.brier(first)))
        + row("Brier score of all lines", number(lines.size(), Reliability.brier(lines)))
        + row(
            "expected calibration error of all lines, by tenths",
            number(lines.size(), Reliability.error(Reliability.byTenths(lines))))
        + row(
            "expected calibration error of the first five lines, by tenths",
            number(
                firstFive(claims).size(),
                Reliability.error(Reliability.byTenths(firstFive(claims)))))
        + row(
            "expected calibration error of the first line, by tenths",
            number(first.size(), Reliability.error(Reliability.byTenths(first))))
        + row(
            "expected calibration error of the first line, five groups of one size",
            number(first.size(), Reliability.error(Reliability.inGroups(first, 5))));
  }

  private String published() {
    List<Question> signs = accuracy.signs(2);
    List<Question> causes = accuracy.causes();
    return row(
            "one sign alone: a cause that two or more lineages name is among the first",
            "95 % | " + share(signs, 0))
        + row(
            "all signs of a cause (four or more): the cause is first", "75 % | " + share(causes, 1))
        + row("… in the first three", "95 % | " + share(causes, 3));
  }

  private String summary(String what, List<Bake> failures, List<Bake> all) {
    int missed = all.stream().mapToInt(bake -> bake.judged().notUnderstood().size()).sum();
    int phrases = all.stream().mapToInt(Bake::phrases).sum();
    return line(
        "| %s | %d | %s | %s | %s | %d of %d |",
        what,
        failures.size(),
        within(failures, 1),
        within(failures, 3),
        within(failures, 5),
        missed,
        phrases);
  }

  private String within(List<Bake> bakes, int places) {
    long hits =
        bakes.stream()
            .filter(bake -> accuracy.place(bake) > 0 && accuracy.place(bake) <= places)
            .count();
    return line0("%d (%.0f %%)", hits, 100.0 * hits / Math.max(1, bakes.size()));
  }

  private String rows(List<Bake> bakes) {
    StringBuilder rows = new StringBuilder();
    for (Bake bake : bakes) {
      int place = accuracy.place(bake);
      rows.append(
          line(
              "| %s | %s | %s | %s |",
              bake.name(),
              String.join(", ", bake.causes()),
              place == 0 ? "not listed" : place,
              accuracy.ranked(bake).stream()
                  .limit(3)
                  .map(finding -> finding.cause().key())
                  .collect(Collectors.joining(", "))));
    }
    return rows.toString();
  }

  private String healthy() {
    StringBuilder rows = new StringBuilder();
    for (Bake bake : accuracy.healthy()) {
      List<Finding> ranked = accuracy.ranked(bake);
      rows.append(
          ranked.isEmpty()
              ? line("| %s | none | |", bake.name())
              : line(
                  "| %s | %s | %.0f %% |",
                  bake.name(), ranked.get(0).cause().key(), 100 * ranked.get(0).probability()));
    }
    return rows.toString();
  }

  private String missedPairs() {
    return accuracy.signs(2).stream()
        .filter(question -> !question.hit())
        .map(
            question ->
                line(
                    "| %s | %s | %s |",
                    String.join(", ", question.signs()), question.cause(), rank(question)))
        .collect(Collectors.joining());
  }

  private String missedCauses() {
    return accuracy.causes().stream()
        .filter(question -> !question.hit())
        .sorted(Comparator.comparingInt((Question question) -> -question.place()))
        .limit(WORST)
        .map(
            question ->
                line("| %s | %d | %s |", question.cause(), question.signs().size(), rank(question)))
        .collect(Collectors.joining());
  }

  private static String rank(Question question) {
    return question.place() == 0 ? "not listed" : String.valueOf(question.place());
  }

  private static List<Claim> firstLines(List<List<Claim>> claims) {
    return claims.stream().filter(bake -> !bake.isEmpty()).map(bake -> bake.get(0)).toList();
  }

  private static List<Claim> firstFive(List<List<Claim>> claims) {
    return claims.stream().flatMap(bake -> bake.stream().limit(5)).toList();
  }

  private static List<Claim> allLines(List<List<Claim>> claims) {
    List<Claim> all = new ArrayList<>();
    claims.forEach(all::addAll);
    return all;
  }

  private static String reliability(List<Row> rows) {
    return rows.stream()
        .map(
            row ->
                line(
                    "| %d | %.0f %% | %.0f %% |",
                    row.claims(), 100 * row.stated(), 100 * row.right()))
        .collect(Collectors.joining());
  }

  private static String share(List<Question> questions, int places) {
    long hits =
        questions.stream()
            .filter(question -> places == 0 ? question.hit() : question.within(places))
            .count();
    return line0("%d | %.1f %%", questions.size(), 100.0 * hits / Math.max(1, questions.size()));
  }

  private static String number(int count, double value) {
    return line0("%d | %.3f", count, value);
  }

  private static String row(String what, String result) {
    return "| " + what + " | " + result + " |\n";
  }

  private static String line(String form, Object... values) {
    return String.format(Locale.ROOT, form, values) + "\n";
  }

  private static String line0(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }
}
