package crumbtrail.bakelog.store;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogFault;
import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.SomeBakes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** A program that writes into a log, and prints the number of each bake that was acknowledged. */
final class Scribe {
  private Scribe() {}

  /**
   * Arguments: the log, and how many bakes; {@code full} and a file to delete for writing until the
   * disk is full, and then on.
   */
  public static void main(String[] arguments) throws Exception {
    if (arguments[1].equals("full")) {
      untilFull(arguments[0], Path.of(arguments[2]));
      return;
    }
    int many = Integer.parseInt(arguments[1]);
    String mark = arguments.length > 2 ? arguments[2] : "";
    try (LogStore store = open(arguments[0])) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      for (int i = 0; i < many; i++) {
        acknowledged(log.add(SomeBakes.traced(i)));
        if (!mark.isEmpty()) {
          String word = mark + i;
          log.change(1, bake -> bake.withNote(bake.note() + " " + word));
        }
      }
    }
    System.out.println("done");
  }

  private static LogStore open(String log) {
    return SqlLogStore.open(LogPlace.of(log, Map.of()));
  }

  private static void acknowledged(long id) {
    System.out.println(id);
    System.out.flush();
  }

  private static void untilFull(String place, Path ballast) throws Exception {
    List<Long> ids = new ArrayList<>();
    try (LogStore store = open(place)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      try {
        for (int i = 0; i < 100_000; i++) {
          ids.add(log.add(large(i)));
        }
      } catch (LogFault fault) {
        System.out.println(fault.kind() + ": " + fault.getMessage() + " " + fault.remedy());
      }
      Files.delete(ballast);
      // The same store goes on as soon as there is room.
      ids.add(log.add(large(0)));
      long there = ids.stream().filter(id -> log.find(id).isPresent()).count();
      System.out.println("kept " + there + " of " + ids.size());
    }
    try (LogStore store = open(place)) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      long there = ids.stream().filter(id -> log.find(id).isPresent()).count();
      System.out.println("found " + there + " of " + ids.size());
    }
  }

  // Letters without a pattern, so that nothing packs them.
  private static Bake large(int seed) {
    StringBuilder letters = new StringBuilder();
    new Random(seed).ints(8_000, 'a', 'z').forEach(one -> letters.append((char) one));
    return Bake.of(SomeBakes.TUESDAY, "Large", "", "{\"title\": \"" + letters + "\"}");
  }
}
