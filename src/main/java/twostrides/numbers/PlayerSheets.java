package twostrides.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import twostrides.exits.Columns;
import twostrides.exits.FlagVerdict;
import twostrides.review.PlayerReview;
import twostrides.review.Say;
import twostrides.review.ShownStrength;
import twostrides.review.ShownWay;
import twostrides.review.TableRows;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Count;

/** Makes the numbers of every player's sheet, in few enough lines for a printed page. */
public final class PlayerSheets {

  /**
   * A line of the table of ways out.
   *
   * @param name its words
   * @param in which exits it counts
   * @param sum whether it holds several ways out
   */
  private record Row(String name, Predicate<TableRows> in, boolean sum) {}

  private static final List<Row> ROWS = rows();

  private final PlayerNumbers players;
  private final Map<String, AdjustedRates> rates = new TreeMap<>();
  private final Map<String, Map<String, Count>> icingsOfTeam = new TreeMap<>();
  private final Map<String, List<TableRows>> exitsOfTeam;
  private final Map<String, List<TableRows>> releasesOfTeam;
  private final Map<String, List<TableRows>> flagsOfTeam;

  PlayerSheets(Season season, PlayerNumbers players) {
    this.players = players;
    exitsOfTeam = Season.by(season.exits, r -> r.words(Columns.TEAM));
    releasesOfTeam = Season.by(season.releases, r -> r.words(Columns.TEAM));
    flagsOfTeam = Season.by(season.flags, r -> r.words(Columns.TEAM));
    for (Row row : ROWS) {
      List<Count> byPlayer = new ArrayList<>();
      for (List<TableRows> own : players.exitsOfPlayers()) {
        List<TableRows> in = own.stream().filter(row.in()).toList();
        if (!in.isEmpty()) {
          byPlayer.add(Season.iced(in));
        }
      }
      rates.put(row.name(), AdjustedRates.of(byPlayer));
    }
    exitsOfTeam.forEach(
        (team, exits) ->
            icingsOfTeam.put(
                team,
                ROWS.stream()
                    .collect(
                        Collectors.toMap(
                            Row::name,
                            row -> Season.iced(exits.stream().filter(row.in()).toList())))));
  }

  private static List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (ShownWay way : ShownWay.values()) {
      rows.add(
          new Row(
              way.label(),
              r -> ShownWay.of(r.words(Columns.WAY_OUT), r.text(Columns.AT_CENTER)) == way,
              false));
    }
    rows.add(new Row("all ways", r -> true, true));
    for (ShownStrength s : List.of(ShownStrength.SHORTHANDED, ShownStrength.POWER_PLAY)) {
      rows.add(
          new Row("all ways, " + s.label(), r -> Season.is(r, Columns.STRENGTH, s.label()), true));
    }
    return List.copyOf(rows);
  }

  /**
   * A player's numbers.
   *
   * @param p the player
   */
  public PlayerSheet of(PlayerReview p) {
    Predicate<TableRows> own = r -> Season.is(r, Columns.PLAYER, p.player());
    List<TableRows> exits = exitsOfTeam.getOrDefault(p.team(), List.of());
    List<TableRows> releases = releasesOfTeam.getOrDefault(p.team(), List.of());
    List<TableRows> ownExits = exits.stream().filter(own).toList();
    List<TableRows> ownReleases = releases.stream().filter(own).toList();
    TreeSet<String> games = new TreeSet<>();
    ownExits.forEach(r -> games.add(r.words(Columns.GAME)));
    ownReleases.forEach(r -> games.add(r.words(Columns.GAME)));
    Advice advice =
        new Advice(
            ownExits.size(),
            flagged(flagsOfTeam.getOrDefault(p.team(), List.of()).stream().filter(own).toList()),
            p.worked().size() + p.talk().size(),
            Advice.Pair.of(exits, own, PlayerNumbers::releasedShort),
            Advice.Pair.of(releases, own, rows -> Season.share(rows, Season::icing)),
            p.iced(),
            Advice.Pair.of(exits, own, PlayerSheets::keptInUnderLittlePressure),
            Season.share(
                ownReleases.stream().filter(PenaltyKill::justAfter).toList(), Season::icing));
    return new PlayerSheet(
        games.size(),
        advice.sentence(),
        ways(ownExits, icingsOfTeam.getOrDefault(p.team(), Map.of())),
        players.habit(p.team(), p.player()));
  }

  /** Flagged ones, of those that carry a verdict. */
  private static Count flagged(List<TableRows> flags) {
    List<FlagVerdict> verdicts =
        flags.stream()
            .map(r -> FlagVerdict.of(r.words(Columns.REASON)))
            .filter(v -> v == FlagVerdict.FLAGGED || v.fellShort())
            .toList();
    return new Count(
        (int) verdicts.stream().filter(v -> v == FlagVerdict.FLAGGED).count(), verdicts.size());
  }

  private static Count keptInUnderLittlePressure(List<TableRows> exits) {
    return Season.share(exits.stream().filter(Season::littlePressure).toList(), Season::keptIn);
  }

  private Grid ways(List<TableRows> own, Map<String, Count> team) {
    List<Line> lines = new ArrayList<>();
    for (Row row : ROWS) {
      List<TableRows> in = own.stream().filter(row.in()).toList();
      if (!in.isEmpty()) {
        lines.add(line(row, in, team.get(row.name())));
      }
    }
    return new Grid(
        "ways",
        "Ways out",
        "All strengths; icings of the attempts whose ending is known.",
        List.of(
            Head.words("Way out", "way-out"),
            Head.number("Attempts", "exit-attempt"),
            Head.number("Icings", "icing"),
            Head.number("Share", "share"),
            Head.number("Adjusted rate (95 %)", "adjusted-rate"),
            Head.number("Team", "share")),
        lines,
        "No exit attempt of this player in these sheets.");
  }

  private Line line(Row row, List<TableRows> own, Count mates) {
    Count count = Season.iced(own);
    return new Line(
        List.of(
            row.name(),
            String.valueOf(own.size()),
            Cell.counts(count),
            Cell.share(count),
            rates.get(row.name()).of(count).map(Say::adjusted).orElse(Cell.NONE),
            Cell.share(mates) + ", n " + mates.trials()),
        row.sum());
  }
}
