package crumbtrail.knowledge;

import java.util.List;

/**
 * A fact about a bake that is no number: the yeast was old, the loaf was cut while warm.
 *
 * @param key stable name, words joined by hyphens
 * @param name plain words, as part of a sentence
 * @param phrases how people say it, in the phrase language of the words package
 * @param aside whether it is only told by the way, so that no rule need hear it: it is understood,
 *     and says nothing on causes
 * @param outcome whether it speaks of the finished loaf, so that it says nothing of a bake that is
 *     still to come
 * @param planned whether the steps of a recipe may tell it, which say what is to be done and not
 *     how it came out
 */
public record CircumstanceKind(
    String key,
    String name,
    List<String> phrases,
    Boolean aside,
    Boolean outcome,
    Boolean planned) {
  public CircumstanceKind {
    phrases = phrases == null ? List.of() : List.copyOf(phrases);
    aside = aside != null && aside;
    outcome = outcome != null && outcome;
    planned = planned != null && planned;
  }
}
