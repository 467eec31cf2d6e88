package twostrides.cli;

import twostrides.sheet.SheetException;

/** A sheet that cannot be read at all, where setting it aside whole would let the run go on. */
final class UnreadableSheetException extends Exception {
  private static final long serialVersionUID = 1L;

  UnreadableSheetException(SheetException cause) {
    super(cause.getMessage(), cause);
  }
}
