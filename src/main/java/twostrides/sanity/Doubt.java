package twostrides.sanity;

import twostrides.sheet.SheetException;

/**
 * Something in the sheets that true sheets do not show.
 *
 * @param stops whether nothing may be made of the sheets before it is settled
 * @param where the game or the sheets
 * @param found what the sheets say, a phrase with its figures
 * @param expected what true sheets say, a phrase
 * @param toDo what the reader can do about it, sentences
 */
public record Doubt(boolean stops, String where, String found, String expected, String toDo) {

  /** One that stops a run. */
  static Doubt stop(String where, String found, String expected, String toDo) {
    return new Doubt(true, where, found, expected, toDo);
  }

  /** One that is said. */
  static Doubt warn(String where, String found, String expected, String toDo) {
    return new Doubt(false, where, found, expected, toDo);
  }

  /** As a refusal. */
  public SheetException refusal() {
    return SheetException.ofFile(where, found, expected, toDo);
  }

  /** As one message. */
  public String message() {
    return refusal().getMessage();
  }
}
