package crumbtrail.cli;

import crumbtrail.bakelog.LogFault;
import crumbtrail.knowledge.FaultyKnowledge;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import picocli.CommandLine.ParseResult;

/** Turns what went wrong into words for the person at the terminal, and into the exit status. */
final class Faults {
  static final int PROGRAM = 1;
  static final int INPUT = 2;

  private Faults() {}

  static int handle(Exception fault, CommandLine line, ParseResult parsed) {
    PrintWriter err = line.getErr();
    if (fault instanceof BadInput bad) {
      bad.lines().forEach(err::println);
      return INPUT;
    }
    if (fault instanceof FaultyKnowledge faulty) {
      err.println("The rules folder has " + faulty.faults().size() + " fault(s):");
      faulty.faults().forEach(err::println);
      return INPUT;
    }
    if (fault instanceof LogFault log) {
      err.println(log.getMessage());
      err.println(log.remedy());
      trace(fault, err);
      return INPUT;
    }
    if (fault instanceof NoSuchFileException missing) {
      err.println(
          "There is no file "
              + missing.getFile()
              + ". Check the name, or use - to read standard input.");
      return INPUT;
    }
    if (fault instanceof FileSystemException file) {
      err.println(
          file.getFile()
              + " cannot be used: "
              + (fault instanceof AccessDeniedException ? "no permission" : file.getReason())
              + ".");
      return INPUT;
    }
    err.println("Crumbtrail met a fault of its own: " + fault);
    err.println("Your input is untouched. Run again with CRUMBTRAIL_DEBUG=1 to see where.");
    trace(fault, err);
    return PROGRAM;
  }

  private static void trace(Exception fault, PrintWriter err) {
    if (System.getenv("CRUMBTRAIL_DEBUG") != null) {
      fault.printStackTrace(err);
    }
  }
}
