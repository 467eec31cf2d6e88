package twostrides.sheet;

import java.util.List;
import java.util.Optional;

/** One row of a sheet, read through a map: it gives cells by our names and keeps its own words. */
public final class SheetRow {
  private final Layout layout;
  private final long line;
  private final String raw;
  private final List<String> cells;
  private final List<String> around;
  private final Optional<Rule> rule;
  private final boolean second;

  /**
   * A row.
   *
   * @param layout what the sheet's columns mean
   * @param line line of the file on which the row begins
   * @param raw the row as it stood in the file, without its line end
   * @param cells the row's cells
   * @param around the same, and behind them those of the rows below and above, where the map looks
   *     at them
   * @param rule the rule of the map that fits it
   */
  SheetRow(
      Layout layout,
      long line,
      String raw,
      List<String> cells,
      List<String> around,
      Optional<Rule> rule) {
    this(layout, line, raw, cells, around, rule, false);
  }

  private SheetRow(
      Layout layout,
      long line,
      String raw,
      List<String> cells,
      List<String> around,
      Optional<Rule> rule,
      boolean second) {
    this.second = second;
    this.layout = layout;
    this.line = line;
    this.raw = raw;
    this.cells = kept(cells);
    this.around = around.size() == cells.size() ? this.cells : kept(around);
    this.rule = rule;
  }

  private static List<String> kept(List<String> cells) {
    return cells instanceof RowCells ? cells : List.copyOf(cells);
  }

  /** The sheet, as the user named it. */
  public String file() {
    return layout.file();
  }

  /** Line of the file on which the row begins, from 1; the header and blank lines count. */
  public long line() {
    return line;
  }

  /** The row as it stood in the file, without its line end. */
  public String raw() {
    return raw;
  }

  /** Where it stands. */
  public RowWords.Place place() {
    return new RowWords.Place(file(), line);
  }

  /** The row in its own words. */
  RowWords words() {
    return new RowWords(place(), layout.headerLine(), raw, cells, rule.flatMap(Rule::skip));
  }

  /**
   * The cell of one of our columns.
   *
   * @param ourColumn our name of the column
   * @return empty when the sheet has no such column or the cell is blank
   * @throws IllegalArgumentException when the schema declares no such column
   */
  public Optional<Cell> cell(String ourColumn) {
    return layout.cell(this, ourColumn);
  }

  /**
   * The sheet's own name of the column that is one of our columns as a whole.
   *
   * @param ourColumn our name of the column
   * @return empty when it is found in another way, or not at all
   */
  public Optional<String> header(String ourColumn) {
    return layout.slots(this).get(ourColumn) instanceof Slot.Place p && p.take().isEmpty()
        ? Optional.of(p.header())
        : Optional.empty();
  }

  /** The map through which the row is read; empty when it is read in our own columns. */
  public Optional<String> map() {
    return layout.mapName();
  }

  char decimalMark() {
    return layout.decimalMark();
  }

  /** The row's cells as written, in the order of the sheet's headers; a short row has fewer. */
  public List<String> cells() {
    return cells;
  }

  /** The row's cells, and behind them those of the rows around it that the map looks at. */
  List<String> around() {
    return around;
  }

  /** The second event that the map finds in this row. */
  Optional<SheetRow> then() {
    return rule.flatMap(Rule::second)
        .map(r -> new SheetRow(layout, line, raw, cells, around, Optional.of(r), true));
  }

  /** Whether it is the second event that the map finds in a row. */
  public boolean second() {
    return second;
  }

  Optional<Rule> rule() {
    return rule;
  }
}
