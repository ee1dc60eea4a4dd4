package crumbtrail.sheet;

import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess.Baking;
import crumbtrail.sheet.BakeProcess.Cooling;
import crumbtrail.sheet.BakeProcess.Mixing;
import crumbtrail.sheet.BakeProcess.OvenStage;
import crumbtrail.sheet.BakeProcess.Shaping;
import crumbtrail.sheet.BakeProcess.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Fills what a process leaves out, and remembers in words what was filled. */
final class StepFill {
  private final List<String> filled = new ArrayList<>();
  private BakeProcess process;

  StepFill(BakeProcess told) {
    this.process = told;
    filled.addAll(told.fromSteps());
  }

  /** The process, with what was filled told in {@link BakeProcess#fromSteps}. */
  BakeProcess filled() {
    return process.withFromSteps(filled);
  }

  StepFill kneading(Optional<Quantity> time) {
    Mixing told = process.mixing();
    if (fill("kneading", told.time(), time)) {
      process =
          process.withMixing(
              new Mixing(
                  told.method(),
                  time,
                  told.speed(),
                  told.rest(),
                  told.fat(),
                  told.doughTemperature()));
    }
    return this;
  }

  StepFill rest(Optional<Quantity> time) {
    Mixing told = process.mixing();
    if (fill("rest before kneading", told.rest(), time)) {
      process =
          process.withMixing(
              new Mixing(
                  told.method(),
                  told.time(),
                  told.speed(),
                  time,
                  told.fat(),
                  told.doughTemperature()));
    }
    return this;
  }

  StepFill bulk(List<Stage> stages) {
    if (fill("first rise", process.bulk(), words(stages))) {
      process = process.withBulk(stages);
    }
    return this;
  }

  StepFill bench(Optional<Quantity> time) {
    Shaping told = process.shaping();
    if (fill("rest before shaping", told.benchRest(), time)) {
      process =
          process.withShaping(
              new Shaping(
                  told.pieces(), told.pieceWeight(), time, told.tension(), told.dustingFlour()));
    }
    return this;
  }

  StepFill pieces(Optional<Integer> count) {
    Shaping told = process.shaping();
    // Pieces of a weight that is told need no count.
    boolean weighed = told.pieceWeight().isPresent();
    String words = count.map(String::valueOf).orElse("");
    if (!weighed && fill("pieces", told.pieces().stream().toList(), words)) {
      process =
          process.withShaping(
              new Shaping(
                  count,
                  told.pieceWeight(),
                  told.benchRest(),
                  told.tension(),
                  told.dustingFlour()));
    }
    return this;
  }

  StepFill tin(Optional<StepVessel.Named> tin) {
    Vessel told = process.vessel();
    boolean silent = told.kind().isEmpty() && told.size().isEmpty();
    if (silent && tin.isPresent()) {
      StepVessel.Named named = tin.get();
      filled.add(named.kind() + " " + named.size().written());
      process =
          process.withVessel(
              new Vessel(Optional.of(named.kind()), Optional.of(named.size()), told.lid()));
    }
    return this;
  }

  StepFill proof(List<Stage> stages) {
    if (fill("proof", process.proof(), words(stages))) {
      process = process.withProof(stages);
    }
    return this;
  }

  StepFill oven(List<OvenStage> stages) {
    Baking told = process.baking();
    String words =
        stages.stream()
            .map(stage -> words(stage.time(), stage.oven()))
            .collect(Collectors.joining(", then "));
    if (fill("baking", told.stages(), words)) {
      process =
          process.withBaking(
              new Baking(
                  stages,
                  told.preheated(),
                  told.steam(),
                  told.fan(),
                  told.scored(),
                  told.coreTemperature()));
    }
    return this;
  }

  StepFill cooling(Optional<Quantity> time) {
    Cooling told = process.cooling();
    if (fill("cooling", told.time(), time)) {
      process = process.withCooling(new Cooling(time, told.wrapped()));
    }
    return this;
  }

  private boolean fill(String what, Optional<Quantity> told, Optional<Quantity> found) {
    return fill(what, told.stream().toList(), words(found, Optional.empty()));
  }

  private boolean fill(String what, List<?> told, String found) {
    if (!told.isEmpty() || found.isEmpty()) {
      return false;
    }
    filled.add(what + " " + found);
    return true;
  }

  private static String words(List<Stage> stages) {
    return stages.stream()
        .map(stage -> words(stage.time(), stage.temperature()))
        .collect(Collectors.joining(", then "));
  }

  private static String words(Optional<Quantity> time, Optional<Quantity> warmth) {
    return Stream.of(time.map(Quantity::written), warmth.map(at -> "at " + at.written()))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(" "));
  }
}
