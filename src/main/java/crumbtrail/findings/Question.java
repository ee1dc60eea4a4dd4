package crumbtrail.findings;

import crumbtrail.knowledge.QuestionKind.Cost;

/**
 * A question that is worth asking.
 *
 * @param about key of the sign or circumstance, or name of the reading
 * @param question in plain words
 * @param how how to find out
 * @param bits expected drop in entropy
 * @param cost what it costs the baker to find out
 * @param amount whether the answer is an amount; otherwise it is yes or no
 */
public record Question(
    String about, String question, String how, double bits, Cost cost, boolean amount) {

  /** Bits for what they cost. */
  public double worth() {
    return bits / cost.weight();
  }
}
