package twostrides.exits;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Situations at the events of one game. An exit, its release and the restart behind it share one,
 * and equal names share one object: a league's season stays in memory.
 */
final class Situations {

  private final PuckTimeline timeline;
  private final ScoreAndKills score;
  private final IdentityHashMap<PuckEvent, Situation> ofActing = new IdentityHashMap<>();
  private final Map<String, Optional<String>> names = new HashMap<>();

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
    return e.by(team) ? ofActing.computeIfAbsent(e, acting -> make(acting, team)) : make(e, team);
  }

  private Situation make(PuckEvent e, String team) {
    boolean acts = e.by(team);
    return new Situation(
        when(e),
        team,
        name(timeline.game().opponentOf(team)),
        acts ? e.player().flatMap(this::name) : Optional.empty(),
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

  private Optional<String> name(String name) {
    return names.computeIfAbsent(name, Optional::of);
  }

  When when(PuckEvent e) {
    return new When(
        timeline.fixture(),
        e.period(),
        e.elapsed(),
        e.video(),
        e.row().sheet(),
        Math.toIntExact(e.row().line()));
  }
}
