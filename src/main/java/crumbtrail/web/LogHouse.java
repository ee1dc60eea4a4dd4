package crumbtrail.web;

import crumbtrail.bakelog.LogStore;
import crumbtrail.picture.LoafPictures;
import io.javalin.http.Context;

/**
 * What all routes of the log share.
 *
 * @param door the way to the log
 * @param gate who may come in
 * @param forms reads what is sent
 * @param tracer works on sheets
 * @param causes names of causes
 * @param pictures of signs
 */
record LogHouse(
    LogDoor door,
    Gate gate,
    LogForms forms,
    Tracer tracer,
    CauseNamer causes,
    LoafPictures pictures) {

  LogStore store() {
    return door.store();
  }

  /** Whoever asks. */
  Viewer viewer(Context ctx) {
    return gate.viewer(ctx);
  }

  /** What whoever asks may see. */
  Sight sight(Viewer viewer) {
    return new Sight(door.store(), viewer);
  }

  /** The number in the address. */
  static long id(Context ctx, String name) {
    return Sight.number(ctx.pathParam(name))
        .orElseThrow(() -> new Refusal(404, "There is nothing of this number in the log."));
  }

  /** Goes on to another page after something was done. */
  static void on(Context ctx, String path) {
    ctx.redirect(path, io.javalin.http.HttpStatus.SEE_OTHER);
  }
}
