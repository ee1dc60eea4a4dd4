package crumbtrail.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Clients that take their time, and others that ask meanwhile. */
class SlowClientsTest {
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  /** More than there are workers, so that slow clients could hold them all. */
  private static final int MANY = 40;

  private WebFace face;

  @BeforeEach
  void serve() {
    face = serving(Doorway.at("127.0.0.1", 0).patient(PATIENCE));
  }

  private static WebFace serving(Doorway doorway) {
    return WebFace.start(
        Samples.making(Samples.everywhere("plain words ".repeat(10_000))), doorway);
  }

  @AfterEach
  void stop() {
    face.close();
  }

  @Test
  @Timeout(60)
  void headers_that_come_drop_by_drop_end_and_others_are_answered_meanwhile() throws Exception {
    dribbled("GET /health HTTP/1.1\r\nHost: localhost\r\nX: ");
  }

  @Test
  @Timeout(60)
  void a_body_that_comes_drop_by_drop_ends_and_others_are_answered_meanwhile() throws Exception {
    dribbled(
        "POST /api/trace HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
            + "Content-Length: 5000\r\n\r\n{");
  }

  private void dribbled(String begun) throws Exception {
    List<Socket> slow = new ArrayList<>();
    try {
      for (int nth = 0; nth < MANY; nth++) {
        slow.add(begun(face, begun));
      }
      long from = System.nanoTime();
      List<Socket> open = new ArrayList<>(slow);
      while (!open.isEmpty() && seconds(from) < 20) {
        open.removeIf(one -> !drop(one));
        assertThat(new Asker(face.address()).get("/health").statusCode()).isEqualTo(200);
        TimeUnit.MILLISECONDS.sleep(100);
      }
      assertThat(open).isEmpty();
      assertThat(seconds(from)).isLessThan(15);
    } finally {
      for (Socket one : slow) {
        one.close();
      }
    }
  }

  @Test
  @Timeout(60)
  void whoever_does_not_take_the_answer_is_left() throws Exception {
    int whole;
    try (WebFace patient = serving(Doorway.at("127.0.0.1", 0))) {
      whole = new Asker(patient.address()).post("/api/trace", Asker.JSON, "{}").body().length();
    }
    // Both systems hold some megabytes for a connection, taken or not; the heap of a small machine
    // must bear it several times over.
    assertThat(whole).isBetween(16_000_000, 64_000_000);
    try (Socket lazy = new Socket()) {
      lazy.setReceiveBufferSize(2048);
      lazy.connect(
          new InetSocketAddress(InetAddress.getLoopbackAddress(), face.address().getPort()));
      lazy.getOutputStream()
          .write(
              ("POST /api/trace HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                      + "Content-Length: 2\r\n\r\n{}")
                  .getBytes(StandardCharsets.US_ASCII));
      InputStream in = lazy.getInputStream();
      assertThat(in.read()).isEqualTo('H');
      long from = System.nanoTime();
      long taken = 0;
      // Just often enough not to be idle.
      try {
        while (seconds(from) < 20 && in.read() >= 0) {
          taken++;
          TimeUnit.MILLISECONDS.sleep(seconds(from) < 6 ? 200 : 0);
        }
      } catch (IOException broken) {
        // Which is as good an end as another.
        assertThat(broken).hasMessageContaining("reset");
      }
      assertThat(taken).isLessThan(whole / 2);
      assertThat(new Asker(face.address()).get("/health").statusCode()).isEqualTo(200);
    }
  }

  @Test
  @Timeout(60)
  void whoever_asks_again_and_again_is_not_slow() throws Exception {
    // Longer than any pause of a busy machine between two questions, shorter than all of them.
    Duration patience = Duration.ofSeconds(4);
    try (WebFace other = serving(Doorway.at("127.0.0.1", 0).patient(patience));
        Socket steady = begun(other, "")) {
      InputStream in = steady.getInputStream();
      for (int nth = 0; nth < 12; nth++) {
        steady
            .getOutputStream()
            .write(
                "GET /health HTTP/1.1\r\nHost: localhost\r\n\r\n"
                    .getBytes(StandardCharsets.US_ASCII));
        StringBuilder answer = new StringBuilder();
        while (!answer.toString().endsWith("\"up\"}")) {
          int next = in.read();
          assertThat(next).as(answer.toString()).isNotNegative();
          answer.append((char) next);
        }
        TimeUnit.MILLISECONDS.sleep(400);
      }
    }
  }

  private static Socket begun(WebFace at, String text) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), at.address().getPort());
    socket.setTcpNoDelay(true);
    socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
    return socket;
  }

  // Whether the connection still takes a byte.
  private static boolean drop(Socket slow) {
    try {
      slow.getOutputStream().write(' ');
      slow.setSoTimeout(1);
      return slow.getInputStream().read() >= 0;
    } catch (java.net.SocketTimeoutException open) {
      return true;
    } catch (IOException closed) {
      return false;
    }
  }

  private static double seconds(long from) {
    return (System.nanoTime() - from) / 1e9;
  }
}
