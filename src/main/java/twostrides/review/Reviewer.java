package twostrides.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import twostrides.exits.Columns;
import twostrides.exits.ExitTables;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Makes the review of a season from the pipeline's tables. */
public final class Reviewer {

  private final ExitTables tables;
  private final double window;
  private final ToDoubleFunction<String> periodLength;

  /** A release or exit by game and number, as its own table counts them. */
  private record Key(String game, OptionalInt number) {
    static Key of(TableRows r, String column) {
      return new Key(r.words(Columns.GAME), r.count(column));
    }
  }

  private final Map<Key, ShownWay> ways = new HashMap<>();
  private final Map<String, Tally> teams = new TreeMap<>();
  private final Changes changes = new Changes();
  private final Map<PlayerKey, Tally> players = new LinkedHashMap<>();
  private final Map<PlayerKey, List<ReleaseLine>> releases = new HashMap<>();
  private final Map<String, Set<String>> gamesOfTeam = new TreeMap<>();
  private final Set<String> games = new TreeSet<>();

  private Reviewer(ExitTables tables, double window, ToDoubleFunction<String> periodLength) {
    this.tables = tables;
    this.window = window;
    this.periodLength = periodLength;
  }

  /**
   * Reviews a season.
   *
   * @param tables what the pipeline made of it
   * @param window seconds in which restarts, attempts and goals counted
   * @param periodLength seconds of a period, by game id
   */
  public static SeasonReview review(
      ExitTables tables, double window, ToDoubleFunction<String> periodLength) {
    return new Reviewer(tables, window, periodLength).review();
  }

  private SeasonReview review() {
    TableRows.of(tables.exits()).forEach(this::exit);
    TableRows.of(tables.releases()).forEach(this::release);
    List<RestartLine> restarts =
        TableRows.of(tables.restarts())
            .filter(r -> r.flag(Columns.OWN_LAST).orElse(false))
            .map(r -> RestartLines.line(r, way(r), periodLength))
            .toList();
    Optional<String> ours = ourTeam();
    List<TeamReview> teamReviews = teamReviews(restarts, ours);
    List<FlagLine> flags = flags();
    AdjustedRates iced =
        AdjustedRates.of(players.values().stream().map(t -> t.profile().releases()).toList());
    List<PlayerReview> playerReviews =
        playerReviews(iced, new Moments(tables, flags, periodLength));
    List<String> sentences =
        new Sentences(
                games.size(),
                ours,
                window,
                teamReviews,
                playerReviews,
                iced,
                restarts,
                changes.icings(ours))
            .all();
    List<AuditLine> audits =
        TableRows.of(tables.restarts())
            .filter(r -> r.text(Columns.AUDIT).isPresent())
            .map(r -> RestartLines.audit(r, periodLength))
            .toList();
    List<OtherRuling> others =
        TableRows.of(tables.rulings())
            .filter(r -> r.flag(Columns.DIFFERS).orElse(false))
            .map(r -> RestartLines.other(r, periodLength))
            .toList();
    return new SeasonReview(
        games.size(),
        ours,
        window,
        sentences,
        teamReviews,
        playerReviews,
        restarts,
        manpower(),
        flags,
        audits,
        others);
  }

  private List<FlagLine> flags() {
    Map<Key, FlagLine.After> after = new HashMap<>();
    TableRows.of(tables.restarts())
        .forEach(r -> after.putIfAbsent(Key.of(r, Columns.RELEASE), RestartLines.after(r)));
    return TableRows.of(tables.flags())
        .map(
            r ->
                RestartLines.flag(
                    r,
                    after.getOrDefault(Key.of(r, Columns.RELEASE), FlagLine.After.UNKNOWN),
                    periodLength))
        .toList();
  }

  private Count manpower() {
    int rows =
        TableRows.of(tables.manpower()).mapToInt(r -> r.count(Columns.ROWS).orElseThrow()).sum();
    return new Count(rows, tables.manpowerCompared());
  }

  private void exit(TableRows r) {
    String team = r.words(Columns.TEAM);
    game(r, team);
    r.text(Columns.OPPONENT).ifPresent(o -> game(r, o));
    ShownWay way = ShownWay.of(r.words(Columns.WAY_OUT), r.text(Columns.AT_CENTER));
    ShownStrength strength =
        r.text(Columns.STRENGTH).map(ShownStrength::of).orElse(ShownStrength.UNKNOWN);
    Optional<FaceOffAfter> after = FaceOffAfter.of(r);
    ways.put(Key.of(r, Columns.EXIT), way);
    teams.computeIfAbsent(team, t -> new Tally()).exit(way, strength, r.words(Columns.GAME), after);
    changes.exit(r.words(Columns.GAME), team, after.map(a -> a == FaceOffAfter.ICING));
    r.text(Columns.PLAYER)
        .ifPresent(
            p ->
                players
                    .computeIfAbsent(new PlayerKey(team, p), k -> new Tally())
                    .exit(way, strength, IN_ONE, after));
  }

  /** The way out of the exit that a restart followed. */
  private Optional<ShownWay> way(TableRows restart) {
    return restart.count(Columns.EXIT).isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(ways.get(Key.of(restart, Columns.EXIT)));
  }

  private void game(TableRows r, String team) {
    games.add(r.words(Columns.GAME));
    gamesOfTeam.computeIfAbsent(team, t -> new TreeSet<>()).add(r.words(Columns.GAME));
  }

  private void release(TableRows r) {
    String team = r.words(Columns.TEAM);
    game(r, team);
    ReleaseLine line = RestartLines.release(r, MarkOutcome.of(r), periodLength);
    teams.computeIfAbsent(team, t -> new Tally()).release(line);
    r.text(Columns.PLAYER)
        .ifPresent(
            p -> {
              PlayerKey key = new PlayerKey(team, p);
              players.computeIfAbsent(key, k -> new Tally()).release(line);
              releases.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
            });
  }

  /** The team that plays in every game, when there is just one and more than one game. */
  private Optional<String> ourTeam() {
    List<String> always =
        gamesOfTeam.entrySet().stream()
            .filter(e -> e.getValue().size() == games.size())
            .map(Map.Entry::getKey)
            .toList();
    return always.size() == 1 ? Optional.of(always.get(0)) : Optional.empty();
  }

  private List<TeamReview> teamReviews(List<RestartLine> restarts, Optional<String> ours) {
    gamesOfTeam.keySet().forEach(t -> teams.computeIfAbsent(t, k -> new Tally()));
    List<Map.Entry<String, Tally>> order = new ArrayList<>(teams.entrySet());
    order.sort(
        Comparator.comparing((Map.Entry<String, Tally> e) -> !Optional.of(e.getKey()).equals(ours))
            .thenComparing(e -> -e.getValue().profile().attempts())
            .thenComparing(Map.Entry::getKey));
    List<TeamReview> out = new ArrayList<>();
    for (Map.Entry<String, Tally> e : order) {
      int icings =
          (int) restarts.stream().filter(r -> r.icing() && r.team().equals(e.getKey())).count();
      out.add(
          new TeamReview(
              out.size() + 1,
              e.getKey(),
              gamesOfTeam.getOrDefault(e.getKey(), Set.of()).size(),
              icings,
              e.getValue().profile()));
    }
    return out;
  }

  private List<PlayerReview> playerReviews(AdjustedRates iced, Moments moments) {
    List<Map.Entry<PlayerKey, Tally>> order = new ArrayList<>(players.entrySet());
    order.sort(
        Comparator.comparing((Map.Entry<PlayerKey, Tally> e) -> -e.getValue().profile().attempts())
            .thenComparing(e -> e.getKey().team())
            .thenComparing(e -> e.getKey().player()));
    List<PlayerReview> out = new ArrayList<>();
    for (Map.Entry<PlayerKey, Tally> e : order) {
      out.add(
          new PlayerReview(
              out.size() + 1,
              e.getKey().team(),
              e.getKey().player(),
              e.getValue().profile(),
              iced.of(e.getValue().profile().releases()),
              releases.getOrDefault(e.getKey(), List.of()),
              moments.worked(e.getKey().team(), e.getKey().player()),
              moments.talk(e.getKey().team(), e.getKey().player())));
    }
    return out;
  }

  /** For all games of a player: the intervals of players take their attempts as independent. */
  private static final String IN_ONE = "";

  /** Counts of one team or player while the rows go by. */
  private static final class Tally {
    private final Map<ShownWay, Map<ShownStrength, Endings>> ways = new EnumMap<>(ShownWay.class);
    private final Set<String> games = new TreeSet<>();
    private final List<Mark> marks = new ArrayList<>();
    private int released;
    private int iced;

    /** What came of the attempts of one way out at one strength. */
    private static final class Endings {
      private final Map<String, Count> iced = new TreeMap<>();
      private int attempts;
      private int penalties;
      private int others;
    }

    void exit(ShownWay way, ShownStrength strength, String game, Optional<FaceOffAfter> after) {
      Endings e =
          ways.computeIfAbsent(way, w -> new EnumMap<>(ShownStrength.class))
              .computeIfAbsent(strength, s -> new Endings());
      games.add(game);
      e.attempts++;
      after.ifPresent(
          a -> {
            e.iced.merge(game, new Count(a == FaceOffAfter.ICING ? 1 : 0, 1), Count::plus);
            e.penalties += a == FaceOffAfter.PENALTY ? 1 : 0;
            e.others += a == FaceOffAfter.OTHER ? 1 : 0;
          });
    }

    void release(ReleaseLine line) {
      marks.add(new Mark(line.x(), line.y(), line.outcome()));
      released++;
      iced += line.outcome() == MarkOutcome.ICED ? 1 : 0;
    }

    Profile profile() {
      List<WayCount> counts = new ArrayList<>();
      ways.forEach(
          (way, strengths) ->
              strengths.forEach(
                  (strength, e) ->
                      counts.add(
                          new WayCount(
                              way, strength, byGame(e), e.penalties, e.others, e.attempts))));
      return new Profile(counts, marks, new Count(iced, released));
    }

    private Clustered byGame(Endings e) {
      return new Clustered(
          games.stream().map(g -> e.iced.getOrDefault(g, new Count(0, 0))).toList());
    }
  }
}
