package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.advice.Wish;
import crumbtrail.compare.Comparison;
import crumbtrail.memory.Later;
import crumbtrail.report.PostMortem;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.Replied;
import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;

/** Answers with the real pipeline. */
public final class PostMortemTracer implements Tracer {
  private final Supplier<PostMortem> postMortem;
  private final BooleanSupplier there;

  /**
   * @param postMortem the pipeline
   */
  public PostMortemTracer(PostMortem postMortem) {
    this.postMortem = () -> postMortem;
    this.there = () -> true;
  }

  /**
   * @param postMortem the pipeline, which need not be there yet; sheets that come sooner wait
   */
  public PostMortemTracer(Later<PostMortem> postMortem) {
    this.postMortem = postMortem;
    this.there = postMortem::done;
  }

  @Override
  public Traced<Report> trace(String sheetJson) {
    return read(sheetJson, sheet -> postMortem.get().trace(sheet));
  }

  @Override
  public Traced<Report> causes(String sheetJson) {
    return read(sheetJson, sheet -> postMortem.get().causes(sheet));
  }

  @Override
  public Traced<Replied> reply(String sheetJson, Set<String> passed, Reply reply) {
    return read(sheetJson, sheet -> postMortem.get().reply(sheet, passed, reply));
  }

  @Override
  public Traced<Report> precheck(String sheetJson) {
    return read(sheetJson, sheet -> postMortem.get().precheck(sheet));
  }

  @Override
  public Traced<Report.NextBakeSheet> next(String sheetJson, Wish wish) {
    return read(sheetJson, sheet -> postMortem.get().next(sheet, wish));
  }

  @Override
  public Traced<Comparison> compare(String beforeJson, String afterJson) {
    Reading before = SheetReader.read(beforeJson);
    if (before.sheet().isEmpty()) {
      return new Traced.Refused<>(before.problems());
    }
    return read(afterJson, after -> postMortem.get().compare(before.sheet().get(), after));
  }

  @Override
  public RecipeLayout layout(JsonNode sheet) {
    return postMortem.get().layout(sheet);
  }

  @Override
  public boolean ready() {
    return there.getAsBoolean() && postMortem.get().ready();
  }

  private static <T> Traced<T> read(String sheetJson, Function<BakeSheet, T> answer) {
    Reading reading = SheetReader.read(sheetJson);
    return reading.sheet().isPresent()
        ? new Traced.Made<>(answer.apply(reading.sheet().get()))
        : new Traced.Refused<>(reading.problems());
  }
}
