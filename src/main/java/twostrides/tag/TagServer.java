package twostrides.tag;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import twostrides.serve.Answer;
import twostrides.serve.BookFiles;
import twostrides.serve.LocalServer;
import twostrides.serve.MediaFile;
import twostrides.serve.Reply;

/** The page that logs exits, its one video and the book made of it. */
public final class TagServer implements PageServer.Page {

  /** What is said of the page. */
  static final PageServer.Words WORDS =
      new PageServer.Words("two-strides tag", "a few words a field", "a form of this page");

  private static final String VIDEO = "video";
  private static final String BOOK = "book/";

  /** The page's scripts: the one that it names, and the parts which that one asks for. */
  static final Set<String> SCRIPTS =
      Set.of(
          "tag.js",
          "clock.js",
          "form.js",
          "ice.js",
          "keys.js",
          "list.js",
          "page.js",
          "program.js",
          "rink.js",
          "save.js",
          "setup.js",
          "strength.js");

  private final TagActions actions;
  private final Optional<MediaFile> video;
  private final BookFiles book;
  private final String page;

  TagServer(TagDesk desk, Optional<Path> video, Path book, BookMaker maker) {
    this.video = video.map(MediaFile::new);
    this.book = new BookFiles(book);
    this.actions = new TagActions(desk, maker, video.isPresent());
    this.page = resource("tag.html").replace("<!-- rink -->", RinkSvg.of(desk.rink()));
  }

  /**
   * Starts serving.
   *
   * @param desk the rows
   * @param video a video to stream, the only file of this machine that the page can read besides
   *     the book
   * @param book folder of the review book
   * @param maker makes the book
   * @throws IOException when no port is free
   */
  public static PageServer start(TagDesk desk, Optional<Path> video, Path book, BookMaker maker)
      throws IOException {
    return PageServer.start(WORDS, new TagServer(desk, video, book, maker));
  }

  @Override
  public Answer read(String path) throws IOException {
    if (path.equals(VIDEO) && video.isPresent() && video.get().readable()) {
      return video.get();
    }
    if (path.startsWith(BOOK)) {
      return book.reply(path.substring(BOOK.length()));
    }
    if (SCRIPTS.contains(path)) {
      return Reply.of(Reply.OK, Reply.SCRIPT, resource(path));
    }
    return switch (path) {
      case "" -> Reply.of(Reply.OK, Reply.HTML, page);
      case "tag.css" -> Reply.of(Reply.OK, Reply.STYLE, resource(path));
      case "state" -> Reply.of(Reply.OK, Reply.JSON, actions.state(History.ANYBODY));
      default -> Reply.plain(Reply.NOT_FOUND, "No such page.");
    };
  }

  @Override
  public Reply act(String action, Map<String, String> fields) throws IOException {
    return actions.post(action, fields);
  }

  private static String resource(String name) {
    return LocalServer.resource(TagServer.class, name);
  }
}
