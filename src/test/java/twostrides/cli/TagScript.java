package twostrides.cli;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a scripted user does while a video runs, each press at a second that the picture shows, and
 * what the sheet must say in the end. It keeps its own account of the game clock, from its own
 * seconds: a whistle stops it, a face-off starts it, undo puts it back.
 */
final class TagScript {

  /** How the user presses: by keys, or by taps, the second of which is a place on the rink. */
  enum By {
    KEYS,
    TAPS
  }

  /** A tap on the rink, in the place of a key. */
  static final String RINK = "rink";

  static final List<String> WAYS =
      List.of("carry", "pass", "chip", "long clearance", "missed pass", "kept in");
  static final List<String> CENTER =
      List.of("gained", "released short", "lost short", "brought back", "stopped");
  static final List<String> ENDS =
      List.of("icing", "own-zone restart", "opponent", "own", "goal against", "stopped");
  static final List<String> PRESSURE = List.of("none", "light", "heavy");

  private static final Set<String> STOPS =
      Set.of("icing", "own-zone restart", "goal against", "stopped");

  /** Seconds before the first exit. */
  private static final int LEAD = 4;

  /**
   * A key or a tap.
   *
   * @param second second of the video that the picture shows
   * @param key the key, or what is tapped in its place
   * @param exit whether it is one of the three of an exit
   */
  record Press(int second, String key, boolean exit) {}

  /**
   * A row of the sheet.
   *
   * @param press number of the press whose instant it holds, from 0
   * @param left seconds that the game clock shows then
   * @param cells its other cells, those that are filled
   */
  record Row(int press, double left, Map<String, String> cells) {}

  private record Clock(double left, int second, boolean runs) {
    double at(int now) {
      return runs ? left - (now - second) : left;
    }

    Clock turned(int now, boolean on) {
      return new Clock(at(now), now, on);
    }
  }

  private final By by;
  private final List<Press> presses = new ArrayList<>();
  private final Deque<Row> rows = new ArrayDeque<>();
  private final Deque<Clock> before = new ArrayDeque<>();
  private Clock clock;
  private String team = "Herons";

  /**
   * A pass through a period.
   *
   * @param by how the user presses
   * @param exits how many
   * @param gap seconds from exit to exit, 8 at least
   * @param period seconds that the clock shows as the video begins
   */
  TagScript(By by, int exits, int gap, int period) {
    this.by = by;
    this.clock = new Clock(period, 0, true);
    for (int i = 0; i < exits; i++) {
      exit(i, LEAD + gap * i);
    }
  }

  List<Press> presses() {
    return presses;
  }

  List<Row> rows() {
    return List.copyOf(rows);
  }

  private void press(int second, String key) {
    presses.add(new Press(second, key, false));
  }

  private void exit(int i, int at) {
    String now = i % 5 == 4 ? "Wolves" : "Herons";
    if (!now.equals(team)) {
      team = now;
      press(at - 1, team.equals("Wolves") ? "k" : "j");
    }
    if (i % 8 == 2) {
      // A way out that was none.
      press(at - 1, "6");
      press(at - 1, "u");
    }
    int way = i % WAYS.size();
    String end = ENDS.get(i / 2 % ENDS.size());
    Map<String, String> cells = cells();
    cells.put("way_out", WAYS.get(way));
    cells.put("ended", end);
    int first = presses.size();
    double left = clock.at(at);
    presses.add(new Press(at, String.valueOf(way + 1), true));
    presses.add(new Press(at + 1, second(i, way < 2, cells), true));
    presses.add(new Press(at + 2, "asdfgh".substring(i / 2 % ENDS.size()).substring(0, 1), true));
    save(new Row(first, left, cells));
    boolean stops = STOPS.contains(end);
    if (stops) {
      clock = clock.turned(at + 2, false);
      Map<String, String> faceOff = cells();
      faceOff.put("faceoff", i % 4 == 0 ? "won" : "lost");
      save(new Row(presses.size(), clock.at(at + 4), faceOff));
      press(at + 4, i % 4 == 0 ? "m" : "i");
      clock = clock.turned(at + 4, true);
    }
    if (i % 7 == 3) {
      for (int n = stops ? 2 : 1; n > 0; n--) {
        press(at + 6, "u");
        rows.removeLast();
        clock = before.removeLast();
      }
    }
  }

  private void save(Row row) {
    rows.addLast(row);
    before.addLast(clock);
  }

  private Map<String, String> cells() {
    return new TreeMap<>(Map.of("home", "Herons", "away", "Wolves", "period", "1", "team", team));
  }

  /** The second press of an exit: what became of it at center, how it was pressed, or the place. */
  private String second(int i, boolean marked, Map<String, String> cells) {
    if (by == By.TAPS) {
      return RINK;
    }
    if (marked) {
      cells.put("at_center", CENTER.get(i % CENTER.size()));
      return "qwert".substring(i % CENTER.size()).substring(0, 1);
    }
    cells.put("pressure", PRESSURE.get(i % PRESSURE.size()));
    return "zxc".substring(i % PRESSURE.size()).substring(0, 1);
  }
}
