package twostrides.starter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What the rows of an unknown sheet are: the column that says so, and rules for its words. */
final class Words {
  private static final List<Patterns> ALL = Patterns.read("words.txt", 2);
  private static final String OF = "of ";
  private static final String MAYBE = "maybe ";
  private static final String NONE = "-";
  private static final int MOST_WORDS = 80;

  /** Share of an action's rows that must hold a known outcome before a column is taken for it. */
  private static final double LEAST_KNOWN = 0.9;

  /**
   * Goals are a tenth of the shots; a column that says yes to more says something else. Assumed.
   */
  private static final double MOST_GOALS = 0.2;

  /** Columns of the score, whose 0 and 1 are no outcome. */
  private static final Pattern SCORE = Pattern.compile(".*\\b(goals|score)( .*)?");

  private static final Set<String> YES = Set.of("t", "true", "yes", "y", "1");

  private final UnknownSheet sheet;
  private final Found found;
  private final Optional<Column> action;

  Words(UnknownSheet sheet, Found found) {
    this.sheet = sheet;
    this.found = found;
    this.action = actionColumn();
  }

  /**
   * A rule of the map.
   *
   * @param when the sheet's columns and words
   * @param action our action; empty when nobody knows it
   * @param outcome our outcome
   * @param rows rows that it is for
   * @param note what to say of it; empty for nothing
   */
  record Line(
      Map<String, String> when,
      Optional<String> action,
      Optional<String> outcome,
      long rows,
      String note) {}

  /** A word for what rows are. */
  record Meaning(String action, Optional<String> outcome) {}

  /** The column that says what a row is: the one whose rows hold most words that are known. */
  private Optional<Column> actionColumn() {
    return sheet.columns().stream()
        .filter(c -> !found.uses(c) && c.words().size() <= MOST_WORDS && known(c) > 0)
        .max(Comparator.comparingInt(Words::known).thenComparingInt(c -> -c.position()));
  }

  private static int known(Column c) {
    Set<String> actions = new LinkedHashSet<>();
    int rows = 0;
    for (Map.Entry<String, Integer> w : c.words().entrySet()) {
      Optional<Meaning> meaning = meaning(w.getKey());
      rows += meaning.isPresent() ? w.getValue() : 0;
      meaning.ifPresent(m -> actions.add(m.action()));
    }
    return actions.size() < 2 ? 0 : rows;
  }

  Optional<Column> action() {
    return action;
  }

  /** Whether the sheet writes our own words in a column of our own name. */
  boolean ours() {
    return action.isPresent() && action.get().header().equalsIgnoreCase("action");
  }

  static Optional<Meaning> meaning(String word) {
    return ALL.stream()
        .filter(p -> !p.keys().get(0).contains(OF) && p.fits(word))
        .map(p -> new Meaning(p.keys().get(0), outcome(p.keys().get(1))))
        .findFirst();
  }

  private static Optional<String> outcome(String word) {
    return word.equals(NONE) ? Optional.empty() : Optional.of(word);
  }

  /** Our action in a row, as far as its word says it. */
  Optional<String> actionIn(List<String> row) {
    return action.flatMap(c -> meaning(c.cell(row))).map(Meaning::action);
  }

  /** Rules for every word, the commonest first. */
  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    for (Map.Entry<String, Integer> word : action.orElseThrow().words().entrySet()) {
      Optional<Meaning> meaning = meaning(word.getKey());
      if (meaning.isEmpty()) {
        lines.add(line(word.getKey(), Map.of(), Optional.empty(), word.getValue(), ""));
      } else {
        lines.addAll(lines(word.getKey(), word.getValue(), meaning.get()));
      }
    }
    return lines;
  }

  private Line line(
      String word, Map<String, String> more, Optional<Meaning> meaning, long rows, String note) {
    Map<String, String> when = new LinkedHashMap<>();
    when.put(action.orElseThrow().header(), word);
    when.putAll(more);
    return new Line(
        when, meaning.map(Meaning::action), meaning.flatMap(Meaning::outcome), rows, note);
  }

  private List<Line> lines(String word, int count, Meaning meaning) {
    List<List<String>> rows =
        sheet.rows().stream().filter(r -> action.orElseThrow().cell(r).equals(word)).toList();
    List<Line> lines = new ArrayList<>();
    long covered = 0;
    if (meaning.outcome().isEmpty()) {
      if (meaning.action().equals("shot") && !hasWordFor("shot", "goal")) {
        goals(word, rows).ifPresent(lines::add);
      }
      String of = OF + meaning.action();
      Optional<Column> detail = detail(of, rows);
      String question = "";
      if (detail.isEmpty()) {
        of = MAYBE + of;
        detail = detail(of, rows);
        question = detail.isPresent() ? "Does this column say so of such rows?" : "";
      }
      if (detail.isPresent()) {
        for (String d : Column.of(detail.get().position(), "", rows).words().keySet()) {
          Optional<String> outcome = outcomeOf(of, d);
          int position = detail.get().position();
          long n = rows.stream().filter(r -> r.get(position).strip().equals(d)).count();
          if (outcome.isPresent()) {
            Meaning m = new Meaning(meaning.action(), outcome);
            lines.add(line(word, Map.of(detail.get().header(), d), Optional.of(m), n, question));
            question = "";
            covered += n;
          }
        }
      }
    }
    if (covered < count) {
      Meaning rest = lines.isEmpty() ? completed(meaning) : meaning;
      lines.add(line(word, Map.of(), Optional.of(rest), count - covered, ""));
    }
    return lines;
  }

  private boolean hasWordFor(String ours, String outcome) {
    Optional<Meaning> wanted = Optional.of(new Meaning(ours, Optional.of(outcome)));
    return action.orElseThrow().words().keySet().stream().anyMatch(w -> meaning(w).equals(wanted));
  }

  /** A pass in a sheet that has another word for those that missed was complete. */
  private Meaning completed(Meaning meaning) {
    boolean told =
        meaning.equals(new Meaning("pass", Optional.empty())) && hasWordFor("pass", "missed");
    return told ? new Meaning("pass", Optional.of("complete")) : meaning;
  }

  /** Shots that went in, where a column says yes to few of them. */
  private Optional<Line> goals(String word, List<List<String>> rows) {
    for (Column c : free()) {
      Column of = Column.of(c.position(), c.header(), rows);
      Optional<String> yes = of.words().keySet().stream().filter(Words::yes).findFirst();
      if (yes.isPresent()
          && of.words().size() == 2
          && of.words().get(yes.get()) <= MOST_GOALS * rows.size()) {
        Meaning goal = new Meaning("shot", Optional.of("goal"));
        String note =
            "taken for goals: "
                + of.words().get(yes.get())
                + " of "
                + rows.size()
                + " such rows say so";
        return Optional.of(
            line(
                word,
                Map.of(c.header(), yes.get()),
                Optional.of(goal),
                of.words().get(yes.get()),
                note));
      }
    }
    return Optional.empty();
  }

  private static boolean yes(String word) {
    return YES.contains(Column.plain(word));
  }

  private List<Column> free() {
    return sheet.columns().stream()
        .filter(c -> !found.uses(c) && !action.equals(Optional.of(c)) && !c.words().isEmpty())
        .filter(c -> !SCORE.matcher(Column.plain(c.header())).matches())
        .toList();
  }

  private static Optional<String> outcomeOf(String of, String word) {
    return ALL.stream()
        .filter(p -> p.keys().get(0).equals(of) && p.fits(word))
        .map(p -> p.keys().get(1))
        .findFirst();
  }

  /**
   * The column whose words are outcomes of an action: more than one, and the more kinds the better.
   */
  private Optional<Column> detail(String of, List<List<String>> rows) {
    Optional<Column> best = Optional.empty();
    int most = 1;
    for (Column c : free()) {
      Column here = Column.of(c.position(), c.header(), rows);
      Set<String> kinds = new LinkedHashSet<>();
      int known = 0;
      for (Map.Entry<String, Integer> w : here.words().entrySet()) {
        Optional<String> outcome = outcomeOf(of, w.getKey());
        known += outcome.isPresent() ? w.getValue() : 0;
        outcome.ifPresent(kinds::add);
      }
      if (known >= LEAST_KNOWN * rows.size() && kinds.size() > most) {
        best = Optional.of(c);
        most = kinds.size();
      }
    }
    return best;
  }
}
