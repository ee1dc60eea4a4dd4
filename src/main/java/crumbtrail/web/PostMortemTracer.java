package crumbtrail.web;

import crumbtrail.report.PostMortem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;

/** Traces with the real pipeline. */
public final class PostMortemTracer implements Tracer {
  private final PostMortem postMortem;

  /**
   * @param postMortem the pipeline
   */
  public PostMortemTracer(PostMortem postMortem) {
    this.postMortem = postMortem;
  }

  @Override
  public Traced trace(String sheetJson) {
    Reading reading = SheetReader.read(sheetJson);
    return reading.sheet().isPresent()
        ? new Traced.Made(postMortem.trace(reading.sheet().get()))
        : new Traced.Refused(reading.problems());
  }
}
