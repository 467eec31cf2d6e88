package twostrides.exits;

import java.util.List;
import java.util.stream.Stream;

/** Who was where when the puck was let go, from whatever source knows it. */
@FunctionalInterface
public interface SkatersAtRelease {

  /** Nobody knows. */
  SkatersAtRelease NONE = (game, sheet, line) -> List.of();

  /**
   * The skaters at a release, as each source that knows them says.
   *
   * @param game game id
   * @param sheet file name of its play sheet
   * @param line line of the sheet
   */
  List<Around> at(String game, String sheet, long line);

  /**
   * What this source says, then what another one says.
   *
   * @param other the other source
   */
  default SkatersAtRelease and(SkatersAtRelease other) {
    return (game, sheet, line) ->
        Stream.of(at(game, sheet, line), other.at(game, sheet, line))
            .flatMap(List::stream)
            .toList();
  }
}
