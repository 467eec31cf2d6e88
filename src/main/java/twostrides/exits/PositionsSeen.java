package twostrides.exits;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import twostrides.game.Fixture;
import twostrides.race.GainChance;
import twostrides.race.MeasuredGain;
import twostrides.race.Racer;
import twostrides.race.Sighting;
import twostrides.rink.Units;

/**
 * What the places of skaters say of a release.
 *
 * @param around who was seen; of a measured release that no own-zone restart followed only the
 *     carrier is kept, as no page shows it and a league has tens of thousands
 * @param opponents opponents seen, the nearest to the puck first; none where only the carrier is
 *     kept
 * @param gain chance of gaining center, where enough opponents were seen to measure it
 */
public record PositionsSeen(Around around, List<Sighting> opponents, Optional<GainChance> gain) {

  /** An opponent farther off than this has no say, metres. Assumed. */
  static final double NEAR = 20;

  /** Fewest opponents within that distance: a camera that shows one shows a part. Assumed. */
  static final int LEAST_NEAR = 2;

  /** So many opponents seen are all of them, or all but one, wherever they are. */
  static final int NEARLY_ALL = 4;

  /**
   * Looks at a release and runs its race. Each race has a seed of its own, so the order and the
   * threads change nothing.
   *
   * @param at the release
   * @param number its number in the game
   * @param outcome what became of it: one that an own-zone restart followed takes all simulations
   * @param around who was seen
   * @param race seed, simulations, and what a skater of this game can do
   */
  public static PositionsSeen of(
      Situation at, int number, ExitOutcome outcome, Around around, RaceSettings race) {
    Racer carrier = around.carrier().racer();
    List<Sighting> opponents =
        around.others().stream()
            .filter(s -> !s.racer().chases())
            .sorted(Comparator.comparingDouble(s -> apart(carrier, s)))
            .toList();
    boolean enough =
        opponents.size() >= NEARLY_ALL
            || opponents.stream().filter(s -> apart(carrier, s) <= NEAR).count() >= LEAST_NEAR;
    if (!enough) {
      return new PositionsSeen(around, opponents, Optional.empty());
    }
    Fixture game = at.when().game();
    MeasuredGain gain =
        new MeasuredGain(game.rink(), around.carrier(), opponents, race.skaters().settings());
    boolean shown = outcome.restarted().orElse(false);
    int n = shown ? race.simulations() : race.fewer();
    return new PositionsSeen(
        shown ? around : around.carrierAlone(),
        shown ? opponents : List.of(),
        Optional.of(gain.run(race.random(game, number), n)));
  }

  private static double apart(Racer puck, Sighting s) {
    return Math.hypot(s.racer().x() - puck.x(), s.racer().y() - puck.y());
  }

  private Racer carrier() {
    return around.carrier().racer();
  }

  /** Metres from the puck to the nearest opponent seen. */
  public OptionalDouble nearest() {
    return opponents.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(apart(carrier(), opponents.get(0)));
  }

  /** Everybody seen but the carrier, a text each. */
  public String skaters() {
    return around.others().stream().map(PositionsSeen::skater).collect(Collectors.joining("; "));
  }

  private static String skater(Sighting s) {
    Racer r = s.racer();
    String place =
        String.format(Locale.ROOT, "%s %.1f %.1f", r.chases() ? "own" : "opponent", r.x(), r.y());
    return s.speedKnown()
        ? place + String.format(Locale.ROOT, " %.1f %.1f", r.vx(), r.vy())
        : place;
  }

  /** Who was where, a phrase. */
  public String words() {
    int n = opponents.size();
    String seen = n + (n == 1 ? " opponent seen" : " opponents seen");
    long fast = opponents.stream().filter(Sighting::speedKnown).count();
    String nearest =
        n == 0
            ? ""
            : String.format(
                Locale.ROOT,
                ", the nearest %s from the puck and %s it%s%s",
                length(apart(carrier(), opponents.get(0))),
                side(opponents.get(0).racer()),
                n == 1
                    ? ""
                    : String.format(
                        Locale.ROOT, ", the next %s", length(apart(carrier(), opponents.get(1)))),
                fast == n ? "" : ", speeds known of " + fast);
    String why = gain.isPresent() ? "" : ", too few near the puck to measure";
    return seen + nearest + (around.note().isEmpty() ? "" : " (" + around.note() + ")") + why;
  }

  /** Metres and feet, as pages can show either. */
  private static String length(double metres) {
    return String.format(Locale.ROOT, "%.1f m (%.0f ft)", metres, Units.FOOT.fromMetres(metres));
  }

  private String side(Racer r) {
    double dx = r.x() - carrier().x();
    double dy = Math.abs(r.y() - carrier().y());
    return dx > dy ? "ahead of" : dx < -dy ? "behind" : "beside";
  }
}
