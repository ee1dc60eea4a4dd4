package crumbtrail.workup;

import crumbtrail.quantity.Quantity;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.Stage;
import crumbtrail.workup.Reading.Known;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Times and temperatures of bulk and proof as the sheet states them. */
final class RiseTimes {
  private RiseTimes() {}

  static void work(BakeProcess process, ReadingList readings) {
    total("bulk time", process.bulk(), readings);
    total("proof time", process.proof(), readings);
    readings.measured("bulk temperature", warmest(process.bulk()));
    readings.measured("proof temperature", warmest(process.proof()));
    readings.measured(
        "proof humidity",
        process.proof().stream().flatMap(stage -> stage.humidity().stream()).findFirst());
    readings.measured("bench rest", process.shaping().benchRest());
    cold(process, readings);
  }

  private static void cold(BakeProcess process, ReadingList readings) {
    List<Stage> cold = new ArrayList<>(process.bulk());
    cold.addAll(process.proof());
    cold.removeIf(stage -> !stage.isCold());
    double hours =
        cold.stream().flatMap(s -> s.time().stream()).mapToDouble(Quantity::value).sum() / 60;
    if (hours > 0) {
      readings.put("fridge time", hours, 0, Known.MEASURED);
      readings.measured("fridge temperature", cold.get(0).temperature());
    }
  }

  private static void total(String name, List<Stage> stages, ReadingList readings) {
    List<Quantity> times = stages.stream().flatMap(stage -> stage.time().stream()).toList();
    if (!times.isEmpty()) {
      readings.put(
          name,
          times.stream().mapToDouble(Quantity::value).sum(),
          times.stream().mapToDouble(Quantity::low).sum(),
          times.stream().mapToDouble(Quantity::high).sum(),
          Known.MEASURED);
    }
  }

  private static Optional<Quantity> warmest(List<Stage> stages) {
    return stages.stream()
        .flatMap(stage -> stage.temperature().stream())
        .max(Comparator.comparingDouble(Quantity::value));
  }
}
