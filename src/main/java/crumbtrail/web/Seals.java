package crumbtrail.web;

import io.javalin.http.Context;

/** What a page puts into its forms to show for whom they were made. */
final class Seals {
  private static final String NAME = "seal";

  private Seals() {}

  /** Hands it to whatever answers a request. */
  static void attend(Context ctx, String seal) {
    ctx.attribute(NAME, seal);
  }

  /** What a request was handed; empty where nobody has to log in. */
  static String of(Context ctx) {
    String seal = ctx.attribute(NAME);
    return seal == null ? "" : seal;
  }
}
