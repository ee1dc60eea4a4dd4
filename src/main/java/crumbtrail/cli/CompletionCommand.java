package crumbtrail.cli;

import crumbtrail.cli.manual.FishCompletion;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The script by which a shell completes commands and options. */
@Command(
    name = "completion",
    mixinStandardHelpOptions = true,
    description = "Print the script by which a shell completes commands and options.",
    footer = {
      "",
      "Examples:",
      "  source <(crumbtrail completion bash)",
      "  source <(crumbtrail completion zsh)",
      "  crumbtrail completion fish | source"
    })
final class CompletionCommand implements Callable<Integer> {
  enum Shell {
    BASH,
    ZSH,
    FISH;

    @Override
    public String toString() {
      return Lower.of(this);
    }
  }

  @Spec CommandSpec spec;

  @Parameters(paramLabel = "SHELL", description = "${COMPLETION-CANDIDATES}")
  Shell shell;

  @Override
  public Integer call() {
    CommandLine root = spec.root().commandLine();
    PrintWriter out = spec.commandLine().getOut();
    // One script serves bash and zsh: it asks zsh for its bash manners.
    out.print(
        shell == Shell.FISH
            ? FishCompletion.of(root.getCommandSpec())
            : AutoComplete.bash(root.getCommandName(), root));
    out.flush();
    return 0;
  }
}
