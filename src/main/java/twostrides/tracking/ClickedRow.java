package twostrides.tracking;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import twostrides.game.Frame;
import twostrides.game.OnIce;
import twostrides.game.RowReader;
import twostrides.rink.Place;
import twostrides.sheet.SheetRow;

/**
 * Reads one row of a places sheet: which release it speaks of, and the skater.
 *
 * @param row the row
 * @param in its cells
 * @param frame how the sheet writes clock and places
 * @param game its game
 */
record ClickedRow(SheetRow row, RowReader in, Frame frame, GameOutline game) {

  /** Largest speed that is looked at, in the sheet's unit a second; more is none. */
  private static final double WIDE = 1000;

  /** How far two clock readings may be apart and still be one, beside their steps, s. */
  private static final double SAME = 1e-6;

  /**
   * A skater of a row.
   *
   * @param row the row
   * @param skater the skater
   * @param carrier whether he is marked as who lets the puck go
   * @param error standard error of his places each way, metres, where the row says it
   */
  record Skater(SheetRow row, OnIce skater, boolean carrier, Optional<Double> error) {}

  /** The release; empty, with a problem, where none of the game's, or more than one, fits. */
  Optional<GameOutline.LetGo> release() {
    Optional<Integer> period = in.period();
    Optional<Double> elapsed = in.elapsed();
    Optional<Integer> line = in.wholeNumber(TrackForm.LINE, 2, Integer.MAX_VALUE);
    if (!in.problems().isEmpty() || period.isEmpty() || elapsed.isEmpty()) {
      return Optional.empty();
    }
    double step = Math.max(frame.clockStep(in.clockDecimals()), game.clockStep());
    List<GameOutline.LetGo> there =
        game.releases().stream()
            .filter(r -> r.period() == period.get())
            .filter(r -> Math.abs(r.elapsed() - elapsed.get()) < step - SAME)
            .filter(r -> line.isEmpty() || line.get() == r.line())
            .filter(this::letGoBy)
            .toList();
    if (there.size() != 1) {
      in.doubt(
          TrackForm.CLOCK,
          there.isEmpty()
              ? "the clock of a puck sent before the red line in the game's sheet"
                  + (line.isPresent() || in.text(TrackForm.LET_GO_BY).isPresent()
                      ? ", with its line and who lets it go"
                      : "")
              : "one release, not those in lines "
                  + String.join(", ", there.stream().map(r -> String.valueOf(r.line())).toList()),
          there.isEmpty()
              ? "Correct it; data/flags.csv of a book has the releases that a restart followed, with line."
              : "Say in the column line, or let_go_by, which it is.");
      return Optional.empty();
    }
    return Optional.of(there.get(0));
  }

  /** The name as the play sheet writes it, or the number that begins it. */
  private boolean letGoBy(GameOutline.LetGo r) {
    Optional<String> said = in.text(TrackForm.LET_GO_BY);
    String name = r.player().orElse("");
    return said.isEmpty() || said.get().equals(name) || said.get().equals(name.split(" ", -1)[0]);
  }

  /**
   * The skater in the frame of the team that lets the puck go; empty, with a problem, where
   * something is doubtful.
   *
   * @param release the release
   */
  Optional<Skater> skater(GameOutline.LetGo release) {
    boolean home = game.home().equals(Optional.of(release.team()));
    Map<String, Boolean> teams = new LinkedHashMap<>();
    teams.put("own", true);
    teams.put("opponent", false);
    release.opponent().ifPresent(o -> teams.put(o, false));
    teams.put(release.team(), true);
    if (row.cell(TrackForm.TEAM).isEmpty()) {
      in.requiredText(TrackForm.TEAM, "own, opponent, or a team's name");
    }
    Optional<Boolean> own = in.word(TrackForm.TEAM, teams);
    boolean carrier = in.yesOrNo(TrackForm.CARRIER).orElse(false);
    if (row.cell(TrackForm.X).isEmpty() && row.cell(TrackForm.Y).isEmpty()) {
      in.requiredText(TrackForm.X, "a place needs both its numbers");
    }
    int period = release.period();
    Optional<Place> at = in.place(TrackForm.X, TrackForm.Y, home, period);
    Optional<Place> later = in.place(TrackForm.LATER_X, TrackForm.LATER_Y, home, period);
    Optional<Place> moved = speed(home, period);
    if (moved.isEmpty() && at.isPresent()) {
      Place from = at.get();
      moved =
          later.map(
              p ->
                  new Place(
                      (p.x() - from.x()) / PlacesSheets.LATER_S,
                      (p.y() - from.y()) / PlacesSheets.LATER_S));
    }
    double vx = moved.map(Place::x).orElse(0.0);
    double vy = moved.map(Place::y).orElse(0.0);
    double speed = Math.hypot(vx, vy);
    if (speed > Smoother.FASTEST) {
      in.doubt(
          row.cell(TrackForm.VX).isPresent() ? TrackForm.VX : TrackForm.LATER_X,
          String.format(
              Locale.ROOT,
              "a skater no faster than %.0f m/s, not %.1f m/s",
              Smoother.FASTEST,
              speed),
          "Click again, or leave the speed out and keep the place.");
    }
    Optional<Double> error = error();
    return in.problems().isEmpty() && at.isPresent() && own.isPresent()
        ? Optional.of(
            new Skater(
                row, new OnIce(own.get(), at.get(), moved.isPresent(), vx, vy), carrier, error))
        : Optional.empty();
  }

  /** How far off the row says that its places are, in metres. */
  private Optional<Double> error() {
    Optional<Double> error = in.number(TrackForm.ERROR, -WIDE, WIDE).map(frame.unit()::toMetres);
    if (error.isPresent() && !(error.get() > 0 && error.get() <= PlacesSheets.MOST_ERROR)) {
      in.doubt(
          TrackForm.ERROR,
          String.format(
              Locale.ROOT, "metres above 0 and up to %.0f, each way", PlacesSheets.MOST_ERROR),
          "Correct it, or leave the cell empty: then --places-error counts.");
    }
    return error;
  }

  /** A speed in the sheet's unit and view, as metres a second in the acting team's frame. */
  private Optional<Place> speed(boolean home, int period) {
    Optional<Double> along = in.number(TrackForm.VX, -WIDE, WIDE);
    Optional<Double> across = in.number(TrackForm.VY, -WIDE, WIDE);
    if (row.cell(TrackForm.VX).isPresent() != row.cell(TrackForm.VY).isPresent()) {
      in.missingOneOf(TrackForm.VX, TrackForm.VY, "a speed needs both its numbers");
    }
    if (along.isEmpty() || across.isEmpty()) {
      return Optional.empty();
    }
    Place from = frame.place(0, 0, home, period);
    Place to = frame.place(along.get(), across.get(), home, period);
    return Optional.of(new Place(to.x() - from.x(), to.y() - from.y()));
  }
}
