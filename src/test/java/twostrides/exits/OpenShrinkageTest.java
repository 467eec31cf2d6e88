package twostrides.exits;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tech.tablesaw.api.Table;
import twostrides.checks.Printed;
import twostrides.season.Columns;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.SheetException;
import twostrides.stats.Count;
import twostrides.stats.OutOfSample;

/**
 * Two of three real games (open data) say the third, all three rotations: adjusted rates against
 * raw shares. Only one team played twice, so players can be followed in two rotations; ways out in
 * three.
 */
class OpenShrinkageTest {

  @RegisterExtension static final Printed FIGURES = new Printed();

  private static final int GAMES = 3;

  private static Table exits;
  private static List<String> games;

  @BeforeAll
  static void read() throws IOException, SheetException {
    OpenData.need();
    exits =
        twostrides.season.Season.of(
                OpenData.games(), List.of(), OpenData.SETTINGS, SkatersAtRelease.NONE)
            .exits();
    games = List.copyOf(new TreeSet<>(exits.stringColumn(Columns.GAME).asList()));
  }

  /** Restarts by way out, each way adjusted by the others. */
  @Test
  void restartsByWayOut() {
    OutOfSample all = new OutOfSample();
    for (int third = 0; third < GAMES; third++) {
      OutOfSample one = new OutOfSample();
      add(List.of(one, all), third, i -> way(i), i -> restart(i));
      FIGURES.say("%s", one.line("open games, restarts by way, third game " + games.get(third)));
    }
    FIGURES.say("%s", all.line("open games, restarts by way, all three"));
    assertTrue(all.adjusted() < all.raw());
  }

  /** Players' restarts by way out, each player adjusted by the others with that way. */
  @Test
  void restartsOfPlayersByWayOut() {
    OutOfSample all = new OutOfSample();
    for (int third = 0; third < GAMES; third++) {
      OutOfSample one = new OutOfSample();
      for (String way : new TreeSet<>(exits.stringColumn(Columns.WAY_OUT).asList())) {
        add(
            List.of(one, all),
            third,
            i -> text(Columns.WAY_OUT, i).equals(way) ? player(i) : "",
            i -> restart(i));
      }
      FIGURES.say(
          "%s", one.line("open games, players' restarts by way, third game " + games.get(third)));
    }
    FIGURES.say("%s", all.line("open games, players' restarts by way, all that there is"));
    assertTrue(all.adjusted() < all.raw());
  }

  /** How many of a player's attempts are kept in: more trials, and players who differ. */
  @Test
  void attemptsOfPlayersKeptIn() {
    OutOfSample all = new OutOfSample();
    for (int third = 0; third < GAMES; third++) {
      OutOfSample one = new OutOfSample();
      add(
          List.of(one, all),
          third,
          i -> player(i),
          i -> text(Columns.WAY_OUT, i).equals(WayOut.KEPT_IN.label()));
      FIGURES.say("%s", one.line("open games, players' kept in, third game " + games.get(third)));
    }
    FIGURES.say("%s", all.line("open games, players' kept in, all that there is"));
    assertTrue(all.adjusted() < all.raw());
  }

  /** Members are named by row, empty for none; those of the first two games are the group. */
  private static void add(
      List<OutOfSample> to, int third, IntFunction<String> member, IntPredicate success) {
    TreeMap<String, int[]> counts = new TreeMap<>();
    for (int i = 0; i < exits.rowCount(); i++) {
      String name = member.apply(i);
      if (!name.isEmpty()) {
        int at = text(Columns.GAME, i).equals(games.get(third)) ? 2 : 0;
        int[] c = counts.computeIfAbsent(name, k -> new int[4]);
        c[at] += success.test(i) ? 1 : 0;
        c[at + 1]++;
      }
    }
    List<Count> earlier = new ArrayList<>();
    List<Count> later = new ArrayList<>();
    counts.values().stream()
        .filter(c -> c[1] > 0)
        .forEach(
            c -> {
              earlier.add(new Count(c[0], c[1]));
              later.add(new Count(c[2], c[3]));
            });
    to.forEach(o -> o.add(earlier, later));
  }

  private static boolean restart(int row) {
    return Cells.flag(exits, Columns.OWN_ZONE_RESTART, row).orElse(false);
  }

  private static String way(int row) {
    return text(Columns.WAY_OUT, row) + " " + text(Columns.AT_CENTER, row);
  }

  private static String player(int row) {
    Optional<String> player = Cells.text(exits, Columns.PLAYER, row);
    return player.map(p -> text(Columns.TEAM, row) + " " + p).orElse("");
  }

  private static String text(String column, int row) {
    return Cells.text(exits, column, row).orElse("");
  }
}
