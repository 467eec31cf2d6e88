package twostrides.book;

import twostrides.rink.Rink;
import twostrides.season.Flag;

/** A release as the book shows it, for a page outside of the book. */
public final class Settled {

  private Settled() {}

  /**
   * Its rink diagram as an SVG file.
   *
   * @param flag the release
   * @param rink its lengths
   */
  public static String picture(Flag flag, Rink rink) {
    return FlagView.diagram(flag, rink).picture("settled").svg();
  }
}
