package twostrides.exits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import tech.tablesaw.api.Table;
import twostrides.race.Chance;
import twostrides.race.SeededRandom;
import twostrides.rink.Rink;

/**
 * Could he have gained center? For every release short of center: the chance, on what it rests, and
 * whether it is flagged. Definitions: docs/race.md.
 */
final class ChancesStage {

  private final RaceSettings settings;
  private final CarryRates carry;
  private final Costs costs;
  private final List<ReleaseRow> releases = new ArrayList<>();

  private ChancesStage(
      Table table, Map<String, Rink> rinks, CarryRates carry, Costs costs, RaceSettings settings) {
    this.settings = settings;
    this.carry = carry;
    this.costs = costs;
    for (int i = 0; i < table.rowCount(); i++) {
      releases.add(new ReleaseRow(table, i, rinks.get(table.stringColumn(Columns.GAME).get(i))));
    }
  }

  /** The columns that this stage fills in the releases table, in order. */
  static Shape declare(Shape shape) {
    return shape
        .number(
            Columns.SECONDS_TO_CENTER,
            Columns.P_GAIN_CENTER,
            Columns.P_GAIN_LOW,
            Columns.P_GAIN_HIGH,
            Columns.P_AVOID)
        .text(Columns.EVIDENCE)
        .flag(Columns.FLAGGED)
        .text(Columns.REASON, Columns.SEED);
  }

  /**
   * Fills the releases table and builds the flags table: every release that an own-zone restart
   * followed, flagged or not, with the reason.
   *
   * @param releases the releases of play sheets and tag sheets
   * @param rinks the rink of each game
   * @param carry how carriers of these sheets fare
   * @param costs what icings and lost pucks cost
   * @param settings the race and the threshold
   * @param skaters who was where at a release
   */
  static Table run(
      Table releases,
      Map<String, Rink> rinks,
      CarryRates carry,
      Costs costs,
      RaceSettings settings,
      SkatersAtRelease skaters) {
    return new ChancesStage(releases, rinks, carry, costs, settings).fill(skaters);
  }

  private Table fill(SkatersAtRelease skaters) {
    List<List<Around>> around =
        releases.stream()
            .map(r -> skaters.at(r.game(), r.text(Columns.SHEET), r.count(Columns.LINE)))
            .toList();
    // Each race draws from its own id alone, so the order and the threads change nothing.
    List<Said> said =
        IntStream.range(0, releases.size())
            .parallel()
            .mapToObj(i -> said(releases.get(i), around.get(i)))
            .toList();
    FlagRows flags = new FlagRows(settings, costs, new KindIcings(releases));
    for (int i = 0; i < said.size(); i++) {
      ReleaseRow r = releases.get(i);
      write(r.table(), i, said.get(i));
      if (r.restarted().orElse(false)) {
        flags.add(r, said.get(i), draws(r));
      }
    }
    return flags.table();
  }

  private Said said(ReleaseRow r, List<Around> around) {
    int n = r.restarted().orElse(false) ? settings.draws() : settings.fewer();
    List<Measured> seen =
        around.stream()
            .map(a -> Measured.of(r.rink(), a, settings.skaters().settings(), draws(r), n))
            .toList();
    return Said.of(Ground.of(r, carry, seen), costs, settings.threshold(), toWeigh(r));
  }

  private SeededRandom draws(ReleaseRow r) {
    return new SeededRandom(settings.seed(), r.game() + "#" + r.count(Columns.RELEASE));
  }

  /** Why there is nothing to weigh; {@link FlagVerdict#FLAGGED} where icing followed. */
  private static FlagVerdict toWeigh(ReleaseRow r) {
    if (!r.restarted().orElse(false)) {
      return FlagVerdict.NO_RESTART;
    }
    if (!r.iced()) {
      return r.text(Columns.RESTART_CAUSE).equals(RestartCause.UNKNOWN.label())
          ? FlagVerdict.UNKNOWN_CAUSE
          : FlagVerdict.OTHER_CAUSE;
    }
    return r.mayBeIcing() ? FlagVerdict.FLAGGED : FlagVerdict.NOT_ICING;
  }

  private void write(Table table, int i, Said said) {
    Ground ground = said.ground();
    table.doubleColumn(Columns.SECONDS_TO_CENTER).set(i, ground.seconds());
    ground
        .gain()
        .ifPresent(
            g -> {
              table.doubleColumn(Columns.P_GAIN_CENTER).set(i, g.p());
              table.doubleColumn(Columns.P_GAIN_LOW).set(i, g.low());
              table.doubleColumn(Columns.P_GAIN_HIGH).set(i, g.high());
            });
    said.avoid().map(Chance::p).ifPresent(p -> table.doubleColumn(Columns.P_AVOID).set(i, p));
    table.stringColumn(Columns.EVIDENCE).set(i, ground.evidence().word());
    table.booleanColumn(Columns.FLAGGED).set(i, said.verdict() == FlagVerdict.FLAGGED);
    table.stringColumn(Columns.REASON).set(i, said.verdict().words());
    table.stringColumn(Columns.SEED).set(i, String.valueOf(settings.seed()));
  }
}
