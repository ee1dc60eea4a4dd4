package crumbtrail.knowledge;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown when knowledge files cannot be used; carries every fault found, not only the first. */
public final class FaultyKnowledge extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * @param faults all faults, at least one
   */
  public FaultyKnowledge(List<Fault> faults) {
    super(faults.stream().map(Fault::toString).collect(Collectors.joining(System.lineSeparator())));
    this.faults = List.copyOf(faults);
  }

  /** All faults, in the order of files and lines. */
  public List<Fault> faults() {
    return faults;
  }
}
