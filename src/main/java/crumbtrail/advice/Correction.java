package crumbtrail.advice;

import crumbtrail.knowledge.Remedy;
import crumbtrail.sheet.BakeSheet;
import java.util.List;

/**
 * A change to the next bake, worked out and tried on the sheet.
 *
 * @param remedy what was to be done
 * @param knob key of what is turned, empty where nothing is
 * @param change what to do, as an imperative
 * @param from how it was, in the baker's units; "not told" where the sheet is silent
 * @param to how it is to be
 * @param why cause and effect
 * @param riskBefore how likely the cause is on the sheet without its signs, 0 to 1
 * @param riskAfter the same with the change made
 * @param moved other causes whose risk the change moves by more than a little
 * @param verdict what the re-check says
 * @param altered the sheet with the change made, without signs
 */
public record Correction(
    Remedy remedy,
    String knob,
    String change,
    String from,
    String to,
    String why,
    double riskBefore,
    double riskAfter,
    List<Moved> moved,
    Verdict verdict,
    BakeSheet altered) {

  public Correction {
    moved = List.copyOf(moved);
  }

  /** Key of the cause that it is to mend. */
  public String cause() {
    return remedy.cause();
  }

  /**
   * A cause that a change moves beside the one it is for.
   *
   * @param cause its key
   */
  public record Moved(String cause, double before, double after) {}

  /** What a re-check says of a change. */
  public enum Verdict {
    /** The risk falls, and no other rises beyond what is sound. */
    HELPS("helps"),
    /**
     * The sheet does not tell where it stands, so nothing can be checked: a step, and look again.
     */
    UNTOLD("cannot be checked, since the sheet does not tell how it was"),
    /** The risk stays as it is, as far as the sheet and the models can tell. */
    NOT_SEEN("makes no difference that the models can see"),
    /** The risk rises, or that of another cause does. */
    HARMS("does harm");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /** In plain words. */
    public String words() {
      return words;
    }
  }
}
