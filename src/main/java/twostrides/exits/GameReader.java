package twostrides.exits;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Game;

/**
 * One game becomes its records: a pure function, so that games can be read on any thread or
 * machine. Numbers count from 1 in the order of play.
 */
public final class GameReader {

  private final PuckTimeline timeline;
  private final Situations situations;
  private final ScoreAndKills score;
  private final ExitOutcomes outcomes;
  private final StoppageCause stops;
  private final Rulings rulings;
  private final Shifts shifts;
  private final RaceSettings race;
  private final IdentityHashMap<PuckEvent, Exit> exitOf = new IdentityHashMap<>();
  private final IdentityHashMap<PuckEvent, Release> releaseOf = new IdentityHashMap<>();

  private GameReader(PuckTimeline timeline, RaceSettings race) {
    this.timeline = timeline;
    this.score = new ScoreAndKills(timeline);
    this.situations = new Situations(timeline, score);
    this.outcomes = new ExitOutcomes(timeline);
    this.stops = new StoppageCause(timeline);
    this.rulings = new Rulings(timeline);
    this.shifts = new Shifts(timeline);
    this.race = race;
  }

  /**
   * Reads a game.
   *
   * @param game the game
   * @param run window, books of each season, which source of manpower wins, race
   */
  public static GameRecords read(Game game, Settings run) {
    Settings settings = run.on(game.date());
    ManpowerRead manpower = ManpowerRead.of(game, settings);
    GameReader reader = new GameReader(new PuckTimeline(game, manpower, settings), settings.race());
    List<Exit> exits = reader.exits();
    return new GameRecords(
        reader.timeline.fixture(),
        exits,
        reader.releases(),
        reader.restarts(),
        reader.kills(exits),
        manpower.gaps(),
        manpower.compared(),
        Carries.of(reader.timeline));
  }

  private List<Exit> exits() {
    List<Exit> exits = new ArrayList<>();
    for (Attempts.Attempt a : Attempts.of(timeline)) {
      Exit exit =
          new Exit(
              exits.size() + 1,
              a.start().elapsed(),
              situations.of(a.release()),
              a.player(),
              a.way(),
              a.mark(),
              outcomes.of(a.release(), ExitOutcomes.Owner.ATTEMPT),
              shifts.before(a.release(), a.start().team().orElseThrow()));
      exits.add(exit);
      timeline
          .events()
          .subList(a.start().index(), a.last().index() + 1)
          .forEach(e -> exitOf.put(e, exit));
    }
    return exits;
  }

  private List<Release> releases() {
    List<Release> releases = new ArrayList<>();
    for (PuckEvent e : timeline.events()) {
      if (timeline.shortOfCenter(e).isPresent()) {
        int number = releases.size() + 1;
        Situation at = situations.of(e);
        ExitOutcome outcome = outcomes.of(e, ExitOutcomes.Owner.RELEASE);
        LetGo how = letGo(e);
        Release release =
            new Release(
                number,
                Optional.ofNullable(exitOf.get(e)),
                at,
                how,
                outcome,
                new Release.Rulings(rulings.of(e), rulings.mayBeIcing(e), rulings.byOtherBooks(e)),
                Around.of(e.row()).map(a -> PositionsSeen.of(at, number, outcome, a, race)),
                Release.puck(at, number, how, outcome, race));
        releases.add(release);
        releaseOf.put(e, release);
      }
    }
    return releases;
  }

  private LetGo letGo(PuckEvent e) {
    return new LetGo(
        e.kind() == PuckEvent.Kind.MISSED_PASS ? LetGo.Kind.MISSED_PASS : LetGo.Kind.SENT,
        Optional.of(e.goal() ? LetGo.Shot.SCORED : e.shot() ? LetGo.Shot.TAKEN : LetGo.Shot.NONE),
        OptionalDouble.of(CarriedUpIce.metres(timeline, e)));
  }

  private List<Restart> restarts() {
    List<Restart> restarts = new ArrayList<>();
    for (PuckEvent e : timeline.events()) {
      if (e.kind() == PuckEvent.Kind.FACEOFF) {
        String winner = e.team().orElseThrow();
        String loser = timeline.opponent(e);
        if (timeline.surelyInOwnZone(e, winner)) {
          restarts.add(restart(e, winner));
        } else if (timeline.surelyInOwnZone(e, loser)) {
          restarts.add(restart(e, loser));
        }
      }
    }
    return restarts;
  }

  private Restart restart(PuckEvent faceOff, String team) {
    Optional<PuckEvent> last = timeline.lastControlBefore(faceOff);
    Optional<PuckEvent> own = last.filter(e -> e.by(team));
    StoppageCause.Finding finding = stops.cause(team, faceOff);
    return new Restart(
        new Restart.FaceOff(
            situations.when(faceOff),
            OptionalDouble.of(faceOff.elapsed()),
            finding.cause(),
            finding.reason(),
            Optional.of(faceOff.by(team)),
            Optional.of(faceOff.strength(team)),
            outcomes.against(faceOff, team),
            new Restart.ShiftTimes(shifts.before(faceOff, team), shifts.after(faceOff, team))),
        situations.of(own.orElse(faceOff), team),
        last.map(e -> e.by(team)),
        own.map(e -> behind(e, faceOff)));
  }

  private Restart.Behind behind(PuckEvent touch, PuckEvent faceOff) {
    return new Restart.Behind(
        Optional.ofNullable(releaseOf.get(touch)),
        Optional.ofNullable(exitOf.get(touch)),
        touch.release() ? rulings.of(touch) : BookRuling.NO_RELEASE,
        OptionalDouble.of(faceOff.elapsed() - touch.elapsed()));
  }

  private List<Kill> kills(List<Exit> exits) {
    return score.stretches().stream().map(s -> kill(s, exits)).toList();
  }

  private Kill kill(ScoreAndKills.Stretch s, List<Exit> exits) {
    List<Kill.Event> happened = new ArrayList<>();
    double seconds = 0;
    for (PuckEvent e : timeline.events().subList(s.first().index(), s.end().index())) {
      if (e.kind() == PuckEvent.Kind.FACEOFF) {
        happened.add(new Kill.Event(Kill.What.FACE_OFF, seconds, e.video()));
      } else if (e.shot() && !e.by(s.team())) {
        happened.add(
            new Kill.Event(
                e.goal() ? Kill.What.GOAL_AGAINST : Kill.What.ATTEMPT_AGAINST, seconds, e.video()));
      }
      PuckEvent next = timeline.next(e);
      seconds += next.period() == e.period() ? next.elapsed() - e.elapsed() : 0;
    }
    return new Kill(
        s.number(),
        s.team(),
        timeline.game().opponentOf(s.team()),
        situations.when(s.first()),
        new Kill.End(s.end().period(), s.end().elapsed(), seconds),
        exits.stream().filter(x -> x.at().state().kill().orElse(0) == s.number()).toList(),
        happened,
        timeline.writesShots());
  }
}
