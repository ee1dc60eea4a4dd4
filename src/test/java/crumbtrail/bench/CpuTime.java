package crumbtrail.bench;

import com.sun.management.ThreadMXBean;
import crumbtrail.report.PostMortem;
import crumbtrail.rules.RuleBase;
import crumbtrail.sheet.BakeSheet;
import crumbtrail.workup.SheetWorkup;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Processor time and memory of the calling thread, call by call. On a machine whose neighbours are
 * loud the clock on the wall tells of them; what the thread itself used does so much less.
 */
public final class CpuTime {
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private static long kept;

  private CpuTime() {}

  /** Measures workup and report of both sheets; run from the root of the project. */
  public static void main(String[] args) {
    RuleBase rules = RuleBase.bundled();
    SheetWorkup workups = new SheetWorkup(rules.catalogue(), rules.pantry());
    PostMortem postMortem = new PostMortem(rules);
    for (String file : List.of(Bench.CASE, Bench.FULL)) {
      BakeSheet sheet = Bench.sheet(file);
      measure("workup of " + file, workups::work, sheet, 4000, 2000);
      measure("report of " + file, postMortem::trace, sheet, 700, 300);
    }
  }

  private static void measure(
      String what, Function<BakeSheet, Object> call, BakeSheet sheet, int warm, int counted) {
    for (int i = 0; i < warm; i++) {
      kept += call.apply(sheet) == null ? 1 : 0;
    }
    long[] nanoseconds = new long[counted];
    long bytes = THREADS.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < counted; i++) {
      long before = THREADS.getCurrentThreadCpuTime();
      kept += call.apply(sheet) == null ? 1 : 0;
      nanoseconds[i] = THREADS.getCurrentThreadCpuTime() - before;
    }
    bytes = THREADS.getCurrentThreadAllocatedBytes() - bytes;
    Arrays.sort(nanoseconds);
    System.out.printf(
        Locale.ROOT,
        "%s: best %.2f, median %.2f, 90 %% %.2f ms; %d kB (%d)%n",
        what,
        nanoseconds[0] / 1e6,
        nanoseconds[counted / 2] / 1e6,
        nanoseconds[counted * 9 / 10] / 1e6,
        bytes / counted / 1000,
        kept);
  }
}
