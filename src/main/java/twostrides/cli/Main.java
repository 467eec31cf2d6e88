package twostrides.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import twostrides.sheet.FilesRead;

/** Entry point of the runnable jar: the commands and what they have in common. */
@Command(
    name = "two-strides",
    description =
        "Sorts every defensive-zone exit of a hockey season and shows what each way out leads to.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    subcommands = {
      ReviewCommand.class,
      CheckCommand.class,
      MapCommand.class,
      RulingCommand.class,
      WhatIfCommand.class,
      RulebooksCommand.class,
      MergeCommand.class,
      SettleCommand.class,
      TagCommand.class,
      ShowCommand.class,
      CutCommand.class,
      DemoCommand.class
    },
    synopsisSubcommandLabel = "COMMAND",
    footer = {
      "",
      "Exit codes: 0 done; 1 something inside went wrong; 2 the command was not understood;",
      "3 a file cannot be read; 4 the output cannot be written."
    })
public final class Main {

  /** The exit codes of the command line. */
  static final int DONE = 0;

  static final int FAILED = 1;
  static final int USAGE = 2;
  static final int UNREADABLE = 3;
  static final int UNWRITABLE = 4;

  private Main() {}

  /** The version that the build wrote into the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Two Strides " + version()};
    }
  }

  /** One line on what was not understood, and where to read more; the whole usage hides it. */
  private static int misunderstood(CommandLine.ParameterException e, String[] args) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    err.println(e.getMessage());
    CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
    err.println("Help: " + command.getCommandSpec().qualifiedName() + " --help");
    return USAGE;
  }

  /** The version written into the jar, or "development" when run from classes. */
  static String version() {
    String v = Main.class.getPackage().getImplementationVersion();
    return v == null ? "development" : v;
  }

  /**
   * Runs one command and ends with its exit code.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    System.setProperty("java.awt.headless", "true");
    System.exit(run(writer(System.out), writer(System.err), args));
  }

  /** The console reads the machine's own character set; files are always UTF-8. */
  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, Charset.defaultCharset()), true);
  }

  /** The commands and how they are read. */
  static CommandLine line() {
    return new CommandLine(new Main())
        .setUsageHelpWidth(100)
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExecutionExceptionHandler(new Failures())
        .setParameterExceptionHandler(Main::misunderstood);
  }

  /**
   * Runs one command.
   *
   * @param out where results go
   * @param err where messages go
   * @param args the command line
   * @return the exit code
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = line().setOut(out).setErr(err);
    if (args.length == 0) {
      line.usage(out);
      return USAGE;
    }
    try {
      return FilesRead.during(() -> line.execute(args));
    } catch (OutOfMemoryError e) {
      return Failures.outOfMemory(err);
    } catch (StackOverflowError e) {
      return Failures.tooDeep(err);
    }
  }
}
