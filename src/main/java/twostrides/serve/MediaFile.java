package twostrides.serve;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A video that the server may stream, in pieces as a player asks for them (RFC 9110, section 14: a
 * single range of bytes; anything else is answered with the whole file).
 *
 * @param file the video
 */
public record MediaFile(Path file) implements Answer {

  private static final int WHOLE = 200;
  private static final int PART = 206;
  private static final int NOT_IN_FILE = 416;
  private static final int CHUNK = 1 << 18;

  /** One range: from and to, from alone, or the last bytes. */
  private static final Pattern RANGE = Pattern.compile("bytes=(\\d{0,18})-(\\d{0,18})");

  private static final Map<String, String> TYPES =
      Map.of(
          "mp4", "video/mp4",
          "m4v", "video/mp4",
          "mov", "video/quicktime",
          "webm", "video/webm",
          "mkv", "video/x-matroska",
          "ogv", "video/ogg");

  /**
   * Bytes of the file.
   *
   * @param from first byte, from 0
   * @param to last byte
   */
  private record Span(long from, long to) {}

  @Override
  public void send(HttpExchange exchange) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    try (FileChannel channel = FileChannel.open(file)) {
      long size = channel.size();
      headers.set("Accept-Ranges", "bytes");
      Reply.guard(headers, type(), Reply.PAGE_POLICY);
      String asked = exchange.getRequestHeaders().getFirst("Range");
      Matcher range = RANGE.matcher(asked == null ? "" : asked);
      boolean part = range.matches() && !(range.group(1) + range.group(2)).isEmpty();
      Optional<Span> span = part ? span(range, size) : Optional.of(new Span(0, size - 1));
      if (span.isEmpty()) {
        headers.set("Content-Range", "bytes */" + size);
        exchange.sendResponseHeaders(NOT_IN_FILE, -1);
        return;
      }
      if (part) {
        headers.set(
            "Content-Range", "bytes " + span.get().from() + "-" + span.get().to() + "/" + size);
      }
      long length = span.get().to() - span.get().from() + 1;
      int status = part ? PART : WHOLE;
      if (exchange.getRequestMethod().equals("HEAD") || length == 0) {
        headers.set("Content-Length", Long.toString(length));
        exchange.sendResponseHeaders(status, -1);
        return;
      }
      exchange.sendResponseHeaders(status, length);
      copy(channel, span.get().from(), length, exchange.getResponseBody());
    }
  }

  private static void copy(FileChannel channel, long from, long length, OutputStream out)
      throws IOException {
    ByteBuffer buffer = ByteBuffer.allocate(CHUNK);
    channel.position(from);
    long left = length;
    while (left > 0) {
      buffer.clear().limit((int) Math.min(CHUNK, left));
      int n = channel.read(buffer);
      if (n < 0) {
        throw new IOException("the video became shorter while it was read");
      }
      out.write(buffer.array(), 0, n);
      left -= n;
    }
    out.close();
  }

  private static Optional<Span> span(Matcher range, long size) {
    boolean last = range.group(1).isEmpty();
    long first = last ? 0 : Long.parseLong(range.group(1));
    long second = range.group(2).isEmpty() ? size - 1 : Long.parseLong(range.group(2));
    Span span =
        last
            ? new Span(Math.max(0, size - second), size - 1)
            : new Span(first, Math.min(second, size - 1));
    boolean there = span.from() < size && span.from() <= span.to() && !(last && second == 0);
    return there ? Optional.of(span) : Optional.empty();
  }

  private String type() {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return TYPES.getOrDefault(
        name.substring(name.lastIndexOf('.') + 1), "application/octet-stream");
  }

  /** Whether the file can be read at all. */
  public boolean readable() {
    return Files.isRegularFile(file) && Files.isReadable(file);
  }
}
