package crumbtrail.web;

/** The way from a bake sheet to its report, as the pages see it. */
@FunctionalInterface
public interface Tracer {

  /**
   * Works out why the bake failed. Called from several threads at once.
   *
   * @param sheetJson a bake sheet in the form of the contract, not checked in any way
   * @return the report, or every problem that keeps the sheet from being used; never null. A bad
   *     sheet is an answer, not an exception: whatever is thrown here is a fault of the program.
   */
  Traced trace(String sheetJson);
}
