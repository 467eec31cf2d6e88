package twostrides.game;

/**
 * A slip that can only mean one thing: it is put right and counted, and its row is used.
 *
 * @param words what was put right, a phrase
 */
public record Mend(String words) implements Comparable<Mend> {

  /** A spreadsheet made a number of an id. */
  static final Mend ID = new Mend("id written with a decimal, 26.0, read as 26");

  /** A click just beside the rink. */
  static final Mend PLACE = new Mend("place up to 1 m outside the boards put on the boards");

  /** A skater at a bench. */
  static final Mend SKATER = new Mend("skater up to 3 m outside the boards put on the boards");

  /** A clock mended at the whistle. */
  static final Mend CLOCK = new Mend("clock set back by a second at the whistle put in order");

  /**
   * A team in another spelling than before.
   *
   * @param written as the row has it
   * @param read as its sheet had it first
   */
  static Mend team(String written, String read) {
    return new Mend("team \"" + written + "\" read as \"" + read + "\"");
  }

  @Override
  public int compareTo(Mend other) {
    return words.compareTo(other.words);
  }
}
