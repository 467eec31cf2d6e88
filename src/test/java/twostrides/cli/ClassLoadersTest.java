package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A notebook's kernel sets a class loader of its own for its threads, with our classes once more.
 */
class ClassLoadersTest {

  @TempDir Path dir;

  private static URLClassLoader loader() throws Exception {
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<URL> urls = new ArrayList<>();
    for (String entry : path.split(File.pathSeparator, -1)) {
      urls.add(Path.of(entry).toUri().toURL());
    }
    return new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
  }

  @Test
  void pagesAreMadeByTheClassesOfTheProgramAndNotByThoseOfTheThread() throws Exception {
    Path sheet = dir.resolve("game.csv");
    Files.copy(SampleBook.games().get(0), sheet);
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    StringWriter said = new StringWriter();
    try (URLClassLoader program = loader();
        URLClassLoader kernel = loader()) {
      thread.setContextClassLoader(kernel);
      Object code =
          program
              .loadClass("twostrides.cli.Main")
              .getMethod("run", PrintWriter.class, PrintWriter.class, String[].class)
              .invoke(
                  null,
                  new PrintWriter(said, true),
                  new PrintWriter(said, true),
                  new String[] {
                    "review", sheet.toString(), "--simulations", "100", "--out", dir + "/book"
                  });
      assertEquals(0, code, said.toString());
    } finally {
      thread.setContextClassLoader(before);
    }
    assertTrue(Files.exists(dir.resolve("book/index.html")));
  }
}
