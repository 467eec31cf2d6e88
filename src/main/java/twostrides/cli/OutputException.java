package twostrides.cli;

/** The output folder cannot be used; the message says why and what to do. */
final class OutputException extends Exception {
  private static final long serialVersionUID = 1L;

  OutputException(String message) {
    super(message);
  }
}
