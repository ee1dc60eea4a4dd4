package crumbtrail.bakelog.store;

import crumbtrail.bakelog.LogPlace;
import java.nio.file.Path;
import java.util.Map;

/** The stores on which every test of the log runs. */
public enum StoreKind {
  H2 {
    @Override
    public LogPlace place(Path folder) {
      return LogPlace.of(folder.resolve("bakes").toString(), Map.of());
    }
  },
  POSTGRES {
    @Override
    public LogPlace place(Path folder) {
      return LogPlace.of(Postgres.emptyDatabase(), Map.of());
    }
  };

  /** A log that is not there yet. */
  public abstract LogPlace place(Path folder);
}
