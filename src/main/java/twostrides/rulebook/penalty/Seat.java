package twostrides.rulebook.penalty;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import twostrides.rulebook.penalty.BoxEvent.Called;

/**
 * One place in the penalty box that costs its team a skater: what one person serves, one penalty
 * after the other.
 */
final class Seat {

  private static final long WAITS = -1;

  private final Deque<ServedPenalty> penalties = new ArrayDeque<>();
  private long endsAt = WAITS;

  Seat(ServedPenalty first) {
    penalties.add(first);
  }

  /** Adds a penalty behind those already here. */
  void add(ServedPenalty penalty) {
    penalties.add(penalty);
  }

  boolean running() {
    return endsAt != WAITS;
  }

  /**
   * Starts the clock of the first penalty.
   *
   * @param now play since the game began, ms
   */
  void start(long now) {
    endsAt = now + current().millis();
  }

  /** When the running penalty runs out, ms. */
  long endsAt() {
    return endsAt;
  }

  ServedPenalty current() {
    return penalties.getFirst();
  }

  /** What is to be served, the running penalty first. */
  List<ServedPenalty> penalties() {
    return List.copyOf(penalties);
  }

  /** Penalties behind the running one, ms. */
  long behind() {
    return penalties.stream().skip(1).mapToLong(ServedPenalty::millis).sum();
  }

  /** Ends the running penalty and starts the next one, if there is one. */
  ServedPenalty end(long now) {
    ServedPenalty ended = penalties.removeFirst();
    if (!penalties.isEmpty()) {
      start(now);
    }
    return ended;
  }

  boolean done() {
    return penalties.isEmpty();
  }

  /**
   * Whether a new penalty is served here, behind what is here already: by the same person sitting,
   * or called on the same player at the same stoppage (from memory: a player with two penalties
   * serves them one after the other, and so does who sits for him).
   *
   * @param penalty of the new penalty
   * @param sameStoppage the calls of the stoppage at which it is called
   */
  boolean takes(ServedPenalty penalty, List<Called> sameStoppage) {
    Optional<String> sitter = penalty.call().sitter();
    return penalties.stream()
        .map(ServedPenalty::call)
        .anyMatch(
            here ->
                here.equals(penalty.call())
                    || (sitter.isPresent() && here.sitter().equals(sitter))
                    || (here.player().isPresent()
                        && here.player().equals(penalty.call().player())
                        && sameStoppage.contains(here)));
  }
}
