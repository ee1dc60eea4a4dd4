package crumbtrail.people;

import org.jspecify.annotations.Nullable;

/**
 * A class of a bread school.
 *
 * @param id its number
 * @param name as the teacher called it
 * @param teacher number of the teacher, null where there is none any more
 * @param code with which bakers join, null while it is closed
 */
public record SchoolClass(long id, String name, @Nullable Long teacher, @Nullable String code) {}
