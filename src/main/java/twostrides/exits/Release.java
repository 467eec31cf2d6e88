package twostrides.exits;

import java.util.List;
import java.util.Optional;

/**
 * A release short of center: let go before the puck touched the red line, with no teammate who got
 * it.
 *
 * @param number number in its game, from 1
 * @param exit its exit attempt; empty where the play began outside of the own zone
 * @param at the team at the release
 * @param how how it was let go
 * @param outcome what followed
 * @param rulings what the books say of it
 * @param seen the skaters around it, where the play sheet has their places
 */
public record Release(
    int number,
    Optional<Exit> exit,
    Situation at,
    LetGo how,
    ExitOutcome outcome,
    Rulings rulings,
    Optional<PositionsSeen> seen) {

  /**
   * What the books say.
   *
   * @param played the book of the run
   * @param mayBeIcing whether that book could call it icing: not of a team that it exempts
   * @param others other books that were asked
   */
  public record Rulings(BookRuling played, boolean mayBeIcing, List<OtherRuling> others) {

    /** Shares a ruling, and copies the list. */
    public Rulings {
      played = Shared.of(played);
      others = List.copyOf(others);
    }
  }

  /** Metres from the puck to the near edge of the red line, above 0. */
  public double shortOfCenter() {
    return at.where().shortOfCenter().orElseThrow();
  }

  /** Whether it was let go in the own zone. */
  public boolean fromOwnZone() {
    return at.when().game().rink().inOwnZone(at.where().place().orElseThrow().x());
  }

  /** Whether it was iced. */
  public boolean iced() {
    return outcome.cause().icing();
  }
}
