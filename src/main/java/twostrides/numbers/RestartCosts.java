package twostrides.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import twostrides.exits.Columns;
import twostrides.exits.Costs;
import twostrides.review.TableRows;

/**
 * The page that says what an own-zone restart costs: attempts and goals against after the draw, by
 * who won it; against matched exits without a restart; net goals drawn toward a published figure;
 * and how long tired skaters stayed on.
 */
final class RestartCosts {

  /**
   * Net goals (for less against) within 20 s of an end-zone draw at five against five, for the
   * defending team: won, lost, and all. From NP20 of Schuckers 2012 (postscript to Schuckers and
   * Curro; two NHL regular seasons; 32,422 draws won and 31,006 lost): (16412 x .00049 - 16010 x
   * .00012) / 32422, -(16241 x .01669 + 14765 x .01524) / 31006, and both together.
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
        "What a restart costs",
        "Shot attempts and goals against after a draw in the own zone, and what the same team gave up when it got out without one.",
        List.of(
            "After a draw everything counts from the draw; after an exit without a restart, from the release. Draws of games whose sheet writes no shots are left out.",
            String.format(
                Locale.ROOT,
                "For the flags, an icing counts as %s attempts against: %d in %d icings of these sheets, drawn toward %s (assumed) with the weight of %d icings, so %s %% of the number is assumed.",
                Cell.decimals(costs.icing(), 2),
                costs.attemptsAfterIcing(),
                costs.icings(),
                Cell.decimals(Costs.priorAttemptsAfterIcing(), 2),
                Math.round(Costs.PRIOR_CASES),
                Cell.percent(Costs.PRIOR_CASES / (costs.icings() + Costs.PRIOR_CASES)))),
        List.of(afterDraws(), matched(), goals(), tired()));
  }

  private List<TableRows> draws(Optional<String> whose) {
    return season.restarts.stream()
        .filter(Season.team(whose))
        .filter(r -> r.count(Columns.ATTEMPTS_AGAINST_20S).isPresent())
        .toList();
  }

  private interface Draws {
    Line line(String name, List<TableRows> draws);
  }

  /** Lines for our team, when there is one, and for all teams. */
  private List<Line> lines(Draws draws) {
    List<Line> lines = new ArrayList<>();
    List<Optional<String>> whose = new ArrayList<>();
    team.ifPresent(t -> whose.add(team));
    whose.add(Optional.empty());
    for (Optional<String> w : whose) {
      String name = w.orElse("all teams");
      List<TableRows> all = draws(w);
      lines.add(draws.line(name + ": icings", filter(all, Season::icing)));
      lines.add(draws.line(name + ": other restarts", filter(all, r -> !Season.icing(r))));
      lines.add(draws.line(name + ": draw won", filter(all, won(OWN))));
      lines.add(draws.line(name + ": draw lost", filter(all, won(OPPONENT))));
      lines.add(draws.line(name + ": all restarts", all));
    }
    return lines;
  }

  private static Predicate<TableRows> won(String who) {
    return r -> Season.is(r, Columns.WON_BY, who);
  }

  private static List<TableRows> filter(List<TableRows> rows, Predicate<TableRows> what) {
    return rows.stream().filter(what).toList();
  }

  static int total(List<TableRows> rows, String column) {
    return rows.stream().mapToInt(r -> r.count(column).orElse(0)).sum();
  }

  private Grid afterDraws() {
    return new Grid(
        "after",
        "After an own-zone restart",
        "Attempts and goals against from the draw on. A mean below ten draws is too few to say.",
        List.of(
            Head.words("Restarts", "own-zone-restart"),
            Head.number("Draws", "draws"),
            Head.number("Attempts in " + settings.shortWindow(), "attempts-against"),
            Head.number("a draw", "mean"),
            Head.number("Attempts in " + settings.longWindow(), "attempts-against"),
            Head.number("a draw", "mean"),
            Head.number("Goals in " + settings.shortWindow(), "goals-against"),
            Head.number("Goals in " + settings.longWindow(), "goals-against")),
        lines(
            (name, draws) -> {
              int shortOnes = total(draws, Columns.ATTEMPTS_AGAINST_20S);
              int longOnes = total(draws, Columns.ATTEMPTS_AGAINST_30S);
              return Line.of(
                  name,
                  String.valueOf(draws.size()),
                  String.valueOf(shortOnes),
                  Cell.mean(shortOnes, draws.size()),
                  String.valueOf(longOnes),
                  Cell.mean(longOnes, draws.size()),
                  String.valueOf(total(draws, Columns.GOALS_AGAINST_20S)),
                  String.valueOf(total(draws, Columns.GOALS_AGAINST_30S)));
            }),
        "No draw in the own zone with shots in its sheet.");
  }

  private Grid matched() {
    List<Line> lines = new ArrayList<>();
    List<Optional<String>> whose = new ArrayList<>();
    team.ifPresent(t -> whose.add(team));
    whose.add(Optional.empty());
    for (Optional<String> w : whose) {
      for (boolean icingsOnly : new boolean[] {true, false}) {
        for (String column : List.of(Columns.ATTEMPTS_AGAINST_20S, Columns.ATTEMPTS_AGAINST_30S)) {
          lines.add(matched(w, icingsOnly, column));
        }
      }
    }
    return new Grid(
        "matched",
        "Against matched exits without a restart",
        "Each restart is set against the exits of the same team that left the zone with no restart, at the same strength and the same score (ahead, level, behind). The interval draws whole games again ("
            + NumberSettings.DRAWS
            + " times); it needs ten games.",
        List.of(
            Head.words("Restarts", "matched-exits"),
            Head.number("Draws", "draws"),
            Head.number("without a match", "matched-exits"),
            Head.number("Attempts a draw", "mean"),
            Head.number("Exits", "matched-exits"),
            Head.number("Attempts an exit, matched", "matched-exits"),
            Head.number("Difference", "difference-of-means"),
            Head.number("95 % interval", "interval-by-game"),
            Head.number("Games", "interval-by-game")),
        lines,
        "No restart to compare.");
  }

  private Line matched(Optional<String> whose, boolean icingsOnly, String column) {
    Matched m =
        Matched.of(
            filter(season.restarts, Season.team(whose).and(r -> !icingsOnly || Season.icing(r))),
            filter(season.exits, Season.team(whose)),
            column,
            settings.seed());
    String window =
        column.equals(Columns.ATTEMPTS_AGAINST_20S)
            ? settings.shortWindow()
            : settings.longWindow();
    boolean few = m.tooFew();
    return Line.of(
        whose.orElse("all teams") + ": " + (icingsOnly ? "icings" : "all restarts") + ", " + window,
        String.valueOf(m.draws()),
        String.valueOf(m.unmatched()),
        m.draws() == 0 ? Cell.NONE : few ? Cell.FEW : Cell.decimals(m.afterDraw(), 2),
        String.valueOf(m.exits()),
        m.draws() == 0 ? Cell.NONE : few ? Cell.FEW : Cell.decimals(m.afterExit(), 2),
        m.draws() == 0 ? Cell.NONE : few ? Cell.FEW : Cell.signed(m.afterDraw() - m.afterExit(), 2),
        few ? "" : Cell.range(m.interval(), 2),
        String.valueOf(m.games()));
  }

  private Grid goals() {
    return new Grid(
        "goals",
        "Net goals after a restart",
        "Goals for less goals against within "
            + settings.shortWindow()
            + " of the draw. Goals are rare, so the figure is drawn toward a published one: end-zone draws at five against five of two NHL regular seasons, 63,428 draws (Schuckers 2012), taken with the weight of "
            + Cell.decimals(settings.goalPriorDraws(), 0)
            + " draws (assumed). Those are all end-zone draws, not those after icing, and men of one league.",
        List.of(
            Head.words("Restarts", "own-zone-restart"),
            Head.number("Draws", "draws"),
            Head.number("Goals for", "net-goals"),
            Head.number("Goals against", "net-goals"),
            Head.number("Net in 100 draws", "net-goals"),
            Head.number("Published", "net-goals"),
            Head.number("Drawn together", "net-goals"),
            Head.number("of it published", "prior-share")),
        lines(this::netGoals),
        "No draw in the own zone with shots in its sheet.");
  }

  private Line netGoals(String name, List<TableRows> draws) {
    double published =
        name.endsWith("draw won") ? NET_WON : name.endsWith("draw lost") ? NET_LOST : NET_ALL;
    int made = total(draws, Columns.GOALS_FOR_20S);
    int against = total(draws, Columns.GOALS_AGAINST_20S);
    int n = draws.size();
    double weight = settings.goalPriorDraws();
    boolean nothing = n + weight == 0;
    return Line.of(
        name,
        String.valueOf(n),
        String.valueOf(made),
        String.valueOf(against),
        n == 0 ? Cell.NONE : n < 10 ? Cell.FEW : Cell.signed(100.0 * (made - against) / n, 1),
        Cell.signed(100 * published, 1),
        nothing
            ? Cell.NONE
            : Cell.signed(100 * (made - against + weight * published) / (n + weight), 1),
        nothing ? Cell.NONE : Cell.percent(weight / (n + weight)) + " %");
  }

  private Grid tired() {
    List<Line> lines =
        lines(
                (name, draws) -> {
                  List<TableRows> listed =
                      filter(draws, r -> r.number(Columns.SHIFT_S).isPresent());
                  return Line.of(
                      name,
                      String.valueOf(listed.size()),
                      meanSeconds(listed, Columns.SHIFT_S),
                      meanSeconds(listed, Columns.STAY_S));
                })
            .stream()
            .filter(l -> !l.cells().get(1).equals("0"))
            .toList();
    return new Grid(
        "tired",
        "Tired skaters",
        "How long the team's skaters had been on the ice when the puck was dropped, and how long they stayed on: means over the draws whose row lists the skaters. Seconds of play, within the period.",
        List.of(
            Head.words("Restarts", "own-zone-restart"),
            Head.number("Draws with skaters", "tired-skaters"),
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
