package twostrides.findings;

import java.util.List;

/**
 * A page of grids.
 *
 * @param file its file in the book's folder
 * @param title its heading
 * @param lead one sentence under the heading
 * @param notes paragraphs before the grids: what is counted and where it can mislead
 * @param grids its tables
 */
public record NumberPage(
    String file, String title, String lead, List<String> notes, List<Grid> grids) {

  /** Copies the lists. */
  public NumberPage {
    notes = List.copyOf(notes);
    grids = List.copyOf(grids);
  }

  /**
   * One of its tables.
   *
   * @param id the table's id
   */
  public Grid grid(String id) {
    return grids.stream().filter(g -> g.id().equals(id)).findFirst().orElseThrow();
  }
}
