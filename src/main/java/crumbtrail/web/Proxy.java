package crumbtrail.web;

import io.javalin.http.Context;

/**
 * Who asks, and how.
 *
 * @param stands whether a proxy stands before the server, whose headers can be believed; nobody
 *     else's are
 */
record Proxy(boolean stands) {

  /** Whether the request came to us, or to the proxy, in cipher. */
  boolean secure(Context ctx) {
    return stands && "https".equalsIgnoreCase(last(ctx.header("X-Forwarded-Proto")));
  }

  /** The address from which somebody asks; of the longer kind the part that is one household. */
  String peer(Context ctx) {
    String told = stands ? last(ctx.header("X-Forwarded-For")) : "";
    String address = told.isEmpty() ? String.valueOf(ctx.req().getRemoteAddr()) : told;
    return address.contains(":") && !address.contains(".") ? household(address) : cut(address);
  }

  // Whoever has one address of version 6 has 2^64 of them.
  private static String household(String address) {
    String bare = address.replaceAll("[\\[\\]]", "").replaceFirst("%.*", "");
    try {
      byte[] bytes = java.net.InetAddress.getByName(bare).getAddress();
      return java.util.HexFormat.of().formatHex(bytes, 0, Math.min(8, bytes.length));
    } catch (java.net.UnknownHostException none) {
      return cut(address);
    }
  }

  // The proxy writes what it saw behind what it was told.
  private static String last(String header) {
    return header == null ? "" : header.substring(header.lastIndexOf(',') + 1).strip();
  }

  private static String cut(String address) {
    String plain = address.replaceAll("[^0-9A-Za-z.:]", "");
    return plain.substring(0, Math.min(50, plain.length()));
  }
}
