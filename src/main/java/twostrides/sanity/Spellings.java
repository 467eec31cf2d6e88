package twostrides.sanity;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import twostrides.game.Action;
import twostrides.game.Game;
import twostrides.game.PlayRow;
import twostrides.game.TaggedExit;
import twostrides.game.TaggedGame;

/**
 * Teams and players who are written in two ways: each way counts as somebody of its own. Capitals,
 * blanks, composed and decomposed letters, a leading zero, one number with two names, and one
 * letter too many, too few or another in a long word. (A team that differs in capitals and blanks
 * alone is read as one already.)
 */
final class Spellings {

  private static final int MOST_NAMED = 10;

  private static final Pattern NUMBER = Pattern.compile("#?0*(\\d{1,2})(?:\\b\\s*(.*))?");

  private static final Pattern LEADING_ZERO = Pattern.compile("(?<!\\d)0+(?=\\d)");

  private static final Pattern FIGURE = Pattern.compile("\\d");

  /** Letters of a word that hardly is another word with one letter changed. Assumed. */
  private static final int LONG_WORD = 5;

  private static final String TEAMS = "";

  /** Rows by spelling, by team; teams themselves under no team. */
  private final Map<String, Map<String, Integer>> rows = new TreeMap<>();

  /** Nothing counted yet. */
  private Spellings() {}

  /** Counts a game. */
  Spellings(Game g) {
    g.rows().forEach(this::count);
  }

  private void add(Spellings game) {
    game.rows.forEach((team, names) -> names.forEach((name, n) -> count(team, name, n)));
  }

  private void count(PlayRow r) {
    if (r.team().isPresent()) {
      String team = r.team().get();
      count(TEAMS, team);
      r.player().ifPresent(p -> count(team, p));
      if (r.action() == Action.PASS) {
        r.otherPlayer().ifPresent(p -> count(team, p));
      }
    }
  }

  private void count(String team, String name) {
    count(team, name, 1);
  }

  private void count(String team, String name, int n) {
    rows.computeIfAbsent(team, t -> new TreeMap<>()).merge(name, n, Integer::sum);
  }

  /** One who is written in several ways. */
  private record Twice(String team, List<Map.Entry<String, Integer>> ways) {
    /** Rows that count for somebody else than most. */
    int lost() {
      return ways.stream().skip(1).mapToInt(Map.Entry::getValue).sum();
    }

    String words() {
      String all =
          ways.stream()
              .map(w -> "\"" + w.getKey() + "\" in " + w.getValue() + " rows")
              .reduce((a, b) -> a + ", " + b)
              .orElseThrow();
      return team.equals(TEAMS) ? "a team: " + all : team + ": " + all;
    }
  }

  static List<Doubt> of(List<GameSigns> games, List<TaggedGame> tagged) {
    Spellings s = new Spellings();
    games.forEach(g -> s.add(g.spellings()));
    for (TaggedGame g : tagged) {
      for (TaggedExit e : g.exits()) {
        s.count(TEAMS, e.team());
        e.player().ifPresent(p -> s.count(e.team(), p));
      }
    }
    List<Twice> found = new ArrayList<>();
    s.rows.forEach((team, names) -> found.addAll(twice(team, names)));
    found.sort(Comparator.comparingInt(Twice::lost).reversed());
    if (found.isEmpty()) {
      return List.of();
    }
    String named =
        found.stream()
            .limit(MOST_NAMED)
            .map(Twice::words)
            .reduce((a, b) -> a + "; " + b)
            .orElseThrow();
    int more = found.size() - Math.min(found.size(), MOST_NAMED);
    return List.of(
        Doubt.warn(
            "names",
            "one name in several spellings: " + named + (more > 0 ? "; and " + more + " more" : ""),
            "one spelling for each team and player",
            "Write them alike in the sheets; until then each spelling counts as somebody else."));
  }

  private static List<Twice> twice(String team, Map<String, Integer> names) {
    Map<String, List<Map.Entry<String, Integer>>> alike = new TreeMap<>();
    names
        .entrySet()
        .forEach(n -> alike.computeIfAbsent(key(n.getKey()), k -> new ArrayList<>()).add(n));
    if (!team.equals(TEAMS)) {
      byNumber(alike);
    }
    byLetter(alike);
    return alike.values().stream()
        .filter(ways -> ways.size() > 1)
        .map(
            ways ->
                new Twice(
                    team,
                    ways.stream()
                        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                        .toList()))
        .toList();
  }

  /** Names that begin with one number are put together, whatever comes after it. */
  private static void byNumber(Map<String, List<Map.Entry<String, Integer>>> alike) {
    Map<String, String> first = new TreeMap<>();
    for (String key : List.copyOf(alike.keySet())) {
      Optional<String> number = number(key);
      if (number.isPresent()) {
        String before = first.putIfAbsent(number.get(), key);
        if (before != null) {
          alike.get(before).addAll(alike.remove(key));
        }
      }
    }
  }

  /** Names without a figure that differ by one letter in one long word are put together. */
  private static void byLetter(Map<String, List<Map.Entry<String, Integer>>> alike) {
    List<String> keys = alike.keySet().stream().filter(k -> !FIGURE.matcher(k).find()).toList();
    for (int i = 0; i < keys.size(); i++) {
      for (String other : keys.subList(i + 1, keys.size())) {
        if (alike.containsKey(keys.get(i))
            && alike.containsKey(other)
            && aSlip(keys.get(i), other)) {
          alike.get(keys.get(i)).addAll(alike.remove(other));
        }
      }
    }
  }

  private static boolean aSlip(String one, String other) {
    List<String> a = List.of(one.split(" ", -1));
    List<String> b = List.of(other.split(" ", -1));
    if (a.size() != b.size()) {
      return false;
    }
    List<Integer> differ =
        IntStream.range(0, a.size()).filter(i -> !a.get(i).equals(b.get(i))).boxed().toList();
    return differ.size() == 1 && oneLetter(a.get(differ.get(0)), b.get(differ.get(0)));
  }

  /** Whether two words differ by one letter, or by two that changed places. */
  private static boolean oneLetter(String a, String b) {
    int most = Math.max(a.length(), b.length());
    int same = 0;
    while (same < Math.min(a.length(), b.length()) && a.charAt(same) == b.charAt(same)) {
      same++;
    }
    int end = 0;
    while (end < Math.min(a.length(), b.length()) - same
        && a.charAt(a.length() - 1 - end) == b.charAt(b.length() - 1 - end)) {
      end++;
    }
    int left = most - same - end;
    boolean swapped =
        left == 2
            && a.length() == b.length()
            && a.charAt(same) == b.charAt(same + 1)
            && a.charAt(same + 1) == b.charAt(same);
    return most >= LONG_WORD && (left == 1 || swapped);
  }

  private static Optional<String> number(String key) {
    Matcher m = NUMBER.matcher(key);
    return m.matches() ? Optional.of(m.group(1)) : Optional.empty();
  }

  private static String key(String written) {
    String plain =
        Normalizer.normalize(written, Normalizer.Form.NFKC)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\s+", " ")
            .strip();
    return LEADING_ZERO.matcher(plain).replaceAll("");
  }
}
