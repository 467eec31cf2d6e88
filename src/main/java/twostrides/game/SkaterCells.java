package twostrides.game;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import twostrides.rink.Place;
import twostrides.rink.Units;
import twostrides.sheet.Cell;

/** Reads the cells of a row that list skaters: who was on the ice, and where. */
final class SkaterCells {

  /** A skater faster than this is a slip, m/s: above the fastest reported, 10.95. Assumed. */
  private static final double FASTEST = 12;

  /** Most skaters of a team in a row, and most players listed: six and a goalkeeper. */
  private static final int MOST = 7;

  /**
   * Skaters up to this far outside stand at a bench, whose doors are in the boards: metres,
   * assumed. In open tracked games none stands farther out.
   */
  private static final double BENCH_SLACK = 3;

  /** Numbers of a skater: place alone, or place and speed along and across. */
  private static final int PLACE = 2;

  private static final int PLACE_AND_SPEED = 4;

  /** The same with the speed and a vector along which it goes. */
  private static final int PLACE_SPEED_DIRECTION = 5;

  private static final Set<Integer> LENGTHS = Set.of(PLACE, PLACE_AND_SPEED, PLACE_SPEED_DIRECTION);

  private final RowReader in;
  private final boolean actingIsHome;
  private final int period;

  /**
   * The skaters of a row.
   *
   * @param in the row
   * @param actingIsHome whether the acting team is the home team
   * @param period period of the row
   */
  SkaterCells(RowReader in, boolean actingIsHome, int period) {
    this.in = in;
    this.actingIsHome = actingIsHome;
    this.period = period;
  }

  /**
   * Players in one cell, in the sheet's order; none when the cell is blank.
   *
   * @param column our column
   */
  List<String> names(String column) {
    Optional<Cell> cell = in.cell(column);
    if (cell.isEmpty()) {
      return List.of();
    }
    List<String> names =
        Arrays.stream(cell.get().text().split(";", -1))
            .map(String::strip)
            .filter(n -> !n.isEmpty())
            .map(in::withoutDecimal)
            .toList();
    if (new LinkedHashSet<>(names).size() < names.size() || names.size() > MOST) {
      in.doubt(
          column,
          SheetForms.ON_THE_ICE + "; each once, and no more than " + MOST,
          "correct the list, or empty the cell");
      return List.of();
    }
    return names;
  }

  /**
   * The skaters of a column; none when it is blank or doubtful.
   *
   * @param column our column
   * @param own whether they play for the acting team
   */
  List<OnIce> places(String column, boolean own) {
    List<OnIce> skaters = new ArrayList<>();
    for (double[] g :
        in.read(column, c -> c.groups(SheetForms.SKATERS, LENGTHS, SheetForms.WIDE))
            .orElse(List.of())) {
      skaters.add(skater(column, g, own));
    }
    if (skaters.size() > MOST) {
      in.doubt(
          column,
          "at most " + MOST + " skaters of a team, not " + skaters.size(),
          "take out who was not on the ice");
    }
    return skaters;
  }

  private OnIce skater(String column, double[] g, boolean own) {
    Place at = in.framed(g[0], g[1], actingIsHome, period);
    double[] v = velocity(g);
    Place after = in.framed(g[0] + v[0], g[1] + v[1], actingIsHome, period);
    double vx = after.x() - at.x();
    double vy = after.y() - at.y();
    Cell cell = in.cell(column).orElseThrow();
    in.outside(cell, at.x(), in.rink().length() / 2, BENCH_SLACK, "along the rink");
    in.outside(cell, at.y(), in.rink().width() / 2, BENCH_SLACK, "across the rink");
    double speed = Math.hypot(vx, vy);
    if (speed > FASTEST) {
      in.doubt(
          column,
          String.format(
              Locale.ROOT,
              "skaters no faster than %.0f m/s, not one at %.1f m/s (%.1f ft/s)",
              FASTEST,
              speed,
              Units.FOOT.fromMetres(speed)),
          "correct the speed, or leave it out and keep the place");
    }
    return new OnIce(own, in.onTheBoards(at, Mend.SKATER), g.length > PLACE, vx, vy);
  }

  /** Speed along and across in the sheet's unit a second: written so, or as speed and direction. */
  private static double[] velocity(double[] g) {
    if (g.length == PLACE) {
      return new double[2];
    }
    if (g.length == PLACE_AND_SPEED) {
      return new double[] {g[2], g[3]};
    }
    double length = Math.hypot(g[3], g[4]);
    double share = length > 0 ? g[2] / length : 0;
    return new double[] {share * g[3], share * g[4]};
  }
}
