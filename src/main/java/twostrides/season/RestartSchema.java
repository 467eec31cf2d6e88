package twostrides.season;

import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.exits.Exit;
import twostrides.exits.Release;
import twostrides.exits.Restart;
import twostrides.exits.Situation;

/**
 * The table of face-offs in a team's own zone.
 *
 * @param windows the run's windows
 */
record RestartSchema(Columns.Windows windows) {

  TableSchema<Restart> schema() {
    return new TableSchema<Restart>("restarts", "one row a face-off in a team's own zone")
        .part(r -> r.faceOff().when().game(), Parts::game)
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
            Parts.CAUSES,
            "[exits.md](exits.md#how-it-ended)",
            r -> r.faceOff().cause().label())
        .text("reason", "", "why the cause was found so", r -> r.faceOff().reason())
        .optPart(r -> r.behind().map(Restart.Behind::ruling), Parts::ruling)
        .optPart(
            Restart::behind,
            s ->
                s.optCount(
                        "release",
                        "the release behind it, of releases.csv",
                        b -> Parts.number(b.release(), Release::number))
                    .optCount(
                        "exit",
                        "the exit attempt behind it, of exits.csv",
                        b -> Parts.number(b.exit(), Exit::number)))
        .optPart(
            RestartSchema::lastTouch,
            s ->
                s.number(
                        "release_elapsed_s",
                        "s",
                        "when the team touched the puck last",
                        at -> at.when().elapsed())
                    .optText("player", "", "who touched it last", Situation::player)
                    .text(
                        "strength",
                        Parts.STRENGTHS,
                        "at that touch",
                        at -> at.state().strength().label())
                    .part(Situation::where, Parts::place))
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
                        Parts.STRENGTHS,
                        "of the team of the zone, at the face-off: after a penalty it is not that"
                            + " of the release",
                        f -> f.strength().map(x -> x.label()))
                    .optPart(Restart.FaceOff::against, new OutcomeColumns(windows)::against)
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
        .part(Restart::at, Parts::circumstances)
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
}
