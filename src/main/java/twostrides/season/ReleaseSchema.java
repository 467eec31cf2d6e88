package twostrides.season;

import twostrides.exits.Exit;
import twostrides.exits.LetGo;
import twostrides.exits.Release;

/**
 * The table of releases short of center.
 *
 * @param windows the run's windows
 * @param seed the run's seed
 */
record ReleaseSchema(Columns.Windows windows, long seed) {

  TableSchema<Assessed> schema() {
    return new TableSchema<Assessed>("releases", "one row a release short of center")
        .part(a -> a.release().at().when().game(), Parts::game)
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
                        "exit",
                        "its exit attempt, if any",
                        r -> Parts.number(r.exit(), Exit::number))
                    .part(Release::at, Parts::strengthAndNet)
                    .part(r -> r.at().where(), Parts::place)
                    .part(Release::how, ReleaseSchema::letGo)
                    .flag(
                        "may_be_icing",
                        "false for a team that the book exempts",
                        r -> r.rulings().mayBeIcing())
                    .part(Release::outcome, new OutcomeColumns(windows)::outcome)
                    .part(Release::at, Parts::circumstances)
                    .part(r -> r.rulings().played(), Parts::ruling))
        .part(Assessed::assessment, Parts::chance)
        .optNumber(
            "p_avoid",
            "",
            "chance that trying would have avoided the icing, 0 to 1; only on evidence that"
                + " carries a verdict",
            a -> Parts.p(a.assessment().avoid()))
        .part(Assessed::assessment, this::verdict)
        .part(a -> a.release().at().when(), Parts::source);
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
}
