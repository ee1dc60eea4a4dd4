package crumbtrail.web;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/** Days as they are shown and as they are typed. */
final class Days {
  private static final int NOON = 12;
  private static final int EARLIEST = 1900;
  private static final int LATEST = 2200;

  private Days() {}

  /** A day in the reader's language: 3 March 2026. */
  static String shown(LocalDateTime time, Texts t) {
    return DateTimeFormatter.ofPattern(t.of("log.day"), t.language().locale()).format(time);
  }

  /** The day that a field of a form holds; empty for one that is none. */
  static Optional<LocalDate> typed(String text) {
    try {
      LocalDate day = LocalDate.parse(text.strip());
      return day.getYear() >= EARLIEST && day.getYear() < LATEST
          ? Optional.of(day)
          : Optional.empty();
    } catch (DateTimeException fault) {
      return Optional.empty();
    }
  }

  /** When something was baked of which only the day is told: now for today, else at noon. */
  static LocalDateTime baked(LocalDate day) {
    LocalDateTime now = LocalDateTime.now(ZoneId.systemDefault());
    return day.equals(now.toLocalDate()) ? now : day.atTime(NOON, 0);
  }

  static LocalDate today() {
    return LocalDate.now(ZoneId.systemDefault());
  }
}
