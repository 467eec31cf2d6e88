package twostrides.output;

/** An output cannot be written; the message says why and what to do. */
public final class OutputException extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * An output that cannot be written.
   *
   * @param message why, and what to do
   */
  public OutputException(String message) {
    super(message);
  }
}
