package crumbtrail.web;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.people.Passwords;
import crumbtrail.people.People;
import crumbtrail.people.Role;
import crumbtrail.people.Tokens;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

/** A server with everything in it, over the built-in rules and a log of three bakes. */
final class ApiServer {
  /** Password of all people of the school. */
  static final String PASSWORD = "rye and salt and patience";

  private ApiServer() {}

  /**
   * A server with a log that a school shares: Ida and Bo keep it, Una teaches, Jon and Eva bake.
   * Ida has two classes, and both bakers are in the first.
   *
   * @param place where its log is to be
   */
  static WebFace school(LogPlace place) {
    try (LogStore store = SqlLogStore.open(place)) {
      People people = store.people();
      String secret = Passwords.hash(PASSWORD);
      long ida = people.add("Ida", Role.KEEPER, secret).orElseThrow().id();
      people.add("Una", Role.TEACHER, secret);
      long jon = people.add("Jon", Role.BAKER, secret).orElseThrow().id();
      long eva = people.add("Eva", Role.BAKER, secret).orElseThrow().id();
      people.add("Bo", Role.KEEPER, secret);
      long tuesday = people.make("Tuesday bread", ida, "AAAAA-BBBBB").id();
      people.join(tuesday, jon);
      people.join(tuesday, eva);
      people.make("Wednesday buns", ida, "CCCCC-DDDDD");
    }
    return LogFace.bare(new LogServing(new LogDoor(() -> SqlLogStore.open(place)), true, false));
  }

  /** A token with which Ida is logged in. */
  static String token(LogPlace place) {
    String token = Tokens.fresh();
    try (LogStore store = SqlLogStore.open(place)) {
      store
          .people()
          .account("Ida")
          .ifPresent(
              one -> store.people().begin(Tokens.hash(token), one.person().id(), Instant.now()));
    }
    return token;
  }

  static WebFace start() {
    try {
      Path folder = Files.createTempDirectory("crumbtrail-api");
      LogPlace place = LogFace.file(folder);
      try (LogStore store = SqlLogStore.open(place)) {
        BakeLog log = store.of(Scope.ONLY_BAKER);
        for (int day = 0; day < 3; day++) {
          Bake bake = SomeBakes.traced(day);
          long id =
              log.add(
                  Bake.of(bake.baked(), bake.label(), bake.recipe(), Tour.SHEET)
                      .withTraced(bake.traced()));
          log.addPhoto(id, SomeBakes.photo());
        }
      }
      folder.resolve("bakes.mv.db").toFile().deleteOnExit();
      return LogFace.start(place);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
