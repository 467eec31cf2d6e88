package twostrides.serve;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A book with its videos: {@code video/0}, {@code video/1} and so on beside the book's own files,
 * and before the book's script what it has to know of them. It only gives out; nothing is written.
 */
public final class ShowSite implements LocalServer.Site {

  private static final Pattern VIDEO = Pattern.compile("video/(\\d{1,6})");
  private static final String SCRIPT = "book.js";

  private final Path folder;
  private final BookFiles book;
  private final List<MediaFile> videos;
  private final String known;

  /**
   * A book.
   *
   * @param folder its folder
   * @param videos the videos that may be given out
   * @param known a statement of JavaScript
   */
  public ShowSite(Path folder, List<Path> videos, String known) {
    this.folder = folder;
    this.book = new BookFiles(folder);
    this.videos = videos.stream().map(MediaFile::new).toList();
    this.known = known;
  }

  @Override
  public Answer answer(Request request) throws IOException {
    if (!request.reading()) {
      return Reply.plain(Reply.WRONG_METHOD, "Only GET and HEAD.");
    }
    String path = request.path();
    Matcher video = VIDEO.matcher(path);
    if (video.matches()) {
      int number = Integer.parseInt(video.group(1));
      boolean there = number < videos.size() && videos.get(number).readable();
      return there ? videos.get(number) : Reply.plain(Reply.NOT_FOUND, "No such video.");
    }
    if (path.equals(SCRIPT)) {
      String own = Files.readString(folder.resolve(SCRIPT));
      return new Reply(
          Reply.OK,
          Reply.SCRIPT,
          Reply.BOOK_POLICY,
          (known + own).getBytes(StandardCharsets.UTF_8));
    }
    return book.reply(path.isEmpty() ? "index.html" : path);
  }
}
