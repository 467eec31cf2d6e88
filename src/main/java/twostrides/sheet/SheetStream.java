package twostrides.sheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a sheet row by row, for sheets too long to hold: it keeps one row and one buffer at a time.
 * Rows, rows set aside and messages are those of {@link SheetReader}, which holds the whole file. A
 * file that turns out to be broken is read once more, whole, to say where.
 */
public final class SheetStream {
  /** Characters looked at for the delimiter: far more than a header line has. Assumed. */
  private static final int LONGEST_HEADER = 1 << 16;

  /** Bytes looked at for a byte order mark. */
  private static final int LONGEST_MARK = 4;

  private final Path file;
  private final SheetMap map;
  private final Taker taker;
  private Layout layout;
  private RowCheck check;
  private long line = 1;

  /** Who takes what is read, in the sheet's order. */
  public interface Taker {
    /**
     * The header; comes first.
     *
     * @param columnsPresent our columns that this sheet can fill, in declared order
     * @throws SheetException when the sheet cannot be used
     */
    void header(Set<String> columnsPresent) throws SheetException;

    /**
     * A readable row.
     *
     * @param row the row
     */
    void row(SheetRow row);

    /**
     * A row that is doubtful before anyone asks what its cells mean.
     *
     * @param row the row and why
     */
    void setAside(DoubtfulRow row);
  }

  private SheetStream(Path file, SheetMap map, Taker taker) {
    this.file = file;
    this.map = map;
    this.taker = taker;
  }

  /**
   * Reads a sheet.
   *
   * @param file the sheet
   * @param map where our columns are in it
   * @param taker who takes its rows
   * @throws SheetException when it cannot be read at all, as {@link SheetReader#read} says; rows
   *     before the place to blame may have been taken by then
   */
  public static void read(Path file, SheetMap map, Taker taker) throws SheetException {
    if (SheetFiles.isJson(file)) {
      readWhole(SheetReader.read(file, map), taker);
      return;
    }
    SheetStream stream = new SheetStream(file, map, taker);
    try (InputStream in = Packed.open(file)) {
      stream.rows(in);
    } catch (IOException | UncheckedIOException e) {
      stream.findFault();
      throw SheetException.ofFile(
          SheetText.display(file),
          "a file that could not be read to its end",
          "a file that stays as it is while it is read",
          "Copy the file to a folder of your own, and try again.");
    }
  }

  /** Rows and rows set aside in the sheet's order. */
  private static void readWhole(Sheet sheet, Taker taker) throws SheetException {
    taker.header(sheet.columnsPresent());
    Deque<DoubtfulRow> aside = new ArrayDeque<>(sheet.setAside());
    for (SheetRow row : sheet.rows()) {
      while (!aside.isEmpty() && aside.peek().row().line() <= row.line()) {
        taker.setAside(aside.remove());
      }
      taker.row(row);
    }
    aside.forEach(taker::setAside);
  }

  private long size() {
    try {
      return Files.size(file);
    } catch (IOException e) {
      return 0;
    }
  }

  /** Read whole, a file gives the message that says where it is broken. */
  private void findFault() throws SheetException {
    if (size() <= SheetText.LARGEST) {
      SheetReader.read(file, map);
    } else {
      throw SheetException.atLine(
          SheetText.display(file),
          line,
          "a row after which the text cannot be read",
          "rows of at most "
              + SheetText.LONGEST_LINE
              + " characters a line, every quote closed, in "
              + map.file().charset().orElse(StandardCharsets.UTF_8).name(),
          "Correct the row after it.");
    }
  }

  private void rows(InputStream in) throws IOException, SheetException {
    in.mark(LONGEST_MARK);
    byte[] head = in.readNBytes(LONGEST_MARK);
    Optional<Charset> marked =
        SheetText.MARKED.stream()
            .filter(c -> SheetText.begins(head, SheetText.mark(c)))
            .findFirst();
    in.reset();
    in.skipNBytes(marked.map(c -> SheetText.mark(c).length).orElse(0));
    Charset charset = marked.or(map.file()::charset).orElse(StandardCharsets.UTF_8);
    Reader reader =
        new BufferedReader(
            new InputStreamReader(
                in,
                charset
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)),
            LONGEST_HEADER);
    Kept kept = new Kept(reader);
    try (CSVParser parser =
        CSVParser.builder().setReader(kept).setFormat(Records.format(delimiter(reader))).get()) {
      List<String> cells = List.of();
      // The parser tells where a row begins; where it ends is known when the next one begins.
      for (CSVRecord record : parser) {
        row(kept.upTo(record.getCharacterPosition()), cells);
        cells = record.toList();
      }
      row(kept.rest(), cells);
    }
    if (layout == null) {
      SheetReader.read(file, map);
    }
  }

  private char delimiter(Reader reader) throws IOException {
    if (map.file().delimiter().isPresent()) {
      return map.file().delimiter().get();
    }
    reader.mark(LONGEST_HEADER);
    char[] head = new char[LONGEST_HEADER];
    int filled = 0;
    for (int n = 0; n >= 0 && filled < head.length; filled += Math.max(n, 0)) {
      n = reader.read(head, filled, head.length - filled);
    }
    reader.reset();
    return Records.delimiter(new String(head, 0, filled));
  }

  private void row(String written, List<String> cells) throws SheetException {
    long at = line;
    line += lineEnds(written);
    if (cells.stream().allMatch(String::isBlank)) {
      return;
    }
    if (written.length() > Records.LONGEST_ROW) {
      throw Records.longRow(SheetText.display(file), at);
    }
    String raw = Records.withoutLineEnd(written);
    if (layout == null) {
      Records.Entry header = new Records.Entry(at, raw, cells);
      List<String> names = SheetReader.names(new Records(SheetText.display(file), List.of(header)));
      layout = new Layout(map, file, names, raw, at);
      check = new RowCheck(layout);
      taker.header(layout.columnsPresent());
      return;
    }
    SheetRow row =
        cells.size() == layout.width()
            ? layout.row(at, raw, cells)
            : new SheetRow(layout, at, raw, cells, Optional.empty());
    List<Problem> problems = check.problems(row);
    if (problems.isEmpty()) {
      taker.row(row);
    } else {
      taker.setAside(new DoubtfulRow(row, problems));
    }
  }

  private static long lineEnds(String text) {
    long ends = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      ends += c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1)) ? 1 : 0;
    }
    return ends;
  }

  /** A reader that keeps what it gave since the last row, and refuses zero characters. */
  private static final class Kept extends Reader {
    private final Reader source;
    private final StringBuilder text = new StringBuilder();
    private long taken;
    private int inLine;

    Kept(Reader source) {
      this.source = source;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
      int n = source.read(buffer, offset, length);
      for (int i = offset; i < offset + n; i++) {
        if (buffer[i] == '\0') {
          throw new IOException("a zero character, which no text holds");
        }
        inLine = buffer[i] == '\n' || buffer[i] == '\r' ? 0 : inLine + 1;
        if (inLine > SheetText.LONGEST_LINE || text.length() > Records.LONGEST_ROW) {
          throw new IOException("a row that does not end");
        }
      }
      if (n > 0) {
        text.append(buffer, offset, n);
      }
      return n;
    }

    @Override
    public void close() throws IOException {
      source.close();
    }

    /** The characters not taken so far, up to a position in the text. */
    String upTo(long position) {
      int length = (int) (position - taken);
      String row = text.substring(0, length);
      text.delete(0, length);
      taken = position;
      return row;
    }

    String rest() {
      return upTo(taken + text.length());
    }
  }
}
