package twostrides.review;

import java.util.Optional;
import twostrides.exits.Columns;
import twostrides.exits.RestartCause;

/** The defensive-zone face-off after an exit attempt or a release, by what brought it there. */
public enum FaceOffAfter {
  /** Icing, written or inferred. */
  ICING,
  /** A penalty. */
  PENALTY,
  /** Another reason, or one that the sheet does not tell. */
  OTHER,
  /** No defensive-zone face-off. */
  NONE;

  /**
   * What followed a row of exits, releases or restarts; empty where the sheet does not tell.
   *
   * @param r the row
   */
  public static Optional<FaceOffAfter> of(TableRows r) {
    return r.flag(Columns.OWN_ZONE_RESTART).map(there -> there ? cause(r) : NONE);
  }

  /**
   * The cause of a row that tells of a defensive-zone face-off.
   *
   * @param r the row
   */
  public static FaceOffAfter cause(TableRows r) {
    return MarkOutcome.iced(r)
        ? ICING
        : r.words(Columns.RESTART_CAUSE).equals(RestartCause.PENALTY.label()) ? PENALTY : OTHER;
  }
}
