package crumbtrail.api;

import crumbtrail.api.Endpoint.Example;
import crumbtrail.api.Endpoint.Parameter;
import crumbtrail.api.PeopleAsked.JoinRequest;
import crumbtrail.api.PeopleAsked.LogInRequest;
import crumbtrail.api.PeopleAsked.PasswordRequest;
import crumbtrail.api.PeopleAsked.PasswordShown;
import crumbtrail.api.PeopleAsked.SignUpRequest;
import crumbtrail.api.PeopleTold.LoggedIn;
import crumbtrail.api.PeopleTold.OwnAccount;
import java.util.List;
import java.util.stream.Stream;

/** Addresses of accounts and classes, where several people share the log. */
public final class PeopleEndpoints {
  private static final Parameter CLASS = Parameter.path("id", "number of the class", "1");

  /** Somebody logs in. */
  public static final Endpoint LOG_IN =
      LogEndpoints.people(
          "POST",
          "/api/log/session",
          "log-in",
          "Log in",
          "The token goes with every request to the log as Authorization: Bearer TOKEN.",
          List.of(),
          LogInRequest.class,
          LoggedIn.class,
          Example.post(
              "/api/log/session",
              "{\"name\": \"Ida\", \"password\": \"rye and salt and patience\"}",
              "{\"name\": \"Ida\", \"role\": \"keeper\"}"));

  /** Somebody makes an account. */
  public static final Endpoint SIGN_UP =
      LogEndpoints.people(
          "POST",
          "/api/log/account",
          "sign-up",
          "Make an account",
          "With the code of a class, which is joined with it. Whoever makes one is logged in.",
          List.of(),
          SignUpRequest.class,
          LoggedIn.class,
          Example.post(
              "/api/log/account",
              "{\"name\": \"Pia\", \"password\": \"a good night of proofing\", \"code\": \"AAAAA-BBBBB\"}",
              "{\"name\": \"Pia\", \"role\": \"baker\"}"));

  /** One's own account. */
  public static final Endpoint ACCOUNT =
      LogEndpoints.people(
          "GET",
          "/api/log/account",
          "account",
          "One's own account",
          "Who one is, and the classes to which one belongs.",
          List.of(),
          null,
          OwnAccount.class,
          Example.get(
              "/api/log/account", "{\"name\": \"Ida\", \"role\": \"keeper\", \"classes\": []}"));

  /** Another password. */
  public static final Endpoint PASSWORD =
      LogEndpoints.people(
          "PATCH",
          "/api/log/account",
          "account-password",
          "Change one's password",
          "All other log-ins of the account are void afterwards.",
          List.of(),
          PasswordRequest.class,
          OwnAccount.class,
          new Example(
              "/api/log/account",
              "application/json",
              "{\"old\": \"rye and salt and patience\", \"password\": \"more salt and more patience\"}",
              "{\"name\": \"Ida\"}"));

  /** A class is joined. */
  public static final Endpoint JOIN =
      LogEndpoints.people(
          "POST",
          "/api/log/account/classes",
          "join",
          "Join a class",
          "With the code that its teacher gave.",
          List.of(),
          JoinRequest.class,
          OwnAccount.class,
          Example.post(
              "/api/log/account/classes",
              "{\"code\": \"AAAAA-BBBBB\"}",
              "{\"classes\": [{\"id\": 1, \"name\": \"Tuesday bread\"}]}"));

  /** A class is left. */
  public static final Endpoint LEAVE =
      LogEndpoints.people(
          "DELETE",
          "/api/log/account/classes/{id}",
          "leave",
          "Leave a class",
          "Bakes that were given to it are one's own alone again.",
          List.of(CLASS),
          null,
          OwnAccount.class,
          Example.get("/api/log/account/classes/1", "{\"classes\": []}"));

  /** Somebody logs out. */
  public static final Endpoint LOG_OUT =
      LogEndpoints.people(
          "DELETE",
          "/api/log/session",
          "log-out",
          "Log out",
          "The token is void afterwards.",
          List.of(),
          null,
          Gone.class,
          Example.get("/api/log/session", "{\"gone\": \"log-in\"}"));

  /** Somebody logs out everywhere. */
  public static final Endpoint LOG_OUT_EVERYWHERE =
      LogEndpoints.people(
          "DELETE",
          "/api/log/sessions",
          "log-out-everywhere",
          "Log out everywhere",
          "All log-ins of the account are void afterwards, those of browsers too.",
          List.of(),
          null,
          Gone.class,
          Example.get("/api/log/sessions", "{\"gone\": \"all log-ins\"}"));

  /** One's own account goes. */
  public static final Endpoint DELETE_ACCOUNT =
      LogEndpoints.people(
          "POST",
          "/api/log/account/delete",
          "delete-account",
          "Delete one's account",
          "For good, with its bakes and photos. The last keeper can only go when nobody else is left.",
          List.of(),
          PasswordShown.class,
          Gone.class,
          Example.post(
              "/api/log/account/delete",
              "{\"password\": \"more salt and more patience\"}",
              "{\"gone\": \"account 1\"}"));

  /** All of them, in an order in which their examples follow each other. */
  public static final List<Endpoint> ALL =
      Stream.of(
              List.of(LOG_IN, SIGN_UP, ACCOUNT, PASSWORD, JOIN, LEAVE),
              SchoolEndpoints.ALL,
              List.of(LOG_OUT, LOG_OUT_EVERYWHERE, DELETE_ACCOUNT))
          .flatMap(List::stream)
          .toList();

  /** Those that can be asked before a log-in. */
  public static final List<Endpoint> OPEN = List.of(LOG_IN, SIGN_UP);

  private PeopleEndpoints() {}
}
