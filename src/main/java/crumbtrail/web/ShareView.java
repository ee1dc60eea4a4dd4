package crumbtrail.web;

/**
 * How a report is kept or passed on.
 *
 * @param sheet the bake sheet
 * @param ahead whether the bake is still to come
 * @param link the address that carries the sheet; empty where it would be too long
 */
public record ShareView(String sheet, boolean ahead, String link) {

  /** Null where no server stands behind the page. */
  static ShareView of(Held held) {
    return held.sheet() == null
        ? null
        : new ShareView(
            held.sheet(), held.ahead(), SheetLink.address(held.sheet(), held.ahead()).orElse(""));
  }
}
