package twostrides.findings;

/** Names as a page shows them: text of a sheet that may run from right to left. */
public final class Names {

  private Names() {}

  /**
   * A name; one whose letters run from right to left, or turn the direction, is set apart from the
   * words around it.
   *
   * @param name as the sheet writes it
   */
  public static String shown(String name) {
    boolean turns =
        name.codePoints()
            .map(Character::getDirectionality)
            .anyMatch(
                d ->
                    d != Character.DIRECTIONALITY_LEFT_TO_RIGHT
                        && d != Character.DIRECTIONALITY_WHITESPACE
                        && d != Character.DIRECTIONALITY_OTHER_NEUTRALS
                        && d != Character.DIRECTIONALITY_EUROPEAN_NUMBER
                        && d != Character.DIRECTIONALITY_EUROPEAN_NUMBER_SEPARATOR
                        && d != Character.DIRECTIONALITY_EUROPEAN_NUMBER_TERMINATOR
                        && d != Character.DIRECTIONALITY_COMMON_NUMBER_SEPARATOR);
    return turns ? "\u2068" + name + "\u2069" : name;
  }

  /**
   * A player in a sentence; where his name begins with his number, "No. 4 ..." keeps it from
   * reading as a count.
   *
   * @param player as the sheet writes him
   */
  public static String player(String player) {
    boolean numbered = !player.isEmpty() && player.charAt(0) >= '0' && player.charAt(0) <= '9';
    return (numbered ? "No. " : "") + shown(player);
  }
}
