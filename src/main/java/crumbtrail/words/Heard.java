package crumbtrail.words;

import java.util.List;

/**
 * What was made of a sentence.
 *
 * @param matches what was understood, at most one entry a key, in the order of speech
 * @param notUnderstood the parts of the sentence in which nothing was recognised, word for word;
 *     praise ("the crust was lovely") is understood although it matches nothing
 */
public record Heard(List<Match> matches, List<String> notUnderstood) {

  public Heard {
    matches = List.copyOf(matches);
    notUnderstood = List.copyOf(notUnderstood);
  }

  /** Whether every part of the sentence was understood. */
  public boolean complete() {
    return notUnderstood.isEmpty();
  }
}
