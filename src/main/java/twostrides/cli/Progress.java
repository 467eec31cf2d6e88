package twostrides.cli;

import java.io.PrintWriter;

/**
 * One line that tells how far long work has come. Rewritten in place on a terminal; elsewhere (a
 * log, a pipe) it says each kind of work once, so that the same run prints the same text.
 */
final class Progress {

  private final PrintWriter out;
  private final boolean terminal;
  private String said = "";

  /**
   * From Java 22 on a console is there in a pipe too; the line is then rewritten in the log, which
   * does no harm.
   */
  @SuppressWarnings("SystemConsoleNull")
  Progress(PrintWriter out) {
    this(out, System.console() != null);
  }

  Progress(PrintWriter out, boolean terminal) {
    this.out = out;
    this.terminal = terminal;
  }

  /**
   * Tells a step.
   *
   * @param what the work
   * @param done steps done
   * @param all steps in all
   */
  void step(String what, int done, int all) {
    if (terminal) {
      out.print("\r" + what + ": " + done + " of " + all + "   ");
      out.flush();
      said = what;
    } else if (!what.equals(said)) {
      out.println(what + " (" + all + ")");
      said = what;
    }
  }

  /** Ends the line. */
  void done() {
    if (terminal && !said.isEmpty()) {
      out.println();
    }
    said = "";
  }
}
