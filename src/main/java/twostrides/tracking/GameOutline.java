package twostrides.tracking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.TaggedExit;
import twostrides.game.TaggedGame;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * What sheets beside a game's own can speak of: tracking, sync and places sheets.
 *
 * @param id the game's id
 * @param home the home team, where the sheet says so
 * @param away the other team, in a game of play sheets
 * @param rink the rink
 * @param clockStep smallest step of the game's clock, s
 * @param periodLength seconds of a period, for clocks that count down
 * @param periods the periods of which there are rows
 * @param releases pucks that may be let go short of center with nobody receiving them
 */
public record GameOutline(
    String id,
    Optional<String> home,
    Optional<String> away,
    Rink rink,
    double clockStep,
    double periodLength,
    Set<Integer> periods,
    List<LetGo> releases) {

  /** Step of a tag sheet's clock, s: whole seconds. */
  private static final double TAGGED_STEP = 1;

  /** Copies. */
  public GameOutline {
    periods = Set.copyOf(periods);
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
   * @param video second of the video, where the row says it
   */
  public record LetGo(
      String sheet,
      long line,
      int period,
      double elapsed,
      String team,
      Optional<String> opponent,
      Optional<String> player,
      Place place,
      OptionalDouble video) {}

  /**
   * The games of a season, by id; of a game with both kinds of sheet the play sheet's releases, and
   * the periods of both.
   *
   * @param played games of play sheets
   * @param tagged games of tag sheets
   */
  public static Map<String, GameOutline> byId(List<GameOutline> played, List<GameOutline> tagged) {
    Map<String, GameOutline> games = new TreeMap<>();
    played.forEach(g -> games.put(g.id(), g));
    tagged.forEach(g -> games.merge(g.id(), g, GameOutline::alsoIn));
    return games;
  }

  private GameOutline alsoIn(GameOutline other) {
    Set<Integer> both =
        Stream.of(periods, other.periods).flatMap(Set::stream).collect(Collectors.toSet());
    return new GameOutline(id, home, away, rink, clockStep, periodLength, both, releases);
  }

  /**
   * A game of play sheets.
   *
   * @param game the game
   */
  public static GameOutline of(Game game) {
    return new GameOutline(
        game.id(),
        Optional.of(game.home()),
        Optional.of(game.away()),
        game.rink(),
        game.clockStep(),
        game.periodLength(),
        game.rows().stream().map(PlayRow::period).collect(Collectors.toSet()),
        IntStream.range(0, game.rows().size())
            .filter(game::letsGoShort)
            .mapToObj(i -> letGo(game, game.rows().get(i)))
            .toList());
  }

  /** Everything it says, as one text. */
  public String words() {
    return List.of(id, home, away, rink, clockStep, periodLength, new TreeSet<>(periods), releases)
        .toString();
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
        r.place().orElseThrow(),
        r.video());
  }

  /**
   * A game of tag sheets.
   *
   * @param game the game
   */
  public static GameOutline of(TaggedGame game) {
    return new GameOutline(
        game.id(),
        game.home(),
        Optional.empty(),
        game.rink(),
        TAGGED_STEP,
        game.periodLength(),
        game.exits().stream().map(TaggedExit::period).collect(Collectors.toSet()),
        game.exits().stream()
            .filter(TaggedExit::letGo)
            .filter(t -> t.place().filter(p -> game.rink().shortOfCenter(p.x()) > 0).isPresent())
            .map(GameOutline::letGo)
            .toList());
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
        t.place().orElseThrow(),
        t.video());
  }
}
