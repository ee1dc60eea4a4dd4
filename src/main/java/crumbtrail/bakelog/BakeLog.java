package crumbtrail.bakelog;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The bakes of one {@link Scope}. What lies outside of it cannot be seen, changed or deleted; it is
 * as if it were not there. Safe for many threads. A method that changes something returns when the
 * change is on disk. All of them throw {@link LogFault} where the store cannot be used.
 */
public interface BakeLog {

  /**
   * Puts a bake into the log, with everything but its photos. Its number is given here.
   *
   * @return the number
   * @throws IllegalArgumentException if the bake lies outside the scope
   */
  long add(Bake bake);

  /** The bake with this number. */
  Optional<Bake> find(long id);

  /** The number of the bake with this name. */
  Optional<Long> find(UUID uid);

  /**
   * A part of the list, the latest first.
   *
   * @param most lines on the page
   * @param after where the page before it ended, null for the first page
   */
  Page list(Sought sought, int most, @Nullable Place after);

  /**
   * The latest bakes with the numbers of their reports, the latest first.
   *
   * @param most how many
   */
  List<Digested> digests(Sought sought, int most);

  /**
   * All bakes by ascending number. They are fetched some at a time while the stream is read, so
   * memory stays flat; nothing is held open, so the stream need not be closed. A bake that comes in
   * meanwhile may be seen or not.
   *
   * @param after begins with the bake after this number; 0 for all
   */
  Stream<Bake> bakes(long after);

  /** How many bakes there are. */
  long count();

  /** How often each cause was confirmed, by key, the most frequent first. */
  Map<String, Long> confirmed();

  /**
   * From when on the odds of each baker's kitchen are learnt, by baker; who is not named learns
   * from all bakes. Nobody is named in the scope of a class.
   */
  Map<Long, LocalDateTime> learnsFrom();

  /**
   * Sets from when on the odds of a baker's kitchen are learnt.
   *
   * @param from null for from the first bake on
   * @throws IllegalArgumentException if the baker lies outside the scope
   */
  void learnFrom(long baker, @Nullable LocalDateTime from);

  /**
   * Changes a bake: label, recipe, day, notes, outcome, verdicts, trace, owner and class; its sheet
   * stays. Nobody else can change it between reading and writing.
   *
   * @param change must not use this log
   * @return the bake as it is now; empty if there is none with this number
   */
  Optional<Bake> change(long id, UnaryOperator<Bake> change);

  /**
   * Adds a photo to a bake.
   *
   * @return its number; empty if there is no such bake
   */
  Optional<Long> addPhoto(long bake, Photo photo);

  /** The photo with this number. */
  Optional<Photo> photo(long id);

  /**
   * Deletes a photo for good.
   *
   * @return whether there was one
   */
  boolean deletePhoto(long id);

  /**
   * Deletes a bake for good, its photos too.
   *
   * @return whether there was one
   */
  boolean delete(long id);
}
