package twostrides.game;

/** A slip that can only mean one thing: it is put right and counted, and its row is used. */
public enum Mend {
  /** A spreadsheet made a number of an id. */
  ID("id written with a decimal, 26.0, read as 26"),
  /** A click just beside the rink. */
  PLACE("place up to 1 m outside the boards put on the boards"),
  /** A clock mended at the whistle. */
  CLOCK("clock set back by a second at the whistle put in order");

  private final String words;

  Mend(String words) {
    this.words = words;
  }

  /** What was put right, a phrase. */
  public String words() {
    return words;
  }
}
