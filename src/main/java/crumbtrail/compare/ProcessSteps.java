package crumbtrail.compare;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.knowledge.Catalogue;
import crumbtrail.knowledge.CircumstanceKind;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetReader;
import crumbtrail.sheet.SheetWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Differences in what was done to the dough and the loaf. */
final class ProcessSteps {
  private static final String REMARKS = "remarks";

  private final Catalogue catalogue;
  private final JsonNode before;
  private final JsonNode after;
  private final List<Step> steps = new ArrayList<>();

  private ProcessSteps(Catalogue catalogue, JsonNode before, JsonNode after) {
    this.catalogue = catalogue;
    this.before = before;
    this.after = after;
  }

  static List<Step> of(Catalogue catalogue, BakeSheet before, BakeSheet after) {
    ProcessSteps all =
        new ProcessSteps(
            catalogue,
            SheetWriter.node(before).path("process"),
            SheetWriter.node(after).path("process"));
    all.walk("", all.before, all.after);
    all.remarks();
    return all.steps;
  }

  private void walk(String at, JsonNode one, JsonNode other) {
    Set<String> names = new LinkedHashSet<>();
    one.fieldNames().forEachRemaining(names::add);
    other.fieldNames().forEachRemaining(names::add);
    for (String name : names) {
      if (!(at.isEmpty() && name.equals(REMARKS))) {
        field(at + "/" + name, one.path(name), other.path(name));
      }
    }
  }

  private void field(String at, JsonNode one, JsonNode other) {
    if (one.isObject() || other.isObject()) {
      walk(at, one, other);
    } else if (one.isArray() && other.isArray() && one.size() == other.size()) {
      for (int place = 0; place < one.size(); place++) {
        field(at + "/" + place, one.get(place), other.get(place));
      }
    } else if (!one.equals(other) && !(one.isEmpty() && other.isEmpty() && one.isContainerNode())) {
      steps.add(
          new Field(
              JsonPointer.compile("/process" + at),
              new Difference(
                  FieldNames.of(at, stages(at)), FieldNames.value(one), FieldNames.value(other))));
    }
  }

  // A stage is counted aloud only where there are several.
  private boolean stages(String at) {
    int end = at.indexOf("/0");
    JsonNode list = end < 0 ? after.at(at) : after.at(at.substring(0, end));
    return list.size() > 1 || at.matches(".*/[1-9]\\d*(/.*)?");
  }

  private void remarks() {
    Set<String> said = texts(before);
    Set<String> now = texts(after);
    said.stream().filter(one -> !now.contains(one)).forEach(one -> remark(one, "yes", ""));
    now.stream().filter(one -> !said.contains(one)).forEach(one -> remark(one, "", "yes"));
  }

  private void remark(String words, String one, String other) {
    String name = catalogue.circumstance(words).map(CircumstanceKind::name).orElse(words);
    steps.add(new Remark(words, new Difference(name, one, other)));
  }

  private static Set<String> texts(JsonNode process) {
    Set<String> texts = new LinkedHashSet<>();
    process.path(REMARKS).forEach(one -> texts.add(one.asText()));
    return texts;
  }

  /** What stands at one place below the process. */
  private record Field(JsonPointer at, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      JsonNode value = SheetWriter.node(from).at(at);
      ObjectNode root = SheetWriter.node(into);
      JsonNode parent = root.at(at.head());
      if (parent.isMissingNode()) {
        parent = root.withObject(at.head());
      }
      if (parent instanceof ArrayNode list) {
        list.set(at.last().getMatchingIndex(), value);
      } else if (parent instanceof ObjectNode object) {
        if (value.isMissingNode()) {
          object.remove(at.last().getMatchingProperty());
        } else {
          object.set(at.last().getMatchingProperty(), value);
        }
      }
      return SheetReader.read(root).sheet();
    }
  }

  /** Something that is remarked on one of the sheets. */
  private record Remark(String words, Difference difference) implements Step {
    @Override
    public Optional<BakeSheet> carried(BakeSheet from, BakeSheet into) {
      List<String> remarks = new ArrayList<>(into.process().remarks());
      remarks.remove(words);
      if (from.process().remarks().contains(words)) {
        remarks.add(words);
      }
      return Optional.of(into.with(into.process().withRemarks(remarks)));
    }
  }
}
