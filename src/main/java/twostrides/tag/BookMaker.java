package twostrides.tag;

/** Makes the review book of what was tagged; the command line knows how. */
public interface BookMaker {

  /**
   * What came of it.
   *
   * @param made whether there is a book now
   * @param words what the run said, for the person at the page
   */
  record Made(boolean made, String words) {}

  /** Runs the review on the sheet as it stands. */
  Made make();
}
