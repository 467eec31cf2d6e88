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

    /** Points of a hundred, lower and upper end; empty where there are too few. */
    Optional<double[]> points() {
      if (own.few() || rest.few()) {
        return Optional.empty();
      }
      List<Want.Num> n = Formulas.difference(own, rest).numbers();
      return Optional.of(new double[] {n.get(0).value(), n.get(1).value(), n.get(2).value()});
    }

    boolean more() {
      return points().isPresent() && points().get()[1] >= 0.5;
    }

    boolean less() {
      return points().isPresent() && points().get()[2] <= -0.5;
    }

    Want said(String begin, String cases, String were, String end) {
      double[] p = points().orElseThrow();
      return Want.like(
          begin
              + own.k()
              + " of "
              + own.n()
              + cases
              + " ("
              + own.percent()
              + " %) were "
              + were
              + "; in the rest of the team "
              + rest.k()
              + " of "
              + rest.n()
              + " ("
              + rest.percent()
              + " %): a difference of # points (95 % interval # to #)"
              + end
              + ".",
          Want.signed(p[0], 0, 0),
          Want.signed(p[1], 0, 0),
          Want.signed(p[2], 0, 0));
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
    int releases = own(data.releases).size();
    List<BookData.Row> followed = own(data.flags);
    int flagged = BookData.rows(followed, f -> f.is("flagged", "true")).size();
    if (attempts < 10) {
      return Want.text(
          "Too few to say: "
              + Sentences.count(attempts, "exit attempt")
              + " in these sheets. Watch "
              + (flagged > 0
                  ? Sentences.count(flagged, "flagged release") + " instead: was center open?"
                  : clips > 0
                      ? Sentences.count(clips, "clip") + " instead, below."
                      : "the next games instead."));
    }
    String restarts =
        "an own-zone restart followed "
            + followed.size()
            + " of "
            + Sentences.count(releases, "release")
            + " short of center, and "
            + (followed.size() == 1 ? "" : "in " + flagged + " of those " + followed.size() + " ")
            + "there was likely time to gain the red line first.";
    if (flagged >= 2) {
      return Want.text("Gain center first: " + restarts);
    }
    Two out =
        two(
            data.exits,
            rows ->
                BookData.share(
                    BookData.rows(rows, r -> r.has("at_center")),
                    r -> r.is("at_center", "released short")));
    String pucks = " pucks carried or passed out";
    if (out.more()) {
      return out.said("Take it to center more often: ", pucks, "released short of center", "");
    }
    Two iced = two(data.releases, BookData::iced);
    if (iced.more()) {
      return iced.said("Look at how it is let go: ", " releases short of center", "iced", "");
    }
    Two kept =
        two(
            data.exits,
            rows ->
                BookData.share(
                    BookData.rows(rows, r -> Set.of("none", "light").contains(r.get("pressure"))),
                    r -> r.is("way_out", "kept in")));
    if (kept.more()) {
      return kept.said(
          "Get it out while there is room: ",
          " attempts under no or light pressure",
          "kept in",
          "");
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
              + Sentences.count(late.size(), "release")
              + " short of center within 10 s after it, "
              + lateIced
              + (lateIced == 1 ? " was" : " were")
              + " iced.");
    }
    if (flagged == 1) {
      return Want.text("Look at one clip: " + restarts);
    }
    if (out.less()) {
      return out.said("Keep taking it to center: ", pucks, "released short of center", "");
    }
    return out.points().isEmpty()
        ? Want.text(
            "Nothing stands out; with "
                + out.own().k()
                + " of "
                + out.own().n()
                + pucks
                + " released short of center it is too few to say more.")
        : out.said(
            "Nothing stands out: ",
            pucks,
            "released short of center",
            ", not to be told from chance yet");
  }
}
