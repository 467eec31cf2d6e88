package twostrides.exits;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Action;
import twostrides.rink.Place;

/**
 * Where a puck that was let go was going.
 *
 * @param receiver who a pass was for, where the sheet names him, or who of the team has it next
 * @param received seconds of play since the period began, when he has it by a row of his own
 * @param end second place of the row, acting team's frame: where a pass was meant to go, where a
 *     tagged exit ended
 */
public record Onward(Optional<String> receiver, OptionalDouble received, Optional<Place> end) {

  /** Shares the name. */
  public Onward {
    receiver = Shared.of(receiver);
  }

  /** Not in the sheet. */
  public static final Onward UNKNOWN =
      new Onward(Optional.empty(), OptionalDouble.empty(), Optional.empty());

  static Onward of(PuckTimeline timeline, PuckEvent e) {
    if (e.kind() == PuckEvent.Kind.RECEPTION || e.row().action() != Action.PASS) {
      return UNKNOWN;
    }
    Optional<String> named = e.row().otherPlayer();
    Optional<PuckEvent> got =
        timeline.after(e).stream()
            .filter(n -> n.kind() != PuckEvent.Kind.RECEPTION)
            .findFirst()
            .filter(n -> e.kind() == PuckEvent.Kind.PASS && n.control())
            .filter(n -> n.team().equals(e.team()))
            .filter(n -> named.isEmpty() || n.player().equals(named));
    return new Onward(
        named.or(() -> got.flatMap(PuckEvent::player)),
        got.isPresent() ? OptionalDouble.of(got.get().elapsed()) : OptionalDouble.empty(),
        e.row().target());
  }
}
