package crumbtrail.api;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is answered about accounts and classes. */
public final class PeopleTold {
  private PeopleTold() {}

  /**
   * A log-in.
   *
   * @param token to be sent with every request, as Authorization: Bearer TOKEN; void after twelve
   *     hours without a request, and after thirty days
   * @param name of the account
   * @param role baker, teacher or keeper
   */
  public record LoggedIn(String token, String name, String role) {}

  /**
   * One's own account.
   *
   * @param id its number
   * @param name as others see it
   * @param role baker, teacher or keeper
   * @param classes to which one belongs
   */
  public record OwnAccount(long id, String name, String role, List<ClassName> classes) {
    public OwnAccount {
      classes = List.copyOf(classes);
    }
  }

  /**
   * A class.
   *
   * @param id its number
   * @param name as the teacher called it
   */
  public record ClassName(long id, String name) {}

  /**
   * A class, for those who look after it.
   *
   * @param id its number
   * @param name as the teacher called it
   * @param code with which bakers join; missing while it is closed
   * @param members in the order of their names
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record TaughtClass(long id, String name, @Nullable String code, List<PersonLine> members) {
    public TaughtClass {
      members = List.copyOf(members);
    }
  }

  /**
   * Classes, for whoever teaches them.
   *
   * @param classes in the order of their names
   */
  public record TaughtClasses(List<TaughtClass> classes) {
    public TaughtClasses {
      classes = List.copyOf(classes);
    }
  }

  /**
   * Somebody who has an account.
   *
   * @param id its number
   * @param name as others see it
   * @param role baker, teacher or keeper
   */
  public record PersonLine(long id, String name, String role) {}

  /**
   * Everybody, a part of them.
   *
   * @param people in the order of their names
   * @param next where the next part begins, to be asked for as after; missing on the last
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record Everybody(List<PersonLine> people, @Nullable Integer next) {
    public Everybody {
      people = List.copyOf(people);
    }
  }
}
