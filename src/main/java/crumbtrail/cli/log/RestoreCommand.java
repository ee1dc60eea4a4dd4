package crumbtrail.cli.log;

import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.exchange.LogRestore;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.CrumbtrailCommand.ProgressOption;
import crumbtrail.cli.screen.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts back what was written out. */
@Command(
    name = "restore",
    mixinStandardHelpOptions = true,
    description =
        "Put back what log backup or log export wrote: all of it, or nothing where it is broken. In an"
            + " empty log the bakes get their numbers again; what is in the log stays as it is.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log restore bakes.zip",
      "  crumbtrail log restore my-bakes --log jdbc:postgresql://db.example/bakes"
    })
final class RestoreCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Mixin ProgressOption progress;

  @Parameters(paramLabel = "DIR|FILE.zip", description = "what was written out")
  Path place;

  @Override
  public Integer call() throws IOException {
    if (!Files.exists(place)) {
      throw new NoSuchFileException(place.toString());
    }
    try (LogStore store = kept.open();
        Progress told =
            Progress.counting(
                spec.commandLine().getErr(),
                progress.shown(spec),
                "bakes",
                Progress.UNKNOWN,
                InstantSource.system())) {
      LogRestore.Count count = LogRestore.read(place, store, told::done);
      spec.commandLine()
          .getOut()
          .println(
              "%d bake(s) put back, %d known already".formatted(count.restored(), count.known()));
    } catch (LogRestore.Broken fault) {
      throw new BadInput(List.of(String.valueOf(fault.getMessage()), "Nothing was put back."));
    }
    return 0;
  }
}
