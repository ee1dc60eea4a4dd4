package crumbtrail.cli.log;

import crumbtrail.bakelog.LogPlace;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.store.SqlLogStore;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.settings.Setting;
import crumbtrail.cli.settings.Settings;
import crumbtrail.people.Account;
import crumbtrail.people.Person;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import picocli.CommandLine.Option;

/** Which log a command is about. */
final class Kept {
  @Option(
      names = "--log",
      paramLabel = "FILE|URL",
      description =
          "the log: a file, or a PostgreSQL server as jdbc:postgresql://HOST/DATABASE (what"
              + " CRUMBTRAIL_LOG names, or a file among your own data, unless told)")
  String log;

  LogStore open() {
    String told = log == null ? Settings.here().text(Setting.LOG) : log;
    return SqlLogStore.open(LogPlace.of(told, System.getenv()));
  }

  static BadInput missing(long id) {
    return new BadInput(
        List.of("There is no bake " + id + " in the log. All bakes: crumbtrail log list"));
  }

  /** Somebody with an account of this name. */
  static Person person(LogStore store, String name) {
    return store
        .people()
        .account(name)
        .map(Account::person)
        .orElseThrow(
            () ->
                new BadInput(
                    List.of(
                        "There is nobody called \""
                            + name
                            + "\". All accounts: crumbtrail log people list")));
  }

  /** A day, or a day and a time of it, as an option says it. */
  static LocalDateTime when(String option, String text, int usualHour) {
    try {
      return text.strip().length() > "2026-03-01".length()
          ? LocalDateTime.parse(text.strip().replace(' ', 'T'))
          : LocalDate.parse(text.strip()).atTime(usualHour, 0);
    } catch (DateTimeParseException fault) {
      throw new BadInput(
          List.of(
              option
                  + ": \""
                  + text
                  + "\" is no day. Write it as 2026-03-01, or with its time as"
                  + " 2026-03-01T14:30."));
    }
  }
}
