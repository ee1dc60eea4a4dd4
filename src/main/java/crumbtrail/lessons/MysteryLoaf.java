package crumbtrail.lessons;

import crumbtrail.knowledge.MysteryKind.Level;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.SeenSign;
import java.util.List;
import java.util.Map;

/**
 * A loaf that failed for a hidden reason.
 *
 * @param seed with the level, what it was drawn by
 * @param level how hard it is
 * @param cause key of the cause that is to be found
 * @param others keys of further causes that were at work
 * @param whole all that is known of the bake
 * @param complaint what the baker says first
 * @param signs the other signs that were seen, by the place where they show
 * @param absent signs that the baker looked for and did not see, by the same places
 * @param clues all that can be asked
 * @param choices keys of the causes among which the learner chooses, in the order of their names;
 *     empty where any cause may be named
 */
public record MysteryLoaf(
    long seed,
    Level level,
    String cause,
    List<String> others,
    BakeSheet whole,
    List<SeenSign> complaint,
    Map<String, List<SeenSign>> signs,
    Map<String, List<String>> absent,
    List<Clue> clues,
    List<String> choices) {
  public MysteryLoaf {
    others = List.copyOf(others);
    complaint = List.copyOf(complaint);
    signs = Map.copyOf(signs);
    absent = Map.copyOf(absent);
    clues = List.copyOf(clues);
    choices = List.copyOf(choices);
  }
}
