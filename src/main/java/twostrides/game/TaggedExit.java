package twostrides.game;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.rink.Place;

/**
 * One row of a tag sheet: an exit as a video coordinator logged it. Words stay as tagged; the
 * pipeline reads them.
 *
 * @param period period, from 1
 * @param elapsed seconds of play since the period began
 * @param team who leaves its zone
 * @param opponent the other team, where known
 * @param player who took it out
 * @param wayOut one of the way-out words
 * @param atCenter one of the at-center words
 * @param strength manpower at the release
 * @param netEmpty whose net was empty
 * @param place where it was released, metres, team's frame
 * @param ended what came of it
 * @param end where that was, metres, team's frame
 * @param pressure how close the nearest checker was
 * @param video second of the video
 * @param sheet file name
 * @param line line of the sheet
 */
public record TaggedExit(
    int period,
    double elapsed,
    String team,
    Optional<String> opponent,
    Optional<String> player,
    String wayOut,
    Optional<String> atCenter,
    Strength strength,
    Optional<NetEmpty> netEmpty,
    Optional<Place> place,
    Optional<TagEnd> ended,
    Optional<Place> end,
    Optional<Pressure> pressure,
    OptionalDouble video,
    String sheet,
    long line) {

  /** Whether the puck was let go with nobody receiving it, as the words say. */
  public boolean letGo() {
    return atCenter.equals(Optional.of("released short"))
        || wayOut.equals("chip")
        || wayOut.equals("long clearance")
        || wayOut.equals("missed pass");
  }

  /**
   * The exit at a second of the video.
   *
   * @param second the second
   */
  public TaggedExit atVideo(double second) {
    return with(player, OptionalDouble.of(second));
  }

  /** The exit with another name for its player. */
  TaggedExit withPlayer(Optional<String> name) {
    return with(name, video);
  }

  private TaggedExit with(Optional<String> name, OptionalDouble second) {
    return new TaggedExit(
        period, elapsed, team, opponent, name, wayOut, atCenter, strength, netEmpty, place, ended,
        end, pressure, second, sheet, line);
  }
}
