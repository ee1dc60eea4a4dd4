package crumbtrail.people;

import java.time.Duration;

/**
 * How often something may be done: so many times at once, and again as time passes, evenly.
 *
 * @param times how many times
 * @param within in how long
 */
public record Rate(int times, Duration within) {

  /** Log-ins to one account, right or wrong. */
  public static final Rate ACCOUNT = new Rate(20, Duration.ofMinutes(15));

  /** Log-ins from one address; a whole class may come from one. */
  public static final Rate ADDRESS = new Rate(150, Duration.ofMinutes(15));

  /** New accounts and codes tried from one address. */
  public static final Rate JOINING = new Rate(60, Duration.ofHours(1));

  /** Everything that one person sends. */
  public static final Rate POSTS = new Rate(120, Duration.ofMinutes(1));

  /** Milliseconds after which one more is allowed. */
  public long interval() {
    return within.toMillis() / times;
  }
}
