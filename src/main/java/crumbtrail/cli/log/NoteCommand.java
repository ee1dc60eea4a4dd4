package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import crumbtrail.cli.Input;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds to the notes of a bake. */
@Command(
    name = "note",
    mixinStandardHelpOptions = true,
    description = "Add to the notes of a bake.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log note 12 the salt was weighed on the old scales",
      "  crumbtrail log note 12 --replace - < notes.txt"
    })
final class NoteCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(index = "0", paramLabel = "ID", description = "number of the bake")
  long id;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "TEXT",
      description = "what to note; - for standard input")
  List<String> words;

  @Option(names = "--replace", description = "put it in place of the notes so far")
  boolean replace;

  @Override
  public Integer call() throws Exception {
    String text = words.equals(List.of("-")) ? Input.text("-") : String.join(" ", words);
    try (LogStore store = kept.open()) {
      Bake bake =
          store
              .of(Scope.ONLY_BAKER)
              .change(
                  id,
                  before ->
                      before.withNote(
                          checked(
                              replace || before.note().isEmpty()
                                  ? text
                                  : before.note() + "\n\n" + text)))
              .orElseThrow(() -> Kept.missing(id));
      spec.commandLine().getOut().println(bake.id() + "  " + bake.label() + "  noted");
    }
    return 0;
  }

  /** The notes, if they are not too long. */
  static String checked(String note) {
    if (note.strip().length() > Bake.LONGEST_NOTE) {
      throw new BadInput(
          List.of(
              "The notes would have %,d characters; at most %,d are kept."
                  .formatted(note.strip().length(), Bake.LONGEST_NOTE)));
    }
    return note;
  }
}
