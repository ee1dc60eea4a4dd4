package crumbtrail.bakelog.store;

import java.sql.Connection;
import java.sql.DriverManager;

/** A program that opens an embedded log for itself alone, as other tools do. */
final class Holder {
  private Holder() {}

  /** Argument: the file without its ending. */
  public static void main(String[] arguments) throws Exception {
    try (Connection held = DriverManager.getConnection("jdbc:h2:file:" + arguments[0], "sa", "")) {
      System.out.println(held.isClosed() ? "lost" : "held");
      System.out.flush();
      Thread.sleep(600_000);
    }
  }
}
