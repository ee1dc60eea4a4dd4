package crumbtrail.web;

import crumbtrail.people.Account;
import crumbtrail.people.Names;
import crumbtrail.people.Passwords;
import crumbtrail.people.Person;
import crumbtrail.people.Rate;
import crumbtrail.people.Role;
import crumbtrail.people.SchoolClass;
import crumbtrail.people.Tokens;
import io.javalin.http.Context;
import java.util.Locale;
import java.util.Optional;

/**
 * What pages and programs do alike with accounts and classes, with its limits.
 *
 * @param gate who may come in
 */
record Accounts(PeopleGate gate) {

  /** Whoever has this name and this password. */
  Optional<Person> checked(Context ctx, String name, String password) {
    gate.limit(ctx, "log-in from " + gate.peer(ctx), Rate.ADDRESS);
    String counted = Names.key(name);
    String who = "log-in of " + counted.substring(0, Math.min(100, counted.length()));
    gate.limit(ctx, who, Rate.ACCOUNT);
    Optional<Account> account = gate.people().account(name);
    if (account.isEmpty() || password.length() > 2 * Passwords.LONGEST) {
      Passwords.matchesNobody(password.substring(0, Math.min(password.length(), 20)));
      return Optional.empty();
    }
    if (!Passwords.matches(password, account.get().secret())) {
      return Optional.empty();
    }
    gate.people().forgive(who);
    if (Passwords.outdated(account.get().secret())) {
      gate.people().secret(account.get().person().id(), Passwords.hash(password));
    }
    return Optional.of(account.get().person());
  }

  /** Whether somebody who is logged in knows their password. */
  boolean knows(Context ctx, Viewer viewer, String password) {
    gate.limit(ctx, "password of " + viewer.person().id(), Rate.ACCOUNT);
    return password.length() <= 2 * Passwords.LONGEST
        && gate.people()
            .account(viewer.person().id())
            .map(Account::secret)
            .filter(secret -> Passwords.matches(password, secret))
            .isPresent();
  }

  /** Gives whoever asks another password; whoever knew the old one is out. */
  void renew(Context ctx, Viewer viewer, String password) {
    gate.people().secret(viewer.person().id(), Passwords.hash(password));
    gate.people().endAll(viewer.person().id(), Tokens.hash(gate.token(ctx)));
  }

  /** Gives somebody who forgot theirs another password; they are out everywhere. */
  void reset(Person person, String password) {
    gate.people().secret(person.id(), Passwords.hash(password));
    gate.people().endAll(person.id(), null);
  }

  /** Counts one more who tries a code. */
  void countJoining(Context ctx) {
    gate.limit(ctx, "joining from " + gate.peer(ctx), Rate.JOINING);
  }

  /** The class that is joined with a code as it was typed. */
  Optional<SchoolClass> byCode(String typed) {
    return gate.people().byCode(typed.strip().toUpperCase(Locale.ROOT));
  }

  /**
   * The class in the address, for those who look after it.
   *
   * @throws Refusal if there is none. Of another teacher's class nobody is told that it is there; a
   *     keeper looks after all
   */
  SchoolClass taught(Context ctx) {
    Viewer viewer = gate.viewer(ctx, Role.TEACHER);
    return gate.people()
        .schoolClass(LogHouse.id(ctx, "id"))
        .filter(one -> viewer.taught().contains(one.id()) || viewer.person().may(Role.KEEPER))
        .orElseThrow(() -> new Refusal(404, "There is no such class."));
  }

  /**
   * Whoever has the number in the address.
   *
   * @throws Refusal if nobody has
   */
  Person person(Context ctx) {
    return gate.people()
        .account(LogHouse.id(ctx, "id"))
        .map(Account::person)
        .orElseThrow(() -> new Refusal(404, "There is nobody of this number."));
  }
}
