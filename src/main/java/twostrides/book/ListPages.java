package twostrides.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.findings.Comparison;
import twostrides.findings.Grid;
import twostrides.findings.OtherBooks;
import twostrides.findings.SeasonReview;
import twostrides.season.Flag;

/** The pages of lists: flags, face-offs, rulings, two sides, what the numbers mean. */
final class ListPages {

  /** Cards with drawings of releases to look at; all of them stand in a table. Assumed. */
  private static final int DRAWN = 10;

  private final SeasonReview review;
  private final PageFiles pages;
  private final FlagCards cards;

  ListPages(SeasonReview review, PageFiles pages, FlagCards cards) {
    this.review = review;
    this.pages = pages;
    this.cards = cards;
  }

  void flags() throws IOException {
    pages.render(
        "flags.html",
        "flags.jte",
        Map.of(
            "review",
            review,
            "cards",
            ownFirst(cards.some("flag", review.flagged(), review.flagged())),
            "look",
            ownFirst(cards.some("look", drawnToLookAt(), review.toLookAt())),
            "near",
            ownFirst(cards.some("near-miss", review.nearMisses(), review.nearMisses())),
            "costs",
            review.season().costs()));
  }

  /** Cards of the book's team first; the order stays else. */
  private List<FlagCard> ownFirst(List<FlagCard> cards) {
    return cards.stream()
        .sorted(
            Comparator.comparing(
                c -> !review.ourTeam().equals(Optional.of(c.flag().release().at().team()))))
        .toList();
  }

  /** Those of the first so many, and those that the opening page shows. */
  private List<Flag> drawnToLookAt() {
    List<Flag> all = review.toLookAt();
    List<Flag> opening = review.firstToLookAt();
    return all.stream().filter(f -> all.indexOf(f) < DRAWN || opening.contains(f)).toList();
  }

  void rulings() throws IOException {
    pages.render("rulings.html", "rulings.jte", Map.of("review", review));
  }

  void restarts() throws IOException {
    pages.render("restarts.html", "restartlist.jte", Map.of("review", review));
  }

  void compare() throws IOException {
    Comparison comparison = Comparison.of(review);
    OtherBooks otherBooks = new OtherBooks(review.season());
    List<Grid> books = new ArrayList<>();
    for (BookNote.Other o : pages.imprint().book().others()) {
      books.add(otherBooks.grid(books.size() + 1, o.id(), o.name()));
    }
    String data = comparison.first().map(k -> CompareData.json(comparison, k)).orElse("");
    pages.render(
        "compare.html",
        "compare.jte",
        Map.of("review", review, "comparison", comparison, "data", data, "books", books));
  }

  void glossary() throws IOException {
    pages.render("numbers.html", "glossary.jte", Map.of("words", Glossary.html()));
  }
}
