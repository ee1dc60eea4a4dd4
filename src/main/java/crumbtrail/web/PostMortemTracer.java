package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.advice.Wish;
import crumbtrail.compare.Comparison;
import crumbtrail.report.PostMortem;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.Replied;
import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.util.Set;
import java.util.function.Function;

/** Answers with the real pipeline. */
public final class PostMortemTracer implements Tracer {
  private final PostMortem postMortem;

  /**
   * @param postMortem the pipeline
   */
  public PostMortemTracer(PostMortem postMortem) {
    this.postMortem = postMortem;
  }

  @Override
  public Traced<Report> trace(String sheetJson) {
    return read(sheetJson, postMortem::trace);
  }

  @Override
  public Traced<Report> causes(String sheetJson) {
    return read(sheetJson, postMortem::causes);
  }

  @Override
  public Traced<Replied> reply(String sheetJson, Set<String> passed, Reply reply) {
    return read(sheetJson, sheet -> postMortem.reply(sheet, passed, reply));
  }

  @Override
  public Traced<Report> precheck(String sheetJson) {
    return read(sheetJson, postMortem::precheck);
  }

  @Override
  public Traced<Report.NextBakeSheet> next(String sheetJson, Wish wish) {
    return read(sheetJson, sheet -> postMortem.next(sheet, wish));
  }

  @Override
  public Traced<Comparison> compare(String beforeJson, String afterJson) {
    Reading before = SheetReader.read(beforeJson);
    if (before.sheet().isEmpty()) {
      return new Traced.Refused<>(before.problems());
    }
    return read(afterJson, after -> postMortem.compare(before.sheet().get(), after));
  }

  @Override
  public RecipeLayout layout(JsonNode sheet) {
    return postMortem.layout(sheet);
  }

  @Override
  public boolean ready() {
    return postMortem.ready();
  }

  private static <T> Traced<T> read(String sheetJson, Function<BakeSheet, T> answer) {
    Reading reading = SheetReader.read(sheetJson);
    return reading.sheet().isPresent()
        ? new Traced.Made<>(answer.apply(reading.sheet().get()))
        : new Traced.Refused<>(reading.problems());
  }
}
