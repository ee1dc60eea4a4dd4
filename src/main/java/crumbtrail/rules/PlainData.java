package crumbtrail.rules;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plain data in the form in which it is read soonest: records of text, numbers, words of a list,
 * lists, maps and further records, one after the other without names, each text once. What is
 * written can be read by the same records alone; where they change, so must the name of the file. A
 * reader of JSON takes a third of a second longer at every start, most of it over finding out what
 * our records are.
 */
final class PlainData {
  private static final byte ABSENT = 0;
  private static final byte THERE = 1;

  /** In place of the number of a text: here it comes for the first time. */
  private static final int NEW = 0;

  private PlainData() {}

  /**
   * Writes a list of records.
   *
   * @throws IllegalArgumentException if a record holds what is no plain data
   */
  static <T extends Record> void write(Class<T> type, List<T> values, DataOutputStream out)
      throws IOException {
    Writer writer = new Writer(out);
    out.writeInt(values.size());
    for (T value : values) {
      writer.write(Shape.of(type, writer.shapes), value);
    }
  }

  /** Reads a list of records that was written under the same type. */
  static <T extends Record> List<T> read(Class<T> type, DataInputStream in) throws IOException {
    Reader reader = new Reader(in);
    int size = in.readInt();
    List<T> values = new ArrayList<>(size);
    for (int left = size; left > 0; left--) {
      values.add(type.cast(reader.read(Shape.of(type, reader.shapes))));
    }
    return values;
  }

  private static final class Writer {
    private final DataOutputStream out;
    private final Map<Type, Shape> shapes = new HashMap<>();
    private final Map<String, Integer> texts = new HashMap<>();

    Writer(DataOutputStream out) {
      this.out = out;
    }

    void write(Shape shape, Object value) throws IOException {
      out.writeByte(value == null ? ABSENT : THERE);
      if (value == null) {
        return;
      }
      switch (shape.kind()) {
        case TEXT -> text((String) value);
        case TRUTH -> out.writeBoolean((Boolean) value);
        case WHOLE -> out.writeInt((Integer) value);
        case LONG -> out.writeLong((Long) value);
        case NUMBER -> out.writeDouble((Double) value);
        case WORD -> text(((Enum<?>) value).name());
        case LIST -> {
          out.writeInt(((List<?>) value).size());
          for (Object one : (List<?>) value) {
            write(shape.parts().get(0), one);
          }
        }
        case MAP -> {
          out.writeInt(((Map<?, ?>) value).size());
          // In a fixed order, so that two builds write the same.
          for (Map.Entry<?, ?> entry : new TreeMap<>((Map<?, ?>) value).entrySet()) {
            write(shape.parts().get(0), entry.getKey());
            write(shape.parts().get(1), entry.getValue());
          }
        }
        case RECORD -> {
          for (int part = 0; part < shape.parts().size(); part++) {
            write(shape.parts().get(part), shape.part(value, part));
          }
        }
      }
    }

    private void text(String value) throws IOException {
      Integer known = texts.get(value);
      if (known != null) {
        out.writeInt(known);
        return;
      }
      texts.put(value, texts.size() + 1);
      byte[] bytes = value.getBytes(StandardCharsets.UTF_8);
      out.writeInt(NEW);
      out.writeInt(bytes.length);
      out.write(bytes);
    }
  }

  private static final class Reader {
    private final DataInputStream in;
    private final Map<Type, Shape> shapes = new HashMap<>();
    private final List<String> texts = new ArrayList<>();

    Reader(DataInputStream in) {
      this.in = in;
    }

    Object read(Shape shape) throws IOException {
      if (in.readByte() == ABSENT) {
        return null;
      }
      return switch (shape.kind()) {
        case TEXT -> text();
        case TRUTH -> in.readBoolean();
        case WHOLE -> in.readInt();
        case LONG -> in.readLong();
        case NUMBER -> in.readDouble();
        case WORD -> shape.words().get(text());
        case LIST -> list(shape.parts().get(0));
        case MAP -> map(shape.parts().get(0), shape.parts().get(1));
        case RECORD -> {
          Object[] parts = new Object[shape.parts().size()];
          for (int part = 0; part < parts.length; part++) {
            parts[part] = read(shape.parts().get(part));
          }
          yield shape.made(parts);
        }
      };
    }

    private List<Object> list(Shape each) throws IOException {
      int size = in.readInt();
      List<Object> list = new ArrayList<>(size);
      for (int left = size; left > 0; left--) {
        list.add(read(each));
      }
      return list;
    }

    private Map<Object, Object> map(Shape key, Shape value) throws IOException {
      int size = in.readInt();
      Map<Object, Object> map = new LinkedHashMap<>();
      for (int left = size; left > 0; left--) {
        map.put(read(key), read(value));
      }
      return map;
    }

    private String text() throws IOException {
      int number = in.readInt();
      if (number != NEW) {
        return texts.get(number - 1);
      }
      String text = new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
      texts.add(text);
      return text;
    }
  }
}
