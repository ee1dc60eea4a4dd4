package crumbtrail.compare;

import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Stage;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Stages in one line. */
final class Stages {
  private Stages() {}

  static String of(BakeSheet.Preferment preferment) {
    return preferment.stages().stream().map(Stages::of).collect(Collectors.joining(", then "));
  }

  private static String of(Stage stage) {
    return Stream.of(stage.time(), stage.temperature())
        .flatMap(one -> one.stream().map(Quantity::written))
        .collect(Collectors.joining(" at "));
  }
}
