package twostrides.notebook;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.execution.LocalExecutionControlProvider;

/**
 * Runs the cells of one notebook one after the other, in this Java machine, with the program and
 * its libraries on the class path but not the tests.
 */
final class Shell implements AutoCloseable {

  private final JShell shell =
      JShell.builder().executionEngine(new LocalExecutionControlProvider(), Map.of()).build();

  Shell() {
    // Under a test runner the usual property may name one jar that names the others.
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    for (String entry : path.split(Pattern.quote(File.pathSeparator), -1)) {
      if (!entry.isEmpty() && !new File(entry).getName().equals("test-classes")) {
        shell.addToClasspath(entry);
      }
    }
  }

  /**
   * Runs a cell.
   *
   * @param source its Java
   * @return what it printed, lines ending in a line feed
   * @throws AssertionError when the cell does not compile, throws, or ends in a value: kernels show
   *     values each in their own way, so a cell prints what it has to say
   */
  String run(String source) {
    PrintStream console = System.out;
    Locale locale = Locale.getDefault();
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    // A reader's machine may have any language; the outputs must not depend on it.
    Locale.setDefault(Locale.GERMANY);
    try {
      snippets(source);
    } finally {
      System.setOut(console);
      Locale.setDefault(locale);
    }
    return printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
  }

  private void snippets(String source) {
    String rest = source;
    boolean value = false;
    while (!rest.isBlank()) {
      SourceCodeAnalysis.CompletionInfo part = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      if (!part.completeness().isComplete()) {
        throw new AssertionError("a snippet is not complete: " + rest);
      }
      for (SnippetEvent event : shell.eval(part.source())) {
        check(event);
        value = event.value() != null && isValue(event.snippet());
      }
      rest = part.remaining();
    }
    if (value) {
      throw new AssertionError("a cell ends in a value that nothing prints: " + source);
    }
  }

  /** Whether it is a name, an assignment or a calculation whose value a kernel would show. */
  private static boolean isValue(Snippet snippet) {
    return snippet.kind() == Snippet.Kind.EXPRESSION
        || snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
  }

  private void check(SnippetEvent event) {
    Snippet snippet = event.snippet();
    if (event.exception() != null) {
      throw new AssertionError(snippet.source(), event.exception());
    }
    boolean fine =
        event.status() == Snippet.Status.VALID || event.status() == Snippet.Status.OVERWRITTEN;
    if (!fine) {
      StringBuilder why = new StringBuilder(snippet.source());
      shell.diagnostics(snippet).forEach(d -> why.append('\n').append(d.getMessage(Locale.ROOT)));
      if (snippet instanceof DeclarationSnippet declared) {
        shell.unresolvedDependencies(declared).forEach(d -> why.append("\nmissing: ").append(d));
      }
      throw new AssertionError(why);
    }
  }

  @Override
  public void close() {
    shell.close();
  }
}
