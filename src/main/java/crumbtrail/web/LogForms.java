package crumbtrail.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;

/** Reads the forms of the log. */
final class LogForms {
  static final String FORM = "application/x-www-form-urlencoded";

  /** Name of the field that shows for whom a form was made. */
  static final String SEAL = "seal";

  /**
   * Bytes of a form: a sheet, and notes of the longest kind in a script of three bytes a letter.
   */
  static final int LONGEST = 384 * 1024;

  private final Guards guards;
  private final Gate gate;

  LogForms(Guards guards, Gate gate) {
    this.guards = guards;
    this.gate = gate;
  }

  /** The fields of a form that came from a page of ours. */
  Map<String, String> read(Context ctx) {
    Map<String, String> fields = unsealed(ctx);
    gate.checkSeal(ctx, fields);
    return fields;
  }

  /** The fields of a form that need not be sealed, since it can be sent before a log-in. */
  Map<String, String> unsealed(Context ctx) {
    guards.checkOrigin(ctx);
    guards.checkType(ctx, FORM);
    return FormBody.read(body(ctx))
        .orElseThrow(() -> new Refusal(400, "The form arrived damaged."));
  }

  // The limit of the server is for forms that are not kept; notes may be longer.
  private static byte[] body(Context ctx) {
    try (InputStream in = ctx.req().getInputStream()) {
      byte[] body = in.readNBytes(LONGEST + 1);
      if (body.length > LONGEST) {
        throw new Refusal(413, "The form is longer than " + LONGEST + " bytes.");
      }
      return body;
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
