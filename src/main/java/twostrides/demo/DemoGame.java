package twostrides.demo;

import java.util.List;

/**
 * One simulated game: its sheet, and what was really so.
 *
 * @param fixture who played when
 * @param source what the sheet says
 * @param rows of the sheet, in order
 * @param exits the truth about the exit attempts
 * @param releases the truth about the releases short of center
 * @param kept who kept the puck; empty unless it was asked for
 */
public record DemoGame(
    Fixture fixture,
    Source source,
    List<SheetRow> rows,
    List<ExitTruth> exits,
    List<ReleaseTruth> releases,
    List<TruthBook.Kept> kept) {

  static DemoGame of(Fixture fixture, Match played) {
    TruthBook truth = played.truth;
    return new DemoGame(
        fixture, played.source, played.rows(), truth.exits(), truth.releases(), truth.kept());
  }

  /** Game id as in the sheet: date, home and away code. */
  public String id() {
    return fixture.date() + " " + fixture.home().code() + "-" + fixture.away().code();
  }

  /** File name without ending: number in the season, home and away code. */
  public String fileStem() {
    return fixture.fileStem();
  }

  /** The play sheet as CSV text, header first, lines ending in a line feed. */
  public String sheetCsv() {
    return SheetCsv.text(this);
  }

  /** The truth about every exit attempt as CSV text. */
  public String exitTruthCsv() {
    return TruthCsv.exits(this);
  }

  /** The truth about every release short of center as CSV text. */
  public String releaseTruthCsv() {
    return TruthCsv.releases(this);
  }

  int number() {
    return fixture.number();
  }

  Team team(Side side) {
    return side == Side.HOME ? fixture.home() : fixture.away();
  }
}
