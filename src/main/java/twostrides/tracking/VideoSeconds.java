package twostrides.tracking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.TaggedExit;
import twostrides.game.TaggedGame;

/**
 * A season whose rows have the seconds of the video that its sync sheets give them, and how exact
 * each of those is. A row's own second stays as it is.
 */
public final class VideoSeconds {

  /** Step of a tag sheet's clock in seconds: one logs whole seconds. Assumed. */
  private static final double TAG_CLOCK_STEP = 1;

  /**
   * What the sync sheets say of a row.
   *
   * @param game game id
   * @param period period, from 1
   * @param clockLeft seconds of play left in the period
   * @param sheet file name
   * @param line line of the sheet
   * @param own the row's own second; it wins
   * @param match what the sync sheets say
   */
  public record Row(
      String game,
      int period,
      double clockLeft,
      String sheet,
      long line,
      OptionalDouble own,
      ClockMatch match) {}

  private final SyncSheets sync;
  private final double reach;
  private final Map<String, RowVideo> games = new HashMap<>();
  private final List<Row> rows = new ArrayList<>();
  private final List<Game> played;
  private final List<TaggedGame> tagged;

  private VideoSeconds(List<Game> played, List<TaggedGame> tagged, SyncSheets sync, double reach) {
    this.sync = sync;
    this.reach = reach;
    boolean given = sync.rowsRead() > 0;
    this.played = given ? played.stream().map(this::game).toList() : played;
    this.tagged = given ? tagged.stream().map(this::game).toList() : tagged;
  }

  /**
   * Gives rows their seconds.
   *
   * @param played the games of play sheets
   * @param tagged the games of tag sheets
   * @param sync the sync sheets
   * @param reach how far outside the pairs of a period a clock may be, in seconds of play
   */
  public static VideoSeconds of(
      List<Game> played, List<TaggedGame> tagged, SyncSheets sync, double reach) {
    return new VideoSeconds(played, tagged, sync, reach);
  }

  private Game game(Game game) {
    Stoppages stoppages = Stoppages.of(game.rows());
    RowVideo video = video(game.id(), stoppages, game.clockStep());
    games.put(game.id(), video);
    List<PlayRow> filled = new ArrayList<>();
    for (int i = 0; i < game.rows().size(); i++) {
      PlayRow row = game.rows().get(i);
      ClockMatch match = video.at(row.period(), row.elapsed(), stoppages.overAt(i));
      double left = game.periodLength() - row.elapsed();
      rows.add(new Row(game.id(), row.period(), left, row.sheet(), row.line(), row.video(), match));
      filled.add(needed(row.video(), match) ? row.atVideo(second(match).getAsDouble()) : row);
    }
    return game.withRows(filled);
  }

  private TaggedGame game(TaggedGame game) {
    // An exit that stands at the clock of a stoppage happened before it.
    RowVideo video =
        games.computeIfAbsent(game.id(), id -> video(id, Stoppages.UNKNOWN, TAG_CLOCK_STEP));
    List<TaggedExit> filled = new ArrayList<>();
    for (TaggedExit exit : game.exits()) {
      ClockMatch match = video.at(exit.period(), exit.elapsed(), 0);
      double left = game.periodLength() - exit.elapsed();
      rows.add(
          new Row(game.id(), exit.period(), left, exit.sheet(), exit.line(), exit.video(), match));
      filled.add(needed(exit.video(), match) ? exit.atVideo(second(match).getAsDouble()) : exit);
    }
    return game.withExits(filled);
  }

  private static boolean needed(OptionalDouble own, ClockMatch match) {
    return own.isEmpty() && second(match).isPresent();
  }

  private RowVideo video(String game, Stoppages stoppages, double clockStep) {
    return new RowVideo(VideoClock.of(sync.of(game).pairs()), stoppages, clockStep, reach);
  }

  /**
   * The second of a match, where there is one.
   *
   * @param match the match
   */
  public static OptionalDouble second(ClockMatch match) {
    if (match instanceof ClockMatch.At at) {
      return OptionalDouble.of(at.seconds());
    }
    return match instanceof ClockMatch.Beyond b
        ? OptionalDouble.of(b.seconds())
        : OptionalDouble.empty();
  }

  /** The games of play sheets with those seconds. */
  public List<Game> played() {
    return played;
  }

  /** The games of tag sheets with those seconds. */
  public List<TaggedGame> tagged() {
    return tagged;
  }

  /** Every row, in the order of the games; none without sync sheets. */
  public List<Row> rows() {
    return List.copyOf(rows);
  }
}
