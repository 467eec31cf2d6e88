package twostrides.season;

import java.util.List;
import twostrides.exits.Exit;
import twostrides.exits.Kill;
import twostrides.exits.ManpowerGap;
import twostrides.exits.OtherRuling;
import twostrides.exits.Release;
import twostrides.exits.Restart;

/**
 * What each table of a season holds, column by column.
 *
 * @param windows the run's windows, after which some columns are named
 * @param seed the run's seed
 */
public record Schemas(Columns.Windows windows, long seed) {

  /** Every table, in the order of docs/tables.md. */
  public List<TableSchema<?>> all() {
    return List.of(
        exits(), releases(), restarts(), kills(), rulings(), flags(), manpower(), players());
  }

  TableSchema<Exit> exits() {
    return new ExitSchema(windows).schema();
  }

  /** What JSON Lines hold: the columns of a table and more keys; same names as the tables. */
  public List<TableSchema<?>> lines() {
    return List.of(exitLines(), releaseLines());
  }

  TableSchema<Exit> exitLines() {
    return exits().part(e -> e.at().onward(), Parts::onward);
  }

  TableSchema<Assessed> releaseLines() {
    return releases()
        .part(a -> a.release().at().onward(), Parts::onward)
        .optPart(a -> a.assessment().gain().seen().flatMap(s -> s.around().frame()), Parts::frame);
  }

  TableSchema<Assessed> releases() {
    return new ReleaseSchema(windows, seed).schema();
  }

  TableSchema<Restart> restarts() {
    return new RestartSchema(windows).schema();
  }

  TableSchema<Flag> flags() {
    return new FlagSchema(seed).schema();
  }

  TableSchema<Kill> kills() {
    return new TableSchema<Kill>(
            "kills",
            "one row a stretch in which a team is shorthanded; its edges are as sharp as the rows are"
                + " dense")
        .part(k -> k.from().game(), Parts::game)
        .count("kill", "number in its game, from 1", Kill::number)
        .text("team", "", "who is shorthanded", Kill::team)
        .text("opponent", "", "the other team", Kill::opponent)
        .count("period", "period in which it begins", k -> k.from().period())
        .number("elapsed_s", "s", "first row that shows it shorthanded", k -> k.from().elapsed())
        .count("end_period", "period in which it ends", k -> k.end().period())
        .number("end_elapsed_s", "s", "first later row that does not", k -> k.end().elapsed())
        .number("seconds", "s", "seconds of play in between", Kill::seconds)
        .count("attempts", "exit attempts", k -> k.exits().size())
        .count("cleared", "left the zone", k -> k.exits().size() - k.keptIn())
        .count("kept_in", "did not", Kill::keptIn)
        .count(
            "restarts",
            "own-zone restarts that followed",
            k ->
                (int) k.exits().stream().filter(e -> e.outcome().restarted().orElse(false)).count())
        .optNumber(
            "relief_total_s",
            "s",
            "time bought: `seconds_until_reentry` of the cleared ones together",
            Kill::timeBought)
        .optCount("attempts_against", "shot attempts of the opponent", Kill::attemptsAgainst)
        .count("goals_against", "goals of the opponent", Kill::goalsAgainst)
        .part(Kill::from, Parts::source);
  }

  /** A release and one other book. */
  record Asked(Release release, OtherRuling other) {}

  TableSchema<Asked> rulings() {
    return new TableSchema<Asked>(
            "rulings",
            "one row a release short of center and other book asked (`--compare-rulebook`)")
        .text("game", "", "the game", a -> a.release().at().when().game().id())
        .part(Asked::release, FlagSchema::briefly)
        .part(
            Asked::other,
            s ->
                s.text("book", "", "the other book", OtherRuling::book)
                    .text("ruling", Parts.RULINGS, "by the other book", OtherRuling::word)
                    .text("ruling_reason", "", "as a sentence", OtherRuling::sentence)
                    .text(
                        "clause", "", "of the other book, with how sure it is", OtherRuling::clause)
                    .text(
                        "played_ruling",
                        Parts.RULINGS,
                        "by the book of the run",
                        OtherRuling::playedWord)
                    .flag(
                        "differs",
                        "one is icing and the other is not, or one is open and the other is not",
                        OtherRuling::differs))
        .part(a -> a.release().at().when(), Parts::source);
  }

  TableSchema<ManpowerGap> manpower() {
    return new TableSchema<ManpowerGap>(
            "manpower",
            "one row for each run of rows of one team on which manpower columns and penalty rows"
                + " disagree")
        .text("game", "", "the game", g -> g.from().game().id())
        .count("period", "from 1", g -> g.from().period())
        .number("elapsed_s", "s", "when the run begins", g -> g.from().elapsed())
        .text("team", "", "the acting team", ManpowerGap::team)
        .count("rows", "how many rows", ManpowerGap::rows)
        .text(
            "by_columns",
            "",
            "skaters of the acting team on the other's by the manpower columns, extra attackers"
                + " taken off",
            ManpowerGap::byColumns)
        .text("by_penalties", "", "the same by the penalty rows", ManpowerGap::byPenalties)
        .text("strength_used", Parts.STRENGTHS, "", g -> g.used().label())
        .text("reason", "", "which penalties", ManpowerGap::reason)
        .text("sheet", "", "where it stands", g -> g.from().sheet())
        .count("line", "its first line", g -> g.from().line())
        .count("last_line", "its last line", ManpowerGap::lastLine);
  }

  TableSchema<PlayerCount> players() {
    return new TableSchema<PlayerCount>("players", "counts of exit attempts")
        .part(
            PlayerCount::kind,
            s ->
                s.text("team", "", "", PlayerCount.Kind::team)
                    .optText("player", "", "", PlayerCount.Kind::player)
                    .text("way_out", "", "", PlayerCount.Kind::way)
                    .optText("at_center", "", "", PlayerCount.Kind::mark)
                    .text("strength", Parts.STRENGTHS, "", PlayerCount.Kind::strength))
        .count("attempts", "how many", PlayerCount::attempts)
        .count("restarts", "own-zone restarts that followed", PlayerCount::restarts);
  }
}
