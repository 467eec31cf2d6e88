package twostrides.sanity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twostrides.game.Frame;
import twostrides.game.Game;
import twostrides.game.SheetsRead;
import twostrides.sheet.SheetMaps;

/** Asks everything of a season's sheets that true sheets answer. */
public final class SheetDoubts {
  private SheetDoubts() {}

  /**
   * The doubts, those that stop a run first. Games whose sheets write clock and places alike are
   * looked at together.
   *
   * @param season what was read
   * @param maps through which maps
   */
  public static List<Doubt> of(SheetsRead season, SheetMaps maps) {
    Map<Frame, List<Game>> alike = new LinkedHashMap<>();
    for (Game g : season.games()) {
      Frame frame = season.frames().get(g.id());
      if (frame != null && !g.rows().isEmpty()) {
        alike.computeIfAbsent(frame, f -> new ArrayList<>()).add(g);
      }
    }
    List<Doubt> doubts = new ArrayList<>();
    alike.forEach((frame, games) -> doubts.addAll(of(games, frame)));
    doubts.addAll(Spellings.of(season));
    doubts.addAll(OwnWords.of(maps));
    doubts.sort(Comparator.comparing(d -> !d.stops()));
    return doubts;
  }

  private static List<Doubt> of(List<Game> games, Frame frame) {
    List<Doubt> doubts = new ArrayList<>();
    doubts.addAll(Directions.of(games, frame));
    doubts.addAll(Spots.of(games, frame));
    doubts.addAll(WhoFollows.of(games));
    doubts.addAll(ManpowerSides.of(games));
    doubts.addAll(Kinds.of(games));
    doubts.addAll(AtTheLine.of(games));
    doubts.addAll(Steps.of(games, frame));
    doubts.addAll(AtHome.of(games));
    return doubts;
  }
}
