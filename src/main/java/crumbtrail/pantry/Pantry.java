package crumbtrail.pantry;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * All known ingredients, found by the names bakers give them. What it answers never changes once it
 * is made; it may be asked from several threads.
 */
public final class Pantry {
  /** What follows one of these says where or how, not what: "water from the tap". */
  private static final Pattern TAIL =
      Pattern.compile(
          "\\s+(?:from|for|at|with|in|to|plus|such as|like|into|until|if|per)\\s.*|[,;:(].*|\\s-\\s.*",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private static final Pattern SUM = Pattern.compile("(?:\\+|\\bplus)\\s*\\d.*", Pattern.DOTALL);

  /** Characters in a name; nothing longer names one ingredient. */
  private static final int LONGEST = 200;

  /** Names kept with what they mean: recipes use few names often. */
  private static final int REMEMBERED = 4096;

  private static final Pattern EITHER =
      Pattern.compile("\\s+or\\s+|\\s*/\\s*", Pattern.CASE_INSENSITIVE);

  /** Best first: most words, then a true name before a loose one, exact before near, longest. */
  private static final Comparator<Match> BEST =
      Comparator.<Match>comparingInt(match -> match.entry.words.size())
          .thenComparing(match -> !match.entry.loose)
          .thenComparingInt(match -> -match.slips)
          .thenComparingInt(match -> match.entry.name.length());

  private final List<Ingredient> all;
  private final List<Entry> entries = new ArrayList<>();

  /** By its words in alphabetical order: the short way for names the pantry has as they stand. */
  private final Map<List<String>, Entry> exact = new HashMap<>();

  private final Map<String, Optional<Find>> remembered = new ConcurrentHashMap<>();

  private Pantry(Collection<Ingredient> ingredients) {
    all = List.copyOf(ingredients);
    Set<String> keys = new HashSet<>();
    for (Ingredient ingredient : all) {
      if (!keys.add(ingredient.key())) {
        throw new IllegalArgumentException("the pantry holds \"" + ingredient.key() + "\" twice");
      }
      ingredient.names().forEach(name -> add(ingredient, name, false));
      ingredient.assumedFor().forEach(name -> add(ingredient, name, true));
    }
  }

  private void add(Ingredient ingredient, String name, boolean loose) {
    Entry entry = new Entry(ingredient, name, Names.words(name), loose);
    entries.add(entry);
    exact.merge(
        entry.words.stream().sorted().toList(),
        entry,
        (first, second) -> first.loose && !second.loose ? second : first);
  }

  /**
   * Reads every {@code .csv} file of a folder.
   *
   * @throws IOException if a file cannot be read
   * @throws IllegalArgumentException naming file and line where a line is wrong
   */
  public static Pantry read(Path csvFolder) throws IOException {
    return of(PantryFile.readFolder(csvFolder));
  }

  /**
   * A pantry of these ingredients.
   *
   * @throws IllegalArgumentException if two have the same key
   */
  public static Pantry of(Collection<Ingredient> ingredients) {
    return new Pantry(ingredients);
  }

  public List<Ingredient> all() {
    return all;
  }

  /** The ingredient with this key, as the pantry file writes it. */
  public Optional<Ingredient> withKey(String key) {
    return all.stream().filter(ingredient -> ingredient.key().equals(key)).findFirst();
  }

  /** The ingredient that a name means, empty if the pantry knows none. */
  public Optional<Ingredient> lookup(String name) {
    return find(name).map(Find::ingredient);
  }

  /**
   * The ingredient that a name means, and whether that is a guess. Plural, word order, words that
   * only say how ("lukewarm"), and small slips of spelling do not matter; the longest pantry name
   * within the words wins, so "strong white bread flour" is bread flour.
   */
  public Optional<Find> find(String name) {
    if (name.length() > LONGEST) {
      return Optional.empty();
    }
    Optional<Find> known = remembered.get(name);
    if (known == null) {
      known = search(name);
      if (remembered.size() < REMEMBERED) {
        remembered.put(name, known);
      }
    }
    return known;
  }

  private Optional<Find> search(String name) {
    // "egg + 1 yolk" is an egg first of all, never an egg yolk.
    String text = SUM.matcher(name).replaceFirst("").strip();
    Optional<Find> whole = best(text);
    if (whole.isPresent() && !whole.get().assumed()) {
      return whole;
    }
    Optional<Find> shorter = best(TAIL.matcher(text).replaceFirst(""));
    if (shorter.isPresent() && !shorter.get().assumed()) {
      return shorter;
    }
    if (whole.isPresent()) {
      return whole;
    }
    if (shorter.isPresent()) {
      return shorter;
    }
    String[] either = EITHER.split(text, -1);
    for (String part : either.length > 1 ? either : new String[0]) {
      Optional<Find> one = best(part);
      if (one.isPresent()) {
        return Optional.of(guess(one.get().ingredient(), one.get().name(), text));
      }
    }
    return Optional.empty();
  }

  private Optional<Find> best(String text) {
    List<String> words = Names.words(text);
    if (words.isEmpty()) {
      return Optional.empty();
    }
    Entry same = exact.get(words.stream().sorted().toList());
    if (same != null) {
      return Optional.of(
          same.loose
              ? guess(same.ingredient, same.name, text)
              : new Find(same.ingredient, same.name, false, ""));
    }
    return entries.stream()
        .map(entry -> Match.of(entry, words))
        .filter(match -> match != null && match.isAcceptable(words))
        .max(BEST)
        .map(
            match ->
                match.entry.loose || match.strays
                    ? guess(match.entry.ingredient, match.entry.name, text)
                    : new Find(match.entry.ingredient, match.entry.name, false, ""));
  }

  private static Find guess(Ingredient ingredient, String name, String text) {
    return new Find(ingredient, name, true, "\"" + text + "\" taken as " + ingredient.plainName());
  }

  private record Entry(Ingredient ingredient, String name, List<String> words, boolean loose) {}

  /**
   * @param used which of the baker's words the pantry name covers
   * @param slips how many of them only nearly
   * @param strays whether words are left that might name something else
   */
  private record Match(Entry entry, Set<Integer> used, int slips, boolean strays) {

    static Match of(Entry entry, List<String> words) {
      Set<Integer> used = new HashSet<>();
      int slips = 0;
      for (String wanted : entry.words) {
        int at = firstFree(words, used, wanted::equals);
        if (at < 0) {
          at = firstFree(words, used, word -> Names.near(word, wanted));
          slips++;
        }
        if (at < 0) {
          return null;
        }
        used.add(at);
      }
      boolean strays = false;
      for (int i = 0; i < words.size(); i++) {
        strays |= !used.contains(i) && !Names.harmless(words.get(i));
      }
      return new Match(entry, used, slips, strays);
    }

    private static int firstFree(List<String> words, Set<Integer> used, Predicate<String> fits) {
      for (int i = 0; i < words.size(); i++) {
        if (!used.contains(i) && fits.test(words.get(i))) {
          return i;
        }
      }
      return -1;
    }

    /** With words left over, the last telling word must be part of the name: "peanut butter". */
    boolean isAcceptable(List<String> words) {
      if (!strays) {
        return true;
      }
      for (int i = words.size() - 1; i >= 0; i--) {
        if (used.contains(i)) {
          return true;
        }
        if (!Names.harmless(words.get(i))) {
          return false;
        }
      }
      return false;
    }
  }
}
