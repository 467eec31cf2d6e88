package twostrides.book.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Shares games out over columns of about one height, in their order and none of them divided.
 *
 * @param columns how many
 * @param head pixels above the first game of each
 */
record KillColumns(int columns, double head) {

  /** Lists of games, one for each column; the last may be empty. */
  List<List<KillStrips.Block>> share(List<KillStrips.Block> games) {
    double all = games.stream().mapToDouble(KillStrips.Block::height).sum();
    double limit = Math.max(all / columns, 1);
    List<List<KillStrips.Block>> shared = within(games, limit);
    while (shared.size() > columns) {
      limit += head / 4;
      shared = within(games, limit);
    }
    return shared;
  }

  private static List<List<KillStrips.Block>> within(List<KillStrips.Block> games, double limit) {
    List<List<KillStrips.Block>> shared = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (KillStrips.Block game : games) {
      if (used + game.height() > limit) {
        shared.add(new ArrayList<>());
        used = 0;
      }
      shared.get(shared.size() - 1).add(game);
      used += game.height();
    }
    return shared;
  }
}
