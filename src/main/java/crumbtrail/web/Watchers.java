package crumbtrail.web;

import io.javalin.http.Context;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Locale;

/** Who may read the measures of a server. */
public enum Watchers {
  /** Programs on the machine of the server. */
  HERE,
  /** Whoever reaches the server. */
  ANYWHERE,
  /** Nobody; the address is not there. */
  NOBODY;

  /** Whether this request may read them. */
  boolean admit(Context ctx) {
    return switch (this) {
      case NOBODY -> false;
      case ANYWHERE -> true;
      case HERE -> isHere(ctx);
    };
  }

  // A proxy on this machine asks from here for people who are not.
  private static boolean isHere(Context ctx) {
    try {
      return ctx.header("X-Forwarded-For") == null
          && ctx.header("Forwarded") == null
          && InetAddress.getByName(ctx.req().getRemoteAddr()).isLoopbackAddress();
    } catch (UnknownHostException unnamed) {
      return false;
    }
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
