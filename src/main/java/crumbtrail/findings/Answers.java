package crumbtrail.findings;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.QuestionKind;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Degree;
import crumbtrail.sheet.BakeSheet.SeenSign;
import crumbtrail.sheet.Problem;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts answers into a sheet, as if the baker had written them there. */
public final class Answers {
  private Answers() {}

  /**
   * The sheet with a yes or no. A no that nothing on a sheet can say leaves it as it is.
   *
   * @param about key of a sign or circumstance
   * @param yes the answer
   * @param degree how marked, of a sign that was seen
   */
  public static BakeSheet with(
      BakeSheet sheet, Catalogue catalogue, String about, boolean yes, Optional<Degree> degree) {
    List<SeenSign> seen = new ArrayList<>(sheet.seen());
    List<String> notSeen = new ArrayList<>(sheet.notSeen());
    List<String> remarks = new ArrayList<>(sheet.process().remarks());
    if (catalogue.sign(about).isPresent()) {
      if (yes) {
        seen.add(new SeenSign(about, degree));
      } else {
        notSeen.add(about);
      }
    } else if (yes) {
      remarks.add(about);
    } else {
      catalogue.question(about).map(QuestionKind::no).ifPresent(remarks::add);
    }
    return new BakeSheet(
        sheet.title(),
        sheet.style(),
        sheet.formula(),
        sheet.preferments(),
        sheet.process().withRemarks(remarks),
        seen,
        notSeen,
        sheet.knownCauses());
  }

  /**
   * The sheet with an amount.
   *
   * @param about name of a reading that a question is about
   * @param text as the baker writes it: "24 C"
   * @return the altered sheet, or the problems with the text
   */
  public static Reading with(BakeSheet sheet, Catalogue catalogue, String about, String text) {
    Optional<String> field = catalogue.question(about).map(QuestionKind::field);
    return field.isPresent()
        ? SheetFields.with(sheet, field.get(), text)
        : new Reading(
            Optional.empty(),
            List.of(new Problem(about, "no field of a sheet holds this", "answer yes or no")));
  }
}
