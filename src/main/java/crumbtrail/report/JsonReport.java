package crumbtrail.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import crumbtrail.compare.Comparison;

/** A report as JSON. */
public final class JsonReport {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final ObjectWriter PRETTY = JSON.writerWithDefaultPrettyPrinter();

  private JsonReport() {}

  /** On many lines, for people. */
  public static String pretty(Report report) {
    return write(PRETTY, report) + "\n";
  }

  /** On one line, for programs. */
  public static String line(Report report) {
    return write(JSON.writer(), report);
  }

  /** Two bakes held against each other, on many lines. */
  public static String pretty(Comparison comparison) {
    return write(PRETTY, comparison) + "\n";
  }

  private static String write(ObjectWriter writer, Object report) {
    try {
      return writer.writeValueAsString(report);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(
          "a report of plain values cannot fail to be written", impossible);
    }
  }
}
