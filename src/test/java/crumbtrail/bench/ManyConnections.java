package crumbtrail.bench;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Opens many connections to a server on this machine, sends half a request on each, then the other
 * half, and counts the answers. Arguments: its port, how many. The limit of open files must allow
 * as many.
 */
public final class ManyConnections {
  private ManyConnections() {}

  @SuppressWarnings("SystemOut") // for a person at a terminal
  public static void main(String[] arguments) throws IOException {
    int port = Integer.parseInt(arguments[0]);
    int many = Integer.parseInt(arguments[1]);
    List<Socket> open = new ArrayList<>();
    long from = System.nanoTime();
    for (int nth = 0; nth < many; nth++) {
      Socket socket = new Socket(InetAddress.getLoopbackAddress(), port);
      socket.setSoTimeout(30_000);
      send(socket, "GET /health HTTP/1.1\r\nHost: localhost\r\nX: ");
      open.add(socket);
    }
    System.out.printf("%d open after %.1f s%n", many, (System.nanoTime() - from) / 1e9);
    int answered = 0;
    for (Socket socket : open) {
      send(socket, "y\r\n\r\n");
    }
    for (Socket socket : open) {
      byte[] head = socket.getInputStream().readNBytes(12);
      if (new String(head, StandardCharsets.US_ASCII).equals("HTTP/1.1 200")) {
        answered++;
      }
    }
    System.out.printf("%d answered%n", answered);
  }

  private static void send(Socket socket, String text) throws IOException {
    socket.getOutputStream().write(text.getBytes(StandardCharsets.US_ASCII));
  }
}
