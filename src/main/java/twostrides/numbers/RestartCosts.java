package twostrides.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import twostrides.exits.Columns;
import twostrides.exits.Costs;
import twostrides.review.FaceOffAfter;
import twostrides.review.TableRows;

/**
 * The page that says what an icing costs, with the other defensive-zone face-offs beside it:
 * attempts and goals against after the face-off, by cause and by who won it; against matched exits
 * without a face-off; net goals adjusted toward a published figure; and how long tired skaters
 * stayed on.
 */
final class RestartCosts {

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

  private final Season season;
  private final Optional<String> team;
  private final Costs costs;
  private final NumberSettings settings;

  RestartCosts(Season season, Optional<String> team, Costs costs, NumberSettings settings) {
    this.season = season;
    this.team = team;
    this.costs = costs;
    this.settings = settings;
  }

  NumberPage page() {
    return new NumberPage(
        "costs.html",
        "What an icing costs",
        "Shot attempts and goals against after an icing, beside other face-offs in the defensive zone, and what the same team gave up when it got out without one.",
        List.of(
            "After a face-off everything counts from the face-off; after an exit without one, from the release. Face-offs of games whose sheet writes no shots are left out.",
            String.format(
                Locale.ROOT,
                "For the flags, a restart counts as %s attempts against: %d in %d draws of these sheets, drawn toward %s (assumed) with the weight of %d draws, so %s %% of the number is assumed.",
                Cell.decimals(costs.restart(), 2),
                costs.attemptsAfterRestart(),
                costs.restarts(),
                Cell.decimals(Costs.priorAttemptsAfterRestart(), 2),
                Math.round(Costs.PRIOR_CASES),
                Cell.percent(Costs.PRIOR_CASES / (costs.restarts() + Costs.PRIOR_CASES)))),
        List.of(afterFaceOffs(), matched(), goals(), tired()));
  }

  private List<TableRows> faceOffs(Optional<String> whose) {
    return season.restarts.stream()
        .filter(Season.team(whose))
        .filter(r -> r.count(Columns.ATTEMPTS_AGAINST_20S).isPresent())
        .toList();
  }

  /** Face-offs of one cause, or of one cause and one winner. */
  private record Group(String name, Optional<String> won, List<TableRows> faceOffs) {
    static Group of(String name, List<TableRows> all, FaceOffAfter cause) {
      return new Group(
          name,
          Optional.empty(),
          all.stream().filter(r -> FaceOffAfter.cause(r) == cause).toList());
    }

    Group wonBy(String who, String words) {
      return new Group(
          name + ", face-off " + words,
          Optional.of(who),
          faceOffs.stream().filter(r -> Season.is(r, Columns.WON_BY, who)).toList());
    }

    /** The published net goals of one end-zone face-off. */
    double published() {
      return won.isEmpty() ? NET_ALL : won.get().equals(OWN) ? NET_WON : NET_LOST;
    }
  }

  /** Our team, when there is one, and all teams. */
  private List<Optional<String>> whose() {
    return team.isPresent() ? List.of(team, Optional.empty()) : List.of(Optional.empty());
  }

  /** Face-offs by cause, icings first and also by who won them; of our team, and of all. */
  private Stream<Group> groups() {
    return whose().stream()
        .flatMap(
            w -> {
              String name = w.orElse("all teams");
              List<TableRows> all = faceOffs(w);
              Group iced = Group.of(name + ": icings", all, FaceOffAfter.ICING);
              return Stream.of(
                  iced,
                  iced.wonBy(OWN, "won"),
                  iced.wonBy(OPPONENT, "lost"),
                  Group.of(name + ": after a penalty", all, FaceOffAfter.PENALTY),
                  Group.of(name + ": other reasons", all, FaceOffAfter.OTHER));
            });
  }

  static int total(List<TableRows> rows, String column) {
    return rows.stream().mapToInt(r -> r.count(column).orElse(0)).sum();
  }

  private Grid afterFaceOffs() {
    return new Grid(
        "after",
        "After a defensive-zone face-off",
        "Attempts and goals against from the face-off on, by what brought it there. A mean below ten face-offs is too few to say.",
        List.of(
            Head.words("Face-offs", "cause"),
            Head.number("Number", "face-offs-counted"),
            Head.number("Attempts in " + settings.shortWindow(), "attempts-against"),
            Head.number("each", "mean"),
            Head.number("Attempts in " + settings.longWindow(), "attempts-against"),
            Head.number("each", "mean"),
            Head.number("Goals in " + settings.shortWindow(), "goals-against"),
            Head.number("Goals in " + settings.longWindow(), "goals-against")),
        groups()
            .map(
                g -> {
                  List<TableRows> rows = g.faceOffs();
                  int shortOnes = total(rows, Columns.ATTEMPTS_AGAINST_20S);
                  int longOnes = total(rows, Columns.ATTEMPTS_AGAINST_30S);
                  return Line.of(
                      g.name(),
                      String.valueOf(rows.size()),
                      String.valueOf(shortOnes),
                      Cell.mean(shortOnes, rows.size()),
                      String.valueOf(longOnes),
                      Cell.mean(longOnes, rows.size()),
                      String.valueOf(total(rows, Columns.GOALS_AGAINST_20S)),
                      String.valueOf(total(rows, Columns.GOALS_AGAINST_30S)));
                })
            .toList(),
        "No face-off in the defensive zone with shots in its sheet.");
  }

  private Grid matched() {
    List<Line> lines = new ArrayList<>();
    for (Optional<String> w : whose()) {
      for (FaceOffAfter cause :
          List.of(FaceOffAfter.ICING, FaceOffAfter.PENALTY, FaceOffAfter.OTHER)) {
        for (String column : List.of(Columns.ATTEMPTS_AGAINST_20S, Columns.ATTEMPTS_AGAINST_30S)) {
          lines.add(matched(w, cause, column));
        }
      }
    }
    return new Grid(
        "matched",
        "Against matched exits without a face-off",
        "Each face-off is set against the exits of the same team that left the zone with no defensive-zone face-off after them, at the same score (ahead, level, behind) and at the strength of the face-off: after a penalty the team is shorthanded by then. The interval resamples whole games ("
            + NumberSettings.DRAWS
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

  private Line matched(Optional<String> whose, FaceOffAfter cause, String column) {
    Matched m =
        Matched.of(
            season.restarts.stream()
                .filter(Season.team(whose).and(r -> FaceOffAfter.cause(r) == cause))
                .toList(),
            season.exits.stream().filter(Season.team(whose)).toList(),
            column,
            settings.seed());
    String window =
        column.equals(Columns.ATTEMPTS_AGAINST_20S)
            ? settings.shortWindow()
            : settings.longWindow();
    String name =
        switch (cause) {
          case ICING -> "icings";
          case PENALTY -> "after a penalty";
          case OTHER, NONE -> "other reasons";
        };
    boolean few = m.tooFew();
    return Line.of(
        whose.orElse("all teams") + ": " + name + ", " + window,
        String.valueOf(m.faceOffs()),
        String.valueOf(m.unmatched()),
        m.faceOffs() == 0 ? Cell.NONE : few ? Cell.FEW : Cell.decimals(m.afterFaceOff(), 2),
        String.valueOf(m.exits()),
        m.faceOffs() == 0 ? Cell.NONE : few ? Cell.FEW : Cell.decimals(m.afterExit(), 2),
        m.faceOffs() == 0
            ? Cell.NONE
            : few ? Cell.FEW : Cell.signed(m.afterFaceOff() - m.afterExit(), 2),
        few ? "" : Cell.range(m.interval(), 2),
        String.valueOf(m.games()));
  }

  private Grid goals() {
    return new Grid(
        "goals",
        "Net goals after the face-off",
        "Goals for less goals against within "
            + settings.shortWindow()
            + " of the face-off. Goals are rare, so the figure is adjusted toward a published one: end-zone face-offs at five against five of two NHL regular seasons, 63,428 in all (Schuckers 2012), taken with the weight of "
            + Cell.decimals(settings.goalPriorDraws(), 0)
            + " face-offs (assumed). Those are all end-zone face-offs, not those after icing, and men of one league.",
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
        "No face-off in the defensive zone with shots in its sheet.");
  }

  private Line netGoals(Group g) {
    int made = total(g.faceOffs(), Columns.GOALS_FOR_20S);
    int against = total(g.faceOffs(), Columns.GOALS_AGAINST_20S);
    int n = g.faceOffs().size();
    double weight = settings.goalPriorDraws();
    boolean nothing = n + weight == 0;
    return Line.of(
        g.name(),
        String.valueOf(n),
        String.valueOf(made),
        String.valueOf(against),
        n == 0 ? Cell.NONE : n < 10 ? Cell.FEW : Cell.signed(100.0 * (made - against) / n, 1),
        Cell.signed(100 * g.published(), 1),
        nothing
            ? Cell.NONE
            : Cell.signed(100 * (made - against + weight * g.published()) / (n + weight), 1),
        nothing ? Cell.NONE : Cell.percent(weight / (n + weight)) + " %");
  }

  private Grid tired() {
    List<Line> lines =
        groups()
            .map(
                g -> {
                  List<TableRows> listed =
                      g.faceOffs().stream()
                          .filter(r -> r.number(Columns.SHIFT_S).isPresent())
                          .toList();
                  return Line.of(
                      g.name(),
                      String.valueOf(listed.size()),
                      meanSeconds(listed, Columns.SHIFT_S),
                      meanSeconds(listed, Columns.STAY_S));
                })
            .filter(l -> !l.cells().get(1).equals("0"))
            .toList();
    return new Grid(
        "tired",
        "Tired skaters",
        "How long the team's skaters had been on the ice when the puck was dropped, and how long they stayed on: means over the face-offs whose row lists the skaters. Seconds of play, within the period.",
        List.of(
            Head.words("Face-offs", "cause"),
            Head.number("With skaters listed", "tired-skaters"),
            Head.number("On the ice before", "tired-skaters"),
            Head.number("Stayed on after", "tired-skaters")),
        lines,
        "These sheets do not list who is on the ice (columns on_ice and opponent_on_ice).");
  }

  private static String meanSeconds(List<TableRows> rows, String column) {
    if (rows.size() < 10) {
      return rows.isEmpty() ? Cell.NONE : Cell.FEW;
    }
    double mean =
        rows.stream().mapToDouble(r -> r.number(column).orElseThrow()).sum() / rows.size();
    return Cell.decimals(mean, 1) + " s";
  }

  /** Ahead, level or behind; empty where the sheet does not say. */
  static Optional<String> score(TableRows r) {
    OptionalInt ahead = r.count(Columns.GOALS_AHEAD);
    if (ahead.isEmpty()) {
      return Optional.empty();
    }
    int a = ahead.getAsInt();
    return Optional.of(a > 0 ? "ahead" : a < 0 ? "behind" : "level");
  }
}
