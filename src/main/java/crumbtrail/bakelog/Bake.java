package crumbtrail.bakelog;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One bake in the log.
 *
 * @param id its number in this log; 0 before it is in one
 * @param uid its name in every log, so that a bake which comes twice is known
 * @param owner who baked it
 * @param schoolClass the class in which it was baked, null for none
 * @param baked when, by the clock in the kitchen
 * @param noted when it was put into the log
 * @param label the baker's name for this bake
 * @param recipe what was baked; bakes of one recipe are compared with each other
 * @param note the baker's notes
 * @param outcome how it came out, null while nobody has said
 * @param verdicts causes that the baker confirmed or ruled out, by key
 * @param sheet the bake sheet exactly as it was written
 * @param traced what a trace said, null before there was one
 * @param photos in the order in which they were added
 */
public record Bake(
    long id,
    UUID uid,
    long owner,
    @Nullable Long schoolClass,
    LocalDateTime baked,
    Instant noted,
    String label,
    String recipe,
    String note,
    @Nullable Outcome outcome,
    Map<String, Verdict> verdicts,
    String sheet,
    @Nullable Traced traced,
    List<PhotoNote> photos) {

  /** The baker of a log that one person keeps. */
  public static final long ONLY_BAKER = 1;

  /** Characters of a label or the name of a recipe. */
  public static final int LONGEST_NAME = 300;

  /** Characters of the notes. */
  public static final int LONGEST_NOTE = 20_000;

  public Bake {
    baked = baked.truncatedTo(ChronoUnit.SECONDS);
    noted = noted.truncatedTo(ChronoUnit.MILLIS);
    label = name(label);
    recipe = name(recipe);
    note = plain(note).strip();
    if (note.length() > LONGEST_NOTE) {
      throw new IllegalArgumentException(
          "notes of " + note.length() + " characters; at most " + LONGEST_NOTE + " are kept");
    }
    verdicts = Collections.unmodifiableMap(new TreeMap<>(verdicts));
    photos = List.copyOf(photos);
  }

  /** A bake that is about to enter the log of one person. */
  public static Bake of(LocalDateTime baked, String label, String recipe, String sheet) {
    return new Bake(
        0,
        UUID.randomUUID(),
        ONLY_BAKER,
        null,
        baked,
        Instant.now(),
        label,
        recipe,
        "",
        null,
        Map.of(),
        sheet,
        null,
        List.of());
  }

  // A name is one line, and a database has no room for a character of code nought.
  private static String name(String text) {
    String line = plain(text).replaceAll("\\s+", " ").strip();
    return line.length() <= LONGEST_NAME ? line : line.substring(0, LONGEST_NAME - 1) + "…";
  }

  private static String plain(String text) {
    return text.replaceAll("[\\p{Cc}&&[^\n\t]]", "");
  }

  /** Keys of the causes with this verdict, in alphabetical order. */
  public Set<String> judged(Verdict verdict) {
    return verdicts.entrySet().stream()
        .filter(entry -> entry.getValue() == verdict)
        .map(Map.Entry::getKey)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The same under another number. */
  public Bake numbered(long number) {
    return copy(number, uid, owner, schoolClass, note, outcome, verdicts, traced, photos);
  }

  /** The same under another name in all logs. */
  public Bake named(UUID name) {
    return copy(id, name, owner, schoolClass, note, outcome, verdicts, traced, photos);
  }

  /** The same bake of somebody else. */
  public Bake of(long baker, @Nullable Long inClass) {
    return copy(id, uid, baker, inClass, note, outcome, verdicts, traced, photos);
  }

  /** The same under another label, of another recipe, or of another day. */
  public Bake called(String newLabel, String newRecipe, LocalDateTime when) {
    return new Bake(
        id,
        uid,
        owner,
        schoolClass,
        when,
        noted,
        newLabel,
        newRecipe,
        note,
        outcome,
        verdicts,
        sheet,
        traced,
        photos);
  }

  /** The same with other notes. */
  public Bake withNote(String text) {
    return copy(id, uid, owner, schoolClass, text, outcome, verdicts, traced, photos);
  }

  /** The same with another outcome. */
  public Bake withOutcome(@Nullable Outcome other) {
    return copy(id, uid, owner, schoolClass, note, other, verdicts, traced, photos);
  }

  /** The same with other verdicts. */
  public Bake withVerdicts(Map<String, Verdict> other) {
    return copy(id, uid, owner, schoolClass, note, outcome, other, traced, photos);
  }

  /** The same with another trace. */
  public Bake withTraced(@Nullable Traced other) {
    return copy(id, uid, owner, schoolClass, note, outcome, verdicts, other, photos);
  }

  /** The same with other photos. */
  public Bake withPhotos(List<PhotoNote> other) {
    return copy(id, uid, owner, schoolClass, note, outcome, verdicts, traced, other);
  }

  private Bake copy(
      long number,
      UUID name,
      long baker,
      @Nullable Long inClass,
      String text,
      @Nullable Outcome came,
      Map<String, Verdict> judged,
      @Nullable Traced said,
      List<PhotoNote> pictures) {
    return new Bake(
        number, name, baker, inClass, baked, noted, label, recipe, text, came, judged, sheet, said,
        pictures);
  }
}
