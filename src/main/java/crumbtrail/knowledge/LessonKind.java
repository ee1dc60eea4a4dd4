package crumbtrail.knowledge;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * One lesson of the course. What it teaches stands with its cause and is not written again here.
 *
 * @param title plain words
 * @param cause key of the cause that it teaches
 * @param look what to watch while the knob is turned, one or two sentences
 * @param sheet name of the bake in {@code cases} whose knob is turned
 * @param turn key of the knob
 * @param range as a baker types it: "0..3%"
 * @param level of the mystery loaf that goes with it
 * @param seed of that loaf
 * @param mystery key of that loaf's cause
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record LessonKind(
    String title,
    String cause,
    String look,
    String sheet,
    String turn,
    String range,
    MysteryKind.Level level,
    long seed,
    String mystery) {}
