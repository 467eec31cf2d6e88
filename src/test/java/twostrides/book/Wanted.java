package twostrides.book;

import java.util.ArrayList;
import java.util.List;

/** A table as it has to be: headings, and rows of cells. */
final class Wanted {

  final List<String> heads;
  final List<List<Want>> rows = new ArrayList<>();

  Wanted(String... heads) {
    this.heads = List.of(heads);
  }

  Wanted row(List<Want> cells) {
    rows.add(List.copyOf(cells));
    return this;
  }

  Wanted row(Want... cells) {
    return row(List.of(cells));
  }

  /**
   * Compares with a page.
   *
   * @param table what the page shows
   * @param wrong takes a sentence for every disagreement
   * @return how many figures agree
   */
  int compare(PageTable table, List<String> wrong) {
    String where = table.page() + ", " + table.heading();
    if (!table.heads().equals(heads)) {
      wrong.add(where + ": columns " + table.heads() + ", the checker knows " + heads);
      return 0;
    }
    if (table.rows().size() != rows.size()) {
      wrong.add(where + ": " + table.rows().size() + " rows instead of " + rows.size());
      return 0;
    }
    int figures = 0;
    for (int i = 0; i < rows.size(); i++) {
      List<String> shown = table.rows().get(i);
      List<Want> want = rows.get(i);
      if (shown.size() != want.size()) {
        wrong.add(where + ": row " + (i + 1) + " has " + shown.size() + " cells");
        continue;
      }
      for (int c = 0; c < want.size(); c++) {
        String at = where + ", row " + (i + 1) + " (" + shown.get(0) + "), " + heads.get(c);
        if (table.numeric().get(c) && !want.get(c).figure()) {
          wrong.add(at + ": a column of numbers without a checker");
        }
        if (want.get(c).fits(shown.get(c))) {
          figures += want.get(c).figure() ? 1 : 0;
        } else {
          wrong.add(at + ": shows \"" + shown.get(c) + "\", wanted " + want.get(c));
        }
      }
    }
    return figures;
  }
}
