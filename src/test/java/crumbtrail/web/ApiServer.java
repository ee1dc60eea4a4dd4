package crumbtrail.web;

import crumbtrail.api.Shelf;
import crumbtrail.handbook.CauseCards;
import crumbtrail.lessons.School;
import crumbtrail.picture.LoafPictures;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.rules.RuleBook;

/** A server with everything in it, over the built-in rules. */
final class ApiServer {
  private ApiServer() {}

  static WebFace start() {
    RuleBase rules = RuleBase.bundled();
    RuleBook book = RuleBook.bundled();
    return WebFace.start(
        new PostMortemTracer(new PostMortem(rules)),
        School.of(rules),
        new Shelf(book.catalogue(), new CauseCards(book), rules.version()),
        LoafPictures.of(rules.catalogue()),
        "127.0.0.1",
        0);
  }
}
