package crumbtrail.oven;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Bakes that were worked out lately. Most what-ifs of a sheet change nothing of the piece or of the
 * oven, and a bake is the dearest thing to work out. Safe for use by many threads; two that ask for
 * the same bake at once both work it out.
 */
final class BakeMemory {
  /** Courses kept, some kilobytes each. */
  private static final int MOST = 256;

  private final Map<Asked, BakeCourse> known =
      Collections.synchronizedMap(
          new LinkedHashMap<>(MOST, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<Asked, BakeCourse> eldest) {
              return size() > MOST;
            }
          });

  /** All that a bake hangs on. */
  record Asked(Loaf loaf, double start, List<OvenStage> stages, double metres) {
    Asked {
      stages = List.copyOf(stages);
    }
  }

  BakeCourse of(Asked asked, Function<Asked, BakeCourse> work) {
    BakeCourse course = known.get(asked);
    if (course == null) {
      course = work.apply(asked);
      known.put(asked, course);
    }
    return course;
  }
}
