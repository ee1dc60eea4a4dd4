package crumbtrail.web;

import crumbtrail.people.Person;
import java.util.List;

/**
 * Whoever asks for something of the log.
 *
 * @param person who they are
 * @param taught numbers of the classes whose bakes they may see
 * @param shared whether others keep bakes in the same log
 */
record Viewer(Person person, List<Long> taught, boolean shared) {

  /** Whoever uses a server that only this machine can reach. */
  static final Viewer ALONE = new Viewer(Person.ALONE, List.of(), false);

  Viewer {
    taught = List.copyOf(taught);
  }
}
