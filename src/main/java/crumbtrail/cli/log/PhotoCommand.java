package crumbtrail.cli.log;

import crumbtrail.bakelog.Bake;
import crumbtrail.bakelog.BakeLog;
import crumbtrail.bakelog.LogStore;
import crumbtrail.bakelog.Photo;
import crumbtrail.bakelog.PhotoNote;
import crumbtrail.bakelog.Scope;
import crumbtrail.cli.BadInput;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Adds, writes out and deletes photos of a bake. */
@Command(
    name = "photo",
    mixinStandardHelpOptions = true,
    description =
        "Add photos to a bake, write them out, or delete one. A photo is painted anew, so that place,"
            + " time and camera are not kept.",
    footer = {
      "",
      "Examples:",
      "  crumbtrail log photo 12 crumb.jpg crust.jpg",
      "  crumbtrail log photo 12 --save photos",
      "  crumbtrail log photo 12 --delete 3"
    })
final class PhotoCommand implements Callable<Integer> {
  @Spec CommandSpec spec;

  @Mixin Kept kept;

  @Parameters(index = "0", paramLabel = "ID", description = "number of the bake")
  long id;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "FILE",
      description = "photos, JPEG or PNG")
  List<String> files = List.of();

  @Option(names = "--save", paramLabel = "DIR", description = "write its photos into this folder")
  Path folder;

  @Option(names = "--delete", paramLabel = "N", description = "delete the photo of this number")
  Long deleted;

  @Override
  public Integer call() throws Exception {
    if (files.isEmpty() && folder == null && deleted == null) {
      throw new BadInput(List.of("Name a photo to add, or say --save DIR or --delete N."));
    }
    List<Photo> photos = PhotoFiles.read(files);
    PrintWriter out = spec.commandLine().getOut();
    try (LogStore store = kept.open()) {
      BakeLog log = store.of(Scope.ONLY_BAKER);
      Bake bake = log.find(id).orElseThrow(() -> Kept.missing(id));
      if (deleted != null) {
        delete(log, bake);
        out.println(id + "  photo " + deleted + " deleted");
      }
      for (Photo photo : photos) {
        long number = log.addPhoto(id, photo).orElseThrow(() -> Kept.missing(id));
        out.println(id + "  photo " + number);
      }
      if (folder != null) {
        save(log, bake, out);
      }
    }
    return 0;
  }

  private void delete(BakeLog log, Bake bake) {
    if (bake.photos().stream().noneMatch(one -> one.id() == deleted) || !log.deletePhoto(deleted)) {
      throw new BadInput(
          List.of(
              "The bake " + id + " has no photo " + deleted + ". See: crumbtrail log show " + id));
    }
  }

  private void save(BakeLog log, Bake bake, PrintWriter out) throws IOException {
    Files.createDirectories(folder);
    for (PhotoNote note : bake.photos()) {
      Path file = folder.resolve(note.file());
      Files.write(file, log.photo(note.id()).orElseThrow().picture());
      out.println(file);
    }
  }
}
