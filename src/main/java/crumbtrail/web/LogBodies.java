package crumbtrail.web;

import crumbtrail.api.LogReader;
import crumbtrail.bakelog.PhotoMaker;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Reads the bodies that programs send to the log. */
record LogBodies(Guards guards) {
  /** Characters of the largest photo in Base64, and of what stands around it. */
  static final int PICTURE = PhotoMaker.MOST_BYTES / 3 * 4 + 1024;

  void checkOrigin(Context ctx) {
    guards.checkOrigin(ctx);
  }

  /** A body of JSON in UTF-8. */
  String json(Context ctx, int longest) {
    guards.checkType(ctx, "application/json");
    try (InputStream in = ctx.req().getInputStream()) {
      byte[] body = in.readNBytes(longest + 1);
      if (body.length > longest) {
        throw new Refusal(413, "The body is longer than " + longest + " bytes.");
      }
      return FormBody.text(body, body.length)
          .orElseThrow(() -> new Refusal(400, "The body is not valid UTF-8."));
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  /** Refuses what has anything wrong with it. */
  void check(LogReader reader) {
    int count = reader.problems().size();
    if (count > 0) {
      throw new Refusal(
          400,
          count == 1 ? "There is one problem." : "There are " + count + " problems.",
          reader.problems());
    }
  }
}
