package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is to be changed of a bake; what is missing stays as it is.
 *
 * @param label the baker's name for it
 * @param recipe what was baked
 * @param baked the day, or the day and a time of it, as 2026-03-01T14:30
 * @param note the baker's notes
 * @param outcome good, fair, failed, or an empty text for none
 * @param confirmed keys of all causes that were at work
 * @param ruledOut keys of all causes that were not
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record NoteRequest(
    @Nullable String label,
    @Nullable String recipe,
    @Nullable String baked,
    @Nullable String note,
    @Nullable String outcome,
    @Nullable List<String> confirmed,
    @Nullable List<String> ruledOut) {}
