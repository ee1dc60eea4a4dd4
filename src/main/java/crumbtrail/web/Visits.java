package crumbtrail.web;

import crumbtrail.people.Rate;
import java.time.Duration;
import java.util.Optional;

/**
 * How those who can reach the server are told apart, and how much each may send.
 *
 * @param behindProxy whether a proxy stands before the server and says who asks
 * @param postsAMinute how often one address may send something to be worked on; 0 for no limit
 */
public record Visits(boolean behindProxy, int postsAMinute) {
  /** What a class behind one address does not reach, and one machine that floods does. */
  public static final int USUAL = 600;

  /** More could not be told apart from no limit. */
  public static final int MOST = 60_000;

  /** Where nothing else is said. */
  static Visits of(Optional<LogServing> log) {
    return new Visits(log.map(LogServing::behindProxy).orElse(false), USUAL);
  }

  /**
   * The limit, if there is one: whoever uses their own machine may do so as often as they like.
   *
   * @param host where the server listens
   */
  Optional<AddressRate> limit(String host) {
    boolean open = behindProxy || !WebFace.isLoopback(host);
    return open && postsAMinute > 0
        ? Optional.of(
            new AddressRate(
                new Rate(postsAMinute, Duration.ofMinutes(1)),
                new Proxy(behindProxy),
                System::currentTimeMillis))
        : Optional.empty();
  }
}
