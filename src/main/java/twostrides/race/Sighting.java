package twostrides.race;

/**
 * A skater who was seen at a release.
 *
 * @param racer where he was; his velocity counts only where it is known
 * @param speedKnown whether the velocity is known; where it is not, it is simulated about standing
 *     still
 * @param clickError standard error of his place along and across, metres, 0 to 5, where it was
 *     clicked; 0 where it was tracked or written down. A known speed is then taken to come from two
 *     such places half a second apart
 */
public record Sighting(Racer racer, boolean speedKnown, double clickError) {

  /** Largest error of a click that still says where somebody was, metres. Assumed. */
  private static final double MOST_ERROR = 5;

  /**
   * Rejects an error outside that range.
   *
   * @throws IllegalArgumentException for such an error
   */
  public Sighting {
    if (!(clickError >= 0 && clickError <= MOST_ERROR)) {
      throw new IllegalArgumentException(
          "the standard error of a clicked place lies from 0 to "
              + MOST_ERROR
              + " m, not "
              + clickError);
    }
  }

  /**
   * A skater whom nobody clicked.
   *
   * @param racer where he was
   * @param speedKnown whether the velocity is known
   */
  public Sighting(Racer racer, boolean speedKnown) {
    this(racer, speedKnown, 0);
  }
}
