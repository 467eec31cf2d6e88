package twostrides.exits;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import twostrides.game.Pressure;

/**
 * How carriers behind the red line fared in one game, control touch by control touch.
 *
 * @param steps the steps from one touch to the next
 */
public record Carries(List<Step> steps) {

  /** Shortest time between two touches from which a pace is taken, seconds. Assumed. */
  private static final double LEAST_CARRY_S = 1;

  /**
   * From a carrier's touch short of center to the next touch, his own or a loss.
   *
   * @param pressure pressure at the first touch, where the sheet says so
   * @param seconds seconds of play between the two
   * @param lost whether the other team has the puck at the second
   * @param metresUpIce metres up ice that he carried it, where that gives a pace
   */
  public record Step(
      Optional<Pressure> pressure, double seconds, boolean lost, OptionalDouble metresUpIce) {}

  /** Copies the list. */
  public Carries {
    steps = List.copyOf(steps);
  }

  static Carries of(PuckTimeline timeline) {
    List<Step> steps = new ArrayList<>();
    for (PuckEvent e : timeline.events()) {
      boolean carrying =
          e.kind() == PuckEvent.Kind.CONTROL
              && e.x().isPresent()
              && timeline.rink().shortOfCenter(e.x().getAsDouble()) > 0
              && !timeline.after(e).isEmpty();
      if (carrying) {
        step(e, timeline.next(e)).ifPresent(steps::add);
      }
    }
    return new Carries(steps);
  }

  private static Optional<Step> step(PuckEvent e, PuckEvent next) {
    boolean own = next.team().equals(e.team());
    boolean same = next.player().isPresent() && next.player().equals(e.player());
    boolean lost = next.control() && !own;
    boolean kept = next.kind() == PuckEvent.Kind.CONTROL && own && same;
    if (!lost && !kept) {
      return Optional.empty();
    }
    double seconds = next.elapsed() - e.elapsed();
    boolean carried =
        kept
            && next.x().isPresent()
            && next.x().getAsDouble() > e.x().orElseThrow()
            && seconds >= LEAST_CARRY_S;
    return Optional.of(
        new Step(
            e.row().pressure(),
            seconds,
            lost,
            carried
                ? OptionalDouble.of(next.x().getAsDouble() - e.x().orElseThrow())
                : OptionalDouble.empty()));
  }
}
