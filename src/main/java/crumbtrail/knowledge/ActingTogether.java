package crumbtrail.knowledge;

import java.util.List;

/**
 * Causes that the trade knows to work hand in hand: a warm dough and a long bulk.
 *
 * @param name short name of the pair
 * @param causes keys of the two causes
 * @param why what they do together, one sentence
 * @param source ids of the bibliography, or "common practice"
 */
public record ActingTogether(String name, List<String> causes, String why, String source) {
  public ActingTogether {
    causes = causes == null ? List.of() : List.copyOf(causes);
  }
}
