package twostrides.game;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Who was on the ice at a row, from the sheet's manpower columns.
 *
 * <p>Only penalties make a team shorthanded: a goalkeeper off for an extra attacker does not make
 * the other team short. From a manpower column alone that reads: own skaters below five and fewer
 * than the opponent's.
 *
 * @param own skaters of the acting team
 * @param other skaters of the opponent
 * @param ownNetEmpty whether the acting team's goalkeeper is off, where the sheet says so
 * @param otherNetEmpty whether the opponent's goalkeeper is off, where the sheet says so
 */
public record Manpower(
    OptionalInt own,
    OptionalInt other,
    Optional<Boolean> ownNetEmpty,
    Optional<Boolean> otherNetEmpty) {

  /** Skaters of a team at full strength. */
  private static final int FULL = 5;

  /** Nothing known. */
  public static final Manpower UNKNOWN =
      new Manpower(OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());

  /**
   * Strength of the acting team by penalties alone; unknown when a skater count is missing. Where a
   * net is marked empty, one of that team's skaters is the extra attacker and does not count: five
   * with an empty net against five are shorthanded.
   */
  public Strength strength() {
    if (own.isEmpty() || other.isEmpty()) {
      return Strength.UNKNOWN;
    }
    int us = own.getAsInt() - (ownNetEmpty.orElse(false) ? 1 : 0);
    int them = other.getAsInt() - (otherNetEmpty.orElse(false) ? 1 : 0);
    if (us < FULL && us < them) {
      return Strength.SHORTHANDED;
    }
    return them < FULL && them < us ? Strength.POWER_PLAY : Strength.EVEN;
  }

  /**
   * Which net is empty; empty when the sheet says nothing about it. A sixth skater says that a net
   * is empty.
   */
  public Optional<NetEmpty> netEmpty() {
    Optional<Boolean> us = ownNetEmpty.or(() -> sixth(own));
    Optional<Boolean> them = otherNetEmpty.or(() -> sixth(other));
    if (us.isEmpty() || them.isEmpty()) {
      return Optional.empty();
    }
    if (us.get()) {
      return Optional.of(them.get() ? NetEmpty.BOTH : NetEmpty.OWN);
    }
    return Optional.of(them.get() ? NetEmpty.OPPONENT : NetEmpty.NONE);
  }

  private static Optional<Boolean> sixth(OptionalInt skaters) {
    return skaters.isPresent() ? Optional.of(skaters.getAsInt() > FULL) : Optional.empty();
  }
}
