package twostrides.tracking;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import twostrides.game.SheetsRead;
import twostrides.rink.Rink;

/** Outlines of games, for tests. */
public final class Outlines {
  private Outlines() {}

  /** Of the games of sheets. */
  public static Map<String, GameOutline> of(SheetsRead season) {
    return GameOutline.byId(
        season.games().stream().map(GameOutline::of).toList(),
        season.tagged().stream().map(GameOutline::of).toList());
  }

  /** Of one game that nobody knows more of. */
  static GameOutline of(String id, double periodLength, Set<Integer> periods) {
    return new GameOutline(
        id,
        Optional.empty(),
        Optional.empty(),
        Rink.NORTH_AMERICAN,
        1,
        periodLength,
        periods,
        List.of());
  }

  /** The same by its id. */
  static Map<String, GameOutline> byId(GameOutline... games) {
    return GameOutline.byId(List.of(games), List.of());
  }
}
