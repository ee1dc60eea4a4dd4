package crumbtrail.web;

import io.javalin.http.Context;
import java.util.Locale;
import java.util.Set;

/**
 * Who may ask for what. The server keeps no session, so the worst a foreign page could do is make
 * it work; even that is refused.
 *
 * @param loopback whether the server listens on this machine only
 */
record Guards(boolean loopback) {

  private static final Set<String> LOCAL = Set.of("localhost", "127.0.0.1", "[::1]");

  /**
   * Refuses requests that reach a loopback server under another name: a foreign page that points
   * its own name at 127.0.0.1 would otherwise pass for ours.
   */
  void checkHost(Context ctx) {
    if (loopback && !LOCAL.contains(nameOf(ctx.header("Host")))) {
      throw new Refusal(421, "This server answers only to localhost.");
    }
  }

  /**
   * Refuses posts that a page of another origin sent. Browsers say so in {@code Sec-Fetch-Site} or
   * {@code Origin}; programs send neither.
   */
  void checkOrigin(Context ctx) {
    String site = ctx.header("Sec-Fetch-Site");
    String origin = ctx.header("Origin");
    boolean foreign;
    if (site != null) {
      foreign = !site.equals("same-origin") && !site.equals("none");
    } else {
      String host = String.valueOf(ctx.header("Host"));
      foreign =
          origin != null
              && !origin.equalsIgnoreCase("http://" + host)
              && !origin.equalsIgnoreCase("https://" + host);
    }
    if (foreign) {
      throw new Refusal(403, "The request comes from a page of another origin.");
    }
  }

  /** Refuses a body that is not of the one type the route reads. */
  void checkType(Context ctx, String wanted) {
    String sent = String.valueOf(ctx.header("Content-Type")).toLowerCase(Locale.ROOT);
    int semicolon = sent.indexOf(';');
    String type = (semicolon < 0 ? sent : sent.substring(0, semicolon)).strip();
    String rest = semicolon < 0 ? "" : sent.substring(semicolon + 1).strip();
    boolean utf8 = rest.isEmpty() || rest.matches("charset=\"?utf-8\"?");
    if (!type.equals(wanted) || !utf8) {
      throw new Refusal(415, "The body must be of the type " + wanted + ", in UTF-8.");
    }
  }

  private static String nameOf(String host) {
    if (host == null) {
      return "";
    }
    return host.toLowerCase(Locale.ROOT).replaceFirst(":\\d*$", "");
  }
}
