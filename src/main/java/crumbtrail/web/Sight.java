package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.Scope;
import crumbtrail.people.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * What a viewer sees of the log and may change in it. Every page and every address goes through
 * here; no other class asks the store for a scope. Bakers see and change what is theirs. Teachers
 * see what was given to their classes besides, keepers see everything and may delete it. What
 * somebody may not see is as if it were not there.
 */
final class Sight {
  /** Whose bakes are meant where nothing is said: one's own. */
  static final String OWN = "";

  /** Everybody's bakes. */
  static final String ALL = "all";

  private static final long NOBODY = 0;

  private final LogStore store;
  private final Viewer viewer;

  Sight(LogStore store, Viewer viewer) {
    this.store = store;
    this.viewer = viewer;
  }

  /** Asks the log something small about nobody, to see whether it answers. */
  static void knock(LogStore store) {
    store.of(Scope.baker(NOBODY)).count();
  }

  /** The scope of the viewer's own bakes. */
  Scope ownScope() {
    return Scope.baker(viewer.person().id());
  }

  /** The viewer's own bakes. */
  BakeLog own() {
    return store.of(ownScope());
  }

  /**
   * Bakes to be listed.
   *
   * @param whose {@link #OWN}, {@link #ALL} or the number of a class
   * @throws Refusal if the viewer may not see them
   */
  BakeLog shelf(String whose) {
    if (whose.equals(OWN)) {
      return own();
    }
    if (whose.equals(ALL)) {
      if (!seesAll()) {
        throw new Refusal(403, "Only a keeper sees the bakes of everybody.");
      }
      return store.of(Scope.EVERYTHING);
    }
    long schoolClass = number(whose).orElseThrow(Sight::noClass);
    if (!viewer.taught().contains(schoolClass) && !seesAll()) {
      throw noClass();
    }
    return store.of(Scope.schoolClass(schoolClass));
  }

  /**
   * A bake that the viewer may see.
   *
   * @throws Refusal if there is none of this number
   */
  Bake bake(long id) {
    return first(log -> log.find(id)).orElseThrow(Sight::noBake);
  }

  /** All bakes of whoever baked this one, if the viewer may see them. */
  Optional<BakeLog> sameBaker(Bake bake) {
    if (mine(bake)) {
      return Optional.of(own());
    }
    if (seesAll()) {
      return Optional.of(store.of(Scope.baker(bake.owner())));
    }
    return bake.schoolClass() == null
        ? Optional.empty()
        : Optional.of(store.of(new Scope(bake.owner(), bake.schoolClass())));
  }

  /** Whether the viewer may change it. */
  boolean mine(Bake bake) {
    return bake.owner() == viewer.person().id();
  }

  /** Whether the viewer may delete it. */
  boolean mayDelete(Bake bake) {
    return mine(bake) || seesAll();
  }

  /**
   * Changes a bake of the viewer's own.
   *
   * @throws Refusal if it is somebody else's, or none
   */
  Bake change(long id, UnaryOperator<Bake> change) {
    return own().change(id, change).orElseThrow(() -> notMine(id));
  }

  /** Adds a photo to a bake of the viewer's own. */
  long addPhoto(long id, Photo photo) {
    return own().addPhoto(id, photo).orElseThrow(() -> notMine(id));
  }

  /** A photo of a bake that the viewer may see. */
  Photo photo(long id) {
    return first(log -> log.photo(id)).orElseThrow(Sight::noPhoto);
  }

  /** Deletes a photo of the viewer's own; a keeper may delete any. */
  void deletePhoto(long id) {
    if (!deleting().deletePhoto(id)) {
      photo(id);
      throw new Refusal(403, "Only whoever added a photo may delete it.");
    }
  }

  /** Deletes a bake of the viewer's own; a keeper may delete any. */
  void delete(long id) {
    if (!deleting().delete(id)) {
      throw notMine(id);
    }
  }

  private BakeLog deleting() {
    return seesAll() ? store.of(Scope.EVERYTHING) : own();
  }

  private Refusal notMine(long id) {
    // Throws by itself where the bake cannot be seen.
    bake(id);
    return new Refusal(403, "Only whoever baked it may change this bake.");
  }

  private boolean seesAll() {
    return viewer.shared() && viewer.person().may(Role.KEEPER);
  }

  private <T> Optional<T> first(Function<BakeLog, Optional<T>> look) {
    List<Scope> scopes = new ArrayList<>();
    if (seesAll()) {
      scopes.add(Scope.EVERYTHING);
    } else {
      scopes.add(ownScope());
      viewer.taught().forEach(one -> scopes.add(Scope.schoolClass(one)));
    }
    return scopes.stream().map(store::of).flatMap(log -> look.apply(log).stream()).findFirst();
  }

  /** A number of a bake, a photo or a class as it stands in an address. */
  static Optional<Long> number(String text) {
    return text.matches("[1-9]\\d{0,17}") ? Optional.of(Long.parseLong(text)) : Optional.empty();
  }

  private static Refusal noBake() {
    return new Refusal(404, "There is no such bake in the log.");
  }

  private static Refusal noPhoto() {
    return new Refusal(404, "There is no such photo in the log.");
  }

  private static Refusal noClass() {
    return new Refusal(404, "There is no such class.");
  }
}
