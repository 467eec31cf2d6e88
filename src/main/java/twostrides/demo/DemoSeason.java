package twostrides.demo;

import java.util.List;

/**
 * A simulated season of one team.
 *
 * @param team name of the team that plays every game
 * @param seed what the games were drawn with
 * @param games in the order of the schedule
 */
public record DemoSeason(String team, long seed, List<DemoGame> games) {

  /** Copies the games. */
  public DemoSeason {
    games = List.copyOf(games);
  }

  /** Skaters at some icings of the team, clicked on the video, as CSV text. */
  public String placesCsv() {
    PlacesCsv places = new PlacesCsv(team, seed);
    games.forEach(places::add);
    return places.text();
  }

  /** The truth about the players of all teams as CSV text. */
  public String playersTruthCsv() {
    PlayersCsv players = new PlayersCsv();
    games.forEach(players::add);
    return players.text();
  }
}
