package twostrides.race;

import java.util.Optional;
import twostrides.stats.Interval;

/**
 * What a measured chance of gaining center would be, guessed from what any sheet says: only for an
 * order in which to look, never a verdict. The band shows why: it is the spread of the measured
 * chances of releases alike in the sheet.
 *
 * @param p the guess, 0 to 1
 * @param likely band that holds 68 % of measured chances
 * @param band band that holds 95 % of them
 */
public record SheetChance(double p, Interval likely, Interval band) {

  /** Farthest release that it was fitted on, metres short of center. */
  public static final double FARTHEST = 12;

  /** Metres carried count from and up to, up ice. */
  static final double LEAST_CARRIED = -3;

  static final double MOST_CARRIED = 10;

  /**
   * The guess for a release.
   *
   * @param metresShort metres short of center, above 0
   * @param carried metres up ice since he got it, {@code exits.CarriedUpIce}; 0 if one touch
   * @param offMiddle metres from the long axis, either side
   * @param missedPass whether it was a pass that nobody received
   * @return empty where the release lies farther from center than any it was fitted on
   */
  public static Optional<SheetChance> of(
      double metresShort, double carried, double offMiddle, boolean missedPass) {
    if (!(metresShort > 0) || metresShort > FARTHEST) {
      return Optional.empty();
    }
    double logOdds =
        Fitted.SHEET.at(
            metresShort,
            Math.max(LEAST_CARRIED, Math.min(MOST_CARRIED, carried)),
            offMiddle,
            missedPass ? 1 : 0);
    return Optional.of(
        new SheetChance(
            LogisticLine.chance(logOdds),
            about(logOdds, Fitted.SHEET_LIKELY),
            about(logOdds, Fitted.SHEET_BAND)));
  }

  private static Interval about(double logOdds, double off) {
    return new Interval(LogisticLine.chance(logOdds - off), LogisticLine.chance(logOdds + off));
  }
}
