package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.sheet.BakeSheet;
import org.jspecify.annotations.Nullable;

/**
 * A bake to be kept.
 *
 * @param sheet the bake sheet
 * @param label the baker's name for it; title or style of the sheet where it is missing
 * @param recipe what was baked; the title of the sheet where it is missing
 * @param baked the day, or the day and a time of it, as 2026-03-01T14:30; now where it is missing
 * @param note the baker's notes
 * @param outcome good, fair or failed
 * @param schoolClass number of the class to which it is given
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KeepRequest(
    BakeSheet sheet,
    @Nullable String label,
    @Nullable String recipe,
    @Nullable String baked,
    @Nullable String note,
    @Nullable String outcome,
    @Nullable Long schoolClass) {}
