package twostrides.exits;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import tech.tablesaw.api.Table;
import twostrides.race.Delivery;
import twostrides.race.Draws;
import twostrides.race.GainChance;
import twostrides.race.LossRate;
import twostrides.race.PuckSpread;
import twostrides.race.RaceChances;
import twostrides.race.RaceModel;
import twostrides.race.Scene;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;

/**
 * Could he have gained center? For every release short of center: the chance of icing, of gaining
 * center, of avoiding the restart, and whether it is flagged.
 *
 * <p>A release is flagged when an own-zone restart followed, gaining center would likely have
 * avoided it, and trying costs less than the restart did. Definitions: docs/exits.md.
 */
final class ChancesStage {

  /** Least share of a chance near 0 or 1 that a race of finitely many draws can mean. */
  private static final double FLOOR = 0.002;

  /** Draws that show where a puck would go: enough for a drawing. */
  private static final int SPREAD_DRAWS = 400;

  private final Play play;
  private final SheetFacts facts;
  private final RaceSettings settings;
  private final CarryRates carry;
  private final Costs costs;
  private final SkatersAtRelease skaters;
  private final List<Move> releases = new ArrayList<>();

  private ChancesStage(Play play, Costs costs, SkatersAtRelease skaters) {
    this.play = play;
    this.facts = new SheetFacts(play);
    this.settings = play.settings().race();
    this.carry = new CarryRates(play);
    this.costs = costs;
    this.skaters = skaters;
    for (Move m : play.moves()) {
      if (play.shortOfCenter(m).isPresent()) {
        releases.add(m);
      }
    }
  }

  /** The columns that this stage fills in the releases table, in order. */
  static Shape declare(Shape shape) {
    return shape
        .number(
            Columns.SECONDS_TO_CENTER,
            Columns.P_ICING,
            Columns.P_ICING_ERROR,
            Columns.P_GAIN_CENTER,
            Columns.P_AVOID)
        .text(Columns.EVIDENCE)
        .flag(Columns.FLAGGED)
        .text(Columns.REASON)
        .text(Columns.SEED);
  }

  /** The flags table's columns, in the order in which they are written out. */
  static Shape shape() {
    return new Shape("flags")
        .text(Columns.GAME)
        .count(Columns.RELEASE, Columns.PERIOD)
        .number(Columns.RELEASE_ELAPSED_S)
        .text(Columns.TEAM, Columns.PLAYER, Columns.STRENGTH)
        .number(Columns.RELEASE_X_M, Columns.RELEASE_Y_M, Columns.SHORT_OF_CENTER_M)
        .text(Columns.RESTART_CAUSE)
        .number(
            Columns.SECONDS_TO_CENTER,
            Columns.P_ICING,
            Columns.P_ICING_ERROR,
            Columns.P_GAIN_CENTER,
            Columns.P_AVOID)
        .text(Columns.EVIDENCE)
        .count(Columns.OPPONENTS_SEEN)
        .number(Columns.NEAREST_OPPONENT_M)
        .text(Columns.SKATERS_SEEN)
        .number(
            Columns.P_LENGTH,
            Columns.PUCK_X_M,
            Columns.PUCK_RIGHT_M,
            Columns.PUCK_MIDDLE_M,
            Columns.PUCK_LEFT_M,
            Columns.COST_RESTART,
            Columns.COST_TRYING)
        .flag(Columns.FLAGGED)
        .text(Columns.FLAG_SENTENCE, Columns.RULING, Columns.CLAUSE, Columns.SEED)
        .number(Columns.VIDEO_S)
        .text(Columns.SHEET)
        .count(Columns.LINE);
  }

  /**
   * Fills the releases table and builds the flags table: every release that an own-zone restart
   * followed, flagged or not, with the reason.
   *
   * @param releases the releases table, its rows those of the moves in order
   * @param costs what restarts and lost pucks cost
   * @param play the moves
   * @param skaters who was where at a release
   */
  static Table run(Table releases, Costs costs, Play play, SkatersAtRelease skaters) {
    return new ChancesStage(play, costs, skaters).fill(releases);
  }

  private Table fill(Table table) {
    boolean[] restarted = new boolean[releases.size()];
    boolean[] iced = new boolean[releases.size()];
    for (int i = 0; i < restarted.length; i++) {
      restarted[i] = Cells.flag(table, Columns.OWN_ZONE_RESTART, i).orElse(false);
      iced[i] = table.stringColumn(Columns.RESTART_CAUSE).get(i).startsWith("icing");
    }
    RaceChances[] races = new RaceChances[releases.size()];
    List<Optional<Around>> around =
        releases.stream().map(m -> skaters.at(m.game(), m.sheet(), m.line())).toList();
    List<Optional<Measured>> seen = new ArrayList<>(Collections.nCopies(races.length, null));
    // Each race draws from its own id alone, so the order and the threads change nothing.
    IntStream.range(0, races.length)
        .parallel()
        .forEach(
            i -> {
              Move m = releases.get(i);
              int n = restarted[i] ? settings.draws() : settings.fewer();
              Draws draws = draws(m, table, i);
              Optional<Measured> measured =
                  around
                      .get(i)
                      .map(
                          a ->
                              Measured.of(
                                  play.rink(m), a, settings.skaters().settings(), draws, n));
              seen.set(i, measured);
              races[i] = race(m, measured, draws, n);
            });
    boolean[] possible = new boolean[races.length];
    for (int i = 0; i < possible.length; i++) {
      possible[i] = mayBeIcing(releases.get(i));
    }
    double[] shift = shifts(races, possible, iced);
    Shape.Filler out = shape().filler();
    for (int i = 0; i < races.length; i++) {
      OptionalDouble moved =
          possible[i]
              ? OptionalDouble.of(moved(races[i].pIcing(), shift[kind(releases.get(i))]))
              : OptionalDouble.empty();
      row(table, i, races[i], seen.get(i), moved, restarted[i], out);
    }
    return out.table();
  }

  /** Whether the book may call a release icing at all: not of a team it exempts. */
  private boolean mayBeIcing(Move m) {
    Ruling ruling = Judge.judge(play.settings().book(), facts.iced(m));
    return !(ruling instanceof Ruling.NoIcing);
  }

  private Draws draws(Move m, Table table, int row) {
    return new Draws(
        settings.seed(), m.game() + "#" + table.intColumn(Columns.RELEASE).getInt(row));
  }

  private RaceChances race(Move m, Optional<Measured> seen, Draws draws, int n) {
    return new RaceModel(scene(m, seen), play.settings().book().raceQuestion()).run(draws, n);
  }

  private Scene scene(Move m, Optional<Measured> seen) {
    Delivery delivery =
        (m.kind() == Move.Kind.MISSED_PASS ? Delivery.MISSED_PASS : Delivery.SENT)
            .forLevel(settings.level());
    return new Scene(
        play.rink(m),
        m.x().orElseThrow(),
        m.y().orElse(0),
        delivery,
        OptionalDouble.empty(),
        seen.map(Measured::racers).orElse(List.of()),
        settings.skaters(),
        seen.map(s -> s.unseen(true, m.strength())).orElse(0),
        seen.map(s -> s.unseen(false, m.strength())).orElse(0));
  }

  /** Sent from the own zone, sent from the neutral zone, missed pass from either: four kinds. */
  private int kind(Move m) {
    boolean pass = m.kind() == Move.Kind.MISSED_PASS;
    boolean inside = play.rink(m).inOwnZone(m.x().orElseThrow());
    return (pass ? 2 : 0) + (inside ? 1 : 0);
  }

  /**
   * How far the chances of each kind must move, on the log-odds scale, for their sum to be the
   * icings that these sheets have, drawn toward no move at all: the race knows neither the places
   * of skaters nor how hard this league clears. A prior of standard deviation 1.5 is assumed.
   */
  private double[] shifts(RaceChances[] races, boolean[] possible, boolean[] iced) {
    double[] shift = new double[4];
    double priorWeight = 1 / (1.5 * 1.5);
    for (int k = 0; k < shift.length; k++) {
      for (int step = 0; step < 50; step++) {
        double gradient = -priorWeight * shift[k];
        double bend = priorWeight;
        for (int i = 0; i < races.length; i++) {
          if (!possible[i] || kind(releases.get(i)) != k) {
            continue;
          }
          double p = moved(races[i].pIcing(), shift[k]);
          gradient += (iced[i] ? 1 : 0) - p;
          bend += p * (1 - p);
        }
        double change = gradient / bend;
        shift[k] += change;
        if (Math.abs(change) < 1e-9) {
          break;
        }
      }
    }
    return shift;
  }

  private static double moved(double p, double shift) {
    double inside = Math.min(1 - FLOOR, Math.max(FLOOR, p));
    return 1 / (1 + Math.exp(-Math.log(inside / (1 - inside)) - shift));
  }

  private void row(
      Table table,
      int i,
      RaceChances race,
      Optional<Measured> seen,
      OptionalDouble chance,
      boolean restarted,
      Shape.Filler out) {
    Move m = releases.get(i);
    double icing = chance.orElse(0);
    double error = chance.isPresent() ? race.error(race.icing()) : 0;
    double metres = play.shortOfCenter(m).orElseThrow();
    Optional<GainChance> measured = seen.flatMap(Measured::gain);
    double seconds = measured.map(GainChance::seconds).orElse(metres / carry.pace());
    LossRate losses = carry.losses(m.pressure());
    double gain = measured.map(GainChance::chance).orElse(losses.keeps(seconds));
    double avoid = gain * (1 - costs.restartAfterGaining());
    double trying = (1 - gain) * costs.loss();
    Evidence evidence =
        measured.isPresent()
            ? Evidence.MEASURED
            : m.pressure().isPresent() ? Evidence.TAGGED : Evidence.INFERRED;
    FlagVerdict verdict = verdict(table, i, restarted, avoid, trying);
    String ground = FlagWords.ground(m, losses, evidence, seen);
    String sentence =
        new FlagWords(settings.threshold(), costs.restart())
            .sentence(metres, seconds, ground, gain, avoid, trying, verdict);
    table.doubleColumn(Columns.SECONDS_TO_CENTER).set(i, seconds);
    table.doubleColumn(Columns.P_ICING).set(i, icing);
    table.doubleColumn(Columns.P_ICING_ERROR).set(i, error);
    table.doubleColumn(Columns.P_GAIN_CENTER).set(i, gain);
    table.doubleColumn(Columns.P_AVOID).set(i, avoid);
    table.stringColumn(Columns.EVIDENCE).set(i, evidence.word());
    table.booleanColumn(Columns.FLAGGED).set(i, verdict == FlagVerdict.FLAGGED);
    table.stringColumn(Columns.REASON).set(i, verdict.words());
    table.stringColumn(Columns.SEED).set(i, String.valueOf(settings.seed()));
    if (restarted) {
      PuckSpread spread =
          PuckSpread.of(
              scene(m, seen), draws(m, table, i), Math.min(SPREAD_DRAWS, settings.draws()));
      out.row()
          .text(Columns.GAME, m.game())
          .count(Columns.RELEASE, table.intColumn(Columns.RELEASE).getInt(i))
          .count(Columns.PERIOD, m.period())
          .number(Columns.RELEASE_ELAPSED_S, m.elapsed())
          .text(Columns.TEAM, m.team())
          .text(Columns.PLAYER, m.player())
          .text(Columns.STRENGTH, m.strength())
          .number(Columns.RELEASE_X_M, m.x())
          .number(Columns.RELEASE_Y_M, m.y())
          .number(Columns.SHORT_OF_CENTER_M, metres)
          .text(Columns.RESTART_CAUSE, table.stringColumn(Columns.RESTART_CAUSE).get(i))
          .number(Columns.SECONDS_TO_CENTER, seconds)
          .number(Columns.P_ICING, icing)
          .number(Columns.P_ICING_ERROR, error)
          .number(Columns.P_GAIN_CENTER, gain)
          .number(Columns.P_AVOID, avoid)
          .text(Columns.EVIDENCE, evidence.word())
          .count(
              Columns.OPPONENTS_SEEN,
              seen.map(s -> OptionalInt.of(s.opponents().size())).orElse(OptionalInt.empty()))
          .number(
              Columns.NEAREST_OPPONENT_M,
              seen.map(Measured::nearest).orElse(OptionalDouble.empty()))
          .text(Columns.SKATERS_SEEN, seen.map(Measured::skaters))
          .number(Columns.P_LENGTH, spread.past())
          .number(Columns.PUCK_X_M, spread.farthest().x())
          .number(Columns.PUCK_RIGHT_M, spread.farthest().low())
          .number(Columns.PUCK_MIDDLE_M, spread.farthest().middle())
          .number(Columns.PUCK_LEFT_M, spread.farthest().high())
          .number(Columns.COST_RESTART, costs.restart())
          .number(Columns.COST_TRYING, trying)
          .flag(Columns.FLAGGED, verdict == FlagVerdict.FLAGGED)
          .text(Columns.FLAG_SENTENCE, sentence)
          .text(Columns.RULING, Cells.text(table, Columns.RULING, i))
          .text(Columns.CLAUSE, Cells.text(table, Columns.CLAUSE, i))
          .text(Columns.SEED, String.valueOf(settings.seed()))
          .number(Columns.VIDEO_S, m.video())
          .text(Columns.SHEET, m.sheet())
          .count(Columns.LINE, m.line());
    }
  }

  private FlagVerdict verdict(Table table, int i, boolean restarted, double avoid, double trying) {
    if (!restarted) {
      return FlagVerdict.NO_RESTART;
    }
    String cause = table.stringColumn(Columns.RESTART_CAUSE).get(i);
    if (!cause.startsWith("icing")) {
      return cause.equals(RestartCause.UNKNOWN.label())
          ? FlagVerdict.UNKNOWN_CAUSE
          : FlagVerdict.OTHER_CAUSE;
    }
    if (avoid < settings.threshold()) {
      return FlagVerdict.TOO_RISKY;
    }
    return trying < costs.restart() ? FlagVerdict.FLAGGED : FlagVerdict.TOO_DEAR;
  }
}
