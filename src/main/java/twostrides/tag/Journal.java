package twostrides.tag;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import twostrides.sheet.SheetException;

/**
 * A file that is only ever added to: one line a step, each a list of words, on the disk before
 * {@link #append} returns. A last line without its end is torn: the machine stopped while it was
 * written, nobody was told that it was saved, and it is taken off before the next step is added. A
 * file whose lines are none of ours, the last one too, is somebody else's and stays as it is.
 *
 * <p>One program at a time holds it.
 */
final class Journal implements Closeable {

  private final FileChannel channel;
  private final List<List<String>> lines;
  private final boolean torn;

  private Journal(FileChannel channel, List<List<String>> lines, boolean torn) {
    this.channel = channel;
    this.lines = List.copyOf(lines);
    this.torn = torn;
  }

  /**
   * Opens a journal, or begins one.
   *
   * @param file the journal
   * @throws SheetException when another program holds it, or a line in it is none of ours
   * @throws IOException when the disk refuses
   */
  static Journal open(Path file) throws SheetException, IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      if (!held(channel)) {
        throw SheetException.ofFile(
            file.toString(),
            "a journal that another two-strides tag holds",
            "one program at a time on a sheet",
            "Go on in the other one, or end it first.");
      }
      byte[] bytes = everything(channel);
      int whole = bytes.length;
      while (whole > 0 && bytes[whole - 1] != '\n') {
        whole--;
      }
      List<List<String>> lines = new ArrayList<>();
      String text = new String(bytes, 0, whole, StandardCharsets.UTF_8);
      for (String line : text.lines().toList()) {
        lines.add(words(file, line, lines.size() + 1));
      }
      String tail = new String(bytes, whole, bytes.length - whole, StandardCharsets.UTF_8);
      if (!History.begins(tail)) {
        throw foreign(file, lines.size() + 1, tail);
      }
      channel.position(whole);
      return new Journal(channel, lines, whole < bytes.length);
    } catch (SheetException | IOException | RuntimeException e) {
      channel.close();
      throw e;
    }
  }

  /** The steps that were there at the opening. */
  List<List<String>> lines() {
    return lines;
  }

  /** Whether there was a torn last line at the opening. */
  boolean torn() {
    return torn;
  }

  /**
   * Adds steps; they are on the disk when this returns, all of them or, after a failure, none that
   * counts.
   *
   * @param steps the steps, each a list of words
   */
  void append(List<List<String>> steps) throws IOException {
    StringBuilder text = new StringBuilder();
    steps.forEach(s -> text.append(Json.line(s)).append('\n'));
    ByteBuffer bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
    long before = channel.position();
    try {
      channel.truncate(before);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    } catch (IOException e) {
      channel.truncate(before);
      channel.position(before);
      throw e;
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }

  /** Locks until the channel is closed. */
  private static boolean held(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  private static byte[] everything(FileChannel channel) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteBuffer buffer = ByteBuffer.allocate(1 << 16);
    while (channel.read(buffer) >= 0) {
      out.write(buffer.array(), 0, buffer.position());
      buffer.clear();
    }
    return out.toByteArray();
  }

  private static List<String> words(Path file, String line, int number) throws SheetException {
    try {
      return Json.words(line);
    } catch (IOException e) {
      throw foreign(file, number, line);
    }
  }

  /**
   * A line that this program did not write.
   *
   * @param file the journal
   * @param number the line's number, from 1
   * @param line what stands there
   */
  static SheetException foreign(Path file, int number, String line) {
    int most = Math.min(line.length(), 80);
    return SheetException.atLine(
        file.toString(),
        number,
        "\"" + line.substring(0, most) + "\"",
        "a step that this program wrote",
        "Move the journal to another folder; the sheet beside it holds what was written last.");
  }
}
