package twostrides.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Stream;

/**
 * The program as it was run in this process: its exit code and what it said.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it printed as errors
 */
record Run(int code, String out, String err) {

  /** Runs a command line; paths and numbers are written as they are. */
  static Run of(Object... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] words = Stream.of(args).map(String::valueOf).toArray(String[]::new);
    int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
    return new Run(code, out.toString(), err.toString());
  }

  List<String> lines() {
    return out.lines().toList();
  }
}
