package twostrides.exits;

import java.util.Optional;

/** Who was where when the puck was let go, from whatever source knows it. */
@FunctionalInterface
public interface SkatersAtRelease {

  /** Nobody knows. */
  SkatersAtRelease NONE = (game, sheet, line) -> Optional.empty();

  /**
   * The skaters at a release.
   *
   * @param game game id
   * @param sheet file name of its play sheet
   * @param line line of the sheet
   */
  Optional<Around> at(String game, String sheet, long line);

  /**
   * This source, and where it knows nothing another one.
   *
   * @param other the other source
   */
  default SkatersAtRelease or(SkatersAtRelease other) {
    return (game, sheet, line) -> at(game, sheet, line).or(() -> other.at(game, sheet, line));
  }
}
