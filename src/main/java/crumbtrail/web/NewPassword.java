package crumbtrail.web;

import crumbtrail.people.Passwords;

/** A password that somebody chooses. */
final class NewPassword {
  private NewPassword() {}

  /** What is wrong with it, in a sentence; empty if nothing is. */
  static String fault(String password, String again, String name, Texts t) {
    if (!password.equals(again)) {
      return t.of("people.password.unlike");
    }
    return Passwords.fault(password, name)
        .map(
            fault ->
                switch (fault) {
                  case TOO_SHORT -> t.of("people.password.short", Passwords.SHORTEST);
                  case TOO_LONG -> t.of("people.password.long", Passwords.LONGEST);
                  case THE_NAME -> t.of("people.password.name");
                })
        .orElse("");
  }
}
