package twostrides.findings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import twostrides.season.Columns;
import twostrides.season.FlagVerdict;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.AdjustedRates;
import twostrides.stats.Count;

/** Makes the numbers of every player's sheet, in few enough lines for a printed page. */
public final class PlayerSheets {

  /**
   * A line of the table of ways out.
   *
   * @param name its words
   * @param in picks the exits it counts
   * @param sum whether it holds several ways out
   */
  private record Row(String name, UnaryOperator<Rows> in, boolean sum) {}

  private static final List<Row> ROWS = rows();

  private final Season season;
  private final Rows exits;
  private final Rows releases;
  private final Map<String, AdjustedRates> rates = new TreeMap<>();

  /**
   * The numbers of a season's sheets.
   *
   * @param season the season
   * @param players the same players' numbers
   */
  public PlayerSheets(Season season, PlayerNumbers players) {
    this.season = season;
    this.exits = season.exitRows();
    this.releases = season.releaseRows();
    for (Row row : ROWS) {
      rates.put(
          row.name(),
          AdjustedRates.of(
              players.exitsOfPlayers().stream()
                  .map(row.in())
                  .filter(own -> !own.isEmpty())
                  .map(Shares::iced)
                  .toList()));
    }
  }

  private static List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (ShownWay way : ShownWay.values()) {
      rows.add(new Row(way.label(), way::in, false));
    }
    rows.add(new Row("all ways", all -> all, true));
    return List.copyOf(rows);
  }

  /**
   * The numbers of a player's sheet.
   *
   * @param p the player
   */
  public PlayerSheet of(PlayerReview p) {
    Rows team = exits.where(Columns.TEAM, p.team());
    Rows teamReleases = releases.where(Columns.TEAM, p.team());
    Rows own = team.where(Columns.PLAYER, p.player());
    Rows ownReleases = teamReleases.where(Columns.PLAYER, p.player());
    TreeSet<List<String>> games = new TreeSet<>(Comparator.comparing(Shares::first));
    games.addAll(own.by(Columns.GAME).keySet());
    games.addAll(ownReleases.by(Columns.GAME).keySet());
    Advice advice =
        new Advice(
            own.n(),
            flagged(p),
            p.worked().size() + p.talk().size(),
            Advice.Pair.of(team, p.player(), Shares::releasedShort),
            Advice.Pair.of(teamReleases, p.player(), Shares::icedReleases),
            p.iced(),
            Advice.Pair.of(team, p.player(), Shares::keptInUnderLittlePressure),
            Shares.icedReleases(PenaltyKill.justAfter(ownReleases)));
    return new PlayerSheet(games.size(), advice, ways(own, team));
  }

  /** Flagged ones, of the player's icings that carry a verdict. */
  private Count flagged(PlayerReview p) {
    List<FlagVerdict> verdicts =
        season.flagRecords().stream()
            .filter(f -> f.release().at().team().equals(p.team()))
            .filter(f -> f.release().at().player().equals(Optional.of(p.player())))
            .map(f -> f.assessment().verdict())
            .filter(v -> v == FlagVerdict.FLAGGED || v.fellShort())
            .toList();
    return new Count(Collections.frequency(verdicts, FlagVerdict.FLAGGED), verdicts.size());
  }

  private Grid ways(Rows own, Rows team) {
    List<Line> lines = new ArrayList<>();
    for (Row row : ROWS) {
      Rows in = row.in().apply(own);
      if (!in.isEmpty()) {
        Count count = Shares.iced(in);
        lines.add(
            Line.of(
                row.name(),
                row.sum(),
                new Value.Whole(in.n()),
                new Value.Counts(count),
                new Value.AdjustedBoth(rates.get(row.name()).of(count)),
                new Value.ShareOfN(Shares.iced(row.in().apply(team)))));
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
            Head.number("Adjusted rate (95 %)", "adjusted-rate"),
            Head.number("Team", "share")),
        lines,
        "No exit attempt of this player in these sheets.");
  }
}
