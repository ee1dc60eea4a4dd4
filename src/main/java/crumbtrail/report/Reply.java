package crumbtrail.report;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.report.Enquiry.Standing;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * An answer to one question about a bake. No talk is kept: whoever asks hands the sheet in, with
 * what was asked before, and gets both back.
 *
 * @param about key of the sign or circumstance, or name of the reading
 * @param said yes, no, slight or marked; an amount; or nothing where the baker cannot tell
 */
public record Reply(String about, String said) {
  private static final double LEAST = 0.005;

  /**
   * What became of an answer.
   *
   * @param sheet with the answer in it; as it was where there are problems
   * @param passed what need not be asked again
   * @param moved the causes that it moved, the most moved first
   * @param problems what is wrong with an amount
   */
  public record Taken(
      BakeSheet sheet, Set<String> passed, List<Moved> moved, List<Problem> problems) {
    public Taken {
      passed = Set.copyOf(passed);
      moved = List.copyOf(moved);
      problems = List.copyOf(problems);
    }
  }

  /** A cause that an answer moved, and how likely it was and is. */
  public record Moved(String name, double before, double after) {
    /** How far. */
    public double by() {
      return Math.abs(after - before);
    }
  }

  /**
   * Puts the answer into the sheet.
   *
   * @param passed what was asked before
   */
  Taken take(Enquiry enquiry, Catalogue catalogue, Set<String> passed) {
    if (catalogue.sign(about).isEmpty()
        && catalogue.circumstance(about).isEmpty()
        && catalogue.question(about).isEmpty()) {
      return new Taken(
          enquiry.sheet(),
          passed,
          List.of(),
          List.of(new Problem("answer", "there is no such question", "take one that is asked")));
    }
    List<Standing> before = enquiry.standings(Integer.MAX_VALUE);
    List<Problem> problems = put(enquiry, catalogue);
    Set<String> asked = new TreeSet<>(passed);
    if (problems.isEmpty()) {
      asked.add(about);
    }
    return new Taken(
        enquiry.sheet(), asked, moved(before, enquiry.standings(Integer.MAX_VALUE)), problems);
  }

  private List<Problem> put(Enquiry enquiry, Catalogue catalogue) {
    String word = said.strip().toLowerCase(Locale.ROOT);
    if (word.isEmpty()) {
      return List.of();
    }
    if (catalogue.question(about).filter(question -> question.field() != null).isPresent()) {
      return enquiry.answer(about, said.strip());
    }
    Optional<Degree> degree =
        switch (word) {
          case "slight" -> Optional.of(Degree.SLIGHT);
          case "marked" -> Optional.of(Degree.MARKED);
          default -> Optional.empty();
        };
    if (degree.isEmpty() && !word.equals("yes") && !word.equals("no")) {
      return List.of(new Problem("answer", "this is no answer", "say yes or no"));
    }
    enquiry.answer(about, !word.equals("no"), degree);
    return List.of();
  }

  // A cause that came in or fell out was or is as good as nought.
  private static List<Moved> moved(List<Standing> before, List<Standing> after) {
    Set<String> names = new TreeSet<>();
    before.forEach(one -> names.add(one.name()));
    after.forEach(one -> names.add(one.name()));
    List<Moved> moved = new ArrayList<>();
    for (String name : names) {
      Moved one = new Moved(name, of(before, name), of(after, name));
      if (one.by() >= LEAST) {
        moved.add(one);
      }
    }
    moved.sort((one, other) -> Double.compare(other.by(), one.by()));
    return moved;
  }

  private static double of(List<Standing> standings, String name) {
    return standings.stream()
        .filter(one -> one.name().equals(name))
        .mapToDouble(Standing::probability)
        .findFirst()
        .orElse(0);
  }
}
