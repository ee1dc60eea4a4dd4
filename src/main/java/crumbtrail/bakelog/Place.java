package crumbtrail.bakelog;

import java.time.LocalDateTime;

/**
 * A place in a list that begins with the latest bake.
 *
 * @param baked when the bake at this place was baked
 * @param id its number, which decides between bakes of one time
 */
public record Place(LocalDateTime baked, long id) {}
