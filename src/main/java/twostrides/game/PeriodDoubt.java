package twostrides.game;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * A game whose clocks say that its periods are shorter than they were taken for: no regular period
 * goes beyond a shorter length that leagues play, and the periods begin or end there. A game that
 * was written down in part, or overtime, says nothing of the kind.
 *
 * @param sheet file name
 * @param game the game's id
 * @param minutes the length that its clocks show
 */
public record PeriodDoubt(String sheet, String game, int minutes) {

  /** Shorter periods that leagues play, in minutes, the shortest first. Assumed. */
  private static final List<Integer> SHORTER = List.of(10, 12, 15, 17);

  private static final int REGULAR_PERIODS = 3;
  private static final double MINUTE = 60;

  /** Metres within which a face-off is at center ice: places are written to a foot or better. */
  private static final double AT_CENTER = 1;

  /** One reading of the clock as the sheet writes it; opens: a face-off at center. */
  private record Reading(String sheet, int period, double clock, boolean opens) {}

  /**
   * Whether a game of play sheets is in doubt.
   *
   * @param game the game
   * @param countsDown whether the clocks show the time left
   */
  public static Optional<PeriodDoubt> in(Game game, boolean countsDown) {
    return of(
        game.id(),
        game.periodLength(),
        countsDown,
        game.rows().stream().map(r -> reading(r, game.periodLength(), countsDown)).toList());
  }

  /**
   * Whether a game of tag sheets is in doubt.
   *
   * @param game the game
   * @param countsDown whether the clocks show the time left
   */
  public static Optional<PeriodDoubt> in(TaggedGame game, boolean countsDown) {
    return of(
        game.id(),
        game.periodLength(),
        countsDown,
        game.exits().stream()
            .map(
                e ->
                    new Reading(
                        e.sheet(),
                        e.period(),
                        clock(e.elapsed(), game.periodLength(), countsDown),
                        false))
            .toList());
  }

  private static Reading reading(PlayRow r, double length, boolean countsDown) {
    boolean center = r.place().map(p -> Math.hypot(p.x(), p.y()) <= AT_CENTER).orElse(true);
    return new Reading(
        r.sheet(),
        r.period(),
        clock(r.elapsed(), length, countsDown),
        r.action() == Action.FACEOFF && center);
  }

  private static double clock(double elapsed, double length, boolean countsDown) {
    return countsDown ? length - elapsed : elapsed;
  }

  private static Optional<PeriodDoubt> of(
      String game, double length, boolean countsDown, List<Reading> readings) {
    Map<Integer, List<Reading>> periods =
        readings.stream()
            .filter(r -> r.period() <= REGULAR_PERIODS)
            .collect(Collectors.groupingBy(Reading::period, TreeMap::new, Collectors.toList()));
    double highest =
        readings.stream()
            .filter(r -> r.period() <= REGULAR_PERIODS)
            .mapToDouble(Reading::clock)
            .max()
            .orElse(0);
    for (int minutes : SHORTER) {
      double shorter = minutes * MINUTE;
      if (shorter >= length || highest > shorter) {
        continue;
      }
      boolean opened =
          countsDown
              && readings.stream()
                  .anyMatch(
                      r -> r.period() <= REGULAR_PERIODS && r.opens() && r.clock() == shorter);
      boolean full =
          periods.size() > 1 && periods.values().stream().allMatch(p -> full(p, shorter));
      if (opened || full) {
        return Optional.of(new PeriodDoubt(readings.get(0).sheet(), game, minutes));
      }
    }
    return Optional.empty();
  }

  /** Whether readings go from one end of a period to the other, to a minute. */
  private static boolean full(Collection<Reading> period, double length) {
    double most = period.stream().mapToDouble(Reading::clock).max().orElse(0);
    double least = period.stream().mapToDouble(Reading::clock).min().orElse(length);
    return least <= MINUTE && most > length - MINUTE;
  }
}
