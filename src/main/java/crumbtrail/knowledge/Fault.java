package crumbtrail.knowledge;

/**
 * Something wrong in a knowledge file.
 *
 * @param file name of the file below the rules folder
 * @param line line number from 1, 0 where the whole file is meant
 * @param what what is wrong
 * @param remedy what would be right
 */
public record Fault(String file, int line, String what, String remedy) {
  @Override
  public String toString() {
    return file + (line > 0 ? ":" + line : "") + ": " + what + ". " + remedy;
  }
}
