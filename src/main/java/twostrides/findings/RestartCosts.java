package twostrides.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tech.tablesaw.api.DoubleColumn;
import twostrides.season.Columns;
import twostrides.season.Costs;
import twostrides.season.Rows;
import twostrides.season.Season;
import twostrides.stats.Count;

/**
 * The page that says what an icing costs, with the other defensive-zone face-offs beside it:
 * attempts and goals against after the face-off, by cause and by who won it; against matched exits
 * without a face-off; net goals adjusted toward a published figure; and how long tired skaters
 * stayed on.
 */
public final class RestartCosts {

  /**
   * Net goals (for less against) within 20 s of an end-zone face-off at five against five, for the
   * defending team: won, lost, and all. From NP20 of Schuckers 2012 (postscript to Schuckers and
   * Curro; two NHL regular seasons; 32,422 won and 31,006 lost): (16412 x .00049 - 16010 x .00012)
   * / 32422, -(16241 x .01669 + 14765 x .01524) / 31006, and both together.
   */
  static final double NET_WON = (16412 * .00049 - 16010 * .00012) / 32422;

  static final double NET_LOST = -(16241 * .01669 + 14765 * .01524) / 31006;
  static final double NET_ALL = (32422 * NET_WON + 31006 * NET_LOST) / 63428;

  private static final String OWN = "own";
  private static final String OPPONENT = "opponent";
  private static final String NO_SHOTS =
      "No face-off in the defensive zone with shots in its sheet.";

  private final Season season;
  private final Optional<String> team;
  private final Costs costs;
  private final NumberSettings settings;
  private final Rows restarts;

  /**
   * The costs of a season.
   *
   * @param season the season
   * @param team the team the book is about; empty for all teams
   * @param settings what the run chose
   */
  public RestartCosts(Season season, Optional<String> team, NumberSettings settings) {
    this.season = season;
    this.team = team;
    this.costs = season.costs();
    this.settings = settings;
    this.restarts = season.restartRows().isTrue(Columns.OWN_LAST);
  }

  NumberPage page() {
    return new NumberPage(
        "costs.html",
        "What an icing costs",
        "Shot attempts and goals against after an icing, beside other face-offs in the defensive"
            + " zone, and what the same team gave up when it got out without one.",
        List.of(
            "After a face-off everything counts from the face-off; after an exit without one, from"
                + " the release. Face-offs of games whose sheet writes no shots are left out.",
            String.format(
                Locale.ROOT,
                "For the flags, an icing counts as %.2f attempts against: %d in %d icings of these"
                    + " sheets, adjusted toward %.2f (assumed) with the weight of %.0f icings, so"
                    + " %.0f %% of the number is assumed.",
                costs.icing(),
                costs.attemptsAfterIcing(),
                costs.icings(),
                Costs.priorAttemptsAfterIcing(),
                Costs.PRIOR_CASES,
                100 * Costs.PRIOR_CASES / (costs.icings() + Costs.PRIOR_CASES))),
        List.of(afterFaceOffs(), matched(), goals(), tired()));
  }

  /** Face-offs of one kind; who won them, where the group is one of those. */
  private record Group(String name, Optional<String> won, Rows faceOffs) {

    Group wonBy(String who, String words) {
      return new Group(
          name + ", face-off " + words, Optional.of(who), faceOffs.where(Columns.WON_BY, who));
    }

    double published() {
      return won.isEmpty() ? NET_ALL : won.get().equals(OWN) ? NET_WON : NET_LOST;
    }
  }

  private List<Optional<String>> whose() {
    return team.isPresent() ? List.of(team, Optional.empty()) : List.of(Optional.empty());
  }

  private Rows faceOffs(Optional<String> whose, FaceOffAfter cause) {
    Rows all = Shares.team(restarts, whose);
    return switch (cause) {
      case ICING -> all.iced();
      case PENALTY -> all.where(Columns.RESTART_CAUSE, "penalty");
      case OTHER, NONE -> all.where(Columns.RESTART_CAUSE, "other", "unknown");
    };
  }

  private Stream<Group> groups() {
    return whose().stream()
        .flatMap(
            w -> {
              String name = w.orElse("all teams") + ": ";
              Group iced = group(name, w, FaceOffAfter.ICING);
              return Stream.of(
                  iced,
                  iced.wonBy(OWN, "won"),
                  iced.wonBy(OPPONENT, "lost"),
                  group(name, w, FaceOffAfter.PENALTY),
                  group(name, w, FaceOffAfter.OTHER));
            });
  }

  private Group group(String name, Optional<String> whose, FaceOffAfter cause) {
    return new Group(
        name + cause.words(),
        Optional.empty(),
        faceOffs(whose, cause).known(season.columns().attempts()));
  }

  private Grid afterFaceOffs() {
    return new Grid(
        "after",
        "After a defensive-zone face-off",
        "Attempts and goals against from the face-off on, by what brought it there. A mean below"
            + " ten face-offs is too few to say.",
        List.of(
            Head.words("Face-offs", "cause"),
            Head.number("Number", "face-offs-counted"),
            Head.number("Attempts in " + settings.shortWindow(), "attempts-against"),
            Head.number("each", "mean"),
            Head.number("Attempts in " + settings.longWindow(), "attempts-against"),
            Head.number("each", "mean"),
            Head.number("Goals in " + settings.shortWindow(), "goals-against"),
            Head.number("Goals in " + settings.longWindow(), "goals-against")),
        groups().map(this::afterFaceOffs).toList(),
        NO_SHOTS);
  }

  private Line afterFaceOffs(Group g) {
    Rows rows = g.faceOffs();
    int attempts = rows.sum(season.columns().attempts());
    int longer = rows.sum(season.columns().attemptsLong());
    return Line.of(
        g.name(),
        new Value.Whole(rows.n()),
        new Value.Whole(attempts),
        new Value.Mean(attempts, rows.n(), 2, ""),
        new Value.Whole(longer),
        new Value.Mean(longer, rows.n(), 2, ""),
        new Value.Whole(rows.sum(season.columns().goals())),
        new Value.Whole(rows.sum(season.columns().goalsLong())));
  }

  private Grid matched() {
    List<Line> lines = new ArrayList<>();
    for (Optional<String> w : whose()) {
      for (FaceOffAfter cause :
          List.of(FaceOffAfter.ICING, FaceOffAfter.PENALTY, FaceOffAfter.OTHER)) {
        String name = w.orElse("all teams") + ": " + cause.words() + ", ";
        lines.add(
            line(name + settings.shortWindow(), matched(w, cause, season.columns().attempts())));
        lines.add(
            line(name + settings.longWindow(), matched(w, cause, season.columns().attemptsLong())));
      }
    }
    return new Grid(
        "matched",
        "Against matched exits without a face-off",
        "Each face-off is set against the exits of the same team that left the zone with no"
            + " defensive-zone face-off after them, at the same score (leading, tied, trailing) and at"
            + " the strength of the face-off: after a penalty the team is shorthanded by then. The"
            + " interval resamples whole games ("
            + String.format(Locale.ROOT, "%,d", NumberSettings.RESAMPLES)
            + " times); it needs ten games.",
        List.of(
            Head.words("Face-offs", "matched-exits"),
            Head.number("Number", "face-offs-counted"),
            Head.number("without a match", "matched-exits"),
            Head.number("Attempts each", "mean"),
            Head.number("Exits", "matched-exits"),
            Head.number("Attempts an exit, matched", "matched-exits"),
            Head.number("Difference", "difference-of-means"),
            Head.number("95 % interval", "interval-by-game"),
            Head.number("Games", "interval-by-game")),
        lines,
        "No face-off to compare.");
  }

  /**
   * Face-offs against matched exits.
   *
   * @param whose of whom; empty for all teams
   * @param cause what brought the face-offs there
   * @param column attempts within which window
   */
  public Matched matched(Optional<String> whose, FaceOffAfter cause, String column) {
    return Matched.of(
        faceOffs(whose, cause), Shares.team(season.exitRows(), whose), column, settings.seed());
  }

  private static Line line(String name, Matched m) {
    int cases = m.faceOffs() == 0 ? 0 : Math.min(m.faceOffs(), m.exits());
    return Line.of(
        name,
        new Value.Whole(m.faceOffs()),
        new Value.Whole(m.unmatched()),
        new Value.Mean(m.afterFaceOff().value() * cases, cases, 2, ""),
        new Value.Whole(m.exits()),
        new Value.Mean(m.afterExit().value() * cases, cases, 2, ""),
        new Value.Signed(
            OptionalDouble.of(m.afterFaceOff().value() - m.afterExit().value()), 2, cases),
        m.tooFew() ? new Value.Words("") : new Value.SignedRange(m.interval(), 2),
        new Value.Whole(m.games()));
  }

  private Grid goals() {
    return new Grid(
        "goals",
        "Net goals after the face-off",
        "Goals for less goals against within "
            + settings.shortWindow()
            + " of the face-off. Goals are rare, so the figure is adjusted toward a published one:"
            + " end-zone face-offs at five against five of two NHL regular seasons, 63,428 in all"
            + " (Schuckers 2012), taken with the weight of "
            + Math.round(settings.goalPriorWeight())
            + " face-offs (assumed). Those are all end-zone face-offs, not those after icing, and"
            + " men of one league.",
        List.of(
            Head.words("Face-offs", "cause"),
            Head.number("Number", "face-offs-counted"),
            Head.number("Goals for", "net-goals"),
            Head.number("Goals against", "net-goals"),
            Head.number("Net in 100", "net-goals"),
            Head.number("Published", "net-goals"),
            Head.number("Adjusted", "net-goals"),
            Head.number("of it published", "prior-share")),
        groups().map(this::netGoals).toList(),
        NO_SHOTS);
  }

  private Line netGoals(Group g) {
    int made = g.faceOffs().sum(season.columns().goalsFor());
    int against = g.faceOffs().sum(season.columns().goals());
    int n = g.faceOffs().n();
    double weight = settings.goalPriorWeight();
    OptionalDouble adjusted =
        n + weight == 0
            ? OptionalDouble.empty()
            : OptionalDouble.of(100 * (made - against + weight * g.published()) / (n + weight));
    return Line.of(
        g.name(),
        new Value.Whole(n),
        new Value.Whole(made),
        new Value.Whole(against),
        new Value.Signed(
            n == 0 ? OptionalDouble.empty() : OptionalDouble.of(100.0 * (made - against) / n),
            1,
            n),
        new Value.Signed(OptionalDouble.of(100 * g.published()), 1, Count.FEWEST_TO_SAY),
        new Value.Signed(adjusted, 1, Count.FEWEST_TO_SAY),
        new Value.Percent(
            n + weight == 0 ? OptionalDouble.empty() : OptionalDouble.of(weight / (n + weight))));
  }

  private Grid tired() {
    List<Line> lines = new ArrayList<>();
    groups()
        .forEach(
            g -> {
              Rows listed = g.faceOffs().known(Columns.SHIFT_S);
              if (!listed.isEmpty()) {
                lines.add(
                    Line.of(
                        g.name(),
                        new Value.Whole(listed.n()),
                        meanSeconds(listed, Columns.SHIFT_S),
                        meanSeconds(listed, Columns.STAY_S)));
              }
            });
    return new Grid(
        "tired",
        "Tired skaters",
        "How long the team's skaters had been on the ice when the puck was dropped, and how long"
            + " they stayed on: means over the face-offs whose row lists the skaters. Seconds of"
            + " play, within the period.",
        List.of(
            Head.words("Face-offs", "cause"),
            Head.number("With skaters listed", "tired-skaters"),
            Head.number("On the ice before", "tired-skaters"),
            Head.number("Stayed on after", "tired-skaters")),
        lines,
        "These sheets do not list who is on the ice (columns on_ice and opponent_on_ice).");
  }

  private static Value meanSeconds(Rows rows, String column) {
    return new Value.Mean(((DoubleColumn) rows.column(column)).sum(), rows.n(), 1, " s");
  }
}
