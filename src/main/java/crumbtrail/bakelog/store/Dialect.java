package crumbtrail.bakelog.store;

import org.jdbi.v3.core.Handle;

/** In what the two databases differ. */
enum Dialect {
  /** A file of this machine. */
  H2 {
    @Override
    void settle(Handle handle) {
      // A commit of H2 reaches the disk up to a second later unless it is sent there.
      handle.execute("checkpoint sync");
    }

    @Override
    void beginOneMoment(Handle handle) {
      handle.execute("set session characteristics as transaction isolation level snapshot");
      handle.begin();
    }

    @Override
    void endOneMoment(Handle handle) {
      // The connection goes back to the pool as it came.
      handle.execute("set session characteristics as transaction isolation level read committed");
    }
  },
  /** A server. */
  POSTGRES {
    @Override
    void settle(Handle handle) {
      // A commit is on disk when it returns.
    }

    @Override
    void beginOneMoment(Handle handle) {
      handle.begin();
      handle.execute("set transaction isolation level repeatable read, read only");
    }

    @Override
    void endOneMoment(Handle handle) {
      // What was set ended with the transaction.
    }
  };

  /** Brings on disk what has been committed. */
  abstract void settle(Handle handle);

  /** Begins a transaction that sees the log as it is now, whatever others commit meanwhile. */
  abstract void beginOneMoment(Handle handle);

  /** Undoes what that took, after the end of the transaction. */
  abstract void endOneMoment(Handle handle);
}
