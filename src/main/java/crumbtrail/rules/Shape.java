package crumbtrail.rules;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What {@link PlainData} has to know of a type to write and read it. Used by one thread. */
final class Shape {
  private final Kind kind;

  /** Of a list what is in it, of a map key and value, of a record what it holds. */
  private final List<Shape> parts = new ArrayList<>();

  private final Map<String, Object> words = new HashMap<>();
  private final List<Method> readers = new ArrayList<>();
  private Constructor<?> maker;

  /** What there is to be read or written. */
  enum Kind {
    TEXT,
    TRUTH,
    WHOLE,
    LONG,
    NUMBER,
    WORD,
    LIST,
    MAP,
    RECORD
  }

  private Shape(Kind kind) {
    this.kind = kind;
  }

  Kind kind() {
    return kind;
  }

  List<Shape> parts() {
    return parts;
  }

  /** Of an enumeration all there is in it, by name. */
  Map<String, Object> words() {
    return words;
  }

  /**
   * The shape of a type.
   *
   * @param known shapes found so far, to which this one is added
   * @throws IllegalArgumentException if it is no plain data
   */
  static Shape of(Type type, Map<Type, Shape> known) {
    Shape shape = known.get(type);
    if (shape == null) {
      shape = begun(type);
      // Known before its parts are looked at: a record may hold its like.
      known.put(type, shape);
      shape.complete(type, known);
    }
    return shape;
  }

  private static Shape begun(Type type) {
    if (type == String.class) {
      return new Shape(Kind.TEXT);
    } else if (type == boolean.class || type == Boolean.class) {
      return new Shape(Kind.TRUTH);
    } else if (type == int.class || type == Integer.class) {
      return new Shape(Kind.WHOLE);
    } else if (type == long.class || type == Long.class) {
      return new Shape(Kind.LONG);
    } else if (type == double.class || type == Double.class) {
      return new Shape(Kind.NUMBER);
    } else if (type instanceof Class<?> of && of.isEnum()) {
      return new Shape(Kind.WORD);
    } else if (type instanceof Class<?> of && of.isRecord()) {
      return new Shape(Kind.RECORD);
    } else if (type instanceof ParameterizedType of && of.getRawType() == List.class) {
      return new Shape(Kind.LIST);
    } else if (type instanceof ParameterizedType of && of.getRawType() == Map.class) {
      return new Shape(Kind.MAP);
    }
    throw new IllegalArgumentException("no plain data: " + type);
  }

  private void complete(Type type, Map<Type, Shape> known) {
    if (type instanceof ParameterizedType of) {
      for (Type argument : of.getActualTypeArguments()) {
        parts.add(of(argument, known));
      }
    } else if (kind == Kind.WORD) {
      for (Object word : ((Class<?>) type).getEnumConstants()) {
        words.put(((Enum<?>) word).name(), word);
      }
    } else if (kind == Kind.RECORD) {
      RecordComponent[] components = ((Class<?>) type).getRecordComponents();
      for (RecordComponent component : components) {
        parts.add(of(component.getGenericType(), known));
        component.getAccessor().setAccessible(true);
        readers.add(component.getAccessor());
      }
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      try {
        maker = ((Class<?>) type).getDeclaredConstructor(types);
        maker.setAccessible(true);
      } catch (NoSuchMethodException impossible) {
        throw new IllegalStateException("every record has this constructor: " + type, impossible);
      }
    }
  }

  /** What a record holds in this place. */
  Object part(Object value, int place) {
    try {
      return readers.get(place).invoke(value);
    } catch (IllegalAccessException | InvocationTargetException fault) {
      throw new IllegalStateException(fault);
    }
  }

  /** A record that holds these parts. */
  Object made(Object[] held) {
    try {
      return maker.newInstance(held);
    } catch (InstantiationException | IllegalAccessException | InvocationTargetException fault) {
      throw new IllegalStateException("the program's own data cannot be read", fault);
    }
  }
}
