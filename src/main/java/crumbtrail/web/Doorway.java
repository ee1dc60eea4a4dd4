package crumbtrail.web;

import java.time.Duration;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/**
 * Where the server listens, and how much it lets in.
 *
 * @param host the address to listen on, such as {@code 127.0.0.1}
 * @param port 0 for any free one
 * @param visits how visitors are told apart and how much each may send
 * @param watchers who may read its measures
 * @param workers how many requests are worked on at once, {@value #FEWEST_WORKERS} at least;
 *     working on a sheet keeps a core busy
 * @param connections how many may be open at once; more wait until one closes
 * @param patience how long a client may take over a request or an answer before the speed of it
 *     counts, and how long a connection may lie idle
 */
public record Doorway(
    String host,
    int port,
    Visits visits,
    Watchers watchers,
    int workers,
    int connections,
    Duration patience) {

  /** Fewer would leave the server without threads of its own. */
  public static final int FEWEST_WORKERS = 8;

  /** Connections that the system holds for us until we take them; many come at once. */
  private static final int QUEUE = 1024;

  public static final int WORKERS = 32;
  public static final int CONNECTIONS = 12_000;
  public static final Duration PATIENCE = Duration.ofSeconds(30);

  /** With nothing told but where. */
  public static Doorway at(String host, int port) {
    return new Doorway(
        host, port, new Visits(false, Visits.USUAL), Watchers.HERE, WORKERS, CONNECTIONS, PATIENCE);
  }

  /** What listens. */
  ServerConnector connector(Server server, HttpConfiguration http, SlowClients slow) {
    ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
    connector.setHost(host);
    connector.setPort(port);
    connector.setIdleTimeout(patience.toMillis());
    connector.setAcceptQueueSize(QUEUE);
    connector.addBean(slow, false);
    return connector;
  }

  /** The same, with another patience. */
  Doorway patient(Duration other) {
    return new Doorway(host, port, visits, watchers, workers, connections, other);
  }

  /** The same, with other visits. */
  Doorway visitedAs(Visits other) {
    return new Doorway(host, port, other, watchers, workers, connections, patience);
  }

  /** The same, with measures for others. */
  Doorway watchedBy(Watchers others) {
    return new Doorway(host, port, visits, others, workers, connections, patience);
  }
}
