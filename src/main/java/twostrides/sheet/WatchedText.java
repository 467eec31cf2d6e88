package twostrides.sheet;

import java.util.regex.Pattern;

/**
 * A text that lets a pattern look at so many characters and no more: some patterns try more ways
 * than anybody can wait for, others go deeper than the stack.
 */
final class WatchedText implements CharSequence {
  /** Looks that every text allows; they take a hundredth of a second. Assumed. */
  private static final long LOOKS = 1_000_000;

  /** Looks more for each character of the text. Assumed. */
  private static final long LOOKS_A_CHARACTER = 20;

  private final String text;
  private long left;

  /** A pattern has looked too often. */
  static final class TooHardException extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  WatchedText(String text) {
    this.text = text;
    this.left = LOOKS + LOOKS_A_CHARACTER * text.length();
  }

  /**
   * Whether it cannot be told whether a pattern fits.
   *
   * @param pattern the pattern
   * @param text the text
   */
  static boolean isTooHard(Pattern pattern, String text) {
    try {
      pattern.matcher(new WatchedText(text)).find();
      return false;
    } catch (TooHardException | StackOverflowError e) {
      return true;
    }
  }

  @Override
  public char charAt(int index) {
    if (left-- == 0) {
      throw new TooHardException();
    }
    return text.charAt(index);
  }

  @Override
  public int length() {
    return text.length();
  }

  @Override
  public CharSequence subSequence(int start, int end) {
    return text.subSequence(start, end);
  }

  @Override
  public String toString() {
    return text;
  }
}
