package crumbtrail.sheet;

import crumbtrail.quantity.PlainText;
import crumbtrail.sheet.BakeSheet.Preferment;
import crumbtrail.sheet.Heading.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sorts the lines of a pasted recipe as they come. */
final class RecipeSorter {

  private static final Pattern LABELLED = Pattern.compile("^([^:]{2,40}): +(\\S.*)$");

  private static final Pattern BRACKETS = Pattern.compile("\\(([^)]*)\\)?");

  /** A shorter time in a line about a preferment is mixing or resting, not fermenting. */
  private static final double SHORTEST_STAGE = 30;

  private record Group(List<FormulaLine> lines, List<Stage> stages) {
    Group() {
      this(new ArrayList<>(), new ArrayList<>());
    }
  }

  private final String where;
  private final List<FormulaLine> dough = new ArrayList<>();
  private final Map<String, Group> preferments = new LinkedHashMap<>();
  private final List<String> remarks = new ArrayList<>();
  private final Problems problems = new Problems();
  private String title = "";
  private boolean titled;
  private boolean started;
  private Heading now = new Heading(Kind.DOUGH, "");
  private boolean steps;
  private final List<String> orders = new ArrayList<>();
  private final List<String> day = new ArrayList<>();

  RecipeSorter(String where) {
    this.where = where;
  }

  RecipeText refused(String what, String remedy) {
    problems.add(where, what, remedy);
    return finish();
  }

  RecipeText finish() {
    List<Preferment> made = new ArrayList<>();
    preferments.forEach(
        (name, group) -> {
          if (!group.lines().isEmpty()) {
            made.add(new Preferment(name, group.lines(), group.stages()));
          }
        });
    return new RecipeText(title, dough, made, remarks, orders, day, problems.found());
  }

  /** Takes one line, counted from 1. */
  void take(int number, String line) {
    String plain = PlainText.of(line);
    if (plain.isEmpty()) {
      return;
    }
    String place = where + " line " + number;
    if (labelledList(place, plain)) {
      started = true;
      return;
    }
    Optional<Heading> heading = Heading.of(plain);
    if (heading.isPresent()) {
      under(heading.get(), plain);
      started = true;
      return;
    }
    boolean listed = started && !steps;
    List<LineReading> read =
        steps && now.kind() == Kind.STEPS
            ? List.of()
            : RecipeLine.ingredients(place, line, listed && now.kind() != Kind.ASIDE);
    if (read.isEmpty() || now.kind() == Kind.ASIDE) {
      remark(plain, line.strip());
    } else {
      keep(read, now);
      started = true;
    }
  }

  private void under(Heading heading, String plain) {
    switch (heading.kind()) {
      case STEPS -> {
        steps = true;
        now = heading;
        day.add(plain);
        if (!heading.isPlainSteps()) {
          orders.add(plain);
        }
      }
      case OTHER -> {
        remarks.add(plain);
        day.add(plain);
        if (!steps) {
          now = new Heading(Kind.DOUGH, "");
        }
      }
      case ASIDE -> {
        remarks.add(plain);
        now = heading;
      }
      case DOUGH -> now = heading;
      case PREFERMENT -> {
        now = heading;
        // What stands in brackets after the name often says how long: "Poolish (12 h at 20 C)".
        stage(plain);
        Matcher aside = BRACKETS.matcher(plain);
        if (aside.find() && !StageText.isAll(aside.group(1))) {
          remarks.add(plain);
        }
      }
    }
  }

  /** Takes "Poolish: 100 g flour, 100 g water, 0.1 g yeast". */
  private boolean labelledList(String place, String plain) {
    Matcher labelled = LABELLED.matcher(plain);
    if (!labelled.matches()) {
      return false;
    }
    Optional<Heading> heading = Heading.of(labelled.group(1) + ":");
    if (heading.isEmpty()) {
      return false;
    }
    Kind kind = heading.get().kind();
    List<LineReading> read = RecipeLine.several(place, labelled.group(2));
    if (read.isEmpty() || (kind != Kind.PREFERMENT && kind != Kind.DOUGH)) {
      return false;
    }
    keep(read, heading.get());
    return true;
  }

  private void keep(List<LineReading> read, Heading heading) {
    for (LineReading reading : read) {
      reading.problem().ifPresent(problems::add);
      reading
          .line()
          .ifPresent(
              line ->
                  (heading.kind() == Kind.PREFERMENT ? group(heading).lines() : dough).add(line));
    }
  }

  private Group group(Heading heading) {
    return preferments.computeIfAbsent(heading.name(), name -> new Group());
  }

  private void remark(String plain, String line) {
    if (!started && title.isEmpty() && plain.length() <= 80 && !plain.endsWith(".")) {
      title = line.replaceAll("^[#*_= ]+|[#*_= ]+$", "");
    }
    if (!titled && !title.isEmpty()) {
      titled = true;
      return;
    }
    stage(plain);
    if (now.kind() != Kind.PREFERMENT && now.kind() != Kind.ASIDE && !now.isAfterwards()) {
      if (StepWords.isOrder(plain)) {
        step(line);
        return;
      }
      day.add(plain);
    }
    remarks.add(line);
  }

  private void step(String line) {
    orders.add(line);
    day.add(PlainText.of(line));
  }

  private void stage(String plain) {
    if (now.kind() != Kind.PREFERMENT) {
      return;
    }
    StageText found = StageText.of(plain);
    if (found.time().filter(time -> time.value() >= SHORTEST_STAGE).isPresent()) {
      group(now).stages().add(found.stage());
    }
  }
}
