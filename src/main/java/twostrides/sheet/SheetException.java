package twostrides.sheet;

import java.util.OptionalLong;

/** A sheet, a map or an argument that cannot be read at all. */
public class SheetException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final transient OptionalLong line;
  private final String place;
  private final String found;
  private final String expected;
  private final String toDo;
  private final boolean oneFile;

  /**
   * A broken file.
   *
   * @param file the file, as the user named it
   * @param line its line, from 1, where one is to blame
   * @param place column of a sheet or key of a map, as messages say it; empty when none is to blame
   * @param found what was found, a phrase
   * @param expected what was expected, a phrase
   * @param toDo what the reader can do about it, a sentence
   */
  SheetException(
      String file, OptionalLong line, String place, String found, String expected, String toDo) {
    this(file, line, place, found, expected, toDo, false);
  }

  private SheetException(
      String file,
      OptionalLong line,
      String place,
      String found,
      String expected,
      String toDo,
      boolean oneFile) {
    super(
        Wording.sentence(
            file
                + (line.isPresent() ? ", line " + line.getAsLong() : "")
                + (place.isEmpty() ? "" : ", " + place),
            found,
            expected,
            toDo));
    this.file = file;
    this.line = line;
    this.place = place;
    this.found = found;
    this.expected = expected;
    this.toDo = toDo;
    this.oneFile = oneFile;
  }

  /** A broken file, with no line or column to blame. */
  public static SheetException ofFile(String file, String found, String expected, String toDo) {
    return new SheetException(file, OptionalLong.empty(), "", found, expected, toDo);
  }

  /** A file with one line to blame. */
  public static SheetException atLine(
      String file, long line, String found, String expected, String toDo) {
    return new SheetException(file, OptionalLong.of(line), "", found, expected, toDo);
  }

  /** A cell or a row without which the file is of no use. */
  public static SheetException of(Problem p) {
    String place = p.column().isEmpty() ? "" : "column \"" + p.column() + "\"";
    return new SheetException(
        p.file(),
        OptionalLong.of(p.line()),
        place,
        Wording.quoted(p.value()),
        p.expected(),
        p.toDo());
  }

  /** The same, where leaving this one file out would let the run go on. */
  public SheetException ofOneFile() {
    return new SheetException(file, line, place, found, expected, toDo, true);
  }

  /** Whether leaving the file out would let the run go on. */
  public boolean isOfOneFile() {
    return oneFile;
  }

  /** The file, as the user named it. */
  public String file() {
    return file;
  }

  /** Line of the file, from 1, where one is to blame. */
  public OptionalLong line() {
    return line;
  }

  /** The column of a sheet or the key of a map to blame, as the message says it; else empty. */
  public String place() {
    return place;
  }

  /** What was found, a phrase. */
  public String found() {
    return found;
  }

  /** What was expected, a phrase. */
  public String expected() {
    return expected;
  }

  /** What the reader can do about it, a sentence. */
  public String toDo() {
    return toDo;
  }
}
