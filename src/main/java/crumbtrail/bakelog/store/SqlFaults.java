package crumbtrail.bakelog.store;

import crumbtrail.bakelog.LogFault;
import crumbtrail.bakelog.LogFault.Kind;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.List;
import java.util.Locale;
import org.h2.api.ErrorCode;

/** Finds out what a fault of a database means for the person who keeps the log. */
final class SqlFaults {
  /** How systems say it: no room on the disk, or none for this user. */
  private static final List<String> FULL =
      List.of("no space left", "not enough space", "disk quota exceeded", "file too large");

  private SqlFaults() {}

  /**
   * The fault in plain words.
   *
   * @param where which log
   * @param thrown what was thrown; a database's own fault may lie anywhere below it
   */
  static LogFault of(Dialect dialect, String where, Throwable thrown) {
    Throwable deepest = thrown;
    for (Throwable at = thrown; at != null; at = at.getCause()) {
      if (at instanceof LogFault known) {
        return known;
      }
      String words = String.valueOf(at.getMessage()).toLowerCase(Locale.ROOT);
      if (FULL.stream().anyMatch(words::contains)) {
        return fault(Kind.FULL, where, thrown);
      }
      deepest = at;
    }
    for (Throwable at = thrown; at != null; at = at.getCause()) {
      if (at instanceof SQLException sql) {
        Kind kind = dialect == Dialect.H2 ? ofFile(sql) : ofServer(sql);
        if (kind != Kind.OTHER) {
          return fault(kind, where, thrown);
        }
      }
    }
    return new LogFault(
        Kind.OTHER,
        where,
        "met a fault: " + deepest.getMessage(),
        "Run again with CRUMBTRAIL_DEBUG=1 to see where.",
        thrown);
  }

  private static Kind ofFile(SQLException sql) {
    return switch (sql.getErrorCode()) {
      case ErrorCode.DATABASE_ALREADY_OPEN_1 -> Kind.IN_USE;
      case ErrorCode.FILE_CORRUPTED_1,
          ErrorCode.FILE_VERSION_ERROR_1,
          ErrorCode.WRONG_USER_OR_PASSWORD ->
          Kind.DAMAGED;
      case ErrorCode.DATABASE_IS_READ_ONLY,
          ErrorCode.FILE_CREATION_FAILED_1,
          ErrorCode.IO_EXCEPTION_1,
          ErrorCode.IO_EXCEPTION_2 ->
          Kind.FORBIDDEN;
      case ErrorCode.CONNECTION_BROKEN_1,
          ErrorCode.DATABASE_IS_CLOSED,
          ErrorCode.OBJECT_CLOSED,
          ErrorCode.DATABASE_CALLED_AT_SHUTDOWN ->
          Kind.UNREACHABLE;
      default -> Kind.OTHER;
    };
  }

  private static Kind ofServer(SQLException sql) {
    String state = String.valueOf(sql.getSQLState());
    if (state.startsWith("28") || state.equals("3D000") || state.equals("42501")) {
      return Kind.REFUSED;
    }
    if (state.startsWith("53100")) {
      return Kind.FULL;
    }
    return state.startsWith("08")
            || state.startsWith("57P")
            || sql instanceof SQLTransientConnectionException
        ? Kind.UNREACHABLE
        : Kind.OTHER;
  }

  private static LogFault fault(Kind kind, String where, Throwable cause) {
    return switch (kind) {
      case IN_USE ->
          new LogFault(
              kind,
              where,
              "is held by another program that does not share it",
              "Close that program, or wait until it has ended.",
              cause);
      case DAMAGED ->
          new LogFault(
              kind,
              where,
              "is damaged, or no bake log",
              "Move the file to a safe place. Then put your last backup back with: crumbtrail log"
                  + " restore BACKUP.zip.",
              cause);
      case FULL ->
          new LogFault(
              kind,
              where,
              "has no room left on its disk",
              "What was acknowledged before is safe; this step is not. Make room and do it again.",
              cause);
      case FORBIDDEN ->
          new LogFault(
              kind,
              where,
              "cannot be read or written",
              "See whether its folder is there and may be written, or name another with --log FILE.",
              cause);
      case UNREACHABLE ->
          new LogFault(
              kind,
              where,
              "does not answer",
              "Nothing was acknowledged of this step. See whether the server runs, then do it again.",
              cause);
      case REFUSED ->
          new LogFault(
              kind,
              where,
              "does not let this program in",
              "See that user, password and database in the address are right, and that the user may"
                  + " make tables there.",
              cause);
      default -> throw new IllegalArgumentException("no words for " + kind);
    };
  }
}
