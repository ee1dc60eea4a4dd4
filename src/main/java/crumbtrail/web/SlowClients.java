package crumbtrail.web;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.component.LifeCycle;
import org.eclipse.jetty.util.thread.ScheduledExecutorScheduler;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Closes connections of clients that send a request or take an answer drop by drop. An idle
 * connection is the server library's business; one that moves a byte now and then is never idle to
 * it, and could be held for good. Here a client has its patience, and besides a second for each
 * {@value #BYTES_A_SECOND} bytes that it has moved; the time in which we work does not count.
 */
final class SlowClients extends Handler.Wrapper implements Connection.Listener {
  /** A slow telephone line moves more. */
  private static final int BYTES_A_SECOND = 1024;

  private static final long NANOS = TimeUnit.SECONDS.toNanos(1);

  private final long patience;
  private final long pause;
  private final Map<Connection, Client> clients = new ConcurrentHashMap<>();
  private final Scheduler clock = new ScheduledExecutorScheduler("slow-clients", true);

  SlowClients(Duration patience) {
    this.patience = patience.toNanos();
    // Looked at several times within the patience, so that it is not overdrawn by much.
    this.pause = Math.max(100, Math.min(1000, patience.toMillis() / 4));
  }

  /** Watches over all connections of a server. */
  void watch(Server server) {
    server.addEventListener(
        new LifeCycle.Listener() {
          @Override
          public void lifeCycleStarted(LifeCycle started) {
            begin();
          }

          @Override
          public void lifeCycleStopped(LifeCycle stopped) {
            LifeCycle.stop(clock);
          }
        });
  }

  private void begin() {
    LifeCycle.start(clock);
    clock.schedule(this::look, pause, TimeUnit.MILLISECONDS);
  }

  @Override
  public void onOpened(Connection connection) {
    clients.put(connection, new Client());
  }

  @Override
  public void onClosed(Connection connection) {
    clients.remove(connection);
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    Connection connection = request.getConnectionMetaData().getConnection();
    Client client = clients.get(connection);
    if (client == null) {
      return super.handle(request, response, callback);
    }
    client.work(connection, request.getLength());
    return super.handle(request, response, Callback.from(callback, () -> client.rest(connection)));
  }

  private void look() {
    long now = System.nanoTime();
    clients.forEach(
        (connection, client) -> {
          if (client.tooSlow(connection, now, patience)) {
            connection.getEndPoint().close();
          }
        });
    if (clock.isRunning()) {
      clock.schedule(this::look, pause, TimeUnit.MILLISECONDS);
    }
  }

  /** How far one client is. */
  private static final class Client {
    private long in;
    private long out;
    private long since;
    private long body;
    private boolean working;
    private boolean moving;

    /** We have its request, but for what is left of its body. */
    synchronized void work(Connection connection, long length) {
      working = true;
      moving = false;
      in = connection.getBytesIn();
      out = connection.getBytesOut();
      // A part of the body came with the head, so this much may never come; then we work already.
      body = Math.max(0, length);
    }

    /** It has its answer. */
    synchronized void rest(Connection connection) {
      working = false;
      moving = false;
      in = connection.getBytesIn();
      out = connection.getBytesOut();
    }

    synchronized boolean tooSlow(Connection connection, long now, long patience) {
      long sent = connection.getBytesIn() - in;
      long taken = connection.getBytesOut() - out;
      boolean ours = working && taken == 0 && (body == 0 || sent == 0 || sent >= body);
      if (ours || (!working && sent == 0)) {
        moving = false;
        return false;
      }
      if (!moving) {
        moving = true;
        since = now;
      }
      return now - since > patience + (sent + taken) / BYTES_A_SECOND * NANOS;
    }
  }
}
