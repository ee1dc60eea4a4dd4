package crumbtrail.bakelog.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Scope;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ProviderNotFoundException;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import java.util.zip.ZipError;
import java.util.zip.ZipException;

/** Puts back what {@link LogExport} wrote: all of it, or nothing. */
public final class LogRestore {
  private static final ObjectMapper JSON = new ObjectMapper();

  private LogRestore() {}

  /**
   * What became of the bakes.
   *
   * @param restored how many were put in
   * @param known how many were there already and stayed as they were
   */
  public record Count(long restored, long known) {}

  /** What is put back is broken; nothing of it was kept. */
  public static final class Broken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Broken(String what) {
      super(what);
    }
  }

  /**
   * Puts the bakes of a folder or zip file into a log.
   *
   * @param progress told how many bakes are done, after each
   * @throws Broken if the place does not hold a whole log
   */
  public static Count read(Path place, LogStore store, LongConsumer progress) throws IOException {
    try (Bundle bundle = Bundle.open(place)) {
      JsonNode about = about(bundle, place);
      long expected = about.path("bakes").asLong();
      Map<Long, LocalDateTime> marks = marks(about);
      long[] count = new long[2];
      store.fill(
          filling -> {
            try {
              fill(bundle, filling, count, progress);
            } catch (IOException fault) {
              throw new UncheckedIOException(fault);
            }
            if (count[0] + count[1] != expected) {
              throw new Broken(
                  place + " holds " + (count[0] + count[1]) + " bakes of " + expected + ".");
            }
          });
      learn(store.of(Scope.EVERYTHING), marks);
      return new Count(count[0], count[1]);
    } catch (ZipException | ZipError | ProviderNotFoundException fault) {
      throw new Broken(place + " is no whole zip file.");
    } catch (UncheckedIOException fault) {
      throw fault.getCause();
    }
  }

  private static JsonNode about(Bundle bundle, Path place) throws IOException {
    if (!bundle.has(Bundle.ABOUT) || !bundle.has(Bundle.BAKES)) {
      throw new Broken(
          place
              + " is no written-out log: "
              + Bundle.ABOUT
              + " or "
              + Bundle.BAKES
              + " is missing.");
    }
    try (InputStream in = bundle.read(Bundle.ABOUT)) {
      JsonNode about = JSON.readTree(in);
      if (!about.path("format").asText().equals(LogExport.FORMAT)) {
        throw new Broken(place + " is no written-out log: " + Bundle.ABOUT + " says otherwise.");
      }
      if (about.path("version").asInt() > LogExport.VERSION) {
        throw new Broken(
            place
                + " was written by a later version of this program. Use that one, or a later one.");
      }
      return about;
    }
  }

  private static Map<Long, LocalDateTime> marks(JsonNode about) {
    Map<Long, LocalDateTime> marks = new TreeMap<>();
    try {
      about
          .path(LogExport.LEARNS_FROM)
          .properties()
          .forEach(
              mark ->
                  marks.put(
                      Long.parseLong(mark.getKey()),
                      LocalDateTime.parse(mark.getValue().asText())));
    } catch (NumberFormatException | DateTimeParseException fault) {
      throw new Broken(
          Bundle.ABOUT + ": " + LogExport.LEARNS_FROM + " holds a baker or a time that is none.");
    }
    return marks;
  }

  // Whoever has a mark of his own here keeps it.
  private static void learn(BakeLog log, Map<Long, LocalDateTime> marks) {
    Map<Long, LocalDateTime> here = log.learnsFrom();
    marks.forEach(
        (baker, from) -> {
          if (!here.containsKey(baker)) {
            log.learnFrom(baker, from);
          }
        });
  }

  private static void fill(
      Bundle bundle, LogStore.Filling filling, long[] count, LongConsumer progress)
      throws IOException {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(bundle.read(Bundle.BAKES), StandardCharsets.UTF_8))) {
      long number = 0;
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        number++;
        if (line.isBlank()) {
          continue;
        }
        Bake bake = bake(line, number);
        boolean put = filling.put(bake, () -> photos(bundle, bake).iterator());
        count[put ? 0 : 1]++;
        progress.accept(count[0] + count[1]);
      }
    }
  }

  private static Bake bake(String line, long number) {
    try {
      return BakeJson.read(BakeJson.tree(line));
    } catch (BadLine fault) {
      throw new Broken(
          Bundle.BAKES + ", line " + number + ": " + fault.problems().get(0).what() + ".");
    }
  }

  // Only now, so that the photos of a bake that is known already are not read.
  private static List<Photo> photos(Bundle bundle, Bake bake) {
    List<Photo> photos = new ArrayList<>();
    for (PhotoNote note : bake.photos()) {
      try {
        photos.add(new Photo(note, bundle.photo(note.file())));
      } catch (NoSuchFileException missing) {
        throw new Broken("The photo " + note.file() + " of \"" + bake.label() + "\" is missing.");
      } catch (IOException fault) {
        throw new UncheckedIOException(fault);
      } catch (IllegalArgumentException fault) {
        throw new Broken("The photo " + note.file() + " is not the one that was written out.");
      }
    }
    return photos;
  }
}
