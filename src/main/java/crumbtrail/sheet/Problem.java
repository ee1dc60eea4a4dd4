package crumbtrail.sheet;

/**
 * Something on a bake sheet that cannot be used as it stands.
 *
 * @param where the place, as a path of keys: {@code process.bulk[0].time}
 * @param what what was found there and why it cannot be used
 * @param remedy what would be accepted
 */
public record Problem(String where, String what, String remedy) {}
