package crumbtrail.web;

import crumbtrail.people.Rate;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.LongSupplier;

/**
 * Limits what one address may send to be worked on, where others can reach the server. Each server
 * counts for itself and in memory: unlike tries at a password, a sheet too many does no harm, and a
 * query for every sheet would cost more than it saves. What is sent to the log is counted there, by
 * account.
 */
final class AddressRate {
  /** Addresses that are remembered; whoever has not been heard of for longest is forgotten. */
  static final int MOST = 20_000;

  /** What is worked out anew for whoever only looks. */
  private static final Set<String> DEAR =
      Set.of("/trace", "/precheck", "/vary", "/mystery", "/api/mystery");

  private final Rate rate;
  private final Proxy proxy;
  private final LongSupplier clock;

  // By address, until when what it sent is owed.
  private final Map<String, Long> freeAt =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Long> eldest) {
          return size() > MOST;
        }
      };

  AddressRate(Rate rate, Proxy proxy, LongSupplier clock) {
    this.rate = rate;
    this.proxy = proxy;
    this.clock = clock;
  }

  /**
   * Counts a request.
   *
   * @throws Refusal if it is one too many
   */
  void check(Context ctx) {
    String path = ctx.path();
    boolean log = path.equals("/log") || path.startsWith("/log/") || path.startsWith("/api/log/");
    boolean worked = ctx.method().name().equals("POST") || DEAR.contains(path);
    if (log || !worked) {
      return;
    }
    long wait = take(proxy.peer(ctx));
    if (wait > 0) {
      long seconds = wait / 1000 + 1;
      ctx.header("Retry-After", String.valueOf(seconds));
      throw new Refusal(
          429,
          "So much at once is not taken from one address. Wait "
              + seconds
              + (seconds == 1 ? " second" : " seconds")
              + " and try again.");
    }
  }

  /** Counts one more of an address; how many milliseconds to wait, or 0. */
  synchronized long take(String address) {
    long now = clock.getAsLong();
    long next = Math.max(now, freeAt.getOrDefault(address, now)) + rate.interval();
    long wait = next - now - rate.within().toMillis();
    if (wait > 0) {
      return wait;
    }
    freeAt.put(address, next);
    return 0;
  }

  synchronized int remembered() {
    return freeAt.size();
  }
}
