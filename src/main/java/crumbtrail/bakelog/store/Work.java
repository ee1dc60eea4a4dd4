package crumbtrail.bakelog.store;

import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/** Runs what is to be done in the database, each piece in a transaction. */
interface Work {

  /** Looks something up. */
  <T> T read(Function<Handle, T> reading);

  /** Changes something, and returns when that is on disk. */
  <T> T write(Function<Handle, T> writing);
}
