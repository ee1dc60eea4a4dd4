package crumbtrail.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Optional;

/** Fills fields of the process of a bake sheet, by their path: {@code bulk[0].time}. */
public final class SheetFields {
  private static final int MOST = 20;

  private SheetFields() {}

  /**
   * The sheet with one field filled in or written over, read by the reader of all sheets.
   *
   * @param path below "process"; what is missing on the way is put there
   * @param text as a baker writes it: "24 C"
   * @return the altered sheet, or the problems with the text
   */
  public static Reading with(BakeSheet sheet, String path, String text) {
    ObjectNode root = SheetWriter.node(sheet);
    ObjectNode part = root.withObjectProperty("process");
    Iterator<String> steps = Arrays.asList(path.split("\\.")).iterator();
    String step = steps.next();
    while (steps.hasNext()) {
      part = inside(part, step);
      step = steps.next();
    }
    part.put(step, text);
    return SheetReader.read(root);
  }

  /** What stands in a field, as written; empty where nothing does. */
  public static Optional<String> text(BakeSheet sheet, String path) {
    JsonNode found = SheetWriter.node(sheet).at("/process/" + pointer(path));
    return found.isValueNode() ? Optional.of(found.asText()) : Optional.empty();
  }

  /** The sheet with a field emptied; the same sheet where nothing stands there. */
  public static BakeSheet without(BakeSheet sheet, String path) {
    ObjectNode root = SheetWriter.node(sheet);
    String pointer = "/process/" + pointer(path);
    int last = pointer.lastIndexOf('/');
    if (root.at(pointer.substring(0, last)) instanceof ObjectNode part
        && part.remove(pointer.substring(last + 1)) != null) {
      return SheetReader.read(root).sheet().orElse(sheet);
    }
    return sheet;
  }

  private static String pointer(String path) {
    return path.replace('.', '/').replace("[", "/").replace("]", "");
  }

  private static ObjectNode inside(ObjectNode part, String step) {
    int bracket = step.indexOf('[');
    if (bracket < 0) {
      return part.withObjectProperty(step);
    }
    int place = Integer.parseInt(step.substring(bracket + 1, step.length() - 1));
    if (place > MOST) {
      throw new IllegalArgumentException("no sheet has so many: " + step);
    }
    ArrayNode list = part.withArrayProperty(step.substring(0, bracket));
    while (list.size() <= place) {
      list.addObject();
    }
    JsonNode inside = list.get(place);
    if (inside instanceof ObjectNode object) {
      return object;
    }
    throw new IllegalArgumentException("nothing can be put into " + step);
  }
}
