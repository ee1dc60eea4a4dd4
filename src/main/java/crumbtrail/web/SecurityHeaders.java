package crumbtrail.web;

import java.util.Map;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/**
 * Headers that keep a browser from doing more with our answers than show them. They are set where a
 * request enters the server, so that pages, assets and errors of every kind carry them. Scripts
 * come from our own assets alone: none stands in a page, and none can be made of text.
 */
final class SecurityHeaders implements HttpConfiguration.Customizer {

  static final Map<String, String> ALL =
      Map.of(
          "Content-Security-Policy",
          "default-src 'self'; script-src 'self'; object-src 'none'; base-uri 'none';"
              + " form-action 'self'; frame-ancestors 'none'",
          "X-Content-Type-Options",
          "nosniff",
          "X-Frame-Options",
          "DENY",
          "Referrer-Policy",
          "no-referrer",
          "Cross-Origin-Opener-Policy",
          "same-origin",
          "Cross-Origin-Resource-Policy",
          "same-origin",
          "Permissions-Policy",
          "camera=(), geolocation=(), microphone=()",
          // A bake is nobody else's business: neither proxies nor the disk keep it.
          "Cache-Control",
          "no-store");

  @Override
  public Request customize(Request request, HttpFields.Mutable response) {
    addTo(response);
    return request;
  }

  static void addTo(HttpFields.Mutable response) {
    ALL.forEach(response::put);
  }
}
