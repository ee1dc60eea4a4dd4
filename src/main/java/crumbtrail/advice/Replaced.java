package crumbtrail.advice;

import crumbtrail.formula.FormulaEdit;
import crumbtrail.formula.Substitution;
import crumbtrail.pantry.Ingredient;
import crumbtrail.pantry.Kind;
import crumbtrail.pantry.Pantry;
import crumbtrail.sheet.BakeSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A sheet with other ingredients in it than the baker wrote, for want of those.
 *
 * @param sheet the formula balanced again
 * @param notes what was done and what could not be, in sentences
 */
public record Replaced(BakeSheet sheet, List<String> notes) {

  public Replaced {
    notes = List.copyOf(notes);
  }

  /** Puts each in place, one after the other. */
  public static Replaced of(BakeSheet sheet, Pantry pantry, List<Instead> wished) {
    BakeSheet now = sheet;
    List<String> notes = new ArrayList<>();
    for (Instead one : wished) {
      now = one(now, pantry, one, notes);
    }
    return new Replaced(now, notes);
  }

  private static BakeSheet one(BakeSheet sheet, Pantry pantry, Instead wished, List<String> notes) {
    FormulaEdit edit = FormulaEdit.of(sheet, pantry);
    Optional<Predicate<Ingredient>> gone = gone(edit, pantry, wished.what());
    Optional<Ingredient> taken = pantry.lookup(wished.with());
    if (gone.isEmpty()) {
      String there = String.join(", ", edit.names(any -> true));
      notes.add(
          "Nothing on the sheet is called \""
              + wished.what()
              + "\", so nothing takes its place."
              + (there.isEmpty() ? "" : " There are: " + there + "."));
      return sheet;
    }
    if (taken.isEmpty()) {
      notes.add(
          "\""
              + wished.with()
              + "\" is not in the pantry, so "
              + wished.what()
              + " stays. Write it by a plain name, such as water, butter or plain flour.");
      return sheet;
    }
    if (edit.has(gone.get().and(one -> one.kind() == Kind.STARTER))
        || taken.get().kind() == Kind.STARTER) {
      notes.add(
          "A starter cannot be exchanged like an ingredient: it is flour, water and time as well. "
              + "Take a formula written for the leaven that you have.");
      return sheet;
    }
    Optional<Substitution> made = Substitution.of(sheet, pantry, gone.get(), taken.get(), 1);
    if (made.isEmpty()) {
      notes.add(
          "\"" + wished.what() + "\" stands on the sheet without an amount that could be weighed.");
      return sheet;
    }
    notes.add(made.get().to() + " in place of " + made.get().from() + ".");
    notes.addAll(made.get().balanced());
    notes.addAll(made.get().lost());
    return made.get().sheet();
  }

  // The very thing, then whatever is of that kind or property: "milk", "egg", "flour".
  private static Optional<Predicate<Ingredient>> gone(
      FormulaEdit edit, Pantry pantry, String words) {
    List<Predicate<Ingredient>> ways = new ArrayList<>();
    Optional<Ingredient> named = pantry.lookup(words);
    named.ifPresent(found -> ways.add(one -> one.key().equals(found.key())));
    ways.add(Knob.picks(words));
    named.ifPresent(found -> ways.add(one -> one.kind() == found.kind()));
    return ways.stream().filter(edit::has).findFirst();
  }
}
