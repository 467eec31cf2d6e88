package twostrides.rulebook;

import java.util.OptionalInt;

/** A rulebook's file that cannot be used, or a book or season that does not exist. */
public final class BookException extends Exception {
  private static final long serialVersionUID = 1L;

  private final String file;

  /**
   * A broken book.
   *
   * @param file the file or the option to blame, as the user named it
   * @param line its line, from 1, where one is to blame
   * @param key the key to blame, empty when none is
   * @param found what was found, a phrase
   * @param expected what is allowed, a phrase
   * @param toDo what the reader can do about it, a sentence
   */
  BookException(
      String file, OptionalInt line, String key, String found, String expected, String toDo) {
    super(
        "%s%s%s: found %s, expected %s. %s"
            .formatted(
                file,
                line.isPresent() ? ", line " + line.getAsInt() : "",
                key.isEmpty() ? "" : ", key " + key,
                found,
                expected,
                toDo));
    this.file = file;
  }

  /** The file or option to blame. */
  public String file() {
    return file;
  }
}
