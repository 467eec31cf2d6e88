package twostrides.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The page that says what an icing costs. The interval by game is resampled 2,000 times with the
 * run's seed, so it is not made again here: the difference has to lie inside it, and below ten
 * games there has to be none.
 */
final class CostFigures {

  /**
   * Net goals in a hundred face-offs won, lost and in all, as docs/numbers.md has them: two
   * decimals.
   */
  private static final Map<String, Double> PUBLISHED =
      Map.of("icings, face-off won", 0.02, "icings, face-off lost", -1.60, "", -0.77);

  private static final double PUBLISHED_STEP = 0.01;

  /** Causes by their words, in the order of the page. */
  private static final Map<String, Predicate<BookData.Row>> CAUSES = causes();

  private CostFigures() {}

  private static Map<String, Predicate<BookData.Row>> causes() {
    Map<String, Predicate<BookData.Row>> causes = new LinkedHashMap<>();
    causes.put("icings", BookData.Row::icing);
    causes.put("after a penalty", r -> r.is("restart_cause", "penalty"));
    causes.put("other reasons", r -> !r.icing() && !r.is("restart_cause", "penalty"));
    return causes;
  }

  /** Draws of games whose sheet writes shots, by the name of their line. */
  private static Map<String, List<BookData.Row>> draws(BookData d) {
    Map<String, List<BookData.Row>> lines = new LinkedHashMap<>();
    for (Optional<String> whose : whose(d)) {
      List<BookData.Row> all =
          BookData.rows(
              d.restarts, r -> BookData.team(whose).test(r) && r.has("attempts_against_20s"));
      String name = whose.orElse("all teams") + ": ";
      List<BookData.Row> iced = BookData.rows(all, BookData.Row::icing);
      lines.put(name + "icings", iced);
      lines.put(name + "icings, face-off won", BookData.rows(iced, r -> r.is("won_by", "own")));
      lines.put(
          name + "icings, face-off lost", BookData.rows(iced, r -> r.is("won_by", "opponent")));
      lines.put(name + "after a penalty", BookData.rows(all, CAUSES.get("after a penalty")));
      lines.put(name + "other reasons", BookData.rows(all, CAUSES.get("other reasons")));
    }
    return lines;
  }

  private static List<Optional<String>> whose(BookData d) {
    return d.ours().isPresent() ? List.of(d.ours(), Optional.empty()) : List.of(Optional.empty());
  }

  static Wanted after(BookData d) {
    Wanted t =
        new Wanted(
            "Face-offs",
            "Number",
            "Attempts in " + d.shortly(),
            "each",
            "Attempts in " + d.longer(),
            "each",
            "Goals in " + d.shortly(),
            "Goals in " + d.longer());
    draws(d)
        .forEach(
            (name, draws) -> {
              int soon = BookData.sum(draws, "attempts_against_20s");
              int later = BookData.sum(draws, "attempts_against_30s");
              t.row(
                  Want.name(name),
                  Want.count(draws.size()),
                  Want.count(soon),
                  Formulas.mean(soon, draws.size(), 2, 0, ""),
                  Want.count(later),
                  Formulas.mean(later, draws.size(), 2, 0, ""),
                  Want.count(BookData.sum(draws, "goals_against_20s")),
                  Want.count(BookData.sum(draws, "goals_against_30s")));
            });
    return t;
  }

  static Wanted goals(BookData d, double weight) {
    Wanted t =
        new Wanted(
            "Face-offs",
            "Number",
            "Goals for",
            "Goals against",
            "Net in 100",
            "Published",
            "Adjusted",
            "of it published");
    draws(d)
        .forEach(
            (name, draws) -> {
              double published =
                  PUBLISHED.getOrDefault(name.replaceFirst(".*: ", ""), PUBLISHED.get(""));
              int n = draws.size();
              int made = BookData.sum(draws, "goals_for_20s");
              int against = BookData.sum(draws, "goals_against_20s");
              double net = 100.0 * (made - against);
              t.row(
                  Want.name(name),
                  Want.count(n),
                  Want.count(made),
                  Want.count(against),
                  n < 10
                      ? Formulas.mean(net, n, 1, 0, "")
                      : Want.like("#", Want.signed(net / n, 1, 0)),
                  Want.like("#", Want.signed(published, 1, PUBLISHED_STEP)),
                  Want.like(
                      "#",
                      Want.signed(
                          (net + weight * published) / (n + weight),
                          1,
                          PUBLISHED_STEP * weight / (n + weight))),
                  Want.like("# %", Formulas.hundred(weight / (n + weight))));
            });
    return t;
  }

  static Wanted tired(BookData d) {
    Wanted t =
        new Wanted("Face-offs", "With skaters listed", "On the ice before", "Stayed on after");
    draws(d)
        .forEach(
            (name, draws) -> {
              List<BookData.Row> listed = BookData.rows(draws, r -> r.has("shift_s"));
              int n = listed.size();
              if (n > 0) {
                t.row(
                    Want.name(name),
                    Want.count(n),
                    Formulas.mean(BookData.total(listed, "shift_s"), n, 1, 0.01, " s"),
                    Formulas.mean(BookData.total(listed, "stay_s"), n, 1, 0.01, " s"));
              }
            });
    return t;
  }

  /** Draws and exits of the same team, strength and score. */
  private static final class Stratum {
    private final List<BookData.Row> draws = new ArrayList<>();
    private final List<BookData.Row> exits = new ArrayList<>();
  }

  static Wanted matched(BookData d, PageTable shown) {
    Wanted t =
        new Wanted(
            "Face-offs",
            "Number",
            "without a match",
            "Attempts each",
            "Exits",
            "Attempts an exit, matched",
            "Difference",
            "95 % interval",
            "Games");
    for (Optional<String> whose : whose(d)) {
      for (String cause : CAUSES.keySet()) {
        for (String column : List.of("attempts_against_20s", "attempts_against_30s")) {
          String name =
              whose.orElse("all teams")
                  + ": "
                  + cause
                  + ", "
                  + (column.contains("20") ? d.shortly() : d.longer());
          String range =
              shown.rows().size() > t.rows.size() ? shown.rows().get(t.rows.size()).get(7) : "";
          t.row(matched(d, whose, CAUSES.get(cause), column, name, range));
        }
      }
    }
    return t;
  }

  /**
   * Face-offs and the exits set against them.
   *
   * @param n face-offs with a match
   * @param others face-offs without one
   * @param exits exits set against them
   * @param after attempts after those face-offs
   * @param without attempts that as many matched exits would have
   * @param games games with any of them
   */
  record Matched(int n, int others, int exits, double after, double without, int games) {

    boolean few() {
      return n < 10 || exits < 10;
    }
  }

  /** After icings of the book's team, or of all teams, within the window. */
  static Matched icings(BookData d) {
    return matched(d, d.ours(), CAUSES.get("icings"), "attempts_against_20s");
  }

  private static List<Want> matched(
      BookData d,
      Optional<String> whose,
      Predicate<BookData.Row> cause,
      String column,
      String name,
      String range) {
    Matched m = matched(d, whose, cause, column);
    String few = m.n() == 0 ? Want.NONE : m.few() ? Want.FEW : "";
    double difference = (m.after() - m.without()) / m.n();
    return List.of(
        Want.name(name),
        Want.count(m.n()),
        Want.count(m.others()),
        few.isEmpty() ? Want.like("#", Want.num(m.after() / m.n(), 2)) : Want.text(few),
        Want.count(m.exits()),
        few.isEmpty() ? Want.like("#", Want.num(m.without() / m.n(), 2)) : Want.text(few),
        few.isEmpty() ? Want.like("#", Want.signed(difference, 2, 0)) : Want.text(few),
        few.isEmpty() ? holding(difference, m.games(), range) : Want.text(""),
        Want.count(m.games()));
  }

  private static Matched matched(
      BookData d, Optional<String> whose, Predicate<BookData.Row> cause, String column) {
    List<BookData.Row> draws =
        BookData.rows(
            d.restarts, r -> BookData.team(whose).test(r) && r.has(column) && cause.test(r));
    List<BookData.Row> exits =
        BookData.rows(
            d.exits,
            r ->
                BookData.team(whose).test(r)
                    && r.has(column)
                    && r.is("own_zone_restart", "false")
                    && !r.is("way_out", "kept in"));
    Map<String, Stratum> strata = new TreeMap<>();
    Function<String, Function<BookData.Row, Stratum>> at =
        strength ->
            r ->
                strata.computeIfAbsent(
                    r.get("team") + "|" + r.get(strength) + "|" + SliceFigures.score(r).orElse(""),
                    s -> new Stratum());
    draws.forEach(r -> at.apply("faceoff_strength").apply(r).draws.add(r));
    exits.forEach(r -> at.apply("strength").apply(r).exits.add(r));
    Set<String> games = new TreeSet<>();
    draws.forEach(r -> games.add(r.get("game")));
    exits.forEach(r -> games.add(r.get("game")));
    int n = 0;
    int others = 0;
    int matches = 0;
    double after = 0;
    double without = 0;
    for (Stratum s : strata.values()) {
      int here = s.draws.size();
      if (s.exits.isEmpty()) {
        others += here;
      } else if (here > 0) {
        n += here;
        matches += s.exits.size();
        after += BookData.sum(s.draws, column);
        without += here * ((double) BookData.sum(s.exits, column) / s.exits.size());
      }
    }
    return new Matched(n, others, matches, after, without, games.size());
  }

  /** The interval that the page shows, if it holds the difference; none below ten games. */
  static Want holding(double difference, int games, String range) {
    if (games < 10) {
      return Want.text(Want.NONE);
    }
    String[] ends = range.split(" to ", 2);
    boolean holds =
        ends.length == 2
            && range.matches("[+-]?\\d+\\.\\d\\d to [+-]?\\d+\\.\\d\\d")
            && Double.parseDouble(ends[0]) - 0.005 <= difference
            && difference <= Double.parseDouble(ends[1]) + 0.005;
    return Want.text(holds ? range : "an interval that holds " + difference);
  }
}
