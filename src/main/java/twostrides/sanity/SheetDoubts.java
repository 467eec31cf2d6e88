package twostrides.sanity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twostrides.game.Frame;
import twostrides.game.TaggedGame;
import twostrides.sheet.SheetMaps;

/** Asks everything of a season's sheets that true sheets answer. */
public final class SheetDoubts {
  private SheetDoubts() {}

  /**
   * The doubts, those that stop a run first. Games whose sheets write clock and places alike are
   * looked at together.
   *
   * @param games what was counted of the games of play sheets
   * @param tagged the games of tag sheets
   * @param maps through which maps
   */
  public static List<Doubt> of(List<GameSigns> games, List<TaggedGame> tagged, SheetMaps maps) {
    Map<Frame, List<GameSigns>> alike = new LinkedHashMap<>();
    games.forEach(g -> alike.computeIfAbsent(g.frame(), f -> new ArrayList<>()).add(g));
    List<Doubt> doubts = new ArrayList<>();
    alike.forEach((frame, of) -> doubts.addAll(of(of, frame)));
    doubts.addAll(Spellings.of(games, tagged));
    doubts.addAll(OwnWords.of(maps));
    doubts.sort(Comparator.comparing(d -> !d.stops()));
    return doubts;
  }

  private static List<Doubt> of(List<GameSigns> games, Frame frame) {
    List<Doubt> doubts = new ArrayList<>();
    doubts.addAll(Directions.of(games, frame));
    doubts.addAll(Spots.of(games, frame));
    doubts.addAll(WhoFollows.of(games));
    doubts.addAll(ManpowerSides.of(games));
    doubts.addAll(Kinds.of(games));
    doubts.addAll(AtTheLine.of(games));
    doubts.addAll(Steps.of(games, frame));
    games.forEach(g -> g.atHome().ifPresent(doubts::add));
    return doubts;
  }
}
