package twostrides.cli;

import java.util.List;
import twostrides.exits.Around;
import twostrides.sheet.Problem;

/** Whether tracking knows who was where at a release. */
sealed interface ReleaseMatch {
  /**
   * It does.
   *
   * @param around the skaters
   * @param doubts skaters that were left out or stand twice
   */
  record Found(Around around, List<Problem> doubts) implements ReleaseMatch {}

  /**
   * It does not.
   *
   * @param reason why, a phrase; the same for the same cause, so that it can be counted
   */
  record NotFound(String reason) implements ReleaseMatch {}
}
