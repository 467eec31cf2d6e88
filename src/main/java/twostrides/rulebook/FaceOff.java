package twostrides.rulebook;

import java.util.List;

/**
 * How play starts again.
 *
 * @param place where the face-off is
 * @param spot which of the two spots
 * @param change whether the icing team may change
 * @param timeOut whether the icing team may take its time-out
 * @param reasons the rules behind it, in this order
 */
public record FaceOff(
    Place place, Spot spot, Change change, TimeOut timeOut, List<Reason> reasons) {

  /** Copies the reasons. */
  public FaceOff {
    reasons = List.copyOf(reasons);
  }

  /** Where. */
  public enum Place {
    /** The usual one. */
    ICING_TEAM_END("in the icing team's end zone"),
    /** Beside the goal of the side that left the puck alone. */
    ABSTAINING_TEAM_END("in the end zone of the team that left the puck alone"),
    /** Center ice. */
    CENTER("at center ice"),
    /** Called by mistake, by some books. */
    NEAREST_END_SPOT("at the end-zone spot nearest the puck"),
    /** During a signalled penalty, by some books. */
    NEUTRAL_SPOT("at the neutral-zone spot nearest the icing team's defending zone"),
    /** Out of play after a deflection. */
    WHERE_DEFLECTED("nearest to where the puck was deflected, in the same zone"),
    /** Out of play without one. */
    WHERE_LAST_PLAYED("nearest to where the puck was last played"),
    /** Offside was called. */
    OFFSIDE_SPOT("where the book puts the face-off after an offside"),
    /** The book's rule was not found. */
    NOT_FOUND("not found in what was read of this book");

    private final String words;

    Place(String words) {
      this.words = words;
    }

    /** The place as a phrase. */
    public String words() {
      return words;
    }
  }

  /** Which of the two spots, and who picks. */
  public enum Spot {
    /** The attacking team picks. */
    ATTACKERS_PICK("the attacking team picks the spot"),
    /** No choice: the side of the shot. */
    SHOT_SIDE("on the side from which the puck was shot"),
    /** No rule read. */
    NO_RULE("no rule about the side was found"),
    /** There is but one. */
    NO_CHOICE("");

    private final String words;

    Spot(String words) {
      this.words = words;
    }

    /** The rule as a phrase, empty where there is no choice. */
    public String words() {
      return words;
    }
  }

  /** Whether the icing team may change. */
  public enum Change {
    /** Freely. */
    ALLOWED("the icing team may change"),
    /** Not at all. */
    BARRED("the icing team may not change"),
    /** Only for penalized players. */
    PENALIZED_ONLY("the icing team may replace only its penalized players"),
    /** Penalized players, and the goalkeeper comes back. */
    PENALIZED_AND_GOALKEEPER(
        "the icing team may replace its penalized players and bring its goalkeeper back, and change"
            + " nobody else"),
    /** Only the goalkeeper comes back. */
    GOALKEEPER_ONLY("the icing team may bring its goalkeeper back, and change nobody else"),
    /** Only the injured player. */
    INJURED_ONLY("the icing team may replace the injured player, and change nobody else"),
    /** Only the player with the broken skate. */
    SKATE_ONLY("the icing team may replace the player with the broken skate, and nobody else");

    private final String words;

    Change(String words) {
      this.words = words;
    }

    /** The rule as a phrase. */
    public String words() {
      return words;
    }
  }

  /** Whether the icing team may take its time-out. */
  public enum TimeOut {
    /** It may. */
    ALLOWED("it may take its time-out"),
    /** It may, and still not change. */
    ALLOWED_NO_CHANGE("it may take its time-out, and still not change"),
    /** It may not. */
    NOT_ICING_TEAM("it may not take its time-out");

    private final String words;

    TimeOut(String words) {
      this.words = words;
    }

    /** The rule as a phrase. */
    public String words() {
      return words;
    }
  }
}
