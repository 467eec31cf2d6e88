package twostrides.exits;

import java.util.Optional;

/** Situations at the events of one game. */
final class Situations {

  private final PuckTimeline timeline;
  private final ScoreAndKills score;

  Situations(PuckTimeline timeline, ScoreAndKills score) {
    this.timeline = timeline;
    this.score = score;
  }

  /** The situation of the team that acts. */
  Situation of(PuckEvent e) {
    return of(e, e.team().orElseThrow());
  }

  /**
   * A team's situation. Place, player, net and pressure are those of the team that acts; of the
   * other the row says nothing.
   *
   * @param e the event
   * @param team one of the two teams
   */
  Situation of(PuckEvent e, String team) {
    boolean acts = e.by(team);
    return new Situation(
        when(e),
        team,
        Optional.of(timeline.game().opponentOf(team)),
        acts ? e.player() : Optional.empty(),
        acts ? Where.of(timeline, e) : Where.UNKNOWN,
        acts ? Onward.of(timeline, e) : Onward.UNKNOWN,
        new GameState(
            e.strength(team),
            acts ? e.row().manpower().netEmpty() : Optional.empty(),
            acts ? e.row().pressure() : Optional.empty(),
            score.goalsAhead(e, team),
            timeline.onIce(e, team),
            score.sinceShorthanded(e, team),
            score.kill(e, team)));
  }

  When when(PuckEvent e) {
    return new When(
        timeline.game().fixture(),
        e.period(),
        e.elapsed(),
        e.video(),
        e.row().sheet(),
        Math.toIntExact(e.row().line()));
  }
}
