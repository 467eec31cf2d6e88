package twostrides.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.exits.Exit;
import twostrides.exits.GameRecords;
import twostrides.exits.Release;
import twostrides.exits.Situation;
import twostrides.game.Strength;
import twostrides.season.Assessed;
import twostrides.season.Columns;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/** Makes the review of a season. */
public final class Reviewer {

  /** Moments on a sheet: a player keeps three things in mind. Assumed. */
  public static final int WORKED = 1;

  /** Moments to talk about on a sheet. Assumed. */
  public static final int TALK = 2;

  /** A player of a team. */
  record Who(String team, String player) {

    static Optional<Who> of(Release r) {
      return r.at().player().map(p -> new Who(r.at().team(), p));
    }
  }

  private final Season season;
  private final Map<String, Set<String>> gamesOfTeam = new TreeMap<>();
  private final Set<String> games = new TreeSet<>();

  private Reviewer(Season season) {
    this.season = season;
    for (GameRecords g : season.games()) {
      Stream.concat(g.exits().stream().map(Exit::at), g.releases().stream().map(Release::at))
          .forEach(at -> met(g.game().id(), at));
    }
  }

  private void met(String game, Situation at) {
    games.add(game);
    Stream.concat(Stream.of(at.team()), at.opponent().stream())
        .forEach(t -> gamesOfTeam.computeIfAbsent(t, n -> new TreeSet<>()).add(game));
  }

  /**
   * Reviews a season with a page for every player; the book is about the team that plays in most of
   * its games.
   *
   * @param season the season
   */
  public static SeasonReview review(Season season) {
    return review(season, Optional.empty());
  }

  /**
   * Reviews a season with a page for every player.
   *
   * @param season the season
   * @param team the team the book is about; empty: the one that plays in most games, if there is
   *     just one
   */
  public static SeasonReview review(Season season, Optional<String> team) {
    return review(season, team, true);
  }

  /**
   * Reviews a season.
   *
   * @param season the season
   * @param team the team the book is about; empty: the one that plays in most games, if there is
   *     just one
   * @param everyPlayer whether players of every team have pages of their own
   */
  public static SeasonReview review(Season season, Optional<String> team, boolean everyPlayer) {
    season.makeTables();
    return new Reviewer(season).review(team, everyPlayer);
  }

  /**
   * The teams of a season, sorted.
   *
   * @param season the season
   */
  public static Set<String> teams(Season season) {
    return new Reviewer(season).gamesOfTeam.keySet();
  }

  /**
   * How many games have an exit attempt or a release.
   *
   * @param season the season
   */
  public static int games(Season season) {
    return new Reviewer(season).games.size();
  }

  private SeasonReview review(Optional<String> team, boolean everyPlayer) {
    Optional<String> ours = team.or(this::mostFrequent);
    Map<Who, Profile> players = players();
    AdjustedRates iced =
        AdjustedRates.of(players.values().stream().map(Profile::releases).toList());
    return new SeasonReview(
        games.size(),
        ours,
        everyPlayer,
        season,
        teamReviews(ours),
        playerReviews(players, iced),
        iced,
        icingsByGame(ours));
  }

  /** The team that plays in most games, when just one does. */
  private Optional<String> mostFrequent() {
    int most = gamesOfTeam.values().stream().mapToInt(Set::size).max().orElse(0);
    List<String> frequent =
        gamesOfTeam.entrySet().stream()
            .filter(e -> e.getValue().size() == most)
            .map(Map.Entry::getKey)
            .toList();
    return frequent.size() == 1 ? Optional.of(frequent.get(0)) : Optional.empty();
  }

  /** Icings of exit attempts in each game that has some, in the order of the sheets. */
  private List<Count> icingsByGame(Optional<String> ours) {
    Map<List<String>, Rows> all = season.exitRows().by(Columns.GAME);
    return season.games().stream()
        .map(g -> List.of(g.game().id()))
        .distinct()
        .filter(all::containsKey)
        .map(g -> Shares.iced(Shares.team(all.get(g), ours)))
        .toList();
  }

  private List<TeamReview> teamReviews(Optional<String> ours) {
    Rows every = season.exitRows();
    Map<List<String>, Rows> exits = every.by(Columns.TEAM);
    Rows none = every.none();
    Map<String, List<Release>> releases =
        releases().collect(Collectors.groupingBy(r -> r.at().team()));
    Map<String, Profile> profiles = new TreeMap<>();
    for (String team : gamesOfTeam.keySet()) {
      Rows own = exits.getOrDefault(List.of(team), none);
      profiles.put(team, profile(own, releases.getOrDefault(team, List.of()), gamesOf(own)));
    }
    List<Map.Entry<String, Profile>> order = new ArrayList<>(profiles.entrySet());
    order.sort(
        Comparator.comparing(
                (Map.Entry<String, Profile> e) -> !Optional.of(e.getKey()).equals(ours))
            .thenComparing(e -> -e.getValue().attempts())
            .thenComparing(Map.Entry::getKey));
    List<TeamReview> out = new ArrayList<>();
    for (Map.Entry<String, Profile> e : order) {
      int icings =
          (int)
              season.restartRecords().stream()
                  .filter(r -> SeasonReview.own(r) && r.faceOff().cause().icing())
                  .filter(r -> r.at().team().equals(e.getKey()))
                  .count();
      out.add(
          new TeamReview(
              out.size() + 1,
              e.getKey(),
              gamesOfTeam.get(e.getKey()).size(),
              icings,
              e.getValue()));
    }
    return out;
  }

  private Stream<Release> releases() {
    return season.releaseRecords().stream().map(Assessed::release);
  }

  private Map<Who, List<Release>> releasesOfPlayers() {
    return releases()
        .filter(r -> r.at().player().isPresent())
        .collect(
            Collectors.groupingBy(
                r -> Who.of(r).orElseThrow(), LinkedHashMap::new, Collectors.toList()));
  }

  private static List<String> gamesOf(Rows exits) {
    return exits.by(Columns.GAME).keySet().stream().map(Shares::first).toList();
  }

  /** Every named player's way of leaving the zone. */
  private Map<Who, Profile> players() {
    Rows every = season.exitRows();
    Map<List<String>, Rows> exits = every.known(Columns.PLAYER).by(Columns.TEAM, Columns.PLAYER);
    Map<Who, List<Release>> releases = releasesOfPlayers();
    Set<Who> all = new LinkedHashSet<>();
    exits.keySet().forEach(k -> all.add(new Who(k.get(0), k.get(1))));
    all.addAll(releases.keySet());
    Rows none = every.none();
    Map<Who, Profile> profiles = new LinkedHashMap<>();
    for (Who w : all) {
      Rows own = exits.getOrDefault(List.of(w.team(), w.player()), none);
      profiles.put(w, profile(own, releases.getOrDefault(w, List.of()), List.of()));
    }
    return profiles;
  }

  /**
   * How somebody leaves the zone.
   *
   * @param exits the exit attempts
   * @param releases the releases short of center
   * @param byGame games to count apart; none: all in one
   */
  private static Profile profile(Rows exits, List<Release> releases, List<String> byGame) {
    List<WayCount> counts = new ArrayList<>();
    for (ShownWay way : ShownWay.values()) {
      Rows ofWay = way.in(exits);
      for (Strength strength : Strength.values()) {
        Rows rows = ofWay.where(Columns.STRENGTH, strength.label());
        if (!rows.isEmpty()) {
          counts.add(
              new WayCount(
                  way,
                  strength,
                  clustered(rows, byGame),
                  Shares.after(rows, FaceOffAfter.PENALTY).n(),
                  Shares.after(rows, FaceOffAfter.OTHER).n(),
                  rows.n()));
        }
      }
    }
    int iced = (int) releases.stream().filter(Release::iced).count();
    return new Profile(
        counts, releases.stream().map(Mark::of).toList(), new Count(iced, releases.size()));
  }

  private static Clustered clustered(Rows rows, List<String> byGame) {
    if (byGame.isEmpty()) {
      return new Clustered(Shares.iced(rows));
    }
    Map<List<String>, Rows> games = rows.by(Columns.GAME);
    return new Clustered(
        byGame.stream()
            .map(
                g ->
                    games.containsKey(List.of(g))
                        ? Shares.iced(games.get(List.of(g)))
                        : new Count(0, 0))
            .toList());
  }

  private List<PlayerReview> playerReviews(Map<Who, Profile> players, AdjustedRates iced) {
    Moments moments = new Moments(season);
    Map<Who, List<Release>> releases = releasesOfPlayers();
    List<Map.Entry<Who, Profile>> order = new ArrayList<>(players.entrySet());
    order.sort(
        Comparator.comparing((Map.Entry<Who, Profile> e) -> -e.getValue().attempts())
            .thenComparing(e -> e.getKey().team())
            .thenComparing(e -> e.getKey().player()));
    List<PlayerReview> out = new ArrayList<>();
    for (Map.Entry<Who, Profile> e : order) {
      out.add(
          new PlayerReview(
              out.size() + 1,
              e.getKey().team(),
              e.getKey().player(),
              e.getValue(),
              iced.of(e.getValue().releases()),
              releases.getOrDefault(e.getKey(), List.of()),
              moments.worked(e.getKey()).stream().limit(WORKED).toList(),
              moments.talk(e.getKey()).stream().limit(TALK).toList()));
    }
    return out;
  }
}
