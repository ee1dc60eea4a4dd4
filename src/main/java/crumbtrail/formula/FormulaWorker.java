package crumbtrail.formula;

import crumbtrail.formula.Assembly.BuiltPart;
import crumbtrail.formula.Tally.Item;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Works a bake sheet's formula out: every line to grams, every part into the dough once, and from
 * that the baker's percentages (gisslen-2008: ingredient over all flour, flour being 100).
 */
public final class FormulaWorker {
  private FormulaWorker() {}

  /**
   * Works the formula out. Same sheet and pantry, same result; never throws for what a sheet says.
   */
  public static Formula work(BakeSheet sheet, Pantry pantry) {
    Notes notes = new Notes();
    Assembly dough = Assembly.of(sheet, pantry, notes);
    Tally tally = Tally.of(dough.shares);
    Level flour = tally.get(Item.FLOUR);
    List<PartKind> partKinds = dough.parts.stream().map(BuiltPart::kind).toList();
    boolean raisedAndSalted =
        tally.get(Item.SALT).value() > 0
            && tally.get(Item.YEAST).plus(tally.get(Item.STARTER)).value() > 0;
    // A few loose percentages are seldom all of a formula; a list of weights usually is.
    boolean whole =
        dough.flourNamed
            && flour.value() > 0
            && tally.get(Item.WATER).value() > 0
            && (dough.scaleKnown || raisedAndSalted);
    Set<String> circumstances = Circumstances.of(dough.allLines, whole, partKinds);
    if (flour.value() <= 0) {
      return empty(tally, notes, circumstances, dough.scaleKnown);
    }
    Readings readings = new Readings(tally, dough.unmeasured, dough.flourNamed, whole);
    Map<String, Level> named = readings.all();
    if (dough.scaleKnown) {
      named.put("dough weight", tally.get(Item.DOUGH));
    }
    List<Formula.Part> parts = new ArrayList<>();
    dough.parts.forEach(part -> parts.add(part(part, flour)));
    return new Formula(
        dough.scaleKnown,
        flour,
        tally.get(Item.DOUGH),
        percents(dough.shares, flour, Share::name),
        percents(dough.shares, flour, FormulaWorker::kindWord),
        named,
        readings.allWater(),
        readings.flourAloneProtein(),
        parts,
        notes.notUnderstood(),
        notes.contradictions(),
        notes.assumptions(),
        circumstances);
  }

  private static Formula empty(
      Tally tally, Notes notes, Set<String> circumstances, boolean scaleKnown) {
    return new Formula(
        scaleKnown,
        Level.ZERO,
        tally.get(Item.DOUGH),
        Map.of(),
        Map.of(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        notes.notUnderstood(),
        notes.contradictions(),
        notes.assumptions(),
        circumstances);
  }

  private static String kindWord(Share share) {
    return share.ingredient().map(known -> known.kind()).orElse(Kind.OTHER).word();
  }

  private static Map<String, Level> percents(
      List<Share> shares, Level flour, Function<Share, String> name) {
    Map<String, Level> grams = new LinkedHashMap<>();
    shares.forEach(share -> grams.merge(name.apply(share), share.grams(), Level::plus));
    Map<String, Level> percents = new LinkedHashMap<>();
    grams.forEach((key, level) -> percents.put(key, level.percentOf(flour)));
    return percents;
  }

  private static Formula.Part part(BuiltPart part, Level flour) {
    Tally own = Tally.of(part.shares());
    Level ownFlour = own.get(Item.FLOUR);
    boolean has = ownFlour.value() > 0;
    return new Formula.Part(
        part.name(),
        part.kind().word(),
        ownFlour,
        own.get(Item.DOUGH),
        has ? percents(part.shares(), ownFlour, Share::name) : Map.of(),
        has ? Optional.of(own.get(Item.POURED).percentOf(ownFlour)) : Optional.empty(),
        has ? Optional.of(ownFlour.shareOf(flour)) : Optional.empty());
  }
}
