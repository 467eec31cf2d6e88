package twostrides.game;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import twostrides.rulebook.penalty.BoxEvent;

/**
 * Takes players' names out of games before anything is made of them: a name that begins with a
 * number becomes "No. 12", any other a running code of its team. Two players of a team with one
 * number get a letter as well.
 */
public final class Anonymous {

  private static final Pattern NUMBER = Pattern.compile("#?(\\d{1,2})\\b.*", Pattern.DOTALL);

  private static final Pattern BARE = Pattern.compile("#?(\\d{1,2})");

  /** Code by team and name. */
  private final Map<String, Map<String, String>> codes = new HashMap<>();

  private Anonymous(Map<String, Set<String>> names) {
    names.forEach((team, players) -> codes.put(team, codes(players)));
  }

  /**
   * Play sheets' games without names.
   *
   * @param games the games of a season
   */
  public static List<Game> games(List<Game> games) {
    Map<String, Set<String>> names = new TreeMap<>();
    for (Game g : games) {
      for (PlayRow r : g.rows()) {
        r.team()
            .ifPresent(
                t -> {
                  r.player().ifPresent(p -> of(names, t).add(p));
                  r.otherPlayer().ifPresent(p -> of(names, t).add(p));
                  r.servedBy().ifPresent(p -> of(names, t).add(p));
                  named(r.ownOnIce()).forEach(of(names, t)::add);
                  named(r.opponentOnIce()).forEach(of(names, g.opponentOf(t))::add);
                });
      }
    }
    Anonymous codes = new Anonymous(names);
    return games.stream().map(codes::game).toList();
  }

  /**
   * Tag sheets' games without names.
   *
   * @param games the games of a season
   */
  public static List<TaggedGame> tagged(List<TaggedGame> games) {
    Map<String, Set<String>> names = new TreeMap<>();
    for (TaggedGame g : games) {
      g.exits().forEach(e -> e.player().ifPresent(p -> of(names, e.team()).add(p)));
    }
    Anonymous codes = new Anonymous(names);
    return games.stream()
        .map(
            g ->
                g.withExits(
                    g.exits().stream()
                        .map(e -> e.withPlayer(e.player().map(p -> codes.code(e.team(), p))))
                        .toList()))
        .toList();
  }

  /** A list may give numbers alone: those stand for players who are named elsewhere. */
  private static Stream<String> named(List<String> listed) {
    return listed.stream().filter(n -> !BARE.matcher(n).matches());
  }

  private static Set<String> of(Map<String, Set<String>> names, String team) {
    return names.computeIfAbsent(team, t -> new TreeSet<>());
  }

  private static Map<String, String> codes(Set<String> players) {
    Map<String, String> codes = new HashMap<>();
    Set<String> taken = new HashSet<>();
    int running = 0;
    for (String name : players) {
      Matcher m = NUMBER.matcher(name);
      String code = m.matches() ? "No. " + m.group(1) : "player " + ++running;
      String free = code;
      for (char letter = 'b'; !taken.add(free); letter++) {
        free = code + letter;
      }
      codes.put(name, free);
    }
    return codes;
  }

  private String code(String team, String name) {
    Matcher bare = BARE.matcher(name);
    if (bare.matches() || name.equals(BoxEvent.Called.NOBODY)) {
      return bare.matches() ? "No. " + bare.group(1) : name;
    }
    return codes.get(team).get(name);
  }

  private Game game(Game g) {
    List<PlayRow> rows = new ArrayList<>();
    for (PlayRow r : g.rows()) {
      Optional<String> team = r.team();
      rows.add(
          r.withNames(
              name -> team.map(t -> code(t, name)).orElse(""),
              name -> team.map(t -> code(g.opponentOf(t), name)).orElse("")));
    }
    return g.withRows(rows);
  }
}
