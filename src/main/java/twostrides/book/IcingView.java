package twostrides.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.book.chart.Dot;
import twostrides.book.chart.DotLines;
import twostrides.book.chart.HalfRink;
import twostrides.book.chart.Link;
import twostrides.book.chart.MarkKind;
import twostrides.book.chart.Picture;
import twostrides.book.chart.Reference;
import twostrides.book.chart.Span;
import twostrides.book.chart.Tone;
import twostrides.book.chart.ValueBars;
import twostrides.book.chart.ZoneCell;
import twostrides.exits.Release;
import twostrides.findings.LastGame;
import twostrides.findings.Matched;
import twostrides.findings.PlayerReview;
import twostrides.findings.Profile;
import twostrides.findings.SeasonReview;
import twostrides.findings.ShownWay;
import twostrides.rink.Rink;
import twostrides.season.Assessed;
import twostrides.season.Flag;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Range;

/** The pictures of where icings come from, which way out leads to them, and what they cost. */
final class IcingView {

  private final SeasonReview review;
  private final Rink rink;

  /** Pucks that the book may call icing, and of which it is known what followed. */
  private final List<Release> sent;

  Rink rink() {
    return rink;
  }

  IcingView(SeasonReview review, Rink rink) {
    this.review = review;
    this.rink = rink;
    this.sent =
        review.season().releaseRecords().stream()
            .map(Assessed::release)
            .filter(r -> r.rulings().mayBeIcing() && r.outcome().restarted().isPresent())
            .toList();
  }

  /**
   * Where a team's icings start; only pucks that the book may call icing.
   *
   * @param title what is shown
   * @param team the team; empty for all
   * @param opponent against whom; empty for all
   * @param up from the page to the book's folder
   */
  Picture zones(
      String id, String title, Optional<String> team, Optional<String> opponent, String up) {
    List<Release> releases =
        sent.stream()
            .filter(r -> team.isEmpty() || team.get().equals(r.at().team()))
            .filter(r -> opponent.isEmpty() || opponent.equals(r.at().opponent()))
            .toList();
    Map<ZoneCell, Count> zones = new LinkedHashMap<>();
    for (Release r : releases) {
      zones.merge(
          ZoneCell.of(r.at().where().place().orElseThrow(), rink),
          new Count(r.iced() ? 1 : 0, 1),
          Count::plus);
    }
    return new HalfRink(
            title,
            rink,
            "Of the pucks sent from a zone before the red line: how many were iced. Pucks that the"
                + " rule book exempts are left out.",
            zones.entrySet().stream()
                .map(
                    e ->
                        new HalfRink.Zone(
                            e.getKey(),
                            e.getValue(),
                            Optional.of(up + icings(team, opponent, e.getKey()))))
                .toList(),
            releases.stream()
                .filter(Release::iced)
                .map(r -> mark(r, review.season().flag(r)))
                .toList())
        .picture(id);
  }

  private static String icings(Optional<String> team, Optional<String> opponent, ZoneCell zone) {
    List<String> picks = new ArrayList<>();
    opponent.ifPresent(o -> picks.addAll(List.of("opponent", o)));
    picks.addAll(List.of("from", zone.depth().words(), "side", zone.lane().word()));
    picks.addAll(List.of("cause", Links.ICINGS));
    return Links.restarts(team, picks.toArray(String[]::new));
  }

  private static HalfRink.Mark mark(Release r, Optional<Flag> flag) {
    MarkKind kind =
        flag.filter(Flag::flagged).isPresent()
            ? MarkKind.FLAGGED
            : flag.filter(Flag::toLookAt)
                    .filter(f -> f.assessment().gain().chance().isPresent())
                    .isPresent()
                ? MarkKind.LOOK_FIRST
                : MarkKind.ICED;
    String words =
        Show.clock(r.at().when())
            + ", "
            + Format.word(r.at().player())
            + ": iced, "
            + Format.metresAndFeet(r.shortOfCenter())
            + " before the red line";
    return new HalfRink.Mark(
        r.at().where().place().orElseThrow(), kind, Watch.at(r.at().when(), words));
  }

  /**
   * Which way out is safe: the share iced of each, and how often it is used.
   *
   * @param profiles of one team, or of all; games of different teams are apart
   * @param team the team; empty for all
   * @param up from the page to the book's folder
   */
  static Picture ways(String id, List<Profile> profiles, Optional<String> team, String up) {
    List<DotLines.Row> rows = new ArrayList<>();
    for (ShownWay way : ShownWay.values()) {
      Clustered games =
          new Clustered(
              profiles.stream().flatMap(p -> p.total(way).byGame().clusters().stream()).toList());
      if (games.total().trials() > 0) {
        boolean trouble = games.total().successes() > 0 && !games.total().tooFew();
        rows.add(
            new DotLines.Row(
                way.label(),
                List.of(Dot.of(games, trouble ? Tone.TROUBLE : Tone.GOOD)),
                "",
                Link.to(
                    up + Links.restarts(team, "way-out", way.label(), "cause", Links.ICINGS),
                    way.label() + ", iced")));
      }
    }
    return new DotLines(
            "Which way out is safe: how often it was iced",
            List.of(new DotLines.Group("", rows)),
            Optional.empty(),
            List.of(),
            true)
        .picture(id);
  }

  /** Who is iced: players with ten pucks or more sent before the red line, by adjusted rate. */
  Picture who(String id, Optional<String> team) {
    record Known(PlayerReview player, AdjustedRate rate) {}
    List<Known> known =
        review.players().stream()
            .filter(p -> team.isEmpty() || team.get().equals(p.team()))
            .filter(p -> !p.profile().releases().tooFew())
            .flatMap(p -> p.iced().stream().map(r -> new Known(p, r)))
            .sorted(Comparator.comparingDouble(k -> -k.rate().share()))
            .toList();
    List<DotLines.Row> rows =
        known.stream()
            .map(
                k ->
                    new DotLines.Row(
                        k.player().player() + (team.isPresent() ? "" : ", " + k.player().team()),
                        List.of(
                            Dot.of(k.rate(), k.player().profile().releases().wilson(), Tone.PLAIN)),
                        "",
                        new Link(
                            Links.page(review, k.player()),
                            k.player().player() + ": iced, of the pucks sent before the red line")))
            .toList();
    Count all =
        review.teams().stream()
            .filter(t -> team.isEmpty() || team.get().equals(t.team()))
            .map(t -> t.profile().releases())
            .reduce(new Count(0, 0), Count::plus);
    return DotLines.of(
            "Who is iced, of the pucks each sent before the red line",
            rows,
            Reference.of("team", all))
        .picture(id);
  }

  /** What an icing costs: attempts against after it, and after a matched exit without one. */
  static Picture cost(String id, Matched m, double window) {
    return new ValueBars(
            "Shot attempts against in " + Math.round(window) + " s",
            List.of(
                bar("after an icing", m.afterFaceOff(), m.faceOffs(), "icing", Tone.TROUBLE, m),
                bar(
                    "after a matched exit without a face-off",
                    m.afterExit(),
                    m.exits(),
                    "exit",
                    Tone.PLAIN,
                    m)))
        .picture(id);
  }

  private static ValueBars.Bar bar(
      String label, Matched.Mean mean, int cases, String noun, Tone tone, Matched m) {
    Optional<Span> could = m.tooFew() ? Optional.empty() : mean.interval().map(IcingView::span);
    return new ValueBars.Bar(
        label,
        cases == 0 ? 0 : mean.value(),
        could,
        Format.count(cases, noun),
        tone,
        Link.to("costs.html", label));
  }

  private static Span span(Range r) {
    return new Span(Math.max(0, r.low()), Math.max(0, r.high()));
  }

  /** Lines of a team against itself in its last game: so many now, so many before. */
  static Picture lastGame(String id, LastGame last, Optional<String> team) {
    String icings = Links.restarts(team, "game", last.game(), "cause", Links.ICINGS);
    String failed =
        "kill.html#f0-game=" + Links.encoded(last.game()) + "&f0-cleared=failed%20clear";
    return new DotLines(
            "The last game against the games before",
            List.of(
                new DotLines.Group(
                    "",
                    List.of(
                        lastGame(last.icings(), Link.to(icings, last.icings().label())),
                        lastGame(last.sentShort(), Link.words(last.sentShort().label())),
                        lastGame(
                            last.failedClears(), Link.to(failed, last.failedClears().label()))))),
            Optional.empty(),
            List.of("last game", "games before"),
            false)
        .picture(id);
  }

  private static DotLines.Row lastGame(LastGame.Compared c, Link link) {
    return new DotLines.Row(
        c.label(),
        List.of(Dot.of(c.last(), Tone.TROUBLE), Dot.of(c.before(), Tone.PLAIN)),
        "",
        link);
  }
}
