package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.study.Kitchen;
import java.util.List;
import java.util.Map;

/** What the user's own log teaches, for commands that trace by it. */
public final class OwnKitchen {
  private OwnKitchen() {}

  /**
   * By how much the log-odds of causes move in this kitchen, decibans by key.
   *
   * @param log which log, null for the usual one
   * @throws BadInput if nothing was learnt yet
   */
  public static Map<String, Double> odds(String log, Catalogue catalogue) {
    Kept kept = new Kept();
    kept.log = log;
    try (LogStore store = kept.open()) {
      Kitchen kitchen = Kitchen.of(store.of(Scope.ONLY_BAKER), Bake.ONLY_BAKER, catalogue);
      if (kitchen.judged() == 0) {
        throw new BadInput(
            List.of(
                "--kitchen: the bake log "
                    + store.where()
                    + " has taught nothing yet. It takes traced bakes of which a cause was confirmed.",
                "Confirm one: crumbtrail log confirm ID CAUSE"));
      }
      return kitchen.odds();
    }
  }
}
