package twostrides.rulebook.penalty;

import java.util.Optional;
import java.util.OptionalDouble;

/** What happened that can change who is on the ice. */
public sealed interface BoxEvent {

  /** When. */
  GameInstant at();

  /**
   * A penalty assessed at a stoppage; its clock starts here, unless it waits.
   *
   * @param at clock of the stoppage
   * @param side the team it is called on
   * @param kind what was called
   * @param lengthSeconds seconds of the whole penalty, where the sheet says so; else as the rules
   * @param player who committed it
   * @param servedBy who sits for it, where that is somebody else; {@link #NOBODY} when the sheet
   *     says that the box is empty
   * @param ref where it stands, for messages: {@code sheet line 12}
   */
  record Called(
      GameInstant at,
      Side side,
      PenaltyKind kind,
      OptionalDouble lengthSeconds,
      Optional<String> player,
      Optional<String> servedBy,
      String ref)
      implements BoxEvent {

    /** What {@code servedBy} holds when nobody sits. */
    public static final String NOBODY = "nobody";

    /** Rejects a length that is none. */
    public Called {
      if (lengthSeconds.isPresent()
          && !(lengthSeconds.getAsDouble() >= 1 && lengthSeconds.getAsDouble() <= 3600)) {
        throw new IllegalArgumentException(
            "a penalty lasts 1 to 3600 s, not " + lengthSeconds.getAsDouble());
      }
    }

    /** Whether the sheet says that nobody sits. */
    boolean emptyBox() {
      return servedBy.filter(NOBODY::equals).isPresent();
    }

    /** Who sits, where the sheet says so. */
    Optional<String> sitter() {
      return emptyBox() || servedBy.isEmpty() ? player : servedBy;
    }
  }

  /**
   * The arm is up; strength is unchanged until the penalty is assessed.
   *
   * @param at when it was signalled
   * @param side the team it is signalled on
   * @param ref where it stands
   */
  record Signalled(GameInstant at, Side side, String ref) implements BoxEvent {}

  /**
   * A goal.
   *
   * @param at when
   * @param scoring the team that scored
   * @param penaltyShot whether it was scored on a penalty shot
   * @param ref where it stands
   */
  record Goal(GameInstant at, Side scoring, boolean penaltyShot, String ref) implements BoxEvent {}

  /**
   * Play stopped.
   *
   * @param at when
   */
  record Stopped(GameInstant at) implements BoxEvent {}

  /**
   * Play started: a face-off. It closes the stoppage, so penalties before and after it at one
   * reading of the clock are of two stoppages.
   *
   * @param at when
   */
  record Started(GameInstant at) implements BoxEvent {}

  /**
   * A goalkeeper left for an extra attacker, or came back. Never makes anybody shorthanded.
   *
   * @param at when
   * @param side whose goalkeeper
   * @param empty whether the net is empty from here on
   */
  record NetEmpty(GameInstant at, Side side, boolean empty) implements BoxEvent {}
}
