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

  @Override
  public int handleExecutionException(
      Exception e, CommandLine line, CommandLine.ParseResult parsed) {
    PrintWriter err = line.getErr();
    Throwable cause = e instanceof UncheckedIOException ? e.getCause() : e;
    if (cause instanceof SheetException) {
      err.println(cause.getMessage());
      err.println("Nothing was written.");
      return Main.UNREADABLE;
    }
    if (cause instanceof BookException book) {
      err.println(cause.getMessage());
      err.println("Nothing was written.");
      return book.file().startsWith("--") ? Main.USAGE : Main.UNREADABLE;
    }
    if (cause instanceof UnreadableSheetException) {
      err.println(cause.getMessage());
      err.println("Nothing was written. To set such a sheet aside and go on, add --keep-going.");
      return Main.UNREADABLE;
    }
    if (cause instanceof OutputException || cause instanceof IOException) {
      err.println(
          cause instanceof OutputException
              ? cause.getMessage()
              : "A file could not be read or written: "
                  + cause.getClass().getSimpleName().replace("Exception", "")
                  + ": "
                  + cause.getMessage());
      return Main.UNWRITABLE;
    }
    err.println("Something inside went wrong; this is a fault of the program, not of your sheets.");
    err.println("Please report it with the lines below.");
    e.printStackTrace(err);
    return Main.FAILED;
  }
}
