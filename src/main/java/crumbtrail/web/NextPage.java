package crumbtrail.web;

import crumbtrail.sheet.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * The page of the next bake.
 *
 * @param next null where it could not be worked out
 * @param wish what was wished, to be sent again; null where no server answers
 * @param faults what is wrong with the sheet that was carried along, in sentences
 */
public record NextPage(AdviceView.Next next, WishForm wish, List<String> faults) {

  static NextPage made(AdviceView.Next next, WishForm wish) {
    return new NextPage(next, wish, List.of());
  }

  static NextPage refused(WishForm wish, List<Problem> problems) {
    List<String> faults = new ArrayList<>();
    problems.forEach(
        one -> faults.add(LessonWords.capital(one.what()) + ": " + one.remedy() + "."));
    return new NextPage(null, wish, faults);
  }
}
