package crumbtrail.web;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
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

  private static final Set<String> JSON_RANGES = Set.of("*/*", "application/*", "application/json");

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

  /** Refuses those who would not take the one type in which there is an answer. */
  void checkAccept(Context ctx) {
    String accept = ctx.header("Accept");
    if (accept != null && !accept.isBlank() && !takesJson(accept.toLowerCase(Locale.ROOT))) {
      throw new Refusal(406, "The answer is application/json, and Accept leaves that out.");
    }
  }

  private static boolean takesJson(String accept) {
    for (String range : accept.split(",")) {
      String[] parts = range.strip().split("\\s*;\\s*");
      boolean never = Arrays.stream(parts).anyMatch(part -> part.matches("q=0(\\.0*)?"));
      if (JSON_RANGES.contains(parts[0]) && !never) {
        return true;
      }
    }
    return false;
  }

  /** Refuses a body that is not of the one type the route reads. */
  void checkType(Context ctx, String wanted) {
    checkType(ctx, List.of(wanted));
  }

  /** Refuses a body of another type than these; returns its type. */
  String checkType(Context ctx, List<String> wanted) {
    String sent = String.valueOf(ctx.header("Content-Type")).toLowerCase(Locale.ROOT);
    int semicolon = sent.indexOf(';');
    String type = (semicolon < 0 ? sent : sent.substring(0, semicolon)).strip();
    String rest = semicolon < 0 ? "" : sent.substring(semicolon + 1).strip();
    boolean utf8 = rest.isEmpty() || rest.matches("charset=\"?utf-8\"?");
    if (!wanted.contains(type) || !utf8) {
      throw new Refusal(
          415, "The body must be of the type " + String.join(" or ", wanted) + ", in UTF-8.");
    }
    return type;
  }

  private static String nameOf(String host) {
    if (host == null) {
      return "";
    }
    return host.toLowerCase(Locale.ROOT).replaceFirst(":\\d*$", "");
  }
}
