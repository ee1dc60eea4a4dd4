package crumbtrail.cli;

import crumbtrail.cli.manual.ManPage;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Manual pages, written from the commands themselves. */
@Command(
    name = "man",
    mixinStandardHelpOptions = true,
    description =
        "Print the manual page of the program or of one command, in the form that man reads; or"
            + " write all of them to a folder.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail man trace | man -l -",
      "  crumbtrail man rules check | man -l -",
      "  crumbtrail man --out ~/.local/share/man/man1"
    })
final class ManCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Parameters(
      paramLabel = "COMMAND",
      arity = "0..2",
      description = "a command, such as trace or rules check (the whole program unless told)")
  List<String> words = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "write the pages of all commands into this folder")
  Path folder;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    if (folder == null) {
      out.print(ManPage.of(named()));
      out.flush();
      return 0;
    }
    if (!words.isEmpty()) {
      throw new BadInput(List.of("--out writes the pages of all commands. Name none with it."));
    }
    Files.createDirectories(folder);
    List<CommandSpec> all = new ArrayList<>();
    gather(spec.root(), all);
    for (CommandSpec one : all) {
      Files.writeString(folder.resolve(ManPage.name(one) + ".1"), ManPage.of(one));
    }
    out.println(all.size() + " pages in " + folder);
    return 0;
  }

  private static void gather(CommandSpec from, List<CommandSpec> all) {
    all.add(from);
    from.subcommands().values().forEach(line -> gather(line.getCommandSpec(), all));
  }

  private CommandSpec named() {
    CommandSpec at = spec.root();
    for (String word : words) {
      CommandLine below = at.subcommands().get(word);
      if (below == null) {
        throw new BadInput(
            List.of(
                at.subcommands().isEmpty()
                    ? at.qualifiedName() + " has no commands below it."
                    : "There is no command \"%s\". The commands: %s."
                        .formatted(word, String.join(", ", at.subcommands().keySet()))));
      }
      at = below.getCommandSpec();
    }
    return at;
  }
}
