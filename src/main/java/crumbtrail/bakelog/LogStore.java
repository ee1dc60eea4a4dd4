package crumbtrail.bakelog;

import crumbtrail.people.People;
import java.util.function.Consumer;
import java.util.function.Function;

/** A store of bakes, open until it is closed. Safe for many threads. */
public interface LogStore extends AutoCloseable {

  /** Its bakes as seen through a scope. */
  BakeLog of(Scope scope);

  /**
   * Looks at the log as it is at this moment, whatever others write meanwhile.
   *
   * @param look given a log that can only be read
   */
  <T> T atOneMoment(Scope scope, Function<BakeLog, T> look);

  /**
   * Puts many bakes in at once: all or, where the filling throws, none. In an empty log they keep
   * the numbers with which they come; in one that holds bakes already they get new ones.
   *
   * @param filling given where to put them
   */
  void fill(Consumer<Filling> filling);

  /** Who shares it, if several people do. */
  People people();

  /** Where the log is, for people. Holds no password. */
  String where();

  @Override
  void close();

  /** Takes bakes as they come out of another log. */
  interface Filling {
    /**
     * Puts a bake in, unless one of its name is there.
     *
     * @return whether it was put in
     */
    boolean put(Bake bake, Iterable<Photo> photos);
  }
}
