package crumbtrail.web;

import crumbtrail.api.Shelf;
import crumbtrail.handbook.CauseCards;
import crumbtrail.handbook.Leaves;
import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;

/** The server with all that stands behind it, as the command starts it. */
final class WholeFace {
  private WholeFace() {}

  static WebFace start() {
    RuleBase rules = RuleBase.bundled();
    RuleBook book = RuleBook.bundled();
    return WebFace.start(
        new PostMortemTracer(new PostMortem(rules)),
        School.of(rules),
        new Shelf(book.catalogue(), new CauseCards(book), rules.version()),
        new Leaves(book),
        LoafPictures.of(rules.catalogue()),
        "127.0.0.1",
        0);
  }
}
