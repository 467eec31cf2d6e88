package twostrides.tracking;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import twostrides.game.SheetsRead;

/**
 * What a sync sheet can speak of in a game.
 *
 * @param id the game's id
 * @param periodLength seconds of a period, for clocks that count down
 * @param periods the periods of which there are rows
 */
public record GameSpan(String id, double periodLength, Set<Integer> periods) {
  /** Copies the periods. */
  public GameSpan {
    periods = Set.copyOf(periods);
  }

  /**
   * The games of a season, by id; a game may have a play sheet and a tag sheet.
   *
   * @param season the season
   */
  public static List<GameSpan> of(SheetsRead season) {
    Map<String, Set<Integer>> periods = new TreeMap<>();
    season.games().forEach(g -> g.rows().forEach(r -> periods(periods, g.id()).add(r.period())));
    season.tagged().forEach(g -> g.exits().forEach(r -> periods(periods, g.id()).add(r.period())));
    Map<String, Double> lengths = season.periodLengths();
    List<GameSpan> spans = new ArrayList<>();
    periods.forEach((id, of) -> spans.add(new GameSpan(id, lengths.get(id), of)));
    return spans;
  }

  private static Set<Integer> periods(Map<String, Set<Integer>> of, String game) {
    return of.computeIfAbsent(game, g -> new TreeSet<>());
  }
}
