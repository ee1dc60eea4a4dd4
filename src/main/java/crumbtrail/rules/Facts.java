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

  /**
   * An order of lists of facts that is the same whenever the lists are. Names tell nearly all apart
   * and cost far less than to write the facts out.
   */
  public static int compare(List<Object> some, List<Object> others) {
    for (int at = 0; at < Math.min(some.size(), others.size()); at++) {
      int order = name(some.get(at)).compareTo(name(others.get(at)));
      if (order != 0) {
        return order;
      }
    }
    return some.size() == others.size()
        ? some.toString().compareTo(others.toString())
        : Integer.compare(some.size(), others.size());
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
