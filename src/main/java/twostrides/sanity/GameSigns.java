package twostrides.sanity;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.game.Action;
import twostrides.game.Frame;
import twostrides.game.Game;

/**
 * What is counted of one game, so that its sheet can be judged together with others after its rows
 * are forgotten ({@link SheetDoubts}).
 *
 * @param id the game's id
 * @param sheet file name of its first row
 * @param frame how the sheet writes clock and places
 * @param directions what lies at which end
 * @param faceOffs where face-offs stand
 * @param whoFollows what next rows say of passes and releases
 * @param manpower whose skaters the manpower columns count
 * @param kinds rows by action and outcome
 * @param atTheLine rows at the far blue line, by action
 * @param clocksOnSteps how many clock readings stand on each step, where the map says one
 * @param placesOnSteps the same of places
 * @param endsEarly periods shorter than they were taken for
 * @param atHome a name that says another home team
 * @param spellings teams and players as they are written
 */
public record GameSigns(
    String id,
    String sheet,
    Frame frame,
    Directions.OfGame directions,
    List<Spots.FaceOff> faceOffs,
    WhoFollows whoFollows,
    ManpowerSides manpower,
    Kinds kinds,
    Map<Action, Share> atTheLine,
    Map<Double, Share> clocksOnSteps,
    Map<Double, Share> placesOnSteps,
    Optional<Doubt> endsEarly,
    Optional<Doubt> atHome,
    Spellings spellings) {

  /**
   * Counts a game; empty where it has no rows.
   *
   * @param g the game
   * @param frame how its sheet writes clock and places
   */
  public static Optional<GameSigns> of(Game g, Frame frame) {
    if (g.rows().isEmpty()) {
      return Optional.empty();
    }
    String sheet = g.rows().get(0).sheet();
    return Optional.of(
        new GameSigns(
            g.id(),
            sheet,
            frame,
            new Directions.OfGame(g),
            Spots.faceOffs(g, frame),
            new WhoFollows(g),
            new ManpowerSides(g),
            new Kinds(g),
            AtTheLine.atTheLine(g),
            Steps.clocks(g, frame),
            Steps.places(g, frame),
            Steps.endsEarly(g, frame),
            AtHome.doubt(g, sheet),
            new Spellings(g)));
  }
}
