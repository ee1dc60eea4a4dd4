package crumbtrail.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Passwords and their hashes. */
class PasswordsTest {
  private static final String PASSWORD = "rye and salt and patience";

  /** Hashes that the authors of Argon2 publish with their own program (src/test.c, version 19). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "password|$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc",
        "password|$argon2id$v=19$m=256,t=2,p=2$c29tZXNhbHQ$bQk8UB/VmZZF4Oo79iDXuL5/0ttZwg2f/5U52iv1cDc",
        "differentpassword|$argon2id$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$C4TWUs9rDEvq7w3+J4umqA32aWKB1+DSiRuBfYxFj94"
      })
  void the_hashes_that_its_authors_publish_match(String password, String secret) {
    assertThat(Passwords.matches(password, secret)).isTrue();
    assertThat(Passwords.matches(password + "x", secret)).isFalse();
    assertThat(Passwords.outdated(secret)).isTrue();
  }

  @Test
  void a_hash_says_how_it_was_made_and_holds_nothing_of_the_password() {
    String secret = Passwords.hash(PASSWORD);
    assertThat(secret).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain(PASSWORD);
    assertThat(secret).isNotEqualTo(Passwords.hash(PASSWORD));
    assertThat(Passwords.matches(PASSWORD, secret)).isTrue();
    assertThat(Passwords.matches(PASSWORD.toUpperCase(java.util.Locale.ROOT), secret)).isFalse();
    assertThat(Passwords.outdated(secret)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "plain text",
        "$argon2id$v=19$m=9999999,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc",
        "$argon2id$v=19$m=65536,t=0,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc",
        "$argon2i$v=19$m=65536,t=2,p=1$c29tZXNhbHQ$CTFhFdXPJO1aFaMaO6Mm5c8y7cJHAph8ArZWb2GRPPc"
      })
  void what_is_no_hash_of_ours_matches_nothing(String secret) {
    assertThat(Passwords.matches("password", secret)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "short, Ida, TOO_SHORT",
    "123456789, Ida, TOO_SHORT",
    "tide mill keeper, Tide Mill Keeper, THE_NAME",
    "rye and salt and patience, Ida, none",
    "öäüöäüöäüö, Ida, none"
  })
  void a_password_must_be_long_and_not_the_name(String password, String name, String fault) {
    assertThat(Passwords.fault(password, name).map(Enum::name).orElse("none")).isEqualTo(fault);
    assertThat(Passwords.fault("x".repeat(201), "Ida")).contains(Passwords.Fault.TOO_LONG);
  }

  @Test
  void names_are_told_apart_as_people_do() {
    assertThat(Names.kept("  Ida   of the Mill ")).contains("Ida of the Mill");
    assertThat(Names.kept("Żaneta O’Neil-2")).contains("Żaneta O’Neil-2");
    assertThat(Names.key("ＩＤＡ")).isEqualTo(Names.key("ida"));
    for (String bad :
        new String[] {"", " ", "<b>", "a\u202Eb", "a\u0000b", "x".repeat(41), "a@b"}) {
      assertThat(Names.kept(bad)).as(bad).isEmpty();
    }
  }

  @Test
  void tokens_cannot_be_guessed_and_their_hashes_do_not_tell_them() {
    String token = Tokens.fresh();
    assertThat(token).hasSize(43).isNotEqualTo(Tokens.fresh());
    assertThat(Tokens.hash(token)).hasSize(64).isNotEqualTo(Tokens.seal(token));
    assertThat(Tokens.code()).matches("[A-HJKMNP-Z2-9]{5}-[A-HJKMNP-Z2-9]{5}");
    assertThat(Tokens.same(token, token)).isTrue();
    assertThat(Tokens.same(token, token + "x")).isFalse();
  }
}
