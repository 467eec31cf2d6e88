package twostrides.numbers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import twostrides.exits.Columns;
import twostrides.exits.ExitTables;
import twostrides.review.Say;
import twostrides.review.SeasonReview;
import twostrides.review.TableRows;
import twostrides.review.TeamReview;
import twostrides.stats.Count;

/** Counts a season's exits and releases for every player, unit and team, game by game. */
public final class Sides {

  /** Who a row counts for; a team stands for itself. */
  private record Who(Comparison.Kind kind, String team, String name) {}

  private final Map<Who, Map<String, SideTally>> tallies = new LinkedHashMap<>();
  private final List<Comparison.TeamGames> teams = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();

  private Sides(Season season, List<String> names) {
    Map<String, Set<String>> games = new HashMap<>();
    Stream.of(season.exits, season.releases)
        .flatMap(List::stream)
        .forEach(
            r -> {
              for (String column : List.of(Columns.TEAM, Columns.OPPONENT)) {
                games
                    .computeIfAbsent(r.words(column), t -> new LinkedHashSet<>())
                    .add(r.words(Columns.GAME));
              }
            });
    names.forEach(
        n -> teams.add(new Comparison.TeamGames(n, List.copyOf(games.getOrDefault(n, Set.of())))));
    season.exits.forEach(r -> count(r, SideTally::exit));
    season.releases.forEach(r -> count(r, SideTally::release));
  }

  /**
   * Counts.
   *
   * @param review the teams in their order, and the window
   * @param tables what the pipeline made of the season
   */
  public static Comparison of(SeasonReview review, ExitTables tables) {
    Sides sides =
        new Sides(new Season(tables), review.teams().stream().map(TeamReview::team).toList());
    return sides.comparison(Math.round(review.window()) + " s");
  }

  private void count(TableRows r, BiConsumer<SideTally, TableRows> how) {
    String team = r.words(Columns.TEAM);
    List<Who> whom = new ArrayList<>();
    whom.add(new Who(Comparison.Kind.TEAMS, team, team));
    r.text(Columns.PLAYER).ifPresent(p -> whom.add(new Who(Comparison.Kind.PLAYERS, team, p)));
    r.text(Columns.ON_ICE).ifPresent(u -> whom.add(new Who(Comparison.Kind.UNITS, team, u)));
    for (Who w : whom) {
      how.accept(
          tallies
              .computeIfAbsent(w, k -> new HashMap<>())
              .computeIfAbsent(r.words(Columns.GAME), g -> new SideTally()),
          r);
    }
  }

  private Comparison comparison(String window) {
    List<Side> whole = sides(Comparison.Kind.TEAMS);
    List<Side> stretches = whole.stream().filter(s -> s.tallies().size() > 1).toList();
    return new Comparison(
        teams,
        Map.of(
            Comparison.Kind.PLAYERS,
            named(Comparison.Kind.PLAYERS),
            Comparison.Kind.UNITS,
            named(Comparison.Kind.UNITS),
            Comparison.Kind.TEAMS,
            whole,
            Comparison.Kind.STRETCHES,
            stretches),
        leftOut,
        window);
  }

  /** Players or units with attempts enough to say anything. */
  private List<Side> named(Comparison.Kind kind) {
    List<Side> all = sides(kind);
    List<Side> enough = all.stream().filter(s -> s.attempts() >= Count.FEWEST_TO_SAY).toList();
    if (enough.size() < all.size()) {
      leftOut.add(all.size() - enough.size() + " of " + all.size() + " " + kind.word());
    }
    return enough;
  }

  private List<Side> sides(Comparison.Kind kind) {
    Set<String> taken = new HashSet<>();
    List<Side> sides = new ArrayList<>();
    for (int t = 0; t < teams.size(); t++) {
      Comparison.TeamGames team = teams.get(t);
      int number = t;
      tallies.entrySet().stream()
          .filter(e -> e.getKey().kind() == kind && e.getKey().team().equals(team.name()))
          .map(e -> side(e.getKey(), number, e.getValue()))
          .sorted(Comparator.comparingInt((Side s) -> -s.attempts()).thenComparing(Side::label))
          .map(s -> taken.add(s.label()) ? s : again(s, taken))
          .forEach(sides::add);
    }
    return sides;
  }

  private Side side(Who who, int team, Map<String, SideTally> byGame) {
    boolean whole = who.kind() == Comparison.Kind.TEAMS;
    String name = Say.name(who.name());
    return new Side(
        whole ? name : name + ", " + Say.name(who.team()),
        team,
        whole,
        teams.get(team).games().stream()
            .map(g -> byGame.getOrDefault(g, new SideTally()))
            .toList());
  }

  /** Two names that read alike with their teams; the address must tell them apart. */
  private static Side again(Side side, Set<String> taken) {
    String label = side.label();
    for (int n = 2; !taken.add(label); n++) {
      label = side.label() + " (" + n + ")";
    }
    return new Side(label, side.team(), side.byGame(), side.tallies());
  }
}
