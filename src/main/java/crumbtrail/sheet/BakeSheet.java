package crumbtrail.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What a baker says about one bake: the formula, what was done, what came out. Every list may be
 * empty and every optional part missing; nothing is filled in here.
 *
 * @param title the baker's name for the bake, empty if none
 * @param style the kind of bread in the baker's words, empty if none
 * @param formula the lines of the final dough
 * @param preferments sponges, poolishes, starters, soakers and scalds that go into the dough
 * @param process what was done, stage by stage
 * @param seen what the baker saw, in their words or as catalogue keys
 * @param notSeen what the baker looked for and did not see
 * @param knownCauses the true causes, where a case states them; never shown to the rules
 */
public record BakeSheet(
    String title,
    String style,
    List<FormulaLine> formula,
    List<Preferment> preferments,
    BakeProcess process,
    List<SeenSign> seen,
    List<String> notSeen,
    List<String> knownCauses) {

  public BakeSheet {
    formula = List.copyOf(formula);
    preferments = List.copyOf(preferments);
    seen = List.copyOf(seen);
    notSeen = List.copyOf(notSeen);
    knownCauses = List.copyOf(knownCauses);
  }

  /** The same bake with another process. */
  public BakeSheet with(BakeProcess other) {
    return new BakeSheet(title, style, formula, preferments, other, seen, notSeen, knownCauses);
  }

  /** The same bake with another formula. */
  public BakeSheet with(List<FormulaLine> lines, List<Preferment> ahead) {
    return new BakeSheet(title, style, lines, ahead, process, seen, notSeen, knownCauses);
  }

  /** The bake before anybody has seen it: without signs, without what is known of its causes. */
  public BakeSheet unseen() {
    return new BakeSheet(
        title, style, formula, preferments, process, List.of(), List.of(), List.of());
  }

  /** A part of the dough that is made ahead: its formula and what happened to it before mixing. */
  public record Preferment(String name, List<FormulaLine> formula, List<Stage> stages) {
    public Preferment {
      formula = List.copyOf(formula);
      stages = List.copyOf(stages);
    }
  }

  /** A phrase or key that the baker reports as seen, and how marked it was. */
  public record SeenSign(String words, Optional<Degree> degree) {}

  /** How marked a sign was. */
  public enum Degree {
    SLIGHT,
    PLAIN,
    MARKED
  }
}
