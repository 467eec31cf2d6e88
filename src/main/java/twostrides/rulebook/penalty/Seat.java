package twostrides.rulebook.penalty;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import twostrides.rulebook.penalty.BoxEvent.Called;

/**
 * One place in the penalty box that costs its team a skater: what one person serves, one block
 * after the other.
 */
final class Seat {

  private static final long WAITS = -1;

  private final Deque<Block> blocks = new ArrayDeque<>();
  private long endsAt = WAITS;

  Seat(Block first) {
    blocks.add(first);
  }

  /** Adds a block behind those already here. */
  void add(Block block) {
    blocks.add(block);
  }

  boolean running() {
    return endsAt != WAITS;
  }

  /**
   * Starts the clock of the first block.
   *
   * @param now play since the game began, ms
   */
  void start(long now) {
    endsAt = now + current().millis();
  }

  /** When the running block runs out, ms. */
  long endsAt() {
    return endsAt;
  }

  Block current() {
    return blocks.getFirst();
  }

  /** What is to be served, the running block first. */
  List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** Blocks behind the running one, ms. */
  long behind() {
    return blocks.stream().skip(1).mapToLong(Block::millis).sum();
  }

  /** Ends the running block and starts the next one, if there is one. */
  Block end(long now) {
    Block ended = blocks.removeFirst();
    if (!blocks.isEmpty()) {
      start(now);
    }
    return ended;
  }

  boolean done() {
    return blocks.isEmpty();
  }

  /**
   * Whether a new penalty is served here, behind what is here already: by the same person sitting,
   * or called on the same player at the same stoppage (from memory: a player with two penalties
   * serves them one after the other, and so does who sits for him).
   *
   * @param block of the new penalty
   * @param sameStoppage the calls of the stoppage at which it is called
   */
  boolean takes(Block block, List<Called> sameStoppage) {
    Optional<String> sitter = block.call().sitter();
    return blocks.stream()
        .map(Block::call)
        .anyMatch(
            here ->
                here.equals(block.call())
                    || (sitter.isPresent() && here.sitter().equals(sitter))
                    || (here.player().isPresent()
                        && here.player().equals(block.call().player())
                        && sameStoppage.contains(here)));
  }
}
