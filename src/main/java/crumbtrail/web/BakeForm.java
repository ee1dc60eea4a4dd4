package crumbtrail.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbtrail.sheet.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The form as it was typed, and the bake sheet that it stands for. Only what was filled in goes
 * onto the sheet; nothing is judged here, so that a page and a file are judged by the same reader.
 *
 * @param typed the text of each field by name, and each sign that was picked; fields that are not
 *     ours are left out
 */
record BakeForm(Map<String, String> typed) {

  static final BakeForm EMPTY = new BakeForm(Map.of());

  BakeForm {
    Map<String, String> ours = new LinkedHashMap<>();
    for (FormField field : FormLayout.ALL) {
      String text = typed.getOrDefault(field.name(), "");
      if (!text.isBlank()) {
        ours.put(field.name(), text);
      }
    }
    typed.forEach(
        (name, value) -> {
          if (PickedSign.of(name, value).isPresent()) {
            ours.put(name, value);
          }
        });
    typed = Map.copyOf(ours);
  }

  /** Whether there is something that a cause can be looked for from. */
  boolean saysSomething() {
    return !text(FormLayout.RECIPE).isEmpty()
        || !text(FormLayout.SEEN).isEmpty()
        || picked().stream().anyMatch(PickedSign::seen);
  }

  /** The same without what was seen: a bake that is still to come has no signs. */
  BakeForm withoutSigns() {
    Map<String, String> rest = new LinkedHashMap<>(typed);
    rest.remove(FormLayout.SEEN.name());
    rest.remove(FormLayout.NOT_SEEN.name());
    picked().forEach(sign -> rest.remove(sign.fieldName()));
    return new BakeForm(rest);
  }

  /** What was typed into a field; empty if nothing. */
  String text(FormField field) {
    return typed.getOrDefault(field.name(), "");
  }

  /** The signs that were picked from pictures, in the order of their keys. */
  List<PickedSign> picked() {
    return typed.entrySet().stream()
        .flatMap(field -> PickedSign.of(field.getKey(), field.getValue()).stream())
        .sorted(Comparator.comparing(PickedSign::key))
        .toList();
  }

  /** The same with the recipe and what was made ahead alone. */
  BakeForm formula() {
    Map<String, String> rest = new LinkedHashMap<>(typed);
    rest.keySet().retainAll(FormLayout.FORMULA.stream().map(FormField::name).toList());
    return new BakeForm(rest);
  }

  /** The bake sheet as JSON text. */
  String sheetJson() {
    return sheet().toString();
  }

  /** The bake sheet as JSON. */
  ObjectNode sheet() {
    ObjectNode sheet = JsonNodeFactory.instance.objectNode();
    for (FormField field : FormLayout.ALL) {
      String text = text(field);
      if (!text.isEmpty()) {
        put(sheet, pathOnSheet(field), field.kind(), text);
      }
    }
    for (PickedSign sign : picked()) {
      sheet
          .withArrayProperty(sign.seen() ? FormLayout.SEEN_KEY : FormLayout.NOT_SEEN_KEY)
          .add(sign.key());
    }
    return sheet;
  }

  /** The field that a problem of the sheet concerns; empty if it concerns the sheet as a whole. */
  Optional<FormField> fieldOf(Problem problem) {
    String where = problem.where();
    Optional<FormField> best = Optional.empty();
    int longest = 0;
    // A row that is not filled in has no place of its own, so fields with text come first.
    List<FormField> filledFirst =
        Stream.concat(
                FormLayout.ALL.stream().filter(f -> typed.containsKey(f.name())),
                FormLayout.ALL.stream().filter(f -> !typed.containsKey(f.name())))
            .toList();
    for (FormField field : filledFirst) {
      String place = written(pathOnSheet(field));
      boolean within = startsWithPlace(where, place) || startsWithPlace(place, where);
      int shared = Math.min(place.length(), where.length());
      if (within && shared > longest) {
        best = Optional.of(field);
        longest = shared;
      }
    }
    return best;
  }

  /** Positions in lists count only the rows that are filled in, so that no row is empty. */
  private List<String> pathOnSheet(FormField field) {
    List<String> path = new ArrayList<>(field.path());
    for (int i = 0; i < path.size(); i++) {
      if (isPosition(path.get(i))) {
        path.set(i, String.valueOf(filledRowsBefore(field.path(), i)));
      }
    }
    return path;
  }

  private long filledRowsBefore(List<String> path, int at) {
    int row = Integer.parseInt(path.get(at));
    return FormLayout.ALL.stream()
        .filter(f -> typed.containsKey(f.name()) && f.path().size() > at)
        .filter(f -> f.path().subList(0, at).equals(path.subList(0, at)))
        .map(f -> f.path().get(at))
        .filter(BakeForm::isPosition)
        .map(Integer::valueOf)
        .distinct()
        .filter(other -> other < row)
        .count();
  }

  private static void put(ObjectNode sheet, List<String> path, FormField.Kind kind, String text) {
    ObjectNode parent = sheet;
    for (int i = 0; i < path.size() - 1; i++) {
      String key = path.get(i);
      if (i + 1 < path.size() - 1 && isPosition(path.get(i + 1))) {
        ArrayNode rows = parent.withArrayProperty(key);
        int row = Integer.parseInt(path.get(i + 1));
        while (rows.size() <= row) {
          rows.addObject();
        }
        parent = (ObjectNode) rows.get(row);
        i++;
      } else {
        parent = parent.withObjectProperty(key);
      }
    }
    String key = path.get(path.size() - 1);
    switch (kind) {
      case LINE -> parent.put(key, text.strip());
      case NUMBER -> {
        if (text.strip().matches("\\d{1,6}")) {
          parent.put(key, Integer.parseInt(text.strip()));
        } else {
          parent.put(key, text.strip());
        }
      }
      case YES_NO -> {
        if (text.equals("yes") || text.equals("no")) {
          parent.put(key, text.equals("yes"));
        } else {
          parent.put(key, text);
        }
      }
      case TEXT -> parent.put(key, text.replace("\r\n", "\n"));
      case LINES -> {
        ArrayNode lines = parent.putArray(key);
        text.lines().map(String::strip).filter(l -> !l.isEmpty()).forEach(lines::add);
      }
    }
  }

  private static String written(List<String> path) {
    StringBuilder place = new StringBuilder();
    for (String key : path) {
      if (isPosition(key)) {
        place.append('[').append(key).append(']');
      } else {
        place.append(place.isEmpty() ? "" : ".").append(key);
      }
    }
    return place.toString();
  }

  private static boolean startsWithPlace(String where, String place) {
    return where.equals(place)
        || (!place.isEmpty()
            && where.startsWith(place)
            && ".[ ".indexOf(where.charAt(place.length())) >= 0);
  }

  private static boolean isPosition(String key) {
    return !key.isEmpty() && key.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
