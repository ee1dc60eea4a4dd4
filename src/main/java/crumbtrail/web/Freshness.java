package crumbtrail.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;

/**
 * Lets a client keep an answer and ask whether it still holds. What holds nothing of a baker's may
 * be kept; it is asked for again each time, and answered briefly if it is the same.
 */
final class Freshness {
  private static final int BYTES = 12;

  private Freshness() {}

  /** Answers with a text, or with 304 where the client has it already. */
  static void answer(Context ctx, String type, String text) {
    // Weak, since the same text goes out compressed and plain.
    String tag = "W/\"" + digest(text) + "\"";
    ctx.header("Cache-Control", "no-cache");
    ctx.header("ETag", tag);
    if (knows(ctx.header("If-None-Match"), tag)) {
      ctx.status(304);
    } else {
      ctx.contentType(type).result(text);
    }
  }

  /**
   * Answers with something of a baker's own: kept by nobody on the way, and told apart byte by
   * byte, so that a change can name what it was made for.
   */
  static void exact(Context ctx, String type, String text) {
    String tag = exactTag(text);
    ctx.disableCompression();
    ctx.header("Cache-Control", "private, no-cache");
    ctx.header("ETag", tag);
    if (knows(ctx.header("If-None-Match"), tag)) {
      ctx.status(304);
    } else {
      ctx.contentType(type).result(text);
    }
  }

  /** The tag of a text that is answered as it is. */
  static String exactTag(String text) {
    return "\"" + digest(text) + "\"";
  }

  /**
   * Refuses to change what is no longer as it was.
   *
   * @param match what the client wants it to be, null if it does not mind
   * @param text as it is now
   */
  static void check(String match, String text) {
    if (match != null
        && Arrays.stream(match.split(","))
            .map(String::strip)
            .noneMatch(one -> one.equals("*") || one.equals(exactTag(text)))) {
      throw new Refusal(412, "Somebody has changed it since. Ask for it again.");
    }
  }

  private static boolean knows(String known, String tag) {
    return known != null
        && Arrays.stream(known.split(","))
            .map(String::strip)
            .anyMatch(one -> one.equals("*") || bare(one).equals(bare(tag)));
  }

  private static String bare(String tag) {
    return tag.startsWith("W/") ? tag.substring(2) : tag;
  }

  private static String digest(String text) {
    try {
      byte[] all =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(all, 0, BYTES);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
