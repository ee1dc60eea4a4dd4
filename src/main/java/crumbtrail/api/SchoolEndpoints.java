package crumbtrail.api;

import crumbtrail.api.Endpoint.Example;
import crumbtrail.api.Endpoint.Parameter;
import crumbtrail.api.PeopleAsked.ClassRequest;
import crumbtrail.api.PeopleAsked.PersonChange;
import crumbtrail.api.PeopleAsked.PersonRequest;
import crumbtrail.api.PeopleTold.Everybody;
import crumbtrail.api.PeopleTold.PersonLine;
import crumbtrail.api.PeopleTold.TaughtClass;
import crumbtrail.api.PeopleTold.TaughtClasses;
import java.util.List;

/** Addresses of classes for those who teach them, and of accounts for those who keep the log. */
public final class SchoolEndpoints {
  private static final Parameter CLASS = Parameter.path("id", "number of the class", "1");
  private static final Parameter PERSON = Parameter.path("id", "number of the account", "4");

  /** Classes that one teaches. */
  public static final Endpoint CLASSES =
      LogEndpoints.people(
          "GET",
          "/api/log/classes",
          "classes",
          "The classes that one teaches",
          "With their codes and members. For teachers and keepers.",
          List.of(),
          null,
          TaughtClasses.class,
          Example.get(
              "/api/log/classes", "{\"classes\": [{\"id\": 1, \"name\": \"Tuesday bread\"}]}"));

  /** A class is made. */
  public static final Endpoint MAKE_CLASS =
      LogEndpoints.people(
          "POST",
          "/api/log/classes",
          "make-class",
          "Make a class",
          "It gets a code, with which bakers join. For teachers and keepers.",
          List.of(),
          ClassRequest.class,
          TaughtClass.class,
          Example.post(
              "/api/log/classes",
              "{\"name\": \"Friday rye\"}",
              "{\"name\": \"Friday rye\", \"members\": []}"));

  /** A class gets another code. */
  public static final Endpoint NEW_CODE =
      LogEndpoints.people(
          "POST",
          "/api/log/classes/{id}/code",
          "class-code",
          "Give a class another code",
          "The old one is void. Whoever is in the class stays. For its teacher, and for keepers.",
          List.of(CLASS),
          null,
          TaughtClass.class,
          Example.get("/api/log/classes/1/code", "{\"id\": 1, \"name\": \"Tuesday bread\"}"));

  /** A class is closed. */
  public static final Endpoint CLOSE =
      LogEndpoints.people(
          "DELETE",
          "/api/log/classes/{id}/code",
          "close-class",
          "Close a class",
          "Nobody can join it until it gets another code. For its teacher, and for keepers.",
          List.of(CLASS),
          null,
          TaughtClass.class,
          Example.get("/api/log/classes/1/code", "{\"id\": 1, \"name\": \"Tuesday bread\"}"));

  /** Somebody is taken out of a class. */
  public static final Endpoint REMOVE =
      LogEndpoints.people(
          "DELETE",
          "/api/log/classes/{id}/members/{baker}",
          "remove-member",
          "Take somebody out of a class",
          "The bakes that they gave to it are theirs alone again. For its teacher, and for keepers.",
          List.of(CLASS, Parameter.path("baker", "number of the account", "3")),
          null,
          TaughtClass.class,
          Example.get(
              "/api/log/classes/1/members/3", "{\"id\": 1, \"members\": [{\"name\": \"Eva\"}]}"));

  /** A class ends. */
  public static final Endpoint END_CLASS =
      LogEndpoints.people(
          "DELETE",
          "/api/log/classes/{id}",
          "end-class",
          "End a class",
          "Bakes that were given to it are their bakers' alone again. For its teacher, and for keepers.",
          List.of(CLASS),
          null,
          Gone.class,
          Example.get("/api/log/classes/2", "{\"gone\": \"class 2\"}"));

  /** Everybody. */
  public static final Endpoint PEOPLE =
      LogEndpoints.people(
          "GET",
          "/api/log/people",
          "people",
          "All accounts",
          "A hundred at a time, in the order of their names. For keepers.",
          List.of(
              Parameter.query("after", "how many stand before, the next of the part before", "0")),
          null,
          Everybody.class,
          Example.get(
              "/api/log/people?after=0",
              "{\"people\": [{\"name\": \"Bo\"}, {\"name\": \"Eva\"}]}"));

  /** Somebody gets an account. */
  public static final Endpoint ADD_PERSON =
      LogEndpoints.people(
          "POST",
          "/api/log/people",
          "add-person",
          "Make an account for somebody",
          "With a first password. For keepers.",
          List.of(),
          PersonRequest.class,
          PersonLine.class,
          Example.post(
              "/api/log/people",
              "{\"name\": \"Ove\", \"role\": \"teacher\", \"password\": \"one for the first day\"}",
              "{\"name\": \"Ove\", \"role\": \"teacher\"}"));

  /** An account is changed. */
  public static final Endpoint CHANGE_PERSON =
      LogEndpoints.people(
          "PATCH",
          "/api/log/people/{id}",
          "change-person",
          "Change an account",
          "Its role, or its password where that was forgotten. The last keeper stays one. For keepers.",
          List.of(PERSON),
          PersonChange.class,
          PersonLine.class,
          new Example(
              "/api/log/people/4",
              "application/json",
              "{\"role\": \"teacher\"}",
              "{\"id\": 4, \"name\": \"Eva\", \"role\": \"teacher\"}"));

  /** An account goes. */
  public static final Endpoint DELETE_PERSON =
      LogEndpoints.people(
          "DELETE",
          "/api/log/people/{id}",
          "delete-person",
          "Delete an account",
          "For good, with its bakes and photos. The last keeper stays while others are there. For keepers.",
          List.of(
              PERSON, Parameter.query("name", "its name, so that nobody goes by a slip", "Eva")),
          null,
          Gone.class,
          Example.get("/api/log/people/4?name=Eva", "{\"gone\": \"account 4\"}"));

  /** All of them. */
  public static final List<Endpoint> ALL =
      List.of(
          CLASSES,
          MAKE_CLASS,
          NEW_CODE,
          CLOSE,
          REMOVE,
          END_CLASS,
          PEOPLE,
          ADD_PERSON,
          CHANGE_PERSON,
          DELETE_PERSON);

  private SchoolEndpoints() {}
}
