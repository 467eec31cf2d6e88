package twostrides.book;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/** The sentence of advice by the rules of docs/numbers.md, made anew from the tables. */
final class SheetAdvice {

  private final BookData data;
  private final BookData.Player player;

  SheetAdvice(BookData data, BookData.Player player) {
    this.data = data;
    this.player = player;
  }

  private List<BookData.Row> own(List<BookData.Row> rows) {
    return BookData.rows(rows, BookData.of(player));
  }

  /** A share of the player's rows, and of all other rows of the team. */
  private record Two(Formulas.Share own, Formulas.Share rest) {

    boolean more(double level) {
      return !own.few() && !rest.few() && Formulas.exactOverGames(own, rest) <= level;
    }

    boolean less(double level) {
      return !own.few() && !rest.few() && Formulas.exactOverGames(rest, own) <= level;
    }

    Want said(String begin, String were) {
      return own.sentence(begin, "").then(rest(were));
    }

    Want rest(String were) {
      return rest.sentence(" were " + were + "; in the rest of the team ", ".");
    }
  }

  private Two two(List<BookData.Row> rows, Function<List<BookData.Row>, Formulas.Share> share) {
    Predicate<BookData.Row> mine = BookData.of(player);
    List<BookData.Row> team = BookData.rows(rows, BookData.team(Optional.of(player.team())));
    return new Two(
        BookData.byGame(BookData.rows(team, mine), share),
        BookData.byGame(BookData.rows(team, mine.negate()), share));
  }

  /**
   * What the sheet has to say.
   *
   * @param clips how many moments stand on it
   */
  Want sentence(int clips) {
    int attempts = own(data.exits).size();
    List<BookData.Row> followed = own(data.flags);
    int flagged = BookData.rows(followed, f -> f.is("flagged", "true")).size();
    int judged = flagged + BookData.rows(followed, ListFigures::fellShort).size();
    if (attempts < 10) {
      return Want.text(
          "Too few to say: "
              + SentenceFigures.count(attempts, "exit attempt")
              + " in these sheets. Watch "
              + (flagged > 0
                  ? SentenceFigures.count(flagged, "flagged release") + " instead: was center open?"
                  : clips > 0
                      ? SentenceFigures.count(clips, "clip") + " instead, below."
                      : "the next games instead."));
    }
    Two iced = two(data.releases, BookData::iced);
    if (iced.own().k() >= 2 && iced.more(0.02)) {
      return data.icedRates()
          .sentence(
              "Look at how it is let go: of the pucks sent before the red line, ",
              BookData.iced(own(data.releases)),
              "")
          .then(iced.rest("iced"));
    }
    Two out =
        two(
            data.exits,
            rows ->
                BookData.share(
                    BookData.rows(rows, r -> r.has("at_center")),
                    r -> r.is("at_center", "released short")));
    String pucks = "of the pucks carried or passed out, ";
    if (out.more(0.0025)) {
      return out.said("Take it to center more often: " + pucks, "sent before the red line");
    }
    Two kept =
        two(
            data.exits,
            rows ->
                BookData.share(
                    BookData.rows(rows, r -> Set.of("none", "light").contains(r.get("pressure"))),
                    r -> r.is("way_out", "kept in")));
    if (kept.more(0.0025)) {
      return kept.said(
          "Get it out while there is room: of the attempts under no or light pressure, ",
          "were failed clears");
    }
    if (flagged > 0) {
      return Want.text(
          (flagged == 1 ? "Look at one clip: " : "Gain center first: ")
              + "in "
              + flagged
              + " of "
              + SentenceFigures.count(judged, "icing")
              + " whose skaters' places and speeds are known there was likely time to gain the red line first.");
    }
    List<BookData.Row> late =
        BookData.rows(
            own(data.releases),
            r ->
                r.has("since_shorthanded_s")
                    && r.number("since_shorthanded_s") <= 10
                    && !r.is("strength", "shorthanded"));
    int lateIced = BookData.iced(late).k();
    if (lateIced > 0) {
      return Want.text(
          "Know when the penalty is over: of "
              + SentenceFigures.count(late.size(), "puck")
              + " sent before the red line within 10 s after it, "
              + lateIced
              + (lateIced == 1 ? " was" : " were")
              + " iced.");
    }
    if (out.less(0.0025)) {
      return out.said("Keep taking it to center: " + pucks, "sent before the red line");
    }
    return out.own().few() || out.rest().few()
        ? Want.text(
            "Nothing stands out; with "
                + out.own().k()
                + " of "
                + out.own().n()
                + " pucks carried or passed out sent before the red line it is too few to say more.")
        : out.said("Nothing stands out: " + pucks, "sent before the red line");
  }
}
