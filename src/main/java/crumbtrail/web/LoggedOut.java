package crumbtrail.web;

/** Ends a request of somebody who has to log in first. */
final class LoggedOut extends RuntimeException {
  private static final long serialVersionUID = 1L;

  LoggedOut() {
    super("Log in first.", null, false, false);
  }
}
