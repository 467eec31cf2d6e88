package twostrides.exits;

/** Why a release is flagged, or why not. */
enum FlagVerdict {
  FLAGGED("flagged"),
  NO_RESTART("no own-zone restart followed"),
  OTHER_CAUSE("something other than icing stopped play"),
  UNKNOWN_CAUSE("why play stopped is not known"),
  TOO_RISKY("gaining center was not likely enough to avoid it"),
  TOO_DEAR("trying to gain center would have cost more than the restart");

  private final String words;

  FlagVerdict(String words) {
    this.words = words;
  }

  String words() {
    return words;
  }
}
