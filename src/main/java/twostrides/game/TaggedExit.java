package twostrides.game;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import twostrides.rink.Place;
import twostrides.rink.Zone;

/**
 * One row of a tag sheet: an exit as a video coordinator logged it, or, with no way out, what
 * happened without one. Words stay as tagged; the pipeline reads them.
 *
 * @param period period, from 1
 * @param elapsed seconds of play since the period began
 * @param team who leaves its zone
 * @param opponent the other team, where known
 * @param player who took it out
 * @param wayOut one of the way-out words; empty where no exit was tried
 * @param atCenter one of the at-center words
 * @param strength manpower at the release
 * @param netEmpty whose net was empty
 * @param place where it was released, metres, team's frame
 * @param zone in which zone it was released, team's frame, where the row says a zone
 * @param ended what came of it
 * @param end where that was, metres, team's frame
 * @param faceOffWon whether the team won a face-off: the row's own, or the one that followed
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
    Optional<String> wayOut,
    Optional<String> atCenter,
    Strength strength,
    Optional<NetEmpty> netEmpty,
    Optional<Place> place,
    Optional<Zone> zone,
    Optional<TagEnd> ended,
    Optional<Place> end,
    Optional<Boolean> faceOffWon,
    Optional<Pressure> pressure,
    OptionalDouble video,
    String sheet,
    long line) {

  private static final Set<String> SENT = Set.of("chip", "long clearance", "missed pass");
  private static final Optional<String> SHORT = Optional.of("released short");

  /** Whether the puck was let go with nobody receiving it, as the words say. */
  public boolean letGo() {
    return releasedShort()
        || wayOut.map(SENT::contains).orElse(ended.equals(Optional.of(TagEnd.ICING)));
  }

  /** Whether the row says that it was let go short of center. */
  public boolean releasedShort() {
    return atCenter.equals(SHORT);
  }

  /** Whether it says from when on a strength holds, and nothing else. */
  public boolean strengthAlone() {
    return wayOut.isEmpty() && ended.isEmpty() && faceOffWon.isEmpty();
  }

  /**
   * The exit at a second of the video.
   *
   * @param second the second
   */
  public TaggedExit atVideo(double second) {
    return with(player, strength, OptionalDouble.of(second));
  }

  /** The exit with another name for its player. */
  TaggedExit withPlayer(Optional<String> name) {
    return with(name, strength, video);
  }

  /**
   * The exit at another strength.
   *
   * @param held manpower that holds at the release
   */
  public TaggedExit withStrength(Strength held) {
    return with(player, held, video);
  }

  private TaggedExit with(Optional<String> name, Strength held, OptionalDouble second) {
    return new TaggedExit(
        period,
        elapsed,
        team,
        opponent,
        name,
        wayOut,
        atCenter,
        held,
        netEmpty,
        place,
        zone,
        ended,
        end,
        faceOffWon,
        pressure,
        second,
        sheet,
        line);
  }
}
