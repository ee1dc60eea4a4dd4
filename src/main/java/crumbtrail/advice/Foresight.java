package crumbtrail.advice;

import crumbtrail.findings.Findings;
import crumbtrail.findings.Reasoning;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.GapKind;
import crumbtrail.knowledge.ReadingKind;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Amounts;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Reading.Known;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A bake before it is baked: what may go wrong, what would be seen, what the recipe leaves out.
 *
 * @param sheet without signs
 * @param workup of it
 * @param risks how likely each cause is to strike
 * @param predicted signs to be expected if nothing is changed
 * @param missing what the recipe leaves out that matters
 * @param levels each level of the formula against what is usual, in words
 * @param timetable the day, with what to look for at each step
 */
public record Foresight(
    BakeSheet sheet,
    Workup workup,
    Findings risks,
    List<PredictedSigns.Predicted> predicted,
    List<GapKind> missing,
    List<Level> levels,
    Timetable timetable) {
  /** Signs less likely than this are not told. Our choice. */
  private static final double LEAST = 0.08;

  private static final Set<String> GROUPS = Set.of("formula", "size and tin");

  public Foresight {
    predicted = List.copyOf(predicted);
    missing = List.copyOf(missing);
    levels = List.copyOf(levels);
  }

  /**
   * A level of the formula.
   *
   * @param reading its name
   * @param words where it lies and what would be safer
   * @param outside whether it lies outside what is usual
   */
  public record Level(String reading, String words, boolean outside) {}

  /** Looks ahead at a sheet; signs on it are left out of account. */
  public static Foresight of(Reasoning reasoning, Catalogue catalogue, BakeSheet sheet) {
    Trial trial = Trial.of(reasoning, sheet).inFull(reasoning);
    Workup workup = trial.workup();
    List<String> tags = workup.style().tags();
    return new Foresight(
        trial.sheet(),
        workup,
        trial.findings(),
        new PredictedSigns(catalogue).of(trial.findings(), tags, LEAST),
        missing(catalogue, workup),
        levels(catalogue, workup),
        Timetable.of(trial.sheet(), catalogue, trial.workup().style()));
  }

  private static List<GapKind> missing(Catalogue catalogue, Workup workup) {
    Set<String> known =
        workup.readings().stream()
            .filter(reading -> reading.known() != Known.ASSUMED)
            .map(Reading::name)
            .collect(Collectors.toSet());
    Set<String> heard =
        workup.heard().circumstances().stream()
            .map(Heard.Circumstance::key)
            .collect(Collectors.toSet());
    return catalogue.knowledge().gaps().stream()
        .filter(gap -> gap.fits(workup.style().tags()))
        .filter(
            gap ->
                gap.where().stream().anyMatch(heard::contains)
                    || (!gap.without().isEmpty()
                        && gap.without().stream().noneMatch(known::contains)))
        .toList();
  }

  private static List<Level> levels(Catalogue catalogue, Workup workup) {
    List<Level> levels = new ArrayList<>();
    for (ReadingKind kind : catalogue.knowledge().readings()) {
      if (GROUPS.contains(kind.group())) {
        workup.readings().stream()
            .filter(reading -> reading.name().equals(kind.name()) && reading.usual().isPresent())
            .findFirst()
            .ifPresent(reading -> levels.add(level(reading, kind)));
      }
    }
    return levels;
  }

  private static Level level(Reading reading, ReadingKind kind) {
    Style.Range usual = reading.usual().orElseThrow();
    double width = usual.high() - usual.low();
    String range = Amounts.range(usual.low(), usual.high(), kind.unit()) + " is usual";
    String middle = Amounts.quantity(Amounts.rounded(usual.middle(), kind.decimals()), kind.unit());
    String words =
        switch (reading.place()) {
          case FAR_TOO_LOW -> "far too low for this bread; " + range;
          case LOW -> "low for this bread; " + range;
          case HIGH -> "high for this bread; " + range;
          case FAR_TOO_HIGH -> "far too high for this bread; " + range;
          default ->
              edge(reading.value(), usual, width)
                  ? "acceptable; " + middle + " is safer for a first try"
                  : "as is usual for this bread";
        };
    String value = Amounts.quantity(Amounts.rounded(reading.value(), kind.decimals()), kind.unit());
    return new Level(
        reading.name(), reading.name() + " " + value + ": " + words, !reading.withinUsual());
  }

  // In the outer eighth of a range whose ends both mean something.
  private static boolean edge(double value, Style.Range usual, double width) {
    return usual.low() > 0 && (value < usual.low() + width / 8 || value > usual.high() - width / 8);
  }
}
