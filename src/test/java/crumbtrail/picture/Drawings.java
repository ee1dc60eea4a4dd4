package crumbtrail.picture;

import java.io.StringReader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.xml.sax.InputSource;

/** Looks at drawings as text. */
final class Drawings {
  private static final Pattern PATH = Pattern.compile(" d=\"([^\"]*)\"");
  private static final Pattern STEP =
      Pattern.compile("([MmlqzhaZ])|(-?(?:\\d+(?:\\.\\d+)?|\\.\\d+))");

  private Drawings() {}

  static void wellFormed(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      DocumentBuilder parser = factory.newDocumentBuilder();
      parser.parse(new InputSource(new StringReader(svg)));
    } catch (Exception fault) {
      throw new AssertionError("no XML: " + fault.getMessage(), fault);
    }
  }

  /** Whether every point of every path lies on the plate. */
  static boolean inside(String svg) {
    Matcher paths = PATH.matcher(svg);
    while (paths.find()) {
      if (!pathInside(paths.group(1))) {
        return false;
      }
    }
    return true;
  }

  private static boolean pathInside(String path) {
    double x = 0;
    double y = 0;
    double startX = 0;
    double startY = 0;
    char command = ' ';
    double[] numbers = new double[7];
    int count = 0;
    Matcher steps = STEP.matcher(path);
    while (steps.find()) {
      if (steps.group(1) != null) {
        command = steps.group(1).charAt(0);
        count = 0;
        if (command == 'z') {
          x = startX;
          y = startY;
        }
        continue;
      }
      numbers[count++] = Double.parseDouble(steps.group(2));
      int needed = command == 'q' ? 4 : command == 'a' ? 7 : command == 'h' ? 1 : 2;
      if (count < needed) {
        continue;
      }
      if (command == 'M') {
        x = 0;
        y = 0;
      }
      if (command == 'q' && !on(x + numbers[0], y + numbers[1])) {
        return false;
      }
      if (command == 'a' && !on(x + numbers[5] / 2, y - numbers[1])) {
        return false;
      }
      x += command == 'h' ? numbers[0] : numbers[count - 2];
      y += command == 'h' ? 0 : numbers[count - 1];
      if (command == 'm' || command == 'M') {
        startX = x;
        startY = y;
        command = 'l';
      }
      count = 0;
      if (!on(x, y)) {
        return false;
      }
    }
    return true;
  }

  private static boolean on(double x, double y) {
    return x >= 0 && x <= 420 && y >= 0 && y <= 320;
  }
}
