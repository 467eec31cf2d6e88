package twostrides.numbers;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What can be compared in a season, and with what the page opens.
 *
 * @param teams the teams: ours first, then by attempts
 * @param sides players, units and teams, by team and attempts; stretches are of teams
 * @param leftOut of how many players and units how many had too few attempts, in words
 * @param window the window in words, "20 s"
 */
public record Comparison(
    List<TeamGames> teams, Map<Kind, List<Side>> sides, List<String> leftOut, String window) {

  /** What two sides may be; in the order in which a page opens with them. */
  public enum Kind {
    /** Two players. */
    PLAYERS("players"),
    /** Skaters who were on the ice together. */
    UNITS("units"),
    /** Two teams. */
    TEAMS("teams"),
    /** Two stretches of the season of one team. */
    STRETCHES("stretches");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word for it, also in the page's address. */
    public String word() {
      return word;
    }
  }

  /**
   * A team.
   *
   * @param name its name
   * @param games ids of its games, in the order of play
   */
  public record TeamGames(String name, List<String> games) {

    /** Copies the list. */
    public TeamGames {
      games = List.copyOf(games);
    }
  }

  /** Copies the lists. */
  public Comparison {
    teams = List.copyOf(teams);
    Map<Kind, List<Side>> copy = new EnumMap<>(Kind.class);
    sides.forEach((kind, list) -> copy.put(kind, List.copyOf(list)));
    sides = copy;
    leftOut = List.copyOf(leftOut);
  }

  /** The kind with which the page opens: the first one that has two sides. */
  public Optional<Kind> first() {
    return sides.keySet().stream().filter(k -> opening(k).isPresent()).findFirst();
  }

  /** What the page shows before anybody picks; empty where nothing can be compared. */
  public Optional<SideBySide> opening() {
    return first().flatMap(this::opening);
  }

  /** The first two sides; of stretches, both halves of the first team's season. */
  private Optional<SideBySide> opening(Kind kind) {
    List<Side> list = sides.get(kind);
    if (kind == Kind.STRETCHES && !list.isEmpty()) {
      Side side = list.get(0);
      int games = side.tallies().size();
      int half = games / 2;
      return Optional.of(
          new SideBySide(new Stretch(side, 1, half), new Stretch(side, half + 1, games), window));
    }
    return list.size() < 2
        ? Optional.empty()
        : Optional.of(
            new SideBySide(Stretch.whole(list.get(0)), Stretch.whole(list.get(1)), window));
  }
}
