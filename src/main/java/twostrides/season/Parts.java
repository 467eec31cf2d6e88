package twostrides.season;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import twostrides.exits.BookRuling;
import twostrides.exits.Onward;
import twostrides.exits.Situation;
import twostrides.exits.When;
import twostrides.exits.Where;
import twostrides.game.Fixture;
import twostrides.game.NetEmpty;
import twostrides.game.Pressure;
import twostrides.game.VideoFrame;
import twostrides.race.Chance;
import twostrides.rink.Lane;
import twostrides.rink.Place;

/** Columns that several tables share, each described once. */
final class Parts {

  private Parts() {}

  static final String STRENGTHS = "even, shorthanded, power play, unknown";
  static final String CAUSES = "icing_written, icing_inferred, penalty, other, unknown, none";
  static final String RULINGS = "icing, no icing, waved off, goal, not yet decided";

  static void game(TableSchema<Fixture> s) {
    s.text("game", "", "the game's id, as in the sheet", Fixture::id)
        .optText(
            "date",
            "ISO 8601",
            "the date, where the sheet has it",
            g -> g.date().map(LocalDate::toString));
  }

  static void source(TableSchema<When> s) {
    s.optNumber("video_s", "s", "second of the video", When::video)
        .text("sheet", "", "where it stands in the sheets", When::sheet)
        .count("line", "its line, the header included", When::line);
  }

  static void strengthAndNet(TableSchema<Situation> s) {
    s.text("strength", STRENGTHS, "at the release", at -> at.state().strength().label())
        .optText(
            "net_empty",
            "none, own, opponent, both",
            "at the release",
            at -> at.state().netEmpty().map(NetEmpty::word));
  }

  static void place(TableSchema<Where> s) {
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

  static OptionalDouble coordinate(Where w, boolean along) {
    return along(w.place(), along);
  }

  private static OptionalDouble along(Optional<Place> place, boolean along) {
    return place.map(p -> OptionalDouble.of(along ? p.x() : p.y())).orElse(OptionalDouble.empty());
  }

  static void circumstances(TableSchema<Situation> s) {
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
            at -> at.where().lane(at.when().game().rink()).map(Lane::word))
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

  /** Keys of JSON Lines that the tables lack. */
  static void onward(TableSchema<Onward> s) {
    s.optText(
            "receiver", "", "who a pass was for, or who of the team has it next", Onward::receiver)
        .optNumber(
            "received_elapsed_s", "s", "when he has it, by a row of his own", Onward::received)
        .optNumber(
            "end_x_m",
            "m",
            "where a pass was to go; of a tag sheet where it ended",
            o -> along(o.end(), true))
        .optNumber("end_y_m", "m", "the same across the rink", o -> along(o.end(), false));
  }

  /** Keys of JSON Lines of releases that tracking sheets give. */
  static void frame(TableSchema<VideoFrame> s) {
    s.text("tracking_sheet", "", "tracking sheet in which the skaters were seen", VideoFrame::sheet)
        .optText("tracking_segment", "", "its segment", VideoFrame::segment)
        .count("tracking_frame", "its frame at the release", VideoFrame::number);
  }

  static void ruling(TableSchema<BookRuling> s) {
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

  static void chance(TableSchema<Assessment> s) {
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

  static OptionalDouble p(Optional<Chance> c) {
    return c.map(x -> OptionalDouble.of(x.p())).orElse(OptionalDouble.empty());
  }

  static OptionalDouble low(Optional<Chance> c) {
    return c.map(x -> OptionalDouble.of(x.low())).orElse(OptionalDouble.empty());
  }

  static OptionalDouble high(Optional<Chance> c) {
    return c.map(x -> OptionalDouble.of(x.high())).orElse(OptionalDouble.empty());
  }

  static <T> OptionalInt number(Optional<T> of, ToIntFunction<T> number) {
    return of.map(t -> OptionalInt.of(number.applyAsInt(t))).orElse(OptionalInt.empty());
  }
}
