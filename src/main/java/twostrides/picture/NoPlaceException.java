package twostrides.picture;

/**
 * Clicks in a picture that lead to no place on the ice: what was found, expected, and what to do.
 */
public final class NoPlaceException extends Exception {

  private static final long serialVersionUID = 1L;

  private final String found;
  private final String expected;
  private final String toDo;

  /**
   * Clicks that lead nowhere.
   *
   * @param found what was clicked, a phrase
   * @param expected what it takes, a phrase
   * @param toDo what to do about it, sentences
   */
  NoPlaceException(String found, String expected, String toDo) {
    super("found " + found + ", expected " + expected + ". " + toDo);
    this.found = found;
    this.expected = expected;
    this.toDo = toDo;
  }

  /** What was clicked, a phrase. */
  public String found() {
    return found;
  }

  /** What it takes, a phrase. */
  public String expected() {
    return expected;
  }

  /** What to do about it, sentences. */
  public String toDo() {
    return toDo;
  }
}
