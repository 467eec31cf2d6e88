package twostrides.rulebook;

import java.util.List;
import java.util.Optional;

/** What a book says of one situation, with its reason. */
public sealed interface Ruling {

  /** The rule that decided. */
  Reason reason();

  /** How play starts again; empty where it goes on. */
  Optional<FaceOff> faceOff();

  /** The ruling in two words, as tables write it. */
  String word();

  /**
   * Icing.
   *
   * @param reason how it was completed
   * @param then the face-off
   */
  record Icing(Reason reason, FaceOff then) implements Ruling {
    @Override
    public Optional<FaceOff> faceOff() {
      return Optional.of(then);
    }

    @Override
    public String word() {
      return "icing";
    }
  }

  /**
   * Something that makes an icing is missing: sent from short of the line, by a team that the book
   * does not exempt, and over the goal line with nobody's touch or whistle in between.
   *
   * @param reason which exception
   * @param faceOff the face-off, where play stopped all the same
   */
  record NoIcing(Reason reason, Optional<FaceOff> faceOff) implements Ruling {
    @Override
    public String word() {
      return "no icing";
    }
  }

  /**
   * Nothing of that is missing, and the book takes it back: for who could have played the puck or
   * was first to it.
   *
   * @param reason which exception
   * @param faceOff the face-off, where play stopped all the same
   */
  record WavedOff(Reason reason, Optional<FaceOff> faceOff) implements Ruling {
    @Override
    public String word() {
      return "waved off";
    }
  }

  /**
   * The puck is in the net and the goal counts.
   *
   * @param reason why
   * @param then the face-off, at center
   */
  record Goal(Reason reason, FaceOff then) implements Ruling {
    @Override
    public Optional<FaceOff> faceOff() {
      return Optional.of(then);
    }

    @Override
    public String word() {
      return "goal";
    }
  }

  /**
   * A fact is missing that would settle it.
   *
   * @param reason what it would be if every open exception stays away
   * @param open what is still unknown, in the order of the rules
   */
  record NotYetDecided(Reason reason, List<Open> open) implements Ruling {
    /** Copies the list and checks that something is open. */
    public NotYetDecided {
      open = List.copyOf(open);
      if (open.isEmpty()) {
        throw new IllegalArgumentException("a ruling that is not yet decided names what is open");
      }
    }

    @Override
    public Optional<FaceOff> faceOff() {
      return Optional.empty();
    }

    @Override
    public String word() {
      return "not yet decided";
    }
  }

  /**
   * An unknown fact.
   *
   * @param fact which one
   * @param settles how it would settle the ruling: "unless the goalkeeper left the crease"
   * @param reason the rule that asks for it
   */
  record Open(FactKey fact, String settles, Reason reason) {}
}
