package crumbtrail.cli.screen;

import java.io.PrintWriter;

/**
 * What a command writes to.
 *
 * @param out for the answer
 * @param err for what goes on beside it
 * @param width columns of a page
 * @param coloured whether the answer may be coloured
 * @param progress whether long work shows how far it is
 */
public record Screen(
    PrintWriter out, PrintWriter err, int width, boolean coloured, boolean progress) {

  /** The same with another place for the answer. */
  public Screen on(PrintWriter other) {
    return new Screen(other, err, width, coloured, progress);
  }

  /** Prints an answer, coloured where that is wanted. */
  public void print(String text) {
    out.print(coloured ? Paint.report(text) : text);
    out.flush();
  }
}
