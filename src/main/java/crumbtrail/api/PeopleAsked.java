package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import org.jspecify.annotations.Nullable;

/** What is sent about accounts and classes. */
public final class PeopleAsked {
  private PeopleAsked() {}

  /**
   * Who logs in.
   *
   * @param name the name of the account
   * @param password its password
   */
  public record LogInRequest(String name, String password) {}

  /**
   * Who makes an account of their own.
   *
   * @param name others in the class and the teacher see it
   * @param password 10 to 200 characters, and not the name
   * @param code of the class that is joined with it
   */
  public record SignUpRequest(String name, String password, String code) {}

  /**
   * Another password for one's own account.
   *
   * @param old the present one
   * @param password 10 to 200 characters, and not the name
   */
  public record PasswordRequest(String old, String password) {}

  /**
   * That somebody means it.
   *
   * @param password of one's own account
   */
  public record PasswordShown(String password) {}

  /**
   * A class to be joined.
   *
   * @param code as the teacher gave it
   */
  public record JoinRequest(String code) {}

  /**
   * A class to be made.
   *
   * @param name as bakers see it
   */
  public record ClassRequest(String name) {}

  /**
   * An account that a keeper makes.
   *
   * @param name of whoever it is for
   * @param role baker, teacher or keeper
   * @param password the first one
   */
  public record PersonRequest(String name, String role, String password) {}

  /**
   * What is to be changed of an account; what is missing stays as it is.
   *
   * @param role baker, teacher or keeper
   * @param password another one; whoever has the account is logged out everywhere
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record PersonChange(@Nullable String role, @Nullable String password) {}
}
