package crumbtrail.advice;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.StepKind;
import crumbtrail.knowledge.Style;
import crumbtrail.quantity.Amounts;
import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Stage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The day of a bake, step by step.
 *
 * @param steps in the order in which they begin; preferments begin before the mixing
 * @param untold steps of which the sheet does not say how long they take; the clock counts with
 *     what is usual for the bread, so that it has no hole
 */
public record Timetable(List<Step> steps, List<String> untold) {
  /** Ovens and stones are hot after so long, minutes (common practice). */
  private static final double OVEN = 30;

  private static final double STONE = 60;

  /** Dividing and shaping, minutes (common practice). */
  private static final double SHAPING = 10;

  private static final double MIXING = 12;
  private static final double COOLING = 120;

  /** Stands at a step whose length is no word of the baker. */
  private static final String ASSUMED = "assumed, as usual for this bread";

  public Timetable {
    steps = List.copyOf(steps);
    untold = List.copyOf(untold);
  }

  /**
   * One step.
   *
   * @param key preferment, mix, rest, bulk, retard, shape, bench, proof, preheat, bake, core, cool
   * @param name what it is called
   * @param begins minutes after the mixing begins; before it, below nought
   * @param minutes how long it takes
   * @param how what the sheet says of it: temperature, folds, steam
   * @param look what to look for
   */
  public record Step(
      String key, String name, double begins, double minutes, String how, String look) {}

  /**
   * The timetable of a sheet.
   *
   * @param style its style, whose habits stand in for what is not told
   */
  public static Timetable of(BakeSheet sheet, Catalogue catalogue, Style style) {
    Writer writer = new Writer(catalogue, style);
    writer.write(sheet);
    List<Step> steps = new ArrayList<>(writer.steps);
    steps.sort(Comparator.comparingDouble(Step::begins));
    return new Timetable(steps, writer.untold);
  }

  /** Minutes from the first step to the end of the bake. */
  public double length() {
    double first = steps.stream().mapToDouble(Step::begins).min().orElse(0);
    return end() - first;
  }

  /** Minutes from the mixing to the end of the bake. */
  public double end() {
    return steps.stream()
        .filter(step -> step.key().equals("core"))
        .mapToDouble(Step::begins)
        .max()
        .orElse(0);
  }

  private static final class Writer {
    private final Catalogue catalogue;
    private final List<String> tags;
    private final List<Step> steps = new ArrayList<>();
    private final List<String> untold = new ArrayList<>();
    private final Style.Habits habits;
    private double now;

    Writer(Catalogue catalogue, Style style) {
      this.catalogue = catalogue;
      this.tags = style.tags();
      this.habits = style.habits();
    }

    void write(BakeSheet sheet) {
      BakeProcess process = sheet.process();
      sheet.preferments().forEach(this::ahead);
      process.mixing().rest().ifPresent(rest -> step("rest", rest.value(), ""));
      step("mix", process.mixing().time().map(Quantity::value).orElse(MIXING), mixing(process));
      if (process.bulk().isEmpty()) {
        usual("bulk", habits.bulk());
      }
      process.bulk().forEach(stage -> stay("bulk", stage));
      step("shape", SHAPING, "");
      process.shaping().benchRest().ifPresent(rest -> step("bench", rest.value(), ""));
      if (process.proof().isEmpty()) {
        usual("proof", habits.proof());
      }
      process.proof().forEach(stage -> stay("proof", stage));
      boolean hot = tags.contains("hearth") || tags.contains("stone") || tags.contains("pot-baked");
      double heating = hot ? STONE : OVEN;
      double bakes = now;
      now = bakes - heating;
      step("preheat", heating, oven(process));
      double bake =
          process.baking().stages().stream()
              .mapToDouble(stage -> stage.time().map(Quantity::value).orElse(0.0))
              .sum();
      if (bake <= 0) {
        untold.add("bake");
        bake = minutes(habits.oven());
      }
      step("bake", bake, join(baking(process), untold.contains("bake") ? ASSUMED : ""));
      step(
          "core",
          0,
          process
              .baking()
              .coreTemperature()
              .map(core -> Amounts.quantity(core.value(), "C") + " in the middle")
              .orElse(""));
      step("cool", process.cooling().time().map(Quantity::value).orElse(COOLING), "");
    }

    private void ahead(BakeSheet.Preferment preferment) {
      double all =
          preferment.stages().stream()
              .mapToDouble(stage -> stage.time().map(Quantity::value).orElse(0.0))
              .sum();
      if (all <= 0) {
        untold.add(preferment.name().isBlank() ? "preferment" : preferment.name());
      }
      now = -all;
      String warmth =
          preferment.stages().stream()
              .flatMap(stage -> stage.temperature().stream())
              .map(at -> Amounts.quantity(at.value(), "C"))
              .collect(Collectors.joining(", then "));
      step("preferment", all, join(preferment.name(), warmth.isEmpty() ? "" : "at " + warmth));
      now = 0;
    }

    private void stay(String key, Stage stage) {
      boolean open = stage.time().isEmpty();
      if (open) {
        untold.add(rise(key));
      }
      String how =
          join(
              stage.temperature().map(at -> "at " + Amounts.quantity(at.value(), "C")).orElse(""),
              stage
                  .folds()
                  .filter(folds -> folds > 0)
                  .map(folds -> folds == 1 ? "fold once" : "fold " + folds + " times")
                  .orElse(""),
              stage.covered().filter(covered -> covered).map(covered -> "covered").orElse(""),
              open ? ASSUMED : "");
      double usual =
          stage.isCold() ? 0 : minutes(key.equals("bulk") ? habits.bulk() : habits.proof());
      step(stage.isCold() ? "retard" : key, stage.time().map(Quantity::value).orElse(usual), how);
    }

    // A rise of which nothing is told takes its usual time; a bread that has none goes without.
    private void usual(String key, Style.Spell spell) {
      untold.add(rise(key));
      if (spell != null) {
        step(key, spell.minutes(), join("at " + Amounts.quantity(spell.celsius(), "C"), ASSUMED));
      }
    }

    private static String rise(String key) {
      return key.equals("bulk") ? "first rise" : "final proof";
    }

    private static double minutes(Style.Spell spell) {
      return spell == null ? 0 : spell.minutes();
    }

    private static String mixing(BakeProcess process) {
      return join(
          process.mixing().method().orElse(""),
          process
              .temperatures()
              .liquid()
              .map(liquid -> "liquid at " + Amounts.quantity(liquid.value(), "C"))
              .orElse(""),
          process
              .mixing()
              .doughTemperature()
              .map(dough -> "dough to come out at " + Amounts.quantity(dough.value(), "C"))
              .orElse(""),
          process.mixing().fat().map(fat -> "fat " + fat).orElse(""));
    }

    private static String oven(BakeProcess process) {
      return process.baking().stages().stream()
          .flatMap(stage -> stage.oven().stream())
          .findFirst()
          .map(oven -> "to " + Amounts.quantity(oven.value(), "C"))
          .orElse("");
    }

    private static String baking(BakeProcess process) {
      String stages =
          process.baking().stages().stream()
              .map(
                  stage ->
                      join(
                          process.baking().stages().size() == 1
                              ? ""
                              : stage
                                  .time()
                                  .map(at -> Amounts.quantity(at.value(), "min"))
                                  .orElse(""),
                          stage
                              .oven()
                              .map(at -> "at " + Amounts.quantity(at.value(), "C"))
                              .orElse("")))
              .collect(Collectors.joining("; then "));
      return join(
          stages,
          process.baking().steam().map(steam -> "steam: " + steam).orElse(""),
          process.baking().scored().filter(cut -> cut).map(cut -> "cut the top").orElse(""));
    }

    private static String join(String... parts) {
      return List.of(parts).stream()
          .filter(part -> !part.isBlank())
          .collect(Collectors.joining(", "));
    }

    private void step(String key, double minutes, String how) {
      Optional<StepKind> kind =
          catalogue.knowledge().timetable().stream()
              .filter(one -> one.step().equals(key) && one.fits(tags))
              .findFirst();
      steps.add(
          new Step(
              key,
              kind.map(StepKind::name).orElse(key),
              now,
              minutes,
              how,
              kind.map(StepKind::look).orElse("")));
      now += minutes;
    }
  }
}
