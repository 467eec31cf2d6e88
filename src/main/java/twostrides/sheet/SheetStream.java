package twostrides.sheet;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipException;
import org.apache.commons.codec.digest.DigestUtils;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.io.input.CloseShieldInputStream;

/**
 * Reads a sheet row by row, for sheets too long to hold: it keeps one row and one buffer at a time.
 * Rows, rows set aside and messages are those of {@link SheetReader}, which holds the whole file;
 * of several faults it names the first.
 */
public final class SheetStream {
  /** Characters looked at for the delimiter: far more than a header line has. Assumed. */
  private static final int LONGEST_HEADER = 1 << 16;

  /** Bytes looked at for a byte order mark. */
  private static final int LONGEST_MARK = 4;

  private final Path file;
  private final SheetMap map;
  private final Taker taker;
  private final String name;
  private Charset charset = StandardCharsets.UTF_8;
  private Kept kept;
  private List<String> last = List.of();
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
    this.name = SheetText.display(file);
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
    if (SheetFiles.isJson(file) || WorkbookRecords.isWorkbook(file) || map.looksAround()) {
      readWhole(SheetReader.read(file, map), taker);
      return;
    }
    SheetStream stream = new SheetStream(file, map, taker);
    SheetText.refusePipe(file);
    MessageDigest digest = DigestUtils.getSha256Digest();
    try (InputStream raw = new DigestInputStream(Files.newInputStream(file), digest);
        // The parser closes what it reads from.
        InputStream in = Packed.unpacked(file, CloseShieldInputStream.wrap(raw))) {
      stream.rows(in);
      // What follows the packed text belongs to the file's bytes.
      raw.transferTo(OutputStream.nullOutputStream());
    } catch (ZipException e) {
      throw Packed.broken(file, e);
    } catch (IOException e) {
      throw stream.fault(e);
    } catch (UncheckedIOException e) {
      throw stream.fault(e.getCause());
    }
    FilesRead.whole(file, digest);
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

  /** Where the file is broken, as {@link SheetReader} would say it. */
  private SheetException fault(IOException e) {
    for (Throwable t = e; t != null; t = t.getCause()) {
      if (t instanceof Refused refused) {
        return refused.why;
      }
      if (t instanceof StrictText.BadByteException bad) {
        return SheetText.badByte(
            name, kept.lines(), bad.value(), charset, map.file().charset().isPresent());
      }
      if (t instanceof ZipException broken) {
        return Packed.broken(file, broken);
      }
      if (t instanceof StrictText.DiskException) {
        return SheetException.ofFile(
            name,
            "a file that could not be read to its end",
            "a file that stays as it is while it is read",
            "Copy the file to a folder of your own, and try again.");
      }
    }
    return kept == null
        ? SheetText.unreadable(file)
        : Records.broken(name, last.isEmpty() ? 1 : line + 1 + Records.breaks(last));
  }

  private void rows(InputStream in) throws IOException, SheetException {
    in.mark(LONGEST_MARK);
    byte[] head = in.readNBytes(LONGEST_MARK);
    Optional<Charset> marked =
        SheetText.MARKED.stream()
            .filter(c -> SheetText.begins(head, SheetText.mark(c)))
            .findFirst();
    if (marked.isEmpty()) {
      SheetText.refuseWorkbook(name, head);
    }
    in.reset();
    in.skipNBytes(marked.map(c -> SheetText.mark(c).length).orElse(0));
    charset = marked.or(map.file()::charset).orElse(StandardCharsets.UTF_8);
    Reader reader = new BufferedReader(new StrictText(in, charset), LONGEST_HEADER);
    kept = new Kept(reader);
    try (CSVParser parser =
        CSVParser.builder().setReader(kept).setFormat(Records.format(delimiter(reader))).get()) {
      // The parser tells where a row begins; where it ends is known when the next one begins.
      for (CSVRecord record : parser) {
        row(kept.upTo(record.getCharacterPosition()), last);
        last = record.stream().map(Records::composed).toList();
      }
      row(kept.rest(), last);
    }
    if (layout == null) {
      SheetReader.names(new Records(name, List.of()));
    }
  }

  private char delimiter(Reader reader) throws IOException {
    if (map.file().delimiter().isPresent()) {
      return map.file().delimiter().get();
    }
    reader.mark(LONGEST_HEADER);
    char[] head = new char[LONGEST_HEADER];
    int filled = 0;
    try {
      for (int n = 0; n >= 0 && filled < head.length; filled += Math.max(n, 0)) {
        n = reader.read(head, filled, head.length - filled);
      }
    } catch (StrictText.BadByteException e) {
      // Met again when the rows are read, and told with its line then.
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
      throw Records.longRow(name, at);
    }
    String raw = Records.withoutLineEnd(written);
    if (layout == null) {
      Records.Entry header = new Records.Entry(at, raw, cells);
      List<String> names = SheetReader.names(new Records(name, List.of(header)));
      layout = new Layout(map, file, names, raw, at);
      check = new RowCheck(layout);
      taker.header(layout.columnsPresent());
      return;
    }
    SheetRow row = layout.row(at, raw, cells, cells);
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

  /** What is wrong with the text, on its way through the parser. */
  private static final class Refused extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient SheetException why;

    private Refused(SheetException why) {
      super(why);
      this.why = why;
    }
  }

  /** A reader that keeps what it gave since the last row, and refuses zero characters. */
  private final class Kept extends Reader {
    private final Reader source;
    private final StringBuilder text = new StringBuilder();
    private long taken;
    private int inLine;
    private long lines = 1;
    private boolean afterReturn;

    Kept(Reader source) {
      this.source = source;
    }

    @Override
    public int read(char[] buffer, int offset, int length) throws IOException {
      int n = source.read(buffer, offset, length);
      for (int i = offset; i < offset + n; i++) {
        count(buffer[i]);
      }
      if (n > 0) {
        text.append(buffer, offset, n);
      }
      return n;
    }

    private void count(char c) throws Refused {
      if (c == '\0') {
        throw new Refused(SheetText.zero(name, lines, charset));
      }
      boolean ends = c == '\n' || c == '\r';
      lines += c == '\r' || (c == '\n' && !afterReturn) ? 1 : 0;
      afterReturn = c == '\r';
      inLine = ends ? 0 : inLine + 1;
      if (inLine > SheetText.LONGEST_LINE) {
        throw new Refused(SheetText.longLine(name, lines));
      }
      if (text.length() > Records.LONGEST_ROW) {
        throw new Refused(Records.longRow(name, line + 1 + Records.breaks(last)));
      }
    }

    /** Lines begun so far. */
    long lines() {
      return lines;
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
