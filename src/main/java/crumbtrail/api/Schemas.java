package crumbtrail.api;

import com.fasterxml.classmate.ResolvedType;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.github.therapi.runtimejavadoc.CommentFormatter;
import com.github.therapi.runtimejavadoc.ParamJavadoc;
import com.github.therapi.runtimejavadoc.RuntimeJavadoc;
import com.github.victools.jsonschema.generator.CustomDefinition;
import com.github.victools.jsonschema.generator.FieldScope;
import com.github.victools.jsonschema.generator.Option;
import com.github.victools.jsonschema.generator.OptionPreset;
import com.github.victools.jsonschema.generator.SchemaBuilder;
import com.github.victools.jsonschema.generator.SchemaGenerationContext;
import com.github.victools.jsonschema.generator.SchemaGenerator;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfig;
import com.github.victools.jsonschema.generator.SchemaGeneratorConfigBuilder;
import com.github.victools.jsonschema.generator.SchemaVersion;
import com.github.victools.jsonschema.generator.impl.PropertySortUtils;
import com.github.victools.jsonschema.module.jackson.JacksonModule;
import crumbtrail.api.Endpoint.Shape;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.SheetSchema;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * JSON Schemas of the records that answers are written from. A component that may be null is left
 * out of the answer or is null there; every other one is always there. The descriptions are the
 * Javadoc of the records.
 */
public final class Schemas {
  /** Where a description of the API keeps its schemas. */
  static final String PLACE = "#/components/schemas/";

  private static final String SHEET = "BakeSheet";
  private static final Pattern REFERENCE = Pattern.compile("\"#/components/schemas/(\\w+)\"");
  private static final CommentFormatter WORDS = new CommentFormatter();

  private final SchemaBuilder builder;
  private final Map<Shape, ObjectNode> shapes = new LinkedHashMap<>();

  Schemas() {
    builder = new SchemaGenerator(config()).buildMultipleSchemaDefinitions();
  }

  /** The schema of a shape, by reference to {@link #all()}. */
  ObjectNode of(Shape shape) {
    if (!shapes.containsKey(shape)) {
      shapes.put(shape, made(shape));
    }
    return shapes.get(shape).deepCopy();
  }

  private ObjectNode made(Shape shape) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    if (shape.list()) {
      schema.put("type", "array").set("items", of(Shape.one(shape.type())));
      return schema;
    }
    if (shape.type() == String.class) {
      return schema.put("type", "string");
    }
    if (shape.type() == JsonNode.class) {
      return schema.put("type", "object");
    }
    if (shape.type() == BakeSheet.class) {
      return schema.put("$ref", PLACE + SHEET);
    }
    return builder.createSchemaReference(shape.type());
  }

  /** All schemas by name that the shapes asked for so far refer to. */
  ObjectNode all() {
    ObjectNode all = JsonNodeFactory.instance.objectNode();
    all.set(SHEET, SheetSchema.node());
    all.setAll(builder.collectDefinitions("components/schemas"));
    return all;
  }

  /**
   * A schema that stands alone.
   *
   * @param all schemas by name
   * @param name the one wanted
   * @param address where it is served
   */
  static ObjectNode alone(ObjectNode all, String name, String address) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", address);
    Set<String> needed = new TreeSet<>();
    gather(all, name, needed);
    schema.put("$ref", PLACE + name);
    ObjectNode definitions = schema.putObject("$defs");
    needed.forEach(one -> definitions.set(one, all.get(one)));
    try {
      return (ObjectNode)
          new ObjectMapper().readTree(schema.toString().replace("\"" + PLACE, "\"#/$defs/"));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("a schema that was written can be read", impossible);
    }
  }

  private static void gather(ObjectNode all, String name, Set<String> needed) {
    if (needed.add(name)) {
      Matcher other = REFERENCE.matcher(all.get(name).toString());
      while (other.find()) {
        gather(all, other.group(1), needed);
      }
    }
  }

  private static SchemaGeneratorConfig config() {
    SchemaGeneratorConfigBuilder config =
        new SchemaGeneratorConfigBuilder(SchemaVersion.DRAFT_2020_12, OptionPreset.PLAIN_JSON)
            .with(new JacksonModule())
            .with(Option.DEFINITIONS_FOR_ALL_OBJECTS, Option.PLAIN_DEFINITION_KEYS)
            .without(Option.SCHEMA_VERSION_INDICATOR);
    config
        .forTypesInGeneral()
        .withPropertySorter(PropertySortUtils.SORT_PROPERTIES_FIELDS_BEFORE_METHODS)
        .withDescriptionResolver(scope -> about(scope.getType().getErasedType()))
        .withCustomDefinitionProvider(Schemas::ownWay);
    config
        .forFields()
        .withRequiredCheck(field -> !isNullable(field))
        .withNullableCheck(field -> isNullable(field) && !isLeftOut(field))
        .withDescriptionResolver(Schemas::about);
    return config.build();
  }

  // Sheets have a schema of their own, and a map is no thing with a name.
  private static CustomDefinition ownWay(ResolvedType type, SchemaGenerationContext context) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    if (isSheet(type.getErasedType())) {
      schema.put("$ref", PLACE + SHEET);
    } else if (type.isInstanceOf(Map.class)) {
      schema.put("type", "object");
      schema.set(
          "additionalProperties",
          context.createDefinitionReference(type.typeParametersFor(Map.class).get(1)));
    } else {
      return null;
    }
    return new CustomDefinition(
        schema, CustomDefinition.DefinitionType.INLINE, CustomDefinition.AttributeInclusion.NO);
  }

  // Where an answer holds a JSON tree, it is a bake sheet.
  private static boolean isSheet(Class<?> type) {
    return type == BakeSheet.class || JsonNode.class.isAssignableFrom(type);
  }

  private static boolean isNullable(FieldScope field) {
    return field.getRawMember().getAnnotatedType().isAnnotationPresent(Nullable.class);
  }

  private static boolean isLeftOut(FieldScope field) {
    JsonInclude include = field.getDeclaringType().getErasedType().getAnnotation(JsonInclude.class);
    return include != null;
  }

  private static String about(Class<?> type) {
    if (!type.getName().startsWith("crumbtrail.")) {
      return null;
    }
    String words = WORDS.format(RuntimeJavadoc.getJavadoc(type).getComment());
    return words.isBlank() ? null : onOneLine(words);
  }

  private static String about(FieldScope field) {
    if (field.isFakeContainerItemScope()) {
      return null;
    }
    return RuntimeJavadoc.getJavadoc(field.getDeclaringType().getErasedType())
        .getRecordComponents()
        .stream()
        .filter(component -> component.getName().equals(field.getName()))
        .map(ParamJavadoc::getComment)
        .map(WORDS::format)
        .filter(words -> !words.isBlank())
        .map(Schemas::onOneLine)
        .findFirst()
        .orElse(null);
  }

  private static String onOneLine(String words) {
    return words.replaceAll("<[^>]*>", "").replaceAll("\\s+", " ").strip();
  }
}
