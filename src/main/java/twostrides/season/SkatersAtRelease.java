package twostrides.season;

import java.util.List;
import java.util.stream.Stream;
import twostrides.exits.Around;
import twostrides.exits.Release;

/** Who was where when the puck was let go, from whatever source knows it. */
@FunctionalInterface
public interface SkatersAtRelease {

  /** Nobody knows. */
  SkatersAtRelease NONE = release -> List.of();

  /**
   * The skaters at a release, as each source that knows them says.
   *
   * @param release the release
   */
  List<Around> at(Release release);

  /**
   * What this source says, then what another one says.
   *
   * @param other the other source
   */
  default SkatersAtRelease and(SkatersAtRelease other) {
    return release -> Stream.of(at(release), other.at(release)).flatMap(List::stream).toList();
  }
}
