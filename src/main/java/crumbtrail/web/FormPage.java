package crumbtrail.web;

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

  private static final String NOTHING =
      "There is nothing to go on yet. Say what you saw, or paste the recipe.";

  private final BakeForm form;
  private final Map<FormField, List<String>> faults = new LinkedHashMap<>();
  private final List<String> generalFaults = new ArrayList<>();

  private FormPage(BakeForm form, List<Problem> problems) {
    this.form = form;
    for (Problem problem : problems) {
      Optional<FormField> field = form.fieldOf(problem);
      if (problem.where().isEmpty() && !form.saysSomething()) {
        // The reader tells in terms of its JSON what is missing; here a field can be named.
        faults.put(FormLayout.SEEN, List.of(NOTHING));
      } else if (field.isPresent()) {
        faults.computeIfAbsent(field.get(), f -> new ArrayList<>()).add(sentence(problem));
      } else {
        generalFaults.add(sentence(problem));
      }
    }
  }

  static FormPage blank() {
    return new FormPage(BakeForm.EMPTY, List.of());
  }

  static FormPage refused(BakeForm form, List<Problem> problems) {
    return new FormPage(form, problems);
  }

  /** A field ready to be drawn. */
  public record Input(
      String id,
      String label,
      String hint,
      String kind,
      String text,
      int height,
      List<String> faults) {

    /** The ids of the texts that describe the field, for screen readers; null if there are none. */
    public String describedBy() {
      String ids = (hint.isEmpty() ? "" : id + "-hint ") + (faults.isEmpty() ? "" : id + "-fault");
      return ids.isEmpty() ? null : ids.strip();
    }
  }

  /** A stage ready to be drawn; it stands open if anything in it was filled in or is wrong. */
  public record Section(String id, String name, boolean open, List<List<Input>> rows) {}

  /** A fault for the list at the top, with the field to jump to, or "" if it has none. */
  public record Fault(String fieldId, String label, String sentence) {}

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
              return new Section(stage.id(), stage.name(), open, rows);
            })
        .toList();
  }

  /** All faults in the order of the page, the general ones first. */
  public List<Fault> faults() {
    List<Fault> all = new ArrayList<>();
    generalFaults.forEach(sentence -> all.add(new Fault("", "", sentence)));
    for (FormField field : FormLayout.ALL) {
      for (String sentence : faults.getOrDefault(field, List.of())) {
        all.add(new Fault(field.name(), field.label(), sentence));
      }
    }
    return all;
  }

  private Input input(FormField field, int height) {
    return new Input(
        field.name(),
        field.label(),
        field.hint(),
        field.kind().name(),
        form.text(field),
        height,
        faults.getOrDefault(field, List.of()));
  }

  private static String sentence(Problem problem) {
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
