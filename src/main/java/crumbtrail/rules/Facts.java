package crumbtrail.rules;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.workup.Heard;
import crumbtrail.workup.Reading;
import crumbtrail.workup.Workup;
import java.util.ArrayList;
import java.util.List;

/** What the rules see of a workup. */
public final class Facts {
  private Facts() {}

  /** Readings, signs, circumstances and the bread, as the rules see them. */
  public static List<Object> of(Workup workup) {
    List<Object> facts = new ArrayList<>(workup.readings());
    workup.heard().signs().forEach(sign -> facts.add(of(sign)));
    workup
        .heard()
        .circumstances()
        .forEach(
            circumstance ->
                facts.add(
                    new CircumstanceFact(
                        Catalogue.spoken(circumstance.key()), circumstance.words())));
    facts.add(new Bread(workup.style().name(), workup.style().tags()));
    return facts;
  }

  /** A sign as the rules see it. */
  public static SignFact of(Heard.Sign sign) {
    return new SignFact(Catalogue.spoken(sign.key()), sign.seen(), sign.degree(), sign.words());
  }

  /** The name of a fact, by which rules ask for it; the bread has none. */
  static String name(Object fact) {
    if (fact instanceof Reading reading) {
      return reading.name();
    }
    if (fact instanceof SignFact sign) {
      return sign.name();
    }
    return fact instanceof CircumstanceFact one ? one.name() : "";
  }
}
