package crumbtrail.web;

import crumbtrail.quantity.Quantity;
import crumbtrail.report.Report.NextBakeSheet;
import crumbtrail.sheet.BakeProcess;
import crumbtrail.sheet.BakeProcess.OvenStage;
import crumbtrail.sheet.BakeProcess.Shaping;
import crumbtrail.sheet.BakeProcess.Vessel;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.LineText;
import crumbtrail.sheet.SheetReader;
import crumbtrail.web.AdviceView.Head;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What stands at the head of the next bake: the bread, its tin, its pieces and the oven. */
final class NextHead {
  private static final Head EMPTY = new Head("", "", "", "");

  private NextHead() {}

  static Head of(NextBakeSheet next, Units units, Texts t) {
    return Optional.ofNullable(next.sheet())
        .flatMap(sheet -> SheetReader.read(sheet).sheet())
        .map(sheet -> head(sheet, next.doughGrams(), units, t))
        .orElse(EMPTY);
  }

  private static Head head(BakeSheet sheet, double dough, Units units, Texts t) {
    BakeProcess process = sheet.process();
    return new Head(
        t.name(sheet.style()),
        vessel(process.vessel(), t),
        pieces(process.shaping(), dough, units, t),
        oven(process.baking().stages(), units, t));
  }

  // In the baker's words, who knows the tin by them.
  private static String vessel(Vessel vessel, Texts t) {
    return Stream.of(
            vessel.kind(),
            vessel.size().map(BakeProcess.VesselSize::written),
            vessel.lid().filter(on -> on).map(on -> t.of("next.lid")))
        .flatMap(Optional::stream)
        .collect(Collectors.joining(", "));
  }

  private static String pieces(Shaping shaping, double dough, Units units, Texts t) {
    Optional<String> weight =
        shaping
            .pieceWeight()
            .map(units::format)
            .or(
                () ->
                    shaping
                        .pieces()
                        .filter(count -> count > 0 && dough > 0)
                        .map(count -> units.quantity(LineText.onScale(dough / count), "g")));
    return shaping
        .pieces()
        .map(
            count ->
                weight
                    .map(each -> t.of("next.pieces.each", count, t.number(each)))
                    .orElse(String.valueOf(count)))
        .orElse("");
  }

  private static String oven(List<OvenStage> stages, Units units, Texts t) {
    return stages.stream()
        .map(
            stage ->
                Stream.of(stage.oven(), stage.time())
                    .flatMap(Optional::stream)
                    .map((Quantity one) -> t.number(units.format(one)))
                    .collect(Collectors.joining(" ")))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(t.of("next.then")));
  }
}
