package twostrides.tracking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.SheetsRead;
import twostrides.game.TaggedExit;
import twostrides.game.TaggedGame;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * What a places sheet can speak of in a game.
 *
 * @param id the game's id
 * @param home the home team, where the sheet says so
 * @param rink the rink
 * @param clockStep smallest step of the game's clock, s
 * @param periodLength seconds of a period, for clocks that count down
 * @param releases pucks that may be let go short of center with nobody receiving them
 */
record GameReleases(
    String id,
    Optional<String> home,
    Rink rink,
    double clockStep,
    double periodLength,
    List<LetGo> releases) {

  /** Step of a tag sheet's clock, s: whole seconds. */
  private static final double TAGGED_STEP = 1;

  /** Copies the releases. */
  GameReleases {
    releases = List.copyOf(releases);
  }

  /**
   * A puck let go.
   *
   * @param sheet file name of the play sheet or tag sheet
   * @param line line of the sheet
   * @param period period, from 1
   * @param elapsed seconds of play since the period began
   * @param team who let it go
   * @param opponent the other team, where the sheet says so
   * @param player who let it go
   * @param place where, metres, frame of the team that let it go
   */
  record LetGo(
      String sheet,
      long line,
      int period,
      double elapsed,
      String team,
      Optional<String> opponent,
      Optional<String> player,
      Place place) {}

  /**
   * The games of a season, by id; of a game with both kinds of sheet the play sheet's releases.
   *
   * @param season the season
   */
  static Map<String, GameReleases> of(SheetsRead season) {
    Map<String, GameReleases> games = new TreeMap<>();
    season.tagged().forEach(g -> games.put(g.id(), of(g)));
    season.games().forEach(g -> games.put(g.id(), of(g)));
    return games;
  }

  private static GameReleases of(Game game) {
    List<LetGo> releases =
        IntStream.range(0, game.rows().size())
            .filter(game::letsGoShort)
            .mapToObj(i -> letGo(game, game.rows().get(i)))
            .toList();
    return new GameReleases(
        game.id(),
        Optional.of(game.home()),
        game.rink(),
        game.clockStep(),
        game.periodLength(),
        releases);
  }

  private static LetGo letGo(Game game, PlayRow r) {
    String team = r.team().orElseThrow();
    return new LetGo(
        r.sheet(),
        r.line(),
        r.period(),
        r.elapsed(),
        team,
        Optional.of(game.opponentOf(team)),
        r.player(),
        r.place().orElseThrow());
  }

  private static GameReleases of(TaggedGame game) {
    List<LetGo> releases =
        game.exits().stream()
            .filter(TaggedExit::letGo)
            .filter(t -> t.place().filter(p -> game.rink().shortOfCenter(p.x()) > 0).isPresent())
            .map(GameReleases::letGo)
            .toList();
    return new GameReleases(
        game.id(), game.home(), game.rink(), TAGGED_STEP, game.periodLength(), releases);
  }

  private static LetGo letGo(TaggedExit t) {
    return new LetGo(
        t.sheet(),
        t.line(),
        t.period(),
        t.elapsed(),
        t.team(),
        t.opponent(),
        t.player(),
        t.place().orElseThrow());
  }
}
