package twostrides.exits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.stats.CensoredTime;

/**
 * A stretch in which a team is shorthanded, from the first row that shows it so to the first that
 * does not.
 *
 * @param number number in its game, from 1
 * @param team who is shorthanded
 * @param opponent the other team
 * @param from when it begins
 * @param end when it ends
 * @param exits the team's exit attempts in it
 * @param events the opponent's shots, and the face-offs, in it
 * @param writesShots whether the sheet writes shots; else only goals are among the events
 */
public record Kill(
    int number,
    String team,
    String opponent,
    When from,
    End end,
    List<Exit> exits,
    List<Event> events,
    boolean writesShots) {

  /** Copies the lists. */
  public Kill {
    exits = List.copyOf(exits);
    events = List.copyOf(events);
  }

  /**
   * The end.
   *
   * @param period period, from 1
   * @param elapsed seconds of play since that period began
   * @param seconds seconds of play that the kill lasted
   */
  public record End(int period, double elapsed, double seconds) {}

  /** Seconds of play that it lasted. */
  public double seconds() {
    return end.seconds();
  }

  /** What happens in a kill besides exit attempts. */
  public enum What {
    /** A shot attempt of the opponent. */
    ATTEMPT_AGAINST,
    /** One that scored. */
    GOAL_AGAINST,
    /** A face-off. */
    FACE_OFF
  }

  /**
   * Something that happens.
   *
   * @param what what
   * @param secondsIn seconds of play since the kill began
   * @param video second of the video, where it is known
   */
  public record Event(What what, double secondsIn, OptionalDouble video) {}

  /** Shot attempts of the opponent, goals included; empty where the sheet writes no shots. */
  public OptionalInt attemptsAgainst() {
    return writesShots
        ? OptionalInt.of((int) events.stream().filter(e -> e.what() != What.FACE_OFF).count())
        : OptionalInt.empty();
  }

  /** Goals of the opponent. */
  public int goalsAgainst() {
    return (int) events.stream().filter(e -> e.what() == What.GOAL_AGAINST).count();
  }

  /** Exit attempts that did not leave the zone. */
  public int keptIn() {
    return (int) exits.stream().filter(e -> e.way() == WayOut.KEPT_IN).count();
  }

  /**
   * Time bought by the clears, seconds, cut short by a stop or not. A puck kept in buys none: the
   * opponent never left. Empty where the sheet says it of no clear.
   */
  public OptionalDouble timeBought() {
    List<Exit> clears = exits.stream().filter(e -> e.way() != WayOut.KEPT_IN).toList();
    List<CensoredTime> known =
        clears.stream().map(e -> e.outcome().reentry()).flatMap(Optional::stream).toList();
    return known.isEmpty() && !clears.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(known.stream().mapToDouble(CensoredTime::seconds).sum());
  }

  /**
   * Seconds of play from its beginning to an instant.
   *
   * @param when an instant in it
   */
  public double secondsIn(When when) {
    return (when.period() - from.period()) * from.game().periodLength()
        + when.elapsed()
        - from.elapsed();
  }
}
