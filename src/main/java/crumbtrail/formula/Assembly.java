package crumbtrail.formula;

import crumbtrail.formula.WeighedLine.Way;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.BakeSheet.Preferment;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

/** Puts the dough together from its lines and its parts, every gram once. */
final class Assembly {
  /** Percentages without any weight stand on this much flour, grams. */
  private static final double MADE_UP_FLOUR = 1000;

  private final List<Preferment> preferments;
  private final LineWeigher weigher;
  private final Notes notes;
  private final List<List<WeighedLine>> partLines = new ArrayList<>();
  private final List<PartKind> partKinds = new ArrayList<>();
  private final Set<Integer> pointedAt = new HashSet<>();

  final List<WeighedLine> allLines = new ArrayList<>();
  final List<Share> shares = new ArrayList<>();
  final List<BuiltPart> parts = new ArrayList<>();
  final Set<Kind> unmeasured = EnumSet.noneOf(Kind.class);
  boolean scaleKnown = true;
  boolean flourNamed = true;

  /** A part with its shares as they go into the dough. */
  record BuiltPart(String name, PartKind kind, List<Share> shares) {}

  private Assembly(BakeSheet sheet, LineWeigher weigher, Notes notes) {
    this.preferments = sheet.preferments();
    this.weigher = weigher;
    this.notes = notes;
  }

  static Assembly of(BakeSheet sheet, Pantry pantry, Notes notes) {
    Assembly assembly = new Assembly(sheet, new LineWeigher(pantry, notes), notes);
    assembly.build(sheet, pantry);
    return assembly;
  }

  private void build(BakeSheet sheet, Pantry pantry) {
    List<WeighedLine> main = new ArrayList<>(weigher.weigh(sheet.formula()));
    main.removeIf(line -> !line.inDough() || Stated.isHydration(line.line()));
    for (Preferment preferment : preferments) {
      List<WeighedLine> lines = weigher.weigh(preferment.formula());
      partLines.add(lines);
      partKinds.add(PartKind.of(preferment.name(), lines));
    }
    Map<Integer, Integer> pointers = Pointers.find(main, preferments, partKinds, -1);
    Stated stated = Stated.on(sheet);
    double base = baseFlour(main, pointers.keySet(), stated, pantry);
    allLines.addAll(main);
    partLines.forEach(allLines::addAll);
    for (int i = 0; i < main.size(); i++) {
      WeighedLine line = main.get(i).on(base);
      if (pointers.containsKey(i)) {
        addPart(pointers.get(i), line.grams(), base, line.line().where());
      } else {
        shares.addAll(shares(line, PartKind.MAIN));
      }
    }
    for (int i = 0; i < preferments.size(); i++) {
      if (!pointedAt.contains(i) && !isStage(i)) {
        addPart(i, Optional.empty(), base, "preferments[" + i + "]");
      }
    }
    addStated(stated, base, pantry);
  }

  /** Whether another part is built on this one. */
  private boolean isStage(int part) {
    for (int i = 0; i < preferments.size(); i++) {
      if (i != part
          && Pointers.find(partLines.get(i), preferments, partKinds, i).containsValue(part)) {
        return true;
      }
    }
    return false;
  }

  /** The flour that percentages on the sheet stand on, grams. */
  private double baseFlour(
      List<WeighedLine> main, Set<Integer> pointers, Stated stated, Pantry pantry) {
    double weighed = 0;
    double percent = 0;
    boolean any = stated.hydration().isPresent();
    boolean flour = false;
    for (int i = 0; i < main.size(); i++) {
      WeighedLine line = main.get(i);
      any |= line.way() == Way.PERCENT;
      if (line.isKind(Kind.FLOUR) && !pointers.contains(i)) {
        flour = true;
        weighed += line.way() == Way.PERCENT ? 0 : line.grams().map(Level::value).orElse(0.0);
        percent += line.percent();
      }
    }
    if (weighed > 0) {
      return percent > 0 && percent < 99 ? weighed / (1 - percent / 100) : weighed;
    }
    double inParts =
        partLines.stream()
            .flatMap(List::stream)
            .filter(l -> l.isKind(Kind.FLOUR))
            .mapToDouble(l -> l.grams().map(Level::value).orElse(0.0))
            .sum();
    if (!any || inParts > 0) {
      return inParts;
    }
    scaleKnown = false;
    if (!flour) {
      flourNamed = false;
      notes.assume("no flour line: percentages taken on 100 % flour");
      pantry
          .find("flour")
          .ifPresent(
              find ->
                  shares.add(
                      new Share(
                          Optional.of(find.ingredient()),
                          find.ingredient().plainName(),
                          Level.exact(MADE_UP_FLOUR),
                          PartKind.MAIN,
                          OptionalDouble.empty(),
                          false)));
    }
    dropWeights(main);
    return MADE_UP_FLOUR;
  }

  /** Weights beside percentages of an unknown flour say nothing. */
  private void dropWeights(List<WeighedLine> main) {
    for (int i = 0; i < main.size(); i++) {
      WeighedLine line = main.get(i);
      if (line.way() != Way.PERCENT && line.grams().isPresent()) {
        notes.notUnderstood(
            line.line().where(),
            line.line().written(),
            "a weight without any flour weight: its percentage is open");
        line.ingredient().map(Ingredient::kind).ifPresent(unmeasured::add);
        main.set(i, new WeighedLine(line.line(), line.find(), Optional.empty(), Way.NONE, false));
      }
    }
    main.removeIf(line -> !line.inDough());
  }

  private void addPart(int index, Optional<Level> wanted, double base, String where) {
    pointedAt.add(index);
    String name = preferments.get(index).name();
    List<Share> made = partShares(index, wanted, base, new HashSet<>());
    double total = sum(made);
    if (total <= 0) {
      notes.notUnderstood(where, name, "its weight cannot be told: left out of the dough");
      return;
    }
    double factor = 1;
    if (wanted.isPresent() && wanted.get().value() > 0) {
      factor = wanted.get().value() / total;
      if (factor > 1.05) {
        notes.contradict(
            where,
            "the dough takes "
                + Notes.grams(wanted.get().value())
                + " of \""
                + name
                + "\", but its own formula adds up to "
                + Notes.grams(total)
                + "; the amount in the dough was used");
      } else if (factor > 0.97) {
        // The same weight but for rounding: "936 g" of 936.3 g.
        factor = 1;
      } else {
        notes.assume(
            "of "
                + Notes.grams(total)
                + " \""
                + name
                + "\", "
                + Notes.grams(wanted.get().value())
                + " go into the dough");
      }
    }
    List<Share> used = new ArrayList<>();
    for (Share share : made) {
      used.add(share.times(factor).in(partKinds.get(index)));
    }
    parts.add(new BuiltPart(name, partKinds.get(index), used));
    shares.addAll(used);
  }

  private List<Share> partShares(
      int index, Optional<Level> wanted, double base, Set<Integer> open) {
    List<Share> made = new ArrayList<>();
    if (!open.add(index)) {
      return made;
    }
    List<WeighedLine> lines = partLines.get(index);
    Map<Integer, Integer> inner = Pointers.find(lines, preferments, partKinds, index);
    double own = PartScale.flour(lines, wanted, base, scaleKnown);
    for (int i = 0; i < lines.size(); i++) {
      WeighedLine line = lines.get(i).on(own);
      if (!inner.containsKey(i)) {
        made.addAll(shares(line, partKinds.get(index)));
        continue;
      }
      pointedAt.add(inner.get(i));
      List<Share> stage = partShares(inner.get(i), line.grams(), base, open);
      double total = sum(stage);
      double factor = total > 0 ? line.grams().map(grams -> grams.value() / total).orElse(1.0) : 1;
      stage.forEach(share -> made.add(share.times(factor).in(partKinds.get(index))));
    }
    open.remove(index);
    return made;
  }

  private List<Share> shares(WeighedLine line, PartKind part) {
    line.find().filter(find -> find.assumed()).ifPresent(find -> notes.assume(find.note()));
    String where = line.line().where();
    String written = line.line().written();
    Optional<Ingredient> known = line.ingredient();
    if (line.grams().isEmpty()) {
      known.map(Ingredient::kind).ifPresent(unmeasured::add);
      if (known.isEmpty()) {
        notes.notUnderstood(where, written, "neither ingredient nor weight known: left out");
      } else if (line.way() == Way.NONE) {
        notes.assume("\"" + written + "\" gives no amount, so it is left open");
      } else {
        notes.notUnderstood(where, written, "the weight of this measure is not known: left out");
      }
      return List.of();
    }
    notes.assumePoint(written);
    Level grams = line.grams().get();
    if (known.isEmpty()) {
      notes.notUnderstood(
          where,
          written,
          "counted by weight only ("
              + Notes.grams(grams.value())
              + "): its water, fat, sugar and salt are open");
    }
    if (known.isPresent() && known.get().kind() == Kind.STARTER) {
      List<Share> split = StarterSplit.split(line, known.get(), grams, notes);
      return part == PartKind.MAIN ? split : split.stream().map(s -> s.in(part)).toList();
    }
    String name = known.map(Ingredient::plainName).orElse(line.line().ingredient());
    return List.of(
        new Share(
            known, name, grams, part, line.line().protein(), line.line().fallingNumber(), false));
  }

  /** Percentages stated in words stand in for lines that are missing. */
  private void addStated(Stated stated, double base, Pantry pantry) {
    if (base <= 0) {
      return;
    }
    boolean starterLine = allLines.stream().anyMatch(line -> line.isKind(Kind.STARTER));
    Optional<Ingredient> starter = pantry.lookup("sourdough starter");
    if (stated.starter().isPresent() && !starterLine && parts.isEmpty() && starter.isPresent()) {
      Level grams = Level.exact(base * stated.starter().getAsDouble() / 100);
      shares.addAll(StarterSplit.plain(starter.get(), grams));
      notes.assume("starter taken as stated, at equal weights of flour and water");
    }
    boolean poured = shares.stream().anyMatch(share -> share.has("liquid") && !share.leavening());
    Optional<Ingredient> water = pantry.lookup("water");
    if (stated.hydration().isPresent() && !poured && water.isPresent()) {
      double flour =
          sumIf(share -> share.ingredient().map(i -> i.kind() == Kind.FLOUR).orElse(false));
      double there = sumIf(share -> share.has("liquid"));
      double missing = Math.max(0, flour * stated.hydration().getAsDouble() / 100 - there);
      shares.add(
          new Share(
              water, "water", Level.exact(missing), PartKind.MAIN, OptionalDouble.empty(), false));
      notes.assume("water taken from the stated hydration");
    }
  }

  private double sumIf(Predicate<Share> which) {
    return sum(shares.stream().filter(which).toList());
  }

  static double sum(List<Share> shares) {
    return shares.stream().mapToDouble(share -> share.grams().value()).sum();
  }
}
