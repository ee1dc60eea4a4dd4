package crumbtrail.workup;

import crumbtrail.sheet.BakeSheet.Degree;
import java.util.List;

/**
 * What the baker's words were taken to mean.
 *
 * @param signs signs seen or ruled out, each once
 * @param circumstances facts that are no number, each once
 * @param notUnderstood phrases of which nothing was understood, word for word
 */
public record Heard(
    List<Sign> signs, List<Circumstance> circumstances, List<String> notUnderstood) {
  public Heard {
    signs = List.copyOf(signs);
    circumstances = List.copyOf(circumstances);
    notUnderstood = List.copyOf(notUnderstood);
  }

  /**
   * @param key key of the sign
   * @param seen false if the baker rules it out
   * @param degree how marked
   * @param words what the baker said
   */
  public record Sign(String key, boolean seen, Degree degree, String words) {}

  /**
   * @param key key of the circumstance
   * @param words what the baker said, or the field of the sheet that says so
   */
  public record Circumstance(String key, String words) {}
}
