package crumbtrail.web;

import com.fasterxml.jackson.databind.JsonNode;
import crumbtrail.advice.Wish;
import crumbtrail.compare.Comparison;
import crumbtrail.report.RecipeLayout;
import crumbtrail.report.Replied;
import crumbtrail.report.Reply;
import crumbtrail.report.Report;
import java.util.Set;

/**
 * Does what another tracer does, and counts it.
 *
 * @param tracer does the work
 * @param counted told after each sheet
 */
record CountedTracer(Tracer tracer, Count counted) implements Tracer {
  /** Takes note of a sheet. */
  @FunctionalInterface
  interface Count {
    /**
     * @param work what was asked, one of a few words of ours
     * @param made whether there was an answer, or the sheet could not be read
     */
    void one(String work, boolean made);
  }

  @Override
  public Traced<Report> trace(String sheetJson) {
    return count("trace", tracer.trace(sheetJson));
  }

  @Override
  public Traced<Report> causes(String sheetJson) {
    return count("causes", tracer.causes(sheetJson));
  }

  @Override
  public Traced<Replied> reply(String sheetJson, Set<String> passed, Reply reply) {
    return count("reply", tracer.reply(sheetJson, passed, reply));
  }

  @Override
  public Traced<Report> precheck(String sheetJson) {
    return count("precheck", tracer.precheck(sheetJson));
  }

  @Override
  public Traced<Report.NextBakeSheet> next(String sheetJson, Wish wish) {
    return count("next", tracer.next(sheetJson, wish));
  }

  @Override
  public Traced<Comparison> compare(String beforeJson, String afterJson) {
    return count("compare", tracer.compare(beforeJson, afterJson));
  }

  // Laid out while somebody types: no bake is worked on.
  @Override
  public RecipeLayout layout(JsonNode sheet) {
    return tracer.layout(sheet);
  }

  @Override
  public boolean ready() {
    return tracer.ready();
  }

  private <T> Traced<T> count(String work, Traced<T> traced) {
    counted.one(work, traced instanceof Traced.Made<T>);
    return traced;
  }
}
