package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import twostrides.rulebook.penalty.BoxEvent.Called;
import twostrides.rulebook.penalty.BoxEvent.Goal;
import twostrides.rulebook.penalty.BoxEvent.NetEmpty;
import twostrides.rulebook.penalty.BoxEvent.Signalled;

/** What the rows of a sheet come to, in the order in which it happens. */
sealed interface Step {

  /** When. */
  GameInstant at();

  /** Something noted while play goes on, or that changes nothing by itself: arm up, net empty. */
  record Noted(GameInstant at, BoxEvent event) implements Step {}

  /**
   * A stoppage with all that belongs to it.
   *
   * @param at its first row
   * @param signalled penalties signalled at this reading of the clock
   * @param goals goals that stopped play
   * @param calls penalties assessed
   */
  record Stoppage(GameInstant at, List<Signalled> signalled, List<Goal> goals, List<Called> calls)
      implements Step {}

  /** A period begins. */
  record PeriodStart(GameInstant at) implements Step {}

  /**
   * Sorts events into steps. A stoppage is what shares one reading of the clock, up to and with the
   * face-off that ends it (NFHS 2019 situation 3: penalties at one stoppage belong together even if
   * assessed later in it, grade P). Everything of a stoppage counts from its first row.
   *
   * @param events within their periods
   * @return every step; a sort by instant puts what was noted before a stoppage ahead of it
   */
  static List<Step> of(List<BoxEvent> events) {
    List<BoxEvent> sorted = new ArrayList<>(events);
    sorted.sort(Comparator.comparing(BoxEvent::at));
    List<Step> steps = new ArrayList<>();
    List<BoxEvent> together = new ArrayList<>();
    for (BoxEvent e : sorted) {
      if (!together.isEmpty() && !sameReading(together.get(0), e)) {
        close(together, steps);
      }
      together.add(e);
      if (e instanceof BoxEvent.Started) {
        close(together, steps);
      }
    }
    close(together, steps);
    return steps;
  }

  private static boolean sameReading(BoxEvent a, BoxEvent b) {
    return a.at().period() == b.at().period() && a.at().millis() == b.at().millis();
  }

  private static void close(List<BoxEvent> together, List<Step> steps) {
    if (together.isEmpty()) {
      return;
    }
    List<BoxEvent> stopping =
        together.stream().filter(e -> !(e instanceof Signalled || e instanceof NetEmpty)).toList();
    List<Signalled> signalled = only(Signalled.class, together);
    for (BoxEvent e : together) {
      boolean late =
          e instanceof Signalled
              && !stopping.isEmpty()
              && e.at().compareTo(stopping.get(0).at()) > 0;
      if (!late && !stopping.contains(e)) {
        steps.add(new Noted(e.at(), e));
      }
    }
    if (!stopping.isEmpty()) {
      steps.add(
          new Stoppage(
              stopping.get(0).at(),
              signalled,
              only(Goal.class, together),
              only(Called.class, together)));
    }
    together.clear();
  }

  private static <E extends BoxEvent> List<E> only(Class<E> kind, List<BoxEvent> events) {
    return events.stream().filter(kind::isInstance).map(kind::cast).toList();
  }
}
