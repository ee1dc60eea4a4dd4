package crumbtrail.web;

import crumbtrail.report.RecipeLayout;
import crumbtrail.sheet.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The form page: what was typed, and what is wrong with it, each fault beside its field. */
public final class FormPage {

  private final BakeForm form;
  private final Desk desk;
  private final Map<FormField, List<String>> faults = new LinkedHashMap<>();
  private final List<String> generalFaults = new ArrayList<>();

  private FormPage(BakeForm form, Desk desk, List<Problem> problems) {
    this.form = form;
    this.desk = desk;
    for (Problem problem : problems) {
      Optional<FormField> field = form.fieldOf(problem);
      if (problem.where().isEmpty() && !form.saysSomething()) {
        // The reader tells in terms of its JSON what is missing; here a field can be named.
        faults.put(FormLayout.SEEN, List.of(desk.texts().of("form.nothing")));
      } else if (field.isPresent()) {
        faults.computeIfAbsent(field.get(), f -> new ArrayList<>()).add(sentence(problem));
      } else {
        generalFaults.add(sentence(problem));
      }
    }
  }

  static FormPage blank(Desk desk) {
    return new FormPage(BakeForm.EMPTY, desk, List.of());
  }

  /** The form as it was typed, with nothing said against it. */
  static FormPage kept(BakeForm form, Desk desk) {
    return new FormPage(form, desk, List.of());
  }

  static FormPage refused(BakeForm form, Desk desk, List<Problem> problems) {
    return new FormPage(form, desk, problems);
  }

  /**
   * What lies about while a form is filled in.
   *
   * @param texts of the page
   * @param units that the baker chose
   * @param signs that can be picked from pictures
   * @param layout of the recipe as far as it is typed
   */
  record Desk(Texts texts, Units units, SignShelf signs, RecipeLayout layout) {}

  /**
   * A field ready to be drawn.
   *
   * @param english whether its faults can be told in English only
   */
  public record Input(
      String id,
      String label,
      String hint,
      String kind,
      String text,
      int height,
      List<String> faults,
      boolean english) {

    /** The ids of the texts that describe the field, for screen readers; null if there are none. */
    public String describedBy() {
      String ids = (hint.isEmpty() ? "" : id + "-hint ") + (faults.isEmpty() ? "" : id + "-fault");
      return ids.isEmpty() ? null : ids.strip();
    }
  }

  /**
   * Signs of one stage ready to be drawn.
   *
   * @param chosen how many of them were picked
   */
  public record Pick(String id, String name, int chosen, List<PictureSign> signs) {}

  /**
   * A sign with its picture.
   *
   * @param field name of its field
   * @param look how a baker checks for it
   * @param choice "saw", "not" or empty
   */
  public record PictureSign(String field, String key, String name, String look, String choice) {}

  /** A stage ready to be drawn; it stands open if anything in it was filled in or is wrong. */
  public record Section(String id, String name, boolean open, List<List<Input>> rows) {}

  /**
   * A fault for the list at the top.
   *
   * @param fieldId the field to jump to, or ""
   * @param english whether it can be told in English only
   */
  public record Fault(String fieldId, String label, String sentence, boolean english) {}

  public Input title() {
    return input(FormLayout.TITLE, 0);
  }

  public Input style() {
    return input(FormLayout.STYLE, 0);
  }

  public Input seen() {
    return input(FormLayout.SEEN, 4);
  }

  public Input notSeen() {
    return input(FormLayout.NOT_SEEN, 2);
  }

  public Input recipe() {
    return input(FormLayout.RECIPE, 9);
  }

  /** Whether anything was typed, so that the page must not be filled with an older draft. */
  public boolean typed() {
    return !form.typed().isEmpty();
  }

  public Units units() {
    return desk.units();
  }

  /** The recipe as it is laid out. */
  public LayoutView layout() {
    return LayoutView.of(desk.layout(), desk.units(), desk.texts());
  }

  /** The signs that can be picked, stage by stage. */
  public List<Pick> picks() {
    return desk.signs().stages().stream().map(this::pick).toList();
  }

  private Pick pick(SignShelf.Shelf shelf) {
    List<PictureSign> signs =
        shelf.signs().stream()
            .map(
                sign -> {
                  String field = PickedSign.fieldName(sign.key());
                  String choice = form.typed().getOrDefault(field, "");
                  return new PictureSign(
                      field, sign.key(), desk.texts().name(sign.name()), sign.look(), choice);
                })
            .toList();
    int chosen = (int) signs.stream().filter(sign -> !sign.choice().isEmpty()).count();
    return new Pick(shelf.moment().id(), desk.texts().of(shelf.moment().id()), chosen, signs);
  }

  public Input remarks() {
    return input(FormLayout.REMARKS, 3);
  }

  public List<Section> sections() {
    return FormLayout.STAGES.stream()
        .map(
            stage -> {
              List<List<Input>> rows =
                  stage.rows().stream()
                      .map(row -> row.stream().map(f -> input(f, 3)).toList())
                      .toList();
              boolean open =
                  rows.stream()
                      .flatMap(List::stream)
                      .anyMatch(i -> !i.text().isEmpty() || !i.faults().isEmpty());
              return new Section(stage.id(), desk.texts().of("stage." + stage.id()), open, rows);
            })
        .toList();
  }

  /** All faults in the order of the page, the general ones first. */
  public List<Fault> faults() {
    List<Fault> all = new ArrayList<>();
    generalFaults.forEach(sentence -> all.add(new Fault("", "", sentence, true)));
    for (FormField field : FormLayout.ALL) {
      for (String sentence : faults.getOrDefault(field, List.of())) {
        all.add(new Fault(field.name(), field.label(desk.texts()), sentence, english(sentence)));
      }
    }
    return all;
  }

  private Input input(FormField field, int height) {
    return new Input(
        field.name(),
        field.label(desk.texts()),
        field.hint(desk.texts(), desk.units()),
        field.kind().name(),
        form.text(field),
        height,
        faults.getOrDefault(field, List.of()),
        faults.getOrDefault(field, List.of()).stream().allMatch(this::english));
  }

  // What the reader of sheets says there is in English only.
  private boolean english(String sentence) {
    return !sentence.equals(desk.texts().of("form.nothing"));
  }

  /** What is wrong and what would do, in sentences. */
  public static String sentence(Problem problem) {
    return Stream.of(problem.what(), problem.remedy())
        .map(String::strip)
        .filter(part -> !part.isEmpty())
        .map(FormPage::asSentence)
        .collect(Collectors.joining(" "));
  }

  private static String asSentence(String part) {
    String capital = part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1);
    return part.matches("(?s).*[.!?…]") ? capital : capital + ".";
  }
}
