package twostrides.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import twostrides.exits.Against;
import twostrides.exits.AtCenter;
import twostrides.exits.BookRuling;
import twostrides.exits.Exit;
import twostrides.exits.ExitOutcome;
import twostrides.exits.Kill;
import twostrides.exits.LetGo;
import twostrides.exits.ManpowerGap;
import twostrides.exits.NextTouch;
import twostrides.exits.OtherRuling;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.Situation;
import twostrides.exits.When;
import twostrides.exits.Where;
import twostrides.game.Fixture;
import twostrides.game.NetEmpty;
import twostrides.game.Pressure;

/**
 * What each table of a season holds, column by column.
 *
 * @param windows the run's windows, after which some columns are named
 * @param seed the run's seed
 */
public record Schemas(Columns.Windows windows, long seed) {

  private static final String STRENGTHS = "even, shorthanded, power play, unknown";
  private static final String CAUSES =
      "icing_written, icing_inferred, penalty, other, unknown, none";
  private static final String RULINGS = "icing, no icing, waved off, goal, not yet decided";

  /** Every table, in the order of docs/tables.md. */
  public List<TableSchema<?>> all() {
    return List.of(
        exits(), releases(), restarts(), kills(), rulings(), flags(), manpower(), players());
  }

  TableSchema<Exit> exits() {
    return new TableSchema<Exit>("exits", "one row an exit attempt")
        .part(e -> e.at().when().game(), Schemas::game)
        .count("exit", "number of the attempt in its game, from 1", Exit::number)
        .count("period", "from 1; overtime goes on counting", e -> e.at().when().period())
        .number("elapsed_s", "s", "when the attempt began", Exit::began)
        .number(
            "release_elapsed_s",
            "s",
            "when the puck was let go, passed out, or settled at center",
            e -> e.at().when().elapsed())
        .text("team", "", "who leaves its zone", e -> e.at().team())
        .optText("opponent", "", "the other team", e -> e.at().opponent())
        .optText("player", "", "who took it out, or lost it inside", Exit::player)
        .optText(
            "release_player",
            "",
            "who let it go at `release_x_m`: the same but after a pass that a teammate released"
                + " short",
            e -> e.at().player())
        .text(
            "way_out",
            "carry, pass, chip, long clearance, missed pass, moved, means unknown, kept in",
            "[exits.md](exits.md)",
            e -> e.way().label())
        .optText(
            "at_center",
            "gained, released short, lost short, brought back, stopped",
            "after a carry, a pass, or a move by unknown means",
            e -> e.mark().map(AtCenter::label))
        .part(Exit::at, Schemas::strengthAndNet)
        .part(e -> e.at().where(), Schemas::place)
        .part(Exit::outcome, this::outcome)
        .part(Exit::at, Schemas::circumstances)
        .optNumber(
            "shift_s",
            "s",
            "mean seconds of play that the team's skaters had been on the ice at the release, in"
                + " this period, where the sheet lists them",
            Exit::shift)
        .part(e -> e.at().when(), Schemas::source);
  }

  TableSchema<Assessed> releases() {
    return new TableSchema<Assessed>("releases", "one row a release short of center")
        .part(a -> a.release().at().when().game(), Schemas::game)
        .part(
            Assessed::release,
            s ->
                s.count("release", "number in its game, from 1", Release::number)
                    .count("period", "from 1", r -> r.at().when().period())
                    .number(
                        "release_elapsed_s",
                        "s",
                        "when it was let go",
                        r -> r.at().when().elapsed())
                    .text("team", "", "who let it go", r -> r.at().team())
                    .optText("opponent", "", "the other team", r -> r.at().opponent())
                    .optText("player", "", "who let it go", r -> r.at().player())
                    .text(
                        "kind",
                        "sent, missed_pass",
                        "sent on, or a pass that no teammate got",
                        r -> r.how().kind().word())
                    .optCount(
                        "exit", "its exit attempt, if any", r -> number(r.exit(), Exit::number))
                    .part(Release::at, Schemas::strengthAndNet)
                    .part(r -> r.at().where(), Schemas::place)
                    .part(Release::how, Schemas::letGo)
                    .flag(
                        "may_be_icing",
                        "false for a team that the book exempts",
                        r -> r.rulings().mayBeIcing())
                    .part(Release::outcome, this::outcome)
                    .part(Release::at, Schemas::circumstances)
                    .part(r -> r.rulings().played(), Schemas::ruling))
        .part(Assessed::assessment, Schemas::chance)
        .optNumber(
            "p_avoid",
            "",
            "chance that trying would have avoided the icing, 0 to 1; only on evidence that"
                + " carries a verdict",
            a -> p(a.assessment().avoid()))
        .part(Assessed::assessment, this::verdict)
        .part(a -> a.release().at().when(), Schemas::source);
  }

  TableSchema<Restart> restarts() {
    return new TableSchema<Restart>("restarts", "one row a face-off in a team's own zone")
        .part(r -> r.faceOff().when().game(), Schemas::game)
        .count("period", "from 1", r -> r.faceOff().when().period())
        .optNumber(
            "restart_elapsed_s",
            "s",
            "when the face-off was; empty in rows of tag sheets",
            r -> r.faceOff().elapsed())
        .text("team", "", "whose zone it is", r -> r.at().team())
        .optText("opponent", "", "the other team", r -> r.at().opponent())
        .optFlag(
            "own_last",
            "whether the team itself had the puck last, so that it is its own-zone restart; empty"
                + " where no touch is written since the face-off before",
            Restart::ownLast)
        .text(
            "restart_cause",
            CAUSES,
            "[exits.md](exits.md#how-it-ended)",
            r -> r.faceOff().cause().label())
        .text("reason", "", "why the cause was found so", r -> r.faceOff().reason())
        .optPart(r -> r.behind().map(Restart.Behind::ruling), Schemas::ruling)
        .optPart(
            Restart::behind,
            s ->
                s.optCount(
                        "release",
                        "the release behind it, of releases.csv",
                        b -> number(b.release(), Release::number))
                    .optCount(
                        "exit",
                        "the exit attempt behind it, of exits.csv",
                        b -> number(b.exit(), Exit::number)))
        .optPart(
            Schemas::lastTouch,
            s ->
                s.number(
                        "release_elapsed_s",
                        "s",
                        "when the team touched the puck last",
                        at -> at.when().elapsed())
                    .optText("player", "", "who touched it last", Situation::player)
                    .text(
                        "strength", STRENGTHS, "at that touch", at -> at.state().strength().label())
                    .part(Situation::where, Schemas::place))
        .optNumber(
            "seconds_to_next_touch",
            "s",
            "from there to the face-off",
            r -> r.behind().map(Restart.Behind::secondsToFaceOff).orElse(OptionalDouble.empty()))
        .part(
            Restart::faceOff,
            s ->
                s.optText(
                        "won_by",
                        "own, opponent",
                        "who won the face-off",
                        f -> f.won().map(own -> own ? "own" : "opponent"))
                    .optText(
                        "faceoff_strength",
                        STRENGTHS,
                        "of the team of the zone, at the face-off: after a penalty it is not that"
                            + " of the release",
                        f -> f.strength().map(x -> x.label()))
                    .optPart(Restart.FaceOff::against, this::against)
                    .optNumber(
                        "shift_s",
                        "s",
                        "mean seconds of play that the team's skaters had been on the ice at the"
                            + " face-off, in this period, where the sheet lists them",
                        f -> f.shifts().before())
                    .optNumber(
                        "stay_s",
                        "s",
                        "mean seconds of play that they stayed on after it",
                        f -> f.shifts().after()))
        .part(Restart::at, Schemas::circumstances)
        .optNumber(
            "video_s",
            "s",
            "second of the video at the last touch, or at the face-off where the team had none",
            r -> r.at().when().video())
        .text("sheet", "", "where the face-off stands", r -> r.faceOff().when().sheet())
        .count("line", "its line, the header included", r -> r.faceOff().when().line());
  }

  private static Optional<Situation> lastTouch(Restart r) {
    return r.behind().map(b -> r.at());
  }

  TableSchema<Kill> kills() {
    return new TableSchema<Kill>(
            "kills",
            "one row a stretch in which a team of a play sheet is shorthanded; its edges are as"
                + " sharp as the rows are dense")
        .part(k -> k.from().game(), Schemas::game)
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
        .number(
            "relief_total_s",
            "s",
            "time bought: `seconds_until_reentry` of the cleared ones together",
            Kill::timeBought)
        .count("attempts_against", "shot attempts of the opponent", Kill::attemptsAgainst)
        .count("goals_against", "goals of the opponent", Kill::goalsAgainst)
        .part(Kill::from, Schemas::source);
  }

  /** A release and one other book. */
  record Asked(Release release, OtherRuling other) {}

  TableSchema<Asked> rulings() {
    return new TableSchema<Asked>(
            "rulings",
            "one row a release short of center and other book asked (`--compare-rulebook`)")
        .text("game", "", "the game", a -> a.release().at().when().game().id())
        .part(Asked::release, Schemas::briefly)
        .part(
            Asked::other,
            s ->
                s.text("book", "", "the other book", OtherRuling::book)
                    .text("ruling", RULINGS, "by the other book", o -> o.ruling().word())
                    .text("ruling_reason", "", "as a sentence", OtherRuling::sentence)
                    .text(
                        "clause",
                        "",
                        "of the other book, with how sure it is",
                        o -> o.ruling().reason().cite())
                    .text(
                        "played_ruling", RULINGS, "by the book of the run", o -> o.played().word())
                    .flag(
                        "differs",
                        "one is icing and the other is not, or one is open and the other is not",
                        OtherRuling::differs))
        .part(a -> a.release().at().when(), Schemas::source);
  }

  private static void briefly(TableSchema<Release> s) {
    s.count("release", "number in its game, of releases.csv", Release::number)
        .count("period", "from 1", r -> r.at().when().period())
        .number("release_elapsed_s", "s", "when it was let go", r -> r.at().when().elapsed())
        .text("team", "", "who let it go", r -> r.at().team())
        .optText("player", "", "who let it go", r -> r.at().player())
        .text("strength", STRENGTHS, "at the release", r -> r.at().state().strength().label())
        .number("release_x_m", "m", "where", r -> r.at().where().place().orElseThrow().x());
  }

  TableSchema<Flag> flags() {
    return new TableSchema<Flag>(
            "flags", "one row a release short of center that an own-zone restart followed")
        .text("game", "", "the game", f -> f.release().at().when().game().id())
        .part(
            Flag::release,
            s ->
                s.part(r -> r, Schemas::briefly)
                    .number(
                        "release_y_m",
                        "m",
                        "where across the rink",
                        r -> r.at().where().place().orElseThrow().y())
                    .number(
                        "short_of_center_m",
                        "m",
                        "from the puck to the near edge of the red line",
                        Release::shortOfCenter)
                    .text("restart_cause", CAUSES, "", r -> r.outcome().cause().label())
                    .text("kind", "sent, missed_pass", "", r -> r.how().kind().word()))
        .text("zone", "own, neutral", "where it was let go", f -> f.kind().zone())
        .count(
            "kind_iced",
            "of the releases of this kind from this zone in these sheets that the book may call"
                + " icing, how many were iced",
            f -> f.kindIced().successes())
        .count("kind_releases", "how many there are", f -> f.kindIced().trials())
        .part(Flag::assessment, Schemas::chance)
        .optNumber("p_avoid", "", "as in releases.csv", f -> p(f.assessment().avoid()))
        .optNumber(
            "p_avoid_low", "", "lower end of its 95 % interval", f -> low(f.assessment().avoid()))
        .optNumber("p_avoid_high", "", "upper end", f -> high(f.assessment().avoid()))
        .text("evidence", "", "as in releases.csv", f -> f.assessment().gain().evidence().word())
        .optPart(
            f -> f.assessment().gain().seen(),
            s ->
                s.count(
                        "opponents_seen",
                        "opponents whose places are known; empty when nobody looked",
                        p -> p.opponents().size())
                    .optNumber(
                        "nearest_opponent_m",
                        "m",
                        "the nearest of them, from the puck",
                        PositionsSeen::nearest)
                    .text(
                        "skaters_seen",
                        "",
                        "\"own x y vx vy; opponent x y\", metres and metres a second; without"
                            + " speeds where they are not known",
                        PositionsSeen::skaters))
        .part(
            Flag::puck,
            s ->
                s.number(
                        "p_length",
                        "",
                        "share of simulated pucks past the far goal line, left alone",
                        p -> p.past())
                    .number("puck_x_m", "m", "where half of them get to", p -> p.farthest().x())
                    .number(
                        "puck_right_m",
                        "m",
                        "there, 10 % pass at or to the right of this",
                        p -> p.farthest().low())
                    .number("puck_middle_m", "m", "half of them", p -> p.farthest().middle())
                    .number("puck_left_m", "m", "90 % of them", p -> p.farthest().high()))
        .number(
            "cost_icing",
            "attempts",
            "attempts against within the window that an icing costs",
            Flag::costIcing)
        .optNumber(
            "cost_trying",
            "attempts",
            "the same of trying to gain center; only where there is a `p_avoid`",
            f -> f.assessment().trying())
        .flag("flagged", "", f -> f.assessment().verdict() == FlagVerdict.FLAGGED)
        .text(
            "reason", "", "the verdict: flagged, or why not", f -> f.assessment().verdict().words())
        .text("sentence", "", "what happened, and why it is flagged or not", Flag::sentence)
        .text("ruling", RULINGS, "by the book of the run", f -> f.played().word())
        .optText("clause", "", "of that book", f -> f.played().clause())
        .text("seed", "", "the run's seed", f -> String.valueOf(seed))
        .part(f -> f.release().at().when(), Schemas::source);
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
        .text("strength_used", STRENGTHS, "", g -> g.used().label())
        .text("reason", "", "which penalties", ManpowerGap::reason)
        .text("sheet", "", "where it stands", g -> g.from().sheet())
        .count("line", "its first line", g -> g.from().line())
        .count("last_line", "its last line", ManpowerGap::lastLine);
  }

  TableSchema<PlayerCount> players() {
    return new TableSchema<PlayerCount>("players", "counts of exit attempts")
        .text("team", "", "", PlayerCount::team)
        .optText("player", "", "", PlayerCount::player)
        .text("way_out", "", "", PlayerCount::way)
        .optText("at_center", "", "", PlayerCount::mark)
        .text("strength", STRENGTHS, "", PlayerCount::strength)
        .count("attempts", "how many", PlayerCount::attempts)
        .count("restarts", "own-zone restarts that followed", PlayerCount::restarts);
  }

  private static void game(TableSchema<Fixture> s) {
    s.text("game", "", "the game's id, as in the sheet", Fixture::id)
        .optText(
            "date",
            "ISO 8601",
            "the date, where the sheet has it",
            g -> g.date().map(LocalDate::toString));
  }

  private static void source(TableSchema<When> s) {
    s.optNumber("video_s", "s", "second of the video", When::video)
        .text("sheet", "", "where it stands in the sheets", When::sheet)
        .count("line", "its line, the header included", When::line);
  }

  private static void strengthAndNet(TableSchema<Situation> s) {
    s.text("strength", STRENGTHS, "at the release", at -> at.state().strength().label())
        .optText(
            "net_empty",
            "none, own, opponent, both",
            "at the release",
            at -> at.state().netEmpty().map(NetEmpty::word));
  }

  private static void place(TableSchema<Where> s) {
    s.optNumber("release_x_m", "m", "where", w -> coordinate(w, true))
        .optNumber("release_y_m", "m", "where across the rink", w -> coordinate(w, false))
        .optNumber(
            "short_of_center_m",
            "m",
            "from the puck's near side to the near edge of the red line, when let go short of it",
            Where::shortOfCenter)
        .optText(
            "line_note",
            "on the red line, on the blue line",
            "what the sheet's step cannot resolve",
            Where::lineNote);
  }

  private static OptionalDouble coordinate(Where w, boolean along) {
    return w.place()
        .map(p -> OptionalDouble.of(along ? p.x() : p.y()))
        .orElse(OptionalDouble.empty());
  }

  private static void letGo(TableSchema<LetGo> s) {
    s.optNumber(
            "carried_m",
            "m",
            "up ice since he got it: 0 at his first touch, below 0 when he went back; empty in"
                + " rows of tag sheets",
            LetGo::carried)
        .optFlag(
            "shot", "whether it was a shot at goal", h -> h.shot().map(x -> x != LetGo.Shot.NONE))
        .optFlag("scored", "whether it was a goal", h -> h.shot().map(x -> x == LetGo.Shot.SCORED));
  }

  private void outcome(TableSchema<ExitOutcome> s) {
    s.optPart(ExitOutcome::next, Schemas::nextTouch)
        .optFlag("own_zone_restart", "", ExitOutcome::restarted)
        .text("restart_cause", CAUSES, "[exits.md](exits.md#how-it-ended)", o -> o.cause().label())
        .optNumber("restart_elapsed_s", "s", "when the face-off was", ExitOutcome::restartElapsed)
        .optFlag(
            windows.restartWithin(),
            "whether any own-zone face-off came within the run's window; empty in rows of tag"
                + " sheets",
            ExitOutcome::restartWithinWindow)
        .optNumber(
            "seconds_until_reentry",
            "s",
            "until the opponent had it under control in the zone again",
            o ->
                o.reentry().map(w -> OptionalDouble.of(w.seconds())).orElse(OptionalDouble.empty()))
        .optFlag(
            "relief_cut_short", "whether a stop came first", o -> o.reentry().map(w -> !w.ended()))
        .optPart(ExitOutcome::against, this::against);
  }

  private static void nextTouch(TableSchema<NextTouch> s) {
    s.text(
            "next_touch",
            "own, opponent, none",
            "who touched it next before play stopped",
            n -> n.by().word())
        .optNumber(
            "next_touch_x_m",
            "m",
            "where, same frame; of a tag sheet `end_x_m`, when `ended` is opponent or own",
            NextTouch::x)
        .optNumber(
            "seconds_to_next_touch",
            "s",
            "how soon; empty where the reception of a pass has no row of its own",
            NextTouch::seconds);
  }

  private void against(TableSchema<Against> s) {
    s.count(
            windows.attempts(),
            "shot attempts of the opponent within the run's window, from the release, or from the"
                + " face-off where one followed in the own zone; empty where a game's sheet writes"
                + " no shots",
            Against::attempts)
        .count(windows.goals(), "goals of the opponent, the same", Against::goals)
        .count(
            windows.attemptsLong(),
            "attempts within the longer window, 10 s more",
            Against::attemptsLong)
        .count(windows.goalsLong(), "goals within it", Against::goalsLong)
        .count(windows.goalsFor(), "own goals within the run's window", Against::goalsFor);
  }

  private static void circumstances(TableSchema<Situation> s) {
    s.optText(
            "venue",
            "home, away",
            "where the sheet says who is at home",
            at -> at.when().game().venueOf(at.team()))
        .optCount(
            "goals_ahead",
            "own goals less the opponent's before it; empty where a game's sheet writes no shots",
            at -> at.state().goalsAhead())
        .optText(
            "pressure",
            "none, light, heavy",
            "at the release, where the sheet says so",
            at -> at.state().pressure().map(Pressure::word))
        .optText(
            "side",
            "left, middle, right",
            "third of the rink's width, facing the attack",
            at -> at.where().side(at.when().game().rink()))
        .optText(
            "on_ice",
            "",
            "the team's skaters, sorted, with `; ` between them, where the sheet lists them",
            at ->
                at.state().onIce().isEmpty()
                    ? Optional.empty()
                    : Optional.of(String.join("; ", at.state().onIce())))
        .optNumber(
            "since_shorthanded_s",
            "s",
            "since the last row that shows the team shorthanded, in the same period; 0 while it"
                + " is",
            at -> at.state().sinceShorthanded())
        .optCount(
            "kill",
            "number of the penalty kill in its game, while shorthanded",
            at -> at.state().kill());
  }

  private static void ruling(TableSchema<BookRuling> s) {
    s.text(
            "ruling",
            RULINGS,
            "what the book of the run says of the facts in the sheet ([rulings.md](rulings.md))",
            BookRuling::word)
        .text("ruling_reason", "", "the ruling as a sentence", BookRuling::sentence)
        .optText(
            "clause",
            "",
            "clause of the book with how sure it is; or \"common practice, no source\"",
            BookRuling::clause)
        .optText(
            "audit",
            "",
            "the sheet says icing and the book would not call it; else empty",
            BookRuling::audit);
  }

  private static void chance(TableSchema<Assessment> s) {
    s.number(
            "seconds_to_center",
            "s",
            "to the red line: the race's, or at the pace of the carriers in these sheets"
                + " ([race.md](race.md))",
            a -> a.gain().seconds())
        .optNumber(
            "p_gain_center",
            "",
            "chance that the player would have brought it to the red line, 0 to 1; empty where"
                + " nothing says anything of it",
            a -> p(a.gain().chance()))
        .optNumber("p_gain_low", "", "lower end of its 95 % interval", a -> low(a.gain().chance()))
        .optNumber("p_gain_high", "", "upper end", a -> high(a.gain().chance()));
  }

  private void verdict(TableSchema<Assessment> s) {
    s.text(
            "evidence",
            "measured, clicked, places only, tagged, unknown",
            "on what the chance rests; only the first two carry a verdict, and an unknown one only"
                + " orders",
            a -> a.gain().evidence().word())
        .flag("flagged", "", a -> a.verdict() == FlagVerdict.FLAGGED)
        .text("reason", "", "the verdict: flagged, or why not", a -> a.verdict().words())
        .text("seed", "", "the run's seed", a -> String.valueOf(seed));
  }

  private static OptionalDouble p(Optional<twostrides.race.Chance> c) {
    return c.map(x -> OptionalDouble.of(x.p())).orElse(OptionalDouble.empty());
  }

  private static OptionalDouble low(Optional<twostrides.race.Chance> c) {
    return c.map(x -> OptionalDouble.of(x.low())).orElse(OptionalDouble.empty());
  }

  private static OptionalDouble high(Optional<twostrides.race.Chance> c) {
    return c.map(x -> OptionalDouble.of(x.high())).orElse(OptionalDouble.empty());
  }

  private static <T> OptionalInt number(
      Optional<T> of, java.util.function.ToIntFunction<T> number) {
    return of.map(t -> OptionalInt.of(number.applyAsInt(t))).orElse(OptionalInt.empty());
  }
}
