package twostrides.season;

import twostrides.exits.PositionsSeen;
import twostrides.exits.Release;

/**
 * The tables of releases that an own-zone restart followed, and of what other books say.
 *
 * @param seed the run's seed
 */
record FlagSchema(long seed) {

  TableSchema<Flag> schema() {
    return new TableSchema<Flag>(
            "flags", "one row a release short of center that an own-zone restart followed")
        .text("game", "", "the game", f -> f.release().at().when().game().id())
        .part(
            Flag::release,
            s ->
                s.part(r -> r, FlagSchema::briefly)
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
                    .text("restart_cause", Parts.CAUSES, "", r -> r.outcome().cause().label())
                    .text("kind", "sent, missed_pass", "", r -> r.how().kind().word()))
        .text("zone", "own, neutral", "where it was let go", f -> f.kind().zone())
        .count(
            "kind_iced",
            "of the releases of this kind from this zone in these sheets that the book may call"
                + " icing, how many were iced",
            f -> f.kindIced().successes())
        .count("kind_releases", "how many there are", f -> f.kindIced().trials())
        .part(Flag::assessment, Parts::chance)
        .optNumber("p_avoid", "", "as in releases.csv", f -> Parts.p(f.assessment().avoid()))
        .optNumber(
            "p_avoid_low",
            "",
            "lower end of its 95 % interval",
            f -> Parts.low(f.assessment().avoid()))
        .optNumber("p_avoid_high", "", "upper end", f -> Parts.high(f.assessment().avoid()))
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
            f -> f.release().puck().orElseThrow(),
            s ->
                s.number(
                        "p_length",
                        "",
                        "share of simulated pucks past the far goal line, left alone",
                        p -> p.past())
                    .number("puck_x_m", "m", "where half of them get to", p -> p.row().x())
                    .number(
                        "puck_right_m",
                        "m",
                        "there, 10 % pass at or to the right of this",
                        p -> p.row().low())
                    .number("puck_middle_m", "m", "half of them", p -> p.row().middle())
                    .number("puck_left_m", "m", "90 % of them", p -> p.row().high()))
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
        .text("ruling", Parts.RULINGS, "by the book of the run", f -> f.played().word())
        .optText("clause", "", "of that book", f -> f.played().clause())
        .text("seed", "", "the run's seed", f -> String.valueOf(seed))
        .part(f -> f.release().at().when(), Parts::source);
  }

  static void briefly(TableSchema<Release> s) {
    s.count("release", "number in its game, of releases.csv", Release::number)
        .count("period", "from 1", r -> r.at().when().period())
        .number("release_elapsed_s", "s", "when it was let go", r -> r.at().when().elapsed())
        .text("team", "", "who let it go", r -> r.at().team())
        .optText("player", "", "who let it go", r -> r.at().player())
        .text("strength", Parts.STRENGTHS, "at the release", r -> r.at().state().strength().label())
        .number("release_x_m", "m", "where", r -> r.at().where().place().orElseThrow().x());
  }
}
