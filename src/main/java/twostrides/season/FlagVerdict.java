package twostrides.season;

/** Why a release is flagged, or why not. */
public enum FlagVerdict {
  FLAGGED("flagged"),
  /** Iced, and nobody wrote where the skaters were and how fast: to be looked at. */
  LOOK("no verdict without skaters' places and speeds"),
  NO_RESTART("no own-zone restart followed"),
  OTHER_CAUSE("something other than icing stopped play"),
  UNKNOWN_CAUSE("why play stopped is not known"),
  /** Called, though the book exempts the team. */
  NOT_ICING("the book of this run calls no icing there"),
  TOO_RISKY("gaining center was not likely enough to avoid it"),
  TOO_DEAR("trying to gain center would have cost more than the icing");

  private final String words;

  FlagVerdict(String words) {
    this.words = words;
  }

  /** The words in tables, and in the sentence of a release. */
  public String words() {
    return words;
  }

  /** Whether the chance was known well enough, and it or the cost spoke against a flag. */
  public boolean fellShort() {
    return this == TOO_RISKY || this == TOO_DEAR;
  }
}
