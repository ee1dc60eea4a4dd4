package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.bakelog.exchange.LogExport;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.screen.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;

/** What export and backup have in common. */
final class WriteOut {
  private WriteOut() {}

  // Looked at before the work begins.
  static void check(Path target, boolean force) throws IOException {
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new BadInput(
          List.of("There is no folder " + folder + ". Make it, or name another place."));
    }
    boolean taken = Files.exists(target);
    if (Files.isDirectory(target)) {
      try (Stream<Path> files = Files.list(target)) {
        taken = files.findAny().isPresent();
      }
    }
    if (taken && !force) {
      throw new BadInput(
          List.of(target + " is there already. Name another place, or say --force."));
    }
  }

  static LogExport.Count run(
      CommandSpec spec, boolean shown, LogStore store, Scope scope, Path target)
      throws IOException {
    long total = shown ? store.of(scope).count() : Progress.UNKNOWN;
    try (Progress told =
        Progress.counting(
            spec.commandLine().getErr(), shown, "bakes", total, InstantSource.system())) {
      return LogExport.write(store, scope, target, told::done);
    }
  }

  static String summary(LogExport.Count count, Path target) {
    return "%d bake(s) with %d photo(s) written: %s"
        .formatted(count.bakes(), count.photos(), target);
  }
}
