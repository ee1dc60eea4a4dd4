package crumbtrail.web;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/**
 * Answers for requests that are refused before they reach our routes: broken request lines, headers
 * that are too long. Says as little as it can.
 */
final class BareErrors extends ErrorHandler {

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = response.getStatus() < 400 ? 500 : response.getStatus();
    SecurityHeaders.addTo(response.getHeaders());
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, ProblemDetails.TYPE);
    Content.Sink.write(response, true, body(status), callback);
    return true;
  }

  private static String body(int status) {
    return ProblemDetails.of(status, "The request cannot be answered.").json();
  }
}
