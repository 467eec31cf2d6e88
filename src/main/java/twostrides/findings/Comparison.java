package twostrides.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import twostrides.exits.AtCenter;
import twostrides.exits.Exit;
import twostrides.exits.GameRecords;
import twostrides.exits.Release;
import twostrides.exits.Situation;
import twostrides.exits.WayOut;
import twostrides.findings.ComparedGroup.Apart;
import twostrides.findings.ComparedGroup.Cell;
import twostrides.findings.ComparedGroup.Measure;
import twostrides.findings.ComparedGroup.Tally;
import twostrides.game.Strength;
import twostrides.stats.Count;

/**
 * What can be set side by side: every player, unit and team, game by game.
 *
 * @param teams the teams
 * @param groups those of each kind who can be picked
 * @param leftOut who cannot: "3 of 40 players"
 */
public record Comparison(
    List<TeamGames> teams, Map<Kind, List<ComparedGroup>> groups, List<String> leftOut) {

  /** Kinds of what is compared; of teams and stretches the games stand apart in an interval. */
  public enum Kind {
    PLAYERS("players"),
    UNITS("units"),
    TEAMS("teams"),
    STRETCHES("stretches");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word in addresses and lists. */
    public String word() {
      return word;
    }
  }

  /**
   * A team and its games in order.
   *
   * @param name the team
   * @param games ids
   */
  public record TeamGames(String name, List<String> games) {
    /** Copies the games. */
    public TeamGames {
      games = List.copyOf(games);
    }
  }

  /** Who a row counts for; a team stands for itself. */
  private record Who(Kind kind, String team, String name) {}

  /** Copies the lists. */
  public Comparison {
    teams = List.copyOf(teams);
    groups = new LinkedHashMap<>(groups);
    leftOut = List.copyOf(leftOut);
  }

  /** The kind that the page opens with: the first of which two can be compared. */
  public Optional<Kind> first() {
    return groups.entrySet().stream()
        .filter(e -> e.getValue().size() >= (e.getKey() == Kind.STRETCHES ? 1 : 2))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * Counts a season.
   *
   * @param review the season and its teams in their order
   */
  public static Comparison of(SeasonReview review) {
    Map<String, Set<String>> games = new LinkedHashMap<>();
    Map<Who, Map<String, Map<Cell, Tally>>> tallies = new LinkedHashMap<>();
    List<GameRecords> all = review.season().games();
    all.stream()
        .flatMap(g -> g.exits().stream())
        .forEach(
            e -> {
              meet(games, e.at());
              whom(e.at(), e.player()).forEach(w -> exit(cells(tallies, w, e.at()), e));
            });
    all.stream()
        .flatMap(g -> g.releases().stream())
        .forEach(
            r -> {
              meet(games, r.at());
              whom(r.at(), r.at().player()).forEach(w -> release(cells(tallies, w, r.at()), r));
            });
    List<TeamGames> teams =
        review.teams().stream()
            .map(t -> new TeamGames(t.team(), List.copyOf(games.getOrDefault(t.team(), Set.of()))))
            .toList();
    List<String> leftOut = new ArrayList<>();
    Map<Kind, List<ComparedGroup>> groups = new LinkedHashMap<>();
    for (Kind kind : List.of(Kind.PLAYERS, Kind.UNITS)) {
      List<ComparedGroup> every = groups(kind, teams, tallies);
      List<ComparedGroup> enough =
          every.stream().filter(g -> g.attempts() >= Count.FEWEST_TO_SAY).toList();
      if (enough.size() < every.size()) {
        leftOut.add(every.size() - enough.size() + " of " + every.size() + " " + kind.word());
      }
      groups.put(kind, enough);
    }
    List<ComparedGroup> whole = groups(Kind.TEAMS, teams, tallies);
    groups.put(Kind.TEAMS, whole);
    groups.put(Kind.STRETCHES, whole.stream().filter(g -> g.games().size() > 1).toList());
    return new Comparison(teams, groups, leftOut);
  }

  private static void meet(Map<String, Set<String>> games, Situation at) {
    String id = at.when().game().id();
    games.computeIfAbsent(at.team(), t -> new LinkedHashSet<>()).add(id);
    at.opponent().ifPresent(o -> games.computeIfAbsent(o, t -> new LinkedHashSet<>()).add(id));
  }

  private static List<Who> whom(Situation at, Optional<String> player) {
    List<Who> whom = new ArrayList<>();
    whom.add(new Who(Kind.TEAMS, at.team(), at.team()));
    player.ifPresent(p -> whom.add(new Who(Kind.PLAYERS, at.team(), p)));
    if (!at.state().onIce().isEmpty()) {
      whom.add(new Who(Kind.UNITS, at.team(), String.join("; ", at.state().onIce())));
    }
    return whom;
  }

  private static Map<Cell, Tally> cells(
      Map<Who, Map<String, Map<Cell, Tally>>> tallies, Who who, Situation at) {
    return tallies
        .computeIfAbsent(who, k -> new LinkedHashMap<>())
        .computeIfAbsent(at.when().game().id(), g -> new LinkedHashMap<>());
  }

  private static void exit(Map<Cell, Tally> cells, Exit e) {
    Apart strength = apart(e.at());
    ShownWay way = ShownWay.of(e.way(), e.mark());
    FaceOffAfter.of(e.outcome())
        .ifPresent(
            a -> add(cells, Measure.ICED_BY_WAY, way, strength, a == FaceOffAfter.ICING ? 1 : 0));
    count(cells, Measure.KEPT_IN, strength, e.way() == WayOut.KEPT_IN ? 1 : 0);
    boolean controlled = e.way() == WayOut.CARRY || e.way() == WayOut.PASS;
    e.mark()
        .filter(m -> controlled)
        .ifPresent(
            m ->
                count(
                    cells, Measure.RELEASED_SHORT, strength, m == AtCenter.RELEASED_SHORT ? 1 : 0));
    e.outcome().against().ifPresent(a -> count(cells, Measure.AGAINST, strength, a.attempts()));
  }

  private static void release(Map<Cell, Tally> cells, Release r) {
    count(cells, Measure.ICED_RELEASES, apart(r.at()), r.iced() ? 1 : 0);
  }

  private static void count(Map<Cell, Tally> cells, Measure what, Apart strength, int hits) {
    add(cells, what, ShownWay.KEPT_IN, strength, hits);
  }

  private static void add(
      Map<Cell, Tally> cells, Measure what, ShownWay way, Apart strength, int hits) {
    cells.merge(new Cell(what, way, strength), new Tally(hits, 1), Tally::plus);
  }

  private static Apart apart(Situation at) {
    Strength strength = at.state().strength();
    return switch (strength) {
      case EVEN -> Apart.EVEN;
      case SHORTHANDED -> Apart.SHORTHANDED;
      case POWER_PLAY, UNKNOWN -> Apart.OTHER;
    };
  }

  /** A group with its exit attempts, counted once. */
  private record Sized(ComparedGroup group, int attempts) {}

  private static List<ComparedGroup> groups(
      Kind kind, List<TeamGames> teams, Map<Who, Map<String, Map<Cell, Tally>>> tallies) {
    Set<String> taken = new HashSet<>();
    List<ComparedGroup> groups = new ArrayList<>();
    for (int t = 0; t < teams.size(); t++) {
      TeamGames team = teams.get(t);
      int number = t;
      tallies.entrySet().stream()
          .filter(e -> e.getKey().kind() == kind && e.getKey().team().equals(team.name()))
          .map(e -> group(e.getKey(), number, team, e.getValue()))
          .map(g -> new Sized(g, g.attempts()))
          .sorted(
              Comparator.comparingInt((Sized s) -> -s.attempts())
                  .thenComparing(s -> s.group().label()))
          .map(Sized::group)
          .map(g -> taken.add(g.label()) ? g : again(g, taken))
          .forEach(groups::add);
    }
    return groups;
  }

  private static ComparedGroup group(
      Who who, int team, TeamGames games, Map<String, Map<Cell, Tally>> byGame) {
    String label = Names.shown(who.name());
    return new ComparedGroup(
        who.kind() == Kind.TEAMS ? label : label + ", " + Names.shown(who.team()),
        team,
        games.games().stream().map(g -> byGame.getOrDefault(g, Map.of())).toList());
  }

  private static ComparedGroup again(ComparedGroup group, Set<String> taken) {
    String label = group.label();
    for (int n = 2; !taken.add(label); n++) {
      label = group.label() + " (" + n + ")";
    }
    return new ComparedGroup(label, group.team(), group.games());
  }
}
