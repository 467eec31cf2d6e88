package twostrides.book;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import twostrides.book.chart.Picture;

/**
 * The pages of a book and their pictures. Pages hold them; where the run asks for slides, each is a
 * file as well.
 *
 * @param out the book's folder
 * @param imprint foot of the pages, and how the book is to be written
 */
record PageFiles(Path out, Imprint imprint) {

  private static final TemplateEngine TEMPLATES = templates();

  /**
   * With the class loader of this class. The engine takes that of the thread, which may be a
   * notebook's, with our classes once more.
   */
  private static TemplateEngine templates() {
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    thread.setContextClassLoader(PageFiles.class.getClassLoader());
    try {
      return TemplateEngine.createPrecompiled(null, ContentType.Html, null, "twostrides.book.page");
    } finally {
      thread.setContextClassLoader(before);
    }
  }

  /**
   * Writes a page.
   *
   * @param file its name in the book
   * @param template what it is made of
   * @param values what the template takes, besides the imprint
   * @throws IOException where it cannot be written
   */
  void render(String file, String template, Map<String, Object> values) throws IOException {
    Map<String, Object> all = new HashMap<>(values);
    all.put("imprint", imprint);
    StringOutput html = new StringOutput();
    TEMPLATES.render(template, all, html);
    // Line ends between the parts of a table are a good part of a page of many rows.
    String page = html.toString().replace(">\n<t", "><t").replace(">\n</t", "></t");
    Files.writeString(out.resolve(file), page, StandardCharsets.UTF_8);
  }

  /**
   * A picture as its page shows it.
   *
   * @param id its name, unique in the book: a-z, 0-9 and hyphens
   * @param picture the picture
   * @throws UncheckedIOException where its file cannot be written
   */
  String html(String id, Picture picture) {
    file(id, picture);
    return picture.html();
  }

  /**
   * A picture under its title, as a part of the page that an address can name.
   *
   * @param id its name, unique in the book: a-z, 0-9 and hyphens
   * @param drawing the picture whose ids begin with that name
   */
  String headed(String id, Function<String, Picture> drawing) {
    Picture picture = drawing.apply(id);
    file(id, picture);
    return picture.headed(id);
  }

  private void file(String id, Picture picture) {
    if (imprint.options().pngs()) {
      try {
        Path charts = Files.createDirectories(out.resolve("charts"));
        Files.write(charts.resolve(id + ".png"), picture.png().get());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
