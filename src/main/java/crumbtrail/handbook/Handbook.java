package crumbtrail.handbook;

import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.SignKind;
import crumbtrail.picture.LoafPictures;
import crumbtrail.rules.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The handbook: a page for each cause and each sign, with its picture, written from the rules. */
public final class Handbook {
  private Handbook() {}

  /**
   * All pages.
   *
   * @param book the rules
   * @param coverage which rules spoke where
   * @return text by path below the handbook's folder; the same rules give the same text
   */
  public static Map<String, String> pages(RuleBook book, Coverage coverage) {
    Catalogue catalogue = book.catalogue();
    Witnesses witnesses = new Witnesses(book, new Strengths(catalogue));
    Overviews overviews = new Overviews(catalogue, witnesses);
    Matrix matrix = new Matrix(catalogue, witnesses, overviews);
    CausePages causes = new CausePages(catalogue, witnesses);
    SignPages signs = new SignPages(book, witnesses);
    Map<String, String> pages = new TreeMap<>();
    pages.put("README.md", overviews.front().markdown());
    pages.put("matrix.md", matrix.page().markdown());
    pages.put("matrix.csv", matrix.csv());
    pages.put("coverage.md", CoverageWords.page(catalogue, coverage).markdown());
    for (String stage : Overviews.STAGES) {
      pages.put("stages/" + stage + ".md", overviews.stage(stage).markdown());
    }
    catalogue
        .knowledge()
        .causes()
        .forEach(
            cause -> pages.put("causes/" + cause.key() + ".md", causes.page(cause).markdown()));
    LoafPictures pictures = LoafPictures.of(catalogue);
    for (SignKind sign : catalogue.knowledge().signs()) {
      pages.put("signs/" + sign.key() + ".md", signs.page(sign).markdown());
      pictures
          .of(sign.key())
          .ifPresent(picture -> pages.put("pictures/" + sign.key() + ".svg", picture.svg() + "\n"));
    }
    return pages;
  }

  /**
   * Writes the pages, and takes away pages of causes and signs that are no more.
   *
   * @param folder where they go; made if it is not there
   */
  public static void write(Map<String, String> pages, Path folder) throws IOException {
    for (Map.Entry<String, String> page : pages.entrySet()) {
      Path file = folder.resolve(page.getKey());
      Files.createDirectories(file.getParent());
      Files.writeString(file, page.getValue());
    }
    for (Path file : left(pages, folder)) {
      Files.delete(file);
    }
  }

  /**
   * Pages in the folders of causes, signs, stages and pictures that the handbook does not have.
   * What lies elsewhere is none of its business, whatever folder it is told to write to.
   */
  public static List<Path> left(Map<String, String> pages, Path folder) throws IOException {
    List<Path> left = new ArrayList<>();
    for (String kind : List.of("causes", "signs", "stages", "pictures")) {
      Path pagesOfKind = folder.resolve(kind);
      if (Files.isDirectory(pagesOfKind)) {
        try (Stream<Path> files = Files.list(pagesOfKind)) {
          files
              .filter(file -> file.toString().matches(".*\\.(md|svg)"))
              .filter(file -> !pages.containsKey(kind + "/" + file.getFileName()))
              .sorted()
              .forEach(left::add);
        }
      }
    }
    return left;
  }
}
