package twostrides.toml;

/** Text that is not TOML, or that nobody writes by hand. */
public final class TomlException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int line;
  private final int character;

  TomlException(String message, int line, int character) {
    super(message);
    this.line = line;
    this.character = character;
  }

  /** The line to blame, from 1. */
  public int line() {
    return line;
  }

  /** The character of that line, from 1. */
  public int character() {
    return character;
  }
}
