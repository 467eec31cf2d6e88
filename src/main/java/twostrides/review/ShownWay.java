package twostrides.review;

import java.util.Optional;
import twostrides.exits.AtCenter;
import twostrides.exits.WayOut;

/**
 * The ways out as they are shown and talked about: a carry is split by what became of it at center,
 * because carried and released short holds most of the avoidable icings.
 */
public enum ShownWay {
  /** Carried out and over center. */
  CARRY_OVER_CENTER("carry over center"),
  /** Carried out, then sent on from short of center. */
  CARRY_RELEASED_SHORT("carried, released short"),
  /** Carried out, then lost, brought back or stopped short of center. */
  CARRY_OTHER("carry, other end"),
  /** On a pass. */
  PASS("pass"),
  /** Sent out, touched short of the far blue line. */
  CHIP("chip"),
  /** Sent the length. */
  LONG_CLEARANCE("long clearance"),
  /** On a pass that nobody received. */
  MISSED_PASS("missed pass"),
  /** The sheet does not say how. */
  MEANS_UNKNOWN("moved, means unknown"),
  /** Never left. */
  KEPT_IN("kept in");

  private final String label;

  ShownWay(String label) {
    this.label = label;
  }

  /** The words on pages and charts. */
  public String label() {
    return label;
  }

  /**
   * The shown way of an exit's two marks.
   *
   * @param way label of the way out
   * @param atCenter label of the mark at center
   */
  public static ShownWay of(String way, Optional<String> atCenter) {
    if (way.equals(WayOut.CARRY.label())) {
      if (atCenter.equals(Optional.of(AtCenter.GAINED.label()))) {
        return CARRY_OVER_CENTER;
      }
      return atCenter.equals(Optional.of(AtCenter.RELEASED_SHORT.label()))
          ? CARRY_RELEASED_SHORT
          : CARRY_OTHER;
    }
    for (ShownWay w : values()) {
      if (w.label.equals(way)) {
        return w;
      }
    }
    throw new IllegalArgumentException("no shown way for \"" + way + "\"");
  }
}
