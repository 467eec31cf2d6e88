package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import picocli.CommandLine;
import twostrides.output.OutputException;
import twostrides.rulebook.BookException;
import twostrides.sheet.SheetException;

/**
 * Turns what a command throws into one message and an exit code; no stack trace reaches a coach.
 */
final class Failures implements CommandLine.IExecutionExceptionHandler {

  private static final long MEGABYTE = 1_000_000;

  @Override
  public int handleExecutionException(
      Exception e, CommandLine line, CommandLine.ParseResult parsed) {
    PrintWriter err = line.getErr();
    for (Throwable t = e; t != null; t = t.getCause()) {
      if (t instanceof OutOfMemoryError) {
        return outOfMemory(err);
      }
    }
    Throwable cause = e instanceof UncheckedIOException ? e.getCause() : e;
    if (cause instanceof SheetException sheet) {
      err.println(cause.getMessage());
      err.println(
          "Nothing was written."
              + (sheet.isOfOneFile()
                  ? " To leave such a file out and read the others, add --keep-going."
                  : ""));
      return Main.UNREADABLE;
    }
    if (cause instanceof BookException book) {
      err.println(cause.getMessage());
      err.println("Nothing was written.");
      return book.file().startsWith("--") ? Main.USAGE : Main.UNREADABLE;
    }
    if (cause instanceof OutputException) {
      err.println(cause.getMessage());
      return Main.UNWRITABLE;
    }
    if (cause instanceof IOException refused) {
      err.println(
          "A file could not be read or written ("
              + OutputException.reason(refused)
              + "). Nothing is left half written. Look that the disk is not full, and run again.");
      return Main.UNWRITABLE;
    }
    err.println("Something inside went wrong; this is a fault of the program, not of your sheets.");
    err.println("Please report it with the lines below.");
    e.printStackTrace(err);
    return Main.FAILED;
  }

  /** Files larger than the memory: nothing is wrong with them or with us. */
  static int outOfMemory(PrintWriter err) {
    err.println(
        "The memory that Java may use ("
            + Runtime.getRuntime().maxMemory() / MEGABYTE
            + " MB) does not hold these files. Give it more, for example java -Xmx4g -jar"
            + " two-strides.jar and so on, or read fewer games at a time. Nothing was written.");
    return Main.FAILED;
  }

  /** Something in something, deeper than the stack: a trace of it would be a thousand lines. */
  static int tooDeep(PrintWriter err) {
    err.println(
        "Something in these files is nested too deep to be read. Please report it, with the files"
            + " if you may pass them on.");
    return Main.FAILED;
  }
}
