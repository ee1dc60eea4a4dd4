package crumbtrail.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.sheet.Reading;
import crumbtrail.sheet.SheetReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.function.LongConsumer;

/**
 * Traces sheets line by line. Lines of one block are worked on by all cores and written in order.
 */
public final class Batch {
  /** Lines worked on at a time; memory stays flat however long the input. */
  private static final int BLOCK = 128;

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Function<BakeSheet, Report> work;

  /**
   * @param work makes the report on a sheet; called by many threads at once
   */
  public Batch(Function<BakeSheet, Report> work) {
    this.work = work;
  }

  /** How many reports were made, and how many lines could not be used. */
  public record Count(long reports, long faults) {}

  /**
   * Reads sheets, one JSON object a line, and writes one report or error object a line, in the same
   * order. Empty lines are passed over.
   *
   * @param progress told how many sheets are done, after each
   */
  public Count run(BufferedReader sheets, PrintWriter reports, LongConsumer progress)
      throws IOException {
    Written written = new Written(reports, progress);
    ForkJoinPool cores = new ForkJoinPool();
    try {
      // One block is worked on while the one before it is written and the next one is read.
      ForkJoinTask<List<Answer>> working = null;
      List<Line> block = new ArrayList<>();
      long number = 0;
      String text;
      do {
        text = sheets.readLine();
        number++;
        if (text != null && !text.isBlank()) {
          block.add(new Line(number, text));
        }
        if (block.size() == BLOCK || text == null) {
          List<Line> full = List.copyOf(block);
          block.clear();
          ForkJoinTask<List<Answer>> next = cores.submit(() -> answers(full));
          if (working != null) {
            written.write(working.join());
          }
          working = next;
        }
      } while (text != null);
      written.write(working.join());
    } finally {
      cores.shutdownNow();
    }
    return new Count(written.made, written.faults);
  }

  private List<Answer> answers(List<Line> lines) {
    return lines.parallelStream().map(this::answer).toList();
  }

  private static final class Written {
    private final PrintWriter reports;
    private final LongConsumer progress;
    private long made;
    private long faults;

    Written(PrintWriter reports, LongConsumer progress) {
      this.reports = reports;
      this.progress = progress;
    }

    // Looked at block by block: nobody wants to learn at the end that the disk filled up early on.
    void write(List<Answer> answers) throws IOException {
      for (Answer answer : answers) {
        reports.println(answer.json());
        made += answer.report() ? 1 : 0;
        faults += answer.report() ? 0 : 1;
        progress.accept(made + faults);
      }
      if (reports.checkError()) {
        throw new Unwritable(made + faults);
      }
    }
  }

  private Answer answer(Line line) {
    try {
      Reading reading = SheetReader.read(line.text());
      if (reading.sheet().isEmpty()) {
        return new Answer(
            error(line.number(), "the sheet cannot be used", reading.problems()), false);
      }
      return new Answer(JsonReport.line(work.apply(reading.sheet().get())), true);
    } catch (RuntimeException fault) {
      // A fault of ours on one sheet must not take the others with it.
      return new Answer(error(line.number(), "a fault of the program: " + fault, List.of()), false);
    }
  }

  private static String error(long number, String what, List<?> problems) {
    // In a fixed order, so that two runs over the same sheets give the same bytes.
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("line", number);
    fields.put("what", what);
    fields.put("problems", problems);
    try {
      return JSON.writeValueAsString(Map.of("error", fields));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("plain values cannot fail to be written", impossible);
    }
  }

  /** The reports cannot be written on. */
  public static final class Unwritable extends IOException {
    private static final long serialVersionUID = 1;

    Unwritable(long sheets) {
      super(
          "The reports cannot be written; "
              + sheets
              + " sheets had been worked on. Is the disk full, or was the pipe closed?");
    }
  }

  private record Line(long number, String text) {}

  private record Answer(String json, boolean report) {}
}
