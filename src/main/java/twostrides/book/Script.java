package twostrides.book;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The pages' own script: filter, sort, clip lists, units, colours, local video. */
public final class Script {

  private static final String TEXT = ReviewBook.resource("book.js");

  private Script() {}

  /**
   * What a Content-Security-Policy calls the script: it alone may then run on a page of the book.
   */
  public static String hash() {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(TEXT.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** The text of the script; it holds no closing tag. */
  public static String text() {
    return TEXT;
  }
}
