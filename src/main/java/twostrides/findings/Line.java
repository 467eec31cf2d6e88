package twostrides.findings;

import java.util.List;
import java.util.Optional;

/**
 * A row of a grid.
 *
 * @param values its cells; the first names it
 * @param sum whether it sums up the others
 */
public record Line(List<Value> values, boolean sum) {
  /** Copies the values. */
  public Line {
    values = List.copyOf(values);
  }

  static Line of(String name, Value... values) {
    return of(name, false, values);
  }

  static Line of(String name, boolean sum, Value... values) {
    List<Value> all = new java.util.ArrayList<>();
    all.add(new Value.Words(name));
    all.addAll(List.of(values));
    return new Line(all, sum);
  }

  /**
   * Its first value of a kind.
   *
   * @param kind the kind
   */
  public <V extends Value> Optional<V> first(Class<V> kind) {
    return values.stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }

  /** What names it. */
  public String name() {
    return ((Value.Words) values.get(0)).words();
  }
}
