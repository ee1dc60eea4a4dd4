package crumbtrail.cli;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.Cause;
import crumbtrail.knowledge.Nearest;
import java.util.List;
import java.util.Locale;

/** Causes as people type them. */
public final class CauseNames {
  private CauseNames() {}

  /**
   * The cause of this key or name.
   *
   * @throws BadInput with the one that was probably meant
   */
  public static Cause named(Catalogue catalogue, String typed) {
    String said = typed.strip().toLowerCase(Locale.ROOT);
    List<Cause> causes = catalogue.knowledge().causes();
    return catalogue
        .cause(Catalogue.keyOf(said))
        .or(
            () ->
                causes.stream()
                    .filter(one -> said.equals(one.name().toLowerCase(Locale.ROOT)))
                    .findFirst())
        .orElseThrow(
            () ->
                new BadInput(
                    List.of(
                        "There is no cause \"%s\". Did you mean %s?"
                            .formatted(
                                said,
                                Nearest.of(
                                    Catalogue.keyOf(said),
                                    causes.stream().map(Cause::key).toList())),
                        "All causes: crumbtrail card")));
  }
}
