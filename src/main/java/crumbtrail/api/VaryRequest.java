package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import crumbtrail.sheet.BakeSheet;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A bake and what is to be turned.
 *
 * @param sheet the bake sheet; missing where a bake of the program is named
 * @param bake name of a bake that comes with the program, as lessons name them
 * @param turn one quantity or two with their ranges, by key of the knob
 * @param steps settings along the range, 2 to 101; round ones, about twenty, where it is missing
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record VaryRequest(
    @Nullable BakeSheet sheet,
    @Nullable String bake,
    Map<String, String> turn,
    @Nullable Integer steps) {}
