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
 * What can be done with a bake sheet, as the pages see it. Called from several threads at once.
 *
 * <p>A sheet comes in the form of the contract, not checked in any way. A bad sheet is an answer,
 * not an exception: whatever is thrown here is a fault of the program.
 */
public interface Tracer {

  /** Works out why the bake failed. */
  Traced<Report> trace(String sheetJson);

  /** Works out the causes and what they rest on, and nothing more, which is far sooner done. */
  Traced<Report> causes(String sheetJson);

  /**
   * Works out why the bake failed, with one question more answered.
   *
   * @param passed what was asked before
   */
  Traced<Replied> reply(String sheetJson, Set<String> passed, Reply reply);

  /** Works out what may go wrong with a bake that is still to come. */
  Traced<Report> precheck(String sheetJson);

  /** Works out the next bake as the baker wants it. */
  Traced<Report.NextBakeSheet> next(String sheetJson, Wish wish);

  /**
   * Holds a bake against another one.
   *
   * @param beforeJson the sheet that is held against, as a rule that of the better bake
   */
  Traced<Comparison> compare(String beforeJson, String afterJson);

  /** Lays out the formula of a sheet that may still be faulty. */
  RecipeLayout layout(JsonNode sheet);

  /** Whether the first sheet need not wait for the rules. */
  default boolean ready() {
    return true;
  }
}
