package twostrides.exits;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import twostrides.game.Game;
import twostrides.game.PlayRow;

/**
 * Players on the ice by their full names: a sheet may list them by number, and a number stands for
 * the one player of that team whose name begins with it. A number of nobody, or of two players,
 * stays as it is written.
 */
final class OnIceNames {

  private static final Pattern NUMBER = Pattern.compile("#?(\\d{1,2})\\b.*", Pattern.DOTALL);

  /** Name by team and number; an empty name for a number that two players wear. */
  private final Map<String, Map<String, String>> names;

  /** Lists by team and as written: a line-up stands in row after row. */
  private final Map<String, Map<List<String>, List<String>>> lists = new HashMap<>();

  private OnIceNames(Map<String, Map<String, String>> names) {
    this.names = names;
  }

  /** The players who act in a game. */
  static OnIceNames of(Game game) {
    Map<String, Map<String, String>> names = new HashMap<>();
    for (PlayRow r : game.rows()) {
      if (r.team().isPresent() && r.player().isPresent()) {
        String name = r.player().get();
        Matcher m = NUMBER.matcher(name);
        if (m.matches() && !name.contains(";")) {
          names
              .computeIfAbsent(r.team().get(), t -> new HashMap<>())
              .merge(m.group(1), name, (a, b) -> a.equals(b) ? a : "");
        }
      }
    }
    return new OnIceNames(names);
  }

  /**
   * The players of a list, sorted.
   *
   * @param team their team
   * @param listed as the sheet writes them
   */
  List<String> of(String team, List<String> listed) {
    Map<String, String> known = names.getOrDefault(team, Map.of());
    return lists
        .computeIfAbsent(team, t -> new HashMap<>())
        .computeIfAbsent(listed, l -> l.stream().map(n -> name(known, n)).sorted().toList());
  }

  private static String name(Map<String, String> known, String written) {
    String number = written.startsWith("#") ? written.substring(1) : written;
    String full = known.getOrDefault(number, "");
    return full.isEmpty() ? written : full;
  }
}
