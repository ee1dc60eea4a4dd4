package crumbtrail.rules;

import crumbtrail.knowledge.Fault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes the text of a rule file apart into rules, noting what does not have the form of a rule. */
final class RuleFile {
  private static final Pattern HEAD = Pattern.compile("rule \"([^\"]+)\"");
  private static final Pattern LIKE_HEAD = Pattern.compile("rule\\b.*");
  private static final Pattern ANNOTATION = Pattern.compile("@(\\w+)\\(\"([^\"]*)\"\\)");

  private enum Part {
    OUTSIDE,
    HEAD,
    WHEN,
    THEN
  }

  private final String file;
  private final List<RuleText> rules = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();
  private Part part = Part.OUTSIDE;
  private int headLine;
  private String name = "";
  private Map<String, String> metadata = new LinkedHashMap<>();
  private List<RuleText.Sentence> conditions = new ArrayList<>();
  private List<RuleText.Sentence> consequences = new ArrayList<>();

  private RuleFile(String file) {
    this.file = file;
  }

  /**
   * Reads one file.
   *
   * @param file its name, for messages
   * @param text its text
   * @param faults takes what is wrong with it
   * @return the rules that could be read
   */
  static List<RuleText> read(String file, String text, List<Fault> faults) {
    RuleFile reader = new RuleFile(file);
    String[] lines = text.split("\n", -1);
    for (int number = 1; number <= lines.length; number++) {
      reader.line(number, lines[number - 1].strip());
    }
    if (reader.part != Part.OUTSIDE) {
      reader.noEnd();
    }
    faults.addAll(reader.faults);
    return reader.rules;
  }

  private void line(int number, String line) {
    if (line.isEmpty() || line.startsWith("//")) {
      return;
    }
    // A new rule begins where one forgot to end: only the one is lost, and the next is read.
    if (part != Part.OUTSIDE && HEAD.matcher(line).matches()) {
      noEnd();
      part = Part.OUTSIDE;
    }
    switch (part) {
      case OUTSIDE -> open(number, line);
      case HEAD -> head(number, line);
      case WHEN -> {
        if (line.equals("then")) {
          part = Part.THEN;
        } else if (line.equals("end")) {
          fault(number, "the rule ends before it says then", "Put a line before it: then");
          part = Part.OUTSIDE;
        } else {
          conditions.add(new RuleText.Sentence(number, line));
        }
      }
      case THEN -> {
        if (line.equals("end")) {
          close();
        } else {
          consequences.add(new RuleText.Sentence(number, line));
        }
      }
    }
  }

  private void open(int number, String line) {
    Matcher head = HEAD.matcher(line);
    boolean named = head.matches();
    if (!named) {
      fault(
          number,
          "\"" + line + "\" stands outside a rule",
          "Start a rule with: rule \"Its name\"; a comment starts with //");
      // What follows a head that is nearly right is not told off line by line.
      if (!LIKE_HEAD.matcher(line).matches()) {
        return;
      }
    }
    part = Part.HEAD;
    headLine = number;
    name = named ? head.group(1) : "";
    metadata = new LinkedHashMap<>();
    conditions = new ArrayList<>();
    consequences = new ArrayList<>();
  }

  private void head(int number, String line) {
    if (line.equals("when")) {
      part = Part.WHEN;
      return;
    }
    Matcher annotation = ANNOTATION.matcher(line);
    if (annotation.matches()) {
      metadata.put(annotation.group(1), annotation.group(2));
    } else {
      fault(
          number,
          "\"" + line + "\" is no line of a rule's head",
          "Write @strand(\"…\"), @source(\"…\"), @lesson(\"…\") on a line each, then: when");
    }
  }

  private void close() {
    if (!name.isEmpty()) {
      rules.add(new RuleText(file, headLine, name, metadata, conditions, consequences));
    }
    part = Part.OUTSIDE;
  }

  private void noEnd() {
    fault(headLine, "the rule has no end", "Close it with a line: end");
  }

  private void fault(int line, String what, String remedy) {
    faults.add(new Fault(file, line, what, remedy));
  }
}
