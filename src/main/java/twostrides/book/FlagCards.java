package twostrides.book;

import java.util.List;
import java.util.Locale;
import twostrides.book.chart.ReleaseDiagram;
import twostrides.rink.Rink;
import twostrides.season.Flag;

/** Flags as cards that open. */
final class FlagCards {

  private final PageFiles pages;
  private final Rink rink;

  FlagCards(PageFiles pages, Rink rink) {
    this.pages = pages;
    this.rink = rink;
  }

  /** Cards of some flags, numbered as they stand among all. */
  List<FlagCard> some(String kind, List<Flag> few, List<Flag> all) {
    return few.stream().map(f -> card(kind, all.indexOf(f) + 1, f)).toList();
  }

  private FlagCard card(String kind, int number, Flag f) {
    String id = String.format(Locale.ROOT, "%s-%03d", kind, number);
    ReleaseDiagram diagram = FlagView.diagram(f, rink);
    return new FlagCard(
        id, f, pages.html(id, diagram.picture(id)), diagram.thumbnail(id + "-small"));
  }
}
