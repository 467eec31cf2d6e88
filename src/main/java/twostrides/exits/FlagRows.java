package twostrides.exits;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;
import twostrides.race.Delivery;
import twostrides.race.PuckSpread;
import twostrides.race.Scene;
import twostrides.race.SeededRandom;
import twostrides.rates.Count;

/** The flags table: one row a release that an own-zone restart followed, flagged or not. */
final class FlagRows {

  /** Columns whose cells are those of the releases table. */
  private static final List<String> WORDS =
      List.of(
          Columns.GAME,
          Columns.TEAM,
          Columns.PLAYER,
          Columns.STRENGTH,
          Columns.RESTART_CAUSE,
          Columns.KIND,
          Columns.RULING,
          Columns.CLAUSE,
          Columns.SHEET);

  private static final List<String> COUNTS = List.of(Columns.RELEASE, Columns.PERIOD, Columns.LINE);
  private static final List<String> NUMBERS =
      List.of(
          Columns.RELEASE_ELAPSED_S,
          Columns.RELEASE_X_M,
          Columns.RELEASE_Y_M,
          Columns.SHORT_OF_CENTER_M,
          Columns.VIDEO_S);

  /** Simulations that show where a puck would go: enough for a drawing. */
  private static final int SPREAD_DRAWS = 400;

  private final RaceSettings settings;
  private final Costs costs;
  private final KindIcings kinds;
  private final FlagWords words;
  private final Shape.Filler out = shape().filler();

  /**
   * An empty table.
   *
   * @param settings the race and the threshold
   * @param costs what icings and lost pucks cost
   * @param kinds how often releases of each kind are iced
   */
  FlagRows(RaceSettings settings, Costs costs, KindIcings kinds) {
    this.settings = settings;
    this.costs = costs;
    this.kinds = kinds;
    this.words = new FlagWords(settings.threshold(), costs.icing());
  }

  /** The columns in the order in which they are written out. */
  private static Shape shape() {
    return new Shape("flags")
        .text(Columns.GAME)
        .count(Columns.RELEASE, Columns.PERIOD)
        .number(Columns.RELEASE_ELAPSED_S)
        .text(Columns.TEAM, Columns.PLAYER, Columns.STRENGTH)
        .number(Columns.RELEASE_X_M, Columns.RELEASE_Y_M, Columns.SHORT_OF_CENTER_M)
        .text(Columns.RESTART_CAUSE, Columns.KIND, Columns.ZONE)
        .count(Columns.KIND_ICED, Columns.KIND_RELEASES)
        .number(
            Columns.SECONDS_TO_CENTER,
            Columns.P_GAIN_CENTER,
            Columns.P_GAIN_LOW,
            Columns.P_GAIN_HIGH,
            Columns.P_AVOID,
            Columns.P_AVOID_LOW,
            Columns.P_AVOID_HIGH)
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
            Columns.COST_ICING,
            Columns.COST_TRYING)
        .flag(Columns.FLAGGED)
        .text(Columns.REASON, Columns.FLAG_SENTENCE, Columns.RULING, Columns.CLAUSE, Columns.SEED)
        .number(Columns.VIDEO_S)
        .text(Columns.SHEET)
        .count(Columns.LINE);
  }

  /**
   * Adds a release.
   *
   * @param r the release
   * @param said what came out for it
   * @param random its random numbers
   */
  void add(ReleaseRow r, Said said, SeededRandom random) {
    KindIcings.Kind kind = KindIcings.Kind.of(r);
    Count alike = kinds.of(kind);
    Ground ground = said.ground();
    out.row();
    for (String same : WORDS) {
      out.text(same, Cells.text(r.table(), same, r.at()));
    }
    for (String same : COUNTS) {
      out.count(same, Cells.count(r.table(), same, r.at()));
    }
    for (String same : NUMBERS) {
      out.number(same, Cells.number(r.table(), same, r.at()));
    }
    out.text(Columns.ZONE, kind.zone())
        .count(Columns.KIND_ICED, alike.successes())
        .count(Columns.KIND_RELEASES, alike.trials())
        .number(Columns.SECONDS_TO_CENTER, ground.seconds());
    chances(said);
    ground
        .seen()
        .ifPresent(
            s ->
                out.count(Columns.OPPONENTS_SEEN, OptionalInt.of(s.opponents().size()))
                    .number(Columns.NEAREST_OPPONENT_M, s.nearest())
                    .text(Columns.SKATERS_SEEN, s.skaters()));
    puck(r, random);
    out.number(Columns.COST_ICING, costs.icing())
        .number(Columns.COST_TRYING, said.trying())
        .text(Columns.EVIDENCE, ground.evidence().word())
        .flag(Columns.FLAGGED, said.verdict() == FlagVerdict.FLAGGED)
        .text(Columns.REASON, said.verdict().words())
        .text(Columns.FLAG_SENTENCE, words.sentence(r.metres(), said))
        .text(Columns.SEED, String.valueOf(settings.seed()));
  }

  private void chances(Said said) {
    said.ground()
        .gain()
        .ifPresent(
            g ->
                out.number(Columns.P_GAIN_CENTER, g.p())
                    .number(Columns.P_GAIN_LOW, g.low())
                    .number(Columns.P_GAIN_HIGH, g.high()));
    said.avoid()
        .ifPresent(
            a ->
                out.number(Columns.P_AVOID, a.p())
                    .number(Columns.P_AVOID_LOW, a.low())
                    .number(Columns.P_AVOID_HIGH, a.high()));
  }

  /** Where the puck would go with nobody in its way: for the drawing. */
  private void puck(ReleaseRow r, SeededRandom random) {
    Delivery delivery =
        (r.missedPass() ? Delivery.MISSED_PASS : Delivery.SENT).forLevel(settings.level());
    Scene scene =
        new Scene(
            r.rink(),
            r.x(),
            r.y(),
            delivery,
            OptionalDouble.empty(),
            List.of(),
            settings.skaters());
    PuckSpread spread = PuckSpread.of(scene, random, Math.min(SPREAD_DRAWS, settings.draws()));
    out.number(Columns.P_LENGTH, spread.past())
        .number(Columns.PUCK_X_M, spread.farthest().x())
        .number(Columns.PUCK_RIGHT_M, spread.farthest().low())
        .number(Columns.PUCK_MIDDLE_M, spread.farthest().middle())
        .number(Columns.PUCK_LEFT_M, spread.farthest().high());
  }

  /** The table. */
  Table table() {
    return out.table();
  }
}
