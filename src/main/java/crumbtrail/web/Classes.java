package crumbtrail.web;

import crumbtrail.web.KeepForm.Choice;
import java.util.List;

/** What the pages of the log know of classes; nothing where one person keeps it alone. */
interface Classes {

  /** Classes to which somebody can give a bake. */
  List<Choice> joined(Viewer viewer);

  /** Whose bakes somebody can list; none where there are only their own. */
  List<Choice> shelves(Viewer viewer, Texts t);

  /** The name of a baker. */
  String baker(long owner);

  /**
   * The class to which somebody gives a bake.
   *
   * @param typed its number, or empty for none
   * @throws Refusal if they do not belong to it
   */
  default Long given(Viewer viewer, String typed) {
    if (typed.isEmpty()) {
      return null;
    }
    if (joined(viewer).stream().noneMatch(one -> one.key().equals(typed))) {
      throw new Refusal(403, "Only a class that you belong to can be given a bake.");
    }
    return Long.valueOf(typed);
  }

  /** There are none. */
  Classes NONE =
      new Classes() {
        @Override
        public List<Choice> joined(Viewer viewer) {
          return List.of();
        }

        @Override
        public List<Choice> shelves(Viewer viewer, Texts t) {
          return List.of();
        }

        @Override
        public String baker(long owner) {
          return "";
        }
      };
}
