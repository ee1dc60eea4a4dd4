package crumbtrail.sheet;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * The parts of which the schema of the bake sheet is made. All of them take null and an empty text,
 * which say nothing.
 */
final class SchemaParts {

  /** A key and what may stand under it. */
  record KeyPart(String key, ObjectNode schema) {}

  KeyPart part(String key, ObjectNode schema) {
    return new KeyPart(key, schema);
  }

  /**
   * An object.
   *
   * @param known the keys that the reader knows; each must be among the parts
   */
  ObjectNode object(String what, List<String> known, KeyPart... parts) {
    List<String> given = Arrays.stream(parts).map(KeyPart::key).toList();
    if (!new TreeSet<>(given).equals(new TreeSet<>(known))) {
      throw new IllegalStateException("The reader knows " + known + ", and the schema " + given);
    }
    ObjectNode schema = described(what, "object", "null");
    ObjectNode properties = schema.putObject("properties");
    Arrays.stream(parts).forEach(part -> properties.set(part.key(), part.schema()));
    return schema.put("additionalProperties", false);
  }

  /** A text of a length. */
  ObjectNode text(String what, int longest) {
    return described(what, "string", "null").put("maxLength", longest);
  }

  ObjectNode longText(String what, int longest) {
    return text(what, longest);
  }

  /** Free words; true and false are taken as "yes" and "no". */
  ObjectNode words(String what, String... examples) {
    ObjectNode schema =
        described(what, "string", "boolean", "null").put("maxLength", SheetLimits.TEXT);
    return examples.length == 0 ? schema : with(schema, examples);
  }

  /** A quantity with its unit; a bare number is not taken. */
  ObjectNode amount(String what, String... examples) {
    return with(described(what + ", with its unit", "string", "null"), examples);
  }

  /** A whole number, or the same as a text. */
  ObjectNode count(String what, int least, int most) {
    return described(what, "integer", "string", "null").put("minimum", least).put("maximum", most);
  }

  ObjectNode yesOrNo(String what, Collection<String> yes, Collection<String> no) {
    TreeSet<String> words = new TreeSet<>(yes);
    words.addAll(no);
    ObjectNode schema = oneOfWords(what + ": true or false, yes or no", words);
    ((ArrayNode) schema.get("type")).add("boolean");
    return schema;
  }

  /** One of some words, in large or small letters. */
  ObjectNode oneOfWords(String what, Collection<String> words) {
    String any = String.join("|", new TreeSet<>(words).stream().map(SchemaParts::anyCase).toList());
    return described(what, "string", "null").put("pattern", "^\\s*(" + any + ")?\\s*$");
  }

  /** A list of texts; one text alone has an entry to each of its lines. */
  ObjectNode texts(String what) {
    return either(longText(what, SheetLimits.RECIPE), list(what, SheetLimits.ENTRIES, words(what)));
  }

  /** A list, or one entry alone. */
  ObjectNode list(String what, int most, ObjectNode entry) {
    ObjectNode list = described(what, "array");
    list.set("items", entry);
    list.put("maxItems", most);
    return either(list, entry.deepCopy());
  }

  ObjectNode either(ObjectNode one, ObjectNode other) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    ArrayNode choices = schema.putArray("anyOf");
    for (ObjectNode choice : List.of(one, other)) {
      // What is a choice already need not be a choice within a choice.
      if (choice.size() == 1 && choice.path("anyOf").isArray()) {
        choice.get("anyOf").forEach(choices::add);
      } else {
        choices.add(choice);
      }
    }
    return schema;
  }

  private static ObjectNode described(String what, String... types) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode().put("description", what);
    ArrayNode list = schema.putArray("type");
    Arrays.stream(types).forEach(list::add);
    return schema;
  }

  private static ObjectNode with(ObjectNode schema, String... examples) {
    ArrayNode list = schema.putArray("examples");
    Arrays.stream(examples).forEach(list::add);
    return schema;
  }

  // The patterns of JSON Schema have no switch for large and small letters.
  private static String anyCase(String word) {
    StringBuilder pattern = new StringBuilder();
    for (int place = 0; place < word.length(); place++) {
      char letter = word.charAt(place);
      char large = Character.toUpperCase(letter);
      pattern.append(large == letter ? String.valueOf(letter) : "[" + large + letter + "]");
    }
    return pattern.toString();
  }
}
