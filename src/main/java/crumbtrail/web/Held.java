package crumbtrail.web;

import crumbtrail.report.Reply;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;

/**
 * What the page of a report holds on to between one request and the next, since the server keeps
 * nothing.
 *
 * @param sheet the bake sheet as JSON; null on a page that no server stands behind, and where it
 *     could not come back through the limit
 * @param ahead whether the bake is still to come
 * @param passed what need not be asked again
 * @param reply the last answer, if there was one
 * @param taken what became of it
 * @param units in which numbers are written
 * @param texts of the page, in the reader's language
 */
record Held(
    String sheet,
    boolean ahead,
    Set<String> passed,
    Optional<Reply> reply,
    Optional<Reply.Taken> taken,
    Units units,
    Texts texts) {

  /** Bytes of a body that are kept for what is sent beside the sheet. */
  private static final int ROOM = 4096;

  /** A page by itself, in metric units. */
  static Held nothing() {
    return new Held(
        null, false, Set.of(), Optional.empty(), Optional.empty(), Units.METRIC, Texts.english());
  }

  /** The page of a report on this sheet. */
  static Held of(String sheet, boolean ahead, Units units, Texts texts) {
    return new Held(
        fits(sheet) ? sheet : null,
        ahead,
        Set.of(),
        Optional.empty(),
        Optional.empty(),
        units,
        texts);
  }

  /** The page after an answer. */
  static Held of(String sheet, Reply reply, Reply.Taken taken, Units units, Texts texts) {
    return new Held(
        fits(sheet) ? sheet : null,
        false,
        taken.passed(),
        Optional.of(reply),
        Optional.of(taken),
        units,
        texts);
  }

  /** The form for the next bake; null where no server would answer it. */
  WishForm wish() {
    return sheet == null ? null : WishForm.blank(sheet, texts);
  }

  private static boolean fits(String sheet) {
    return URLEncoder.encode(sheet, StandardCharsets.UTF_8).length() <= WebFace.BODY_LIMIT - ROOM;
  }
}
