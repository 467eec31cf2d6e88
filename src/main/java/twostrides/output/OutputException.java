package twostrides.output;

import java.io.IOException;
import java.util.Locale;

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

  /**
   * Why a disk refused, in words: most of its errors say only which file.
   *
   * @param e the disk's error
   */
  public static String reason(IOException e) {
    String type = e.getClass().getSimpleName().replace("Exception", "");
    String said = String.valueOf(e.getMessage());
    return type.equals("IO") || type.equals("FileSystem")
        ? said
        : type.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT) + ": " + said;
  }
}
