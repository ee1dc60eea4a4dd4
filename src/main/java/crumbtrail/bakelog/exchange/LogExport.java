package crumbtrail.bakelog.exchange;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Scope;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Iterator;
import java.util.Map;
import java.util.function.LongConsumer;
import java.util.stream.Stream;

/** Writes a log out, as it is at one moment, while others go on with it. */
public final class LogExport {
  /** Name and version of the form, for whoever reads it in ten years. */
  static final String FORMAT = "crumbtrail-bake-log";

  static final int VERSION = 1;

  /** From when on each kitchen's odds are learnt, where that is not from its first bake. */
  static final String LEARNS_FROM = "learnsFrom";

  private static final ObjectMapper JSON = new ObjectMapper();

  private LogExport() {}

  /**
   * How much was written.
   *
   * @param bakes how many bakes
   * @param photos how many photos
   */
  public record Count(long bakes, long photos) {}

  /**
   * Writes all bakes of a scope with their photos into a folder, or into a file that ends in {@code
   * .zip}. A file comes under its name only when it is whole and on disk.
   *
   * @param progress told how many bakes are written, after each
   */
  public static Count write(LogStore store, Scope scope, Path place, LongConsumer progress)
      throws IOException {
    if (!Bundle.zipped(place)) {
      return into(store, scope, place, progress);
    }
    Path draft = place.resolveSibling(place.getFileName() + ".part.zip");
    try {
      Files.deleteIfExists(draft);
      Count count = into(store, scope, draft, progress);
      try (FileChannel written = FileChannel.open(draft, StandardOpenOption.WRITE)) {
        written.force(true);
      }
      Files.move(draft, place, StandardCopyOption.REPLACE_EXISTING);
      return count;
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private static Count into(LogStore store, Scope scope, Path place, LongConsumer progress)
      throws IOException {
    try (BundleOut bundle = BundleOut.to(place)) {
      Written count =
          store.atOneMoment(
              scope,
              log -> {
                try {
                  return new Written(bakes(log, bundle, progress), log.learnsFrom());
                } catch (IOException fault) {
                  throw new UncheckedIOException(fault);
                }
              });
      bundle.finish(about(count.count(), count.learnsFrom()));
      return count.count();
    } catch (UncheckedIOException fault) {
      throw fault.getCause();
    }
  }

  private record Written(Count count, Map<Long, LocalDateTime> learnsFrom) {}

  private static Count bakes(BakeLog log, BundleOut bundle, LongConsumer progress)
      throws IOException {
    long bakes = 0;
    long photos = 0;
    try (Stream<Bake> all = log.bakes(0)) {
      for (Iterator<Bake> each = all.iterator(); each.hasNext(); ) {
        Bake bake = each.next();
        bundle.bake(BakeJson.line(bake));
        for (PhotoNote note : bake.photos()) {
          Photo photo = log.photo(note.id()).orElseThrow();
          bundle.photo(note.file(), photo.picture());
          photos++;
        }
        bakes++;
        progress.accept(bakes);
      }
    }
    return new Count(bakes, photos);
  }

  private static String about(Count count, Map<Long, LocalDateTime> learnsFrom) {
    ObjectNode about = JSON.createObjectNode();
    about.put("format", FORMAT);
    about.put("version", VERSION);
    about.put("written", Instant.now().toString());
    about.put("bakes", count.bakes());
    about.put("photos", count.photos());
    if (!learnsFrom.isEmpty()) {
      ObjectNode marks = about.putObject(LEARNS_FROM);
      learnsFrom.forEach((baker, from) -> marks.put("" + baker, from.toString()));
    }
    return about.toPrettyString() + "\n";
  }
}
