package crumbtrail.web;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;

/** Lets people in to the log, and nobody else. */
interface Gate {

  /**
   * Whoever asks.
   *
   * @throws RuntimeException if they have to log in first
   */
  Viewer viewer(Context ctx);

  /** Whoever asks, if that is known already. */
  Optional<Viewer> known(Context ctx);

  /** Refuses a form that does not come from a page which was made for this viewer. */
  void checkSeal(Context ctx, Map<String, String> fields);

  /**
   * Counts one more of what somebody sends.
   *
   * @throws Refusal if it is too often
   */
  void count(Context ctx, Viewer viewer);

  /** Where only one person uses the server, there is nothing to log in to. */
  Gate OPEN =
      new Gate() {
        @Override
        public Viewer viewer(Context ctx) {
          return Viewer.ALONE;
        }

        @Override
        public Optional<Viewer> known(Context ctx) {
          return Optional.of(Viewer.ALONE);
        }

        @Override
        public void checkSeal(Context ctx, Map<String, String> fields) {
          // That a post comes from our own pages is seen by its origin.
        }

        @Override
        public void count(Context ctx, Viewer viewer) {
          // Whoever uses their own machine may do so as often as they like.
        }
      };
}
