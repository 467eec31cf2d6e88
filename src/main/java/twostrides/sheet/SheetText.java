package twostrides.sheet;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.ZipException;
import org.apache.commons.codec.digest.DigestUtils;

/**
 * The text of a file, decoded strictly, and the line that each character stands on. A byte order
 * mark decides the charset and is removed; without one the declared charset holds, else UTF-8.
 * Lines end with LF, CR or CRLF, mixed as they may be.
 */
final class SheetText {
  /** Charsets whose byte order mark is looked for. */
  static final List<Charset> MARKED =
      List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE);

  /** Bytes of a file that is held as a whole; a season of touches has 30 MB. Assumed. */
  static final long LARGEST = 1_000_000_000;

  /** Characters of a line; a row of a sheet has hundreds. Assumed. */
  static final int LONGEST_LINE = 1_000_000;

  private static final long MEGABYTE = 1_000_000;

  private final String file;
  private final String text;
  private final int[] lineStarts;

  private SheetText(String file, CharBuffer decoded) {
    this.file = file;
    this.text = decoded.toString();
    this.lineStarts = lineStarts(decoded.array(), decoded.limit());
  }

  /** Refuses what no text holds, and a line that is none; it would take minutes to split. */
  private SheetText checked(Charset charset) throws SheetException {
    int nul = text.indexOf('\0');
    if (nul >= 0) {
      throw zero(file, lineAt(nul), charset);
    }
    for (int i = 0; i < lineStarts.length; i++) {
      int end = i + 1 < lineStarts.length ? lineStarts[i + 1] : text.length();
      if (end - lineStarts[i] > LONGEST_LINE) {
        throw longLine(file, i + 1);
      }
    }
    return this;
  }

  /** A line that is too long to be one. */
  static SheetException longLine(String file, long line) {
    return SheetException.atLine(
        file,
        line,
        "more than " + LONGEST_LINE + " characters without a line end",
        "a line for each row",
        "Look whether it is the right file; if it is, save it again as CSV (UTF-8).");
  }

  /**
   * Reads a file.
   *
   * @param path the file
   * @param declared the charset that a map declares
   * @throws SheetException when the file is missing or its bytes are not text in that charset
   */
  static SheetText read(Path path, Optional<Charset> declared) throws SheetException {
    return of(display(path), bytes(path, display(path)), declared);
  }

  /**
   * Decodes the bytes of a file.
   *
   * @param file the file as messages show it
   * @param bytes its bytes
   * @param declared the charset that a map declares
   * @throws SheetException when the bytes are not text in that charset
   */
  static SheetText of(String file, byte[] bytes, Optional<Charset> declared) throws SheetException {
    Optional<Charset> marked = MARKED.stream().filter(c -> begins(bytes, mark(c))).findFirst();
    int start = marked.map(c -> mark(c).length).orElse(0);
    Charset charset = marked.or(() -> declared).orElse(StandardCharsets.UTF_8);
    if (marked.isEmpty()) {
      refuseWorkbook(file, bytes);
    }
    return new SheetText(file, decode(file, bytes, start, charset, declared.isPresent()))
        .checked(charset);
  }

  /** Refuses what a spreadsheet saves as its own. */
  static void refuseWorkbook(String file, byte[] head) throws SheetException {
    if (head.length > 3 && head[0] == 'P' && head[1] == 'K' && head[2] < 9) {
      throw SheetException.ofFile(
          file,
          "a spreadsheet workbook or another packed file",
          "a CSV file",
          "Open it in the spreadsheet and save it as CSV (UTF-8).");
    }
  }

  /** Refuses what need never end. */
  static void refusePipe(Path path) throws SheetException {
    if (Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path)) {
      throw SheetException.ofFile(
          display(path),
          "a pipe or a device",
          "a file",
          "Save what comes from there as a file, and name that.");
    }
  }

  /** A file that cannot be opened. */
  static SheetException unreadable(Path path) {
    return SheetException.ofFile(
        display(path),
        Files.isDirectory(path) ? "a folder" : "no file that can be opened",
        "a file",
        "Check the name, and that you may read the file.");
  }

  /** The bytes of a file, unpacked, its hash taken. */
  static byte[] bytes(Path path, String file) throws SheetException {
    refusePipe(path);
    try {
      if (Files.size(path) > LARGEST) {
        throw SheetException.ofFile(
            file,
            "a file of " + Files.size(path) / MEGABYTE + " MB",
            "one of at most " + LARGEST / MEGABYTE + " MB",
            "Look whether it is the right file; if it is, split it by game, the header line in each"
                + " part, and name the folder of the parts.");
      }
      MessageDigest digest = DigestUtils.getSha256Digest();
      byte[] bytes = Packed.read(path, digest);
      FilesRead.whole(path, digest);
      return bytes;
    } catch (ZipException e) {
      throw Packed.broken(path, e);
    } catch (IOException e) {
      throw unreadable(path);
    }
  }

  /** A path as messages show it: as given, with forward slashes. */
  static String display(Path path) {
    boolean packed = path.getFileSystem() != FileSystems.getDefault();
    return (packed ? path.getFileSystem().toString() + path : path.toString()).replace('\\', '/');
  }

  /** The text from the first place of the buffer's array to its limit. */
  private static CharBuffer decode(
      String file, byte[] bytes, int start, Charset charset, boolean declared)
      throws SheetException {
    ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
    var decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer out =
        CharBuffer.allocate((int) Math.ceil(in.remaining() * (double) decoder.maxCharsPerByte()));
    CoderResult result = decoder.decode(in, out, true);
    if (!result.isError()) {
      result = decoder.flush(out);
    }
    int bad = in.position();
    out.flip();
    if (result.isError()) {
      int line = lineStarts(out.array(), out.limit()).length;
      throw badByte(file, line, bytes[bad], charset, declared);
    }
    return out;
  }

  /** A byte that is no text in a charset, which the map declares or not. */
  static SheetException badByte(
      String file, long line, byte value, Charset charset, boolean declared) {
    return SheetException.atLine(
        file,
        line,
        String.format(
            Locale.ROOT, "the byte 0x%02X, which is not text in %s", value, charset.name()),
        "text in " + charset.name(),
        declared
            ? "Declare the charset in which the sheet was saved in the map, under [file]."
            : "Save the sheet as CSV in UTF-8, or declare its charset in a map, for example"
                + " charset = \"windows-1252\" under [file].");
  }

  /** A zero character, which no text holds. */
  static SheetException zero(String file, long line, Charset charset) {
    return SheetException.atLine(
        file,
        line,
        "a zero character, which no text holds",
        "text in " + charset.name(),
        "If the sheet was saved as UTF-16 without a byte order mark, declare charset ="
            + " \"UTF-16LE\" in a map, under [file]; otherwise save it again as CSV in UTF-8.");
  }

  private static int[] lineStarts(char[] text, int length) {
    int[] starts = new int[64];
    int count = 1;
    for (int i = 0; i < length; i++) {
      if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == length || text[i + 1] != '\n'))) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, 2 * count);
        }
        starts[count++] = i + 1;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  /** The file as messages show it. */
  String file() {
    return file;
  }

  /** The whole text, without byte order mark. */
  String text() {
    return text;
  }

  /**
   * The line that a character stands on, from 1.
   *
   * @param offset characters before it
   */
  long lineAt(int offset) {
    int found = Arrays.binarySearch(lineStarts, offset);
    return found >= 0 ? found + 1L : -found - 1L;
  }

  /** The byte order mark of a charset: the character U+FEFF, encoded. */
  static byte[] mark(Charset charset) {
    return "\uFEFF".getBytes(charset);
  }

  /** Whether bytes begin with others. */
  static boolean begins(byte[] bytes, byte[] mark) {
    return bytes.length >= mark.length
        && Arrays.equals(bytes, 0, mark.length, mark, 0, mark.length);
  }
}
