package twostrides.game;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;

/**
 * What the rows of one game say of it: one day, one home team, one away team. Rows that say another
 * than most do belong to another game, or err; they are set aside. Rows that say nothing stay.
 */
final class OneGame {
  private final String id;
  private final List<DoubtfulRow> doubtful;

  /**
   * A game.
   *
   * @param id its id
   * @param doubtful where rows that contradict it go
   */
  OneGame(String id, List<DoubtfulRow> doubtful) {
    this.id = id;
    this.doubtful = doubtful;
  }

  /** The rows that agree, in their order. */
  <T> List<ReadRow<T>> of(List<ReadRow<T>> rows) {
    List<ReadRow<T>> day =
        agreeing(rows, SheetForms.DATE, "the day of game ", r -> r.about().date().map(this::said));
    List<ReadRow<T>> home =
        agreeing(day, SheetForms.HOME, "the home team of game ", r -> r.about().home());
    return agreeing(home, SheetForms.AWAY, "the away team of game ", r -> r.about().away());
  }

  private String said(LocalDate day) {
    return day.toString();
  }

  private <T> List<ReadRow<T>> agreeing(
      List<ReadRow<T>> rows,
      String column,
      String what,
      Function<ReadRow<T>, Optional<String>> says) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    rows.forEach(r -> says.apply(r).ifPresent(v -> counts.merge(v, 1, Integer::sum)));
    if (counts.size() < 2) {
      return rows;
    }
    int most = counts.values().stream().mapToInt(n -> n).max().orElseThrow();
    String agreed =
        counts.entrySet().stream()
            .filter(e -> e.getValue() == most)
            .map(Map.Entry::getKey)
            .findFirst()
            .orElseThrow();
    ReadRow<T> first =
        rows.stream()
            .filter(r -> says.apply(r).equals(Optional.of(agreed)))
            .findFirst()
            .orElseThrow();
    List<ReadRow<T>> kept = new ArrayList<>();
    for (ReadRow<T> r : rows) {
      Optional<String> said = says.apply(r);
      if (said.isEmpty() || said.get().equals(agreed)) {
        kept.add(r);
      } else {
        Problem problem =
            new Problem(
                r.source().file(),
                r.source().line(),
                column,
                r.source().cell(column).map(c -> c.text()).orElse(said.get()),
                what + id + ", " + agreed + " as in line " + first.source().line(),
                "correct the cell; rows of another game need a game id of their own");
        doubtful.add(new DoubtfulRow(r.source(), List.of(problem)));
      }
    }
    return kept;
  }
}
