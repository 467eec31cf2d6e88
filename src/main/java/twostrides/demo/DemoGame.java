package twostrides.demo;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** One simulated game: its sheet, and what was really so. */
public final class DemoGame {
  private final int number;
  private final LocalDate date;
  private final Team home;
  private final Team away;
  private final Source source;
  private final List<SheetRow> rows;
  private final List<ExitTruth> exits;
  private final List<ReleaseTruth> releases;
  private final List<TruthBook.Kept> kept;

  DemoGame(int number, LocalDate date, Team home, Team away, Match played) {
    this.number = number;
    this.date = date;
    this.home = home;
    this.away = away;
    source = played.source;
    rows = played.rows();
    exits = played.truth.exits();
    releases = played.truth.releases();
    kept = played.truth.kept();
  }

  /** Game id as in the sheet: date, home and away code. */
  public String id() {
    return date + " " + home.code() + "-" + away.code();
  }

  /** File name without ending: number in the season, home and away code. */
  public String fileStem() {
    return String.format(Locale.ROOT, "game-%02d-%s-%s", number, home.code(), away.code());
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
    return number;
  }

  Source source() {
    return source;
  }

  LocalDate date() {
    return date;
  }

  Team team(Side side) {
    return side == Side.HOME ? home : away;
  }

  List<SheetRow> rows() {
    return rows;
  }

  List<ExitTruth> exits() {
    return exits;
  }

  List<ReleaseTruth> releases() {
    return releases;
  }

  /** Empty unless it was asked for. */
  List<TruthBook.Kept> kept() {
    return kept;
  }
}
