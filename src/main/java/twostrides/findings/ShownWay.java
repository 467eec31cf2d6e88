package twostrides.findings;

import java.util.Optional;
import twostrides.exits.AtCenter;
import twostrides.exits.WayOut;
import twostrides.season.Columns;
import twostrides.season.Rows;

/**
 * The ways out as they are shown and talked about: a carry is split by what became of it at center,
 * because carried and released short holds most of the avoidable icings.
 */
public enum ShownWay {
  /** Carried out and over center. */
  CARRY_OVER_CENTER("carry over center"),
  /** Carried out, then sent on from short of center. */
  CARRY_RELEASED_SHORT("carried, sent before the red line"),
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
  KEPT_IN("failed clear");

  private final String label;

  ShownWay(String label) {
    this.label = label;
  }

  /** The words on pages and charts. */
  public String label() {
    return label;
  }

  /**
   * The shown way of an exit attempt.
   *
   * @param way its way out
   * @param mark what happened at center, where it has a mark
   */
  public static ShownWay of(WayOut way, Optional<AtCenter> mark) {
    return switch (way) {
      case CARRY ->
          mark.equals(Optional.of(AtCenter.GAINED))
              ? CARRY_OVER_CENTER
              : mark.equals(Optional.of(AtCenter.RELEASED_SHORT))
                  ? CARRY_RELEASED_SHORT
                  : CARRY_OTHER;
      case PASS -> PASS;
      case CHIP -> CHIP;
      case LONG_CLEARANCE -> LONG_CLEARANCE;
      case MISSED_PASS -> MISSED_PASS;
      case MEANS_UNKNOWN -> MEANS_UNKNOWN;
      case KEPT_IN -> KEPT_IN;
    };
  }

  /**
   * The exit attempts that go this way.
   *
   * @param exits exit attempts
   */
  public Rows in(Rows exits) {
    return switch (this) {
      case CARRY_OVER_CENTER -> carries(exits).where(Columns.AT_CENTER, AtCenter.GAINED.label());
      case CARRY_RELEASED_SHORT ->
          carries(exits).where(Columns.AT_CENTER, AtCenter.RELEASED_SHORT.label());
      case CARRY_OTHER ->
          carries(exits)
              .without(Columns.AT_CENTER, AtCenter.GAINED.label(), AtCenter.RELEASED_SHORT.label());
      case KEPT_IN -> exits.where(Columns.WAY_OUT, WayOut.KEPT_IN.label());
      default -> exits.where(Columns.WAY_OUT, label);
    };
  }

  private static Rows carries(Rows exits) {
    return exits.where(Columns.WAY_OUT, WayOut.CARRY.label());
  }
}
