package twostrides.findings;

import java.util.List;
import twostrides.game.Strength;
import twostrides.stats.Clustered;
import twostrides.stats.Count;

/**
 * How a team or a player leaves the zone.
 *
 * @param counts attempts by way out and strength; only those that occur
 * @param marks releases short of center that have a place
 * @param releases all releases short of center, with or without a place, and how many of them were
 *     iced
 */
public record Profile(List<WayCount> counts, List<Mark> marks, Count releases) {

  /** Copies the lists. */
  public Profile {
    counts = List.copyOf(counts);
    marks = List.copyOf(marks);
  }

  /** All exit attempts. */
  public int attempts() {
    return counts.stream().mapToInt(WayCount::attempts).sum();
  }

  /** Icings that followed the attempts for which the sheet can say. */
  public Count iced() {
    return byGame().total();
  }

  /** Attempts that a defensive-zone face-off after a penalty followed. */
  public int penalties() {
    return counts.stream().mapToInt(WayCount::penalties).sum();
  }

  /** Attempts that a defensive-zone face-off for another reason followed. */
  public int others() {
    return counts.stream().mapToInt(WayCount::others).sum();
  }

  /** The same icings of a team game by game; of a player in one. */
  public Clustered byGame() {
    return counts.stream().map(WayCount::byGame).reduce(new Clustered(List.of()), Clustered::plus);
  }

  /** Attempts of one way out, all strengths together. */
  public WayCount total(ShownWay way) {
    return counts.stream()
        .filter(c -> c.way() == way)
        .reduce(
            new WayCount(way, Strength.UNKNOWN, new Clustered(List.of()), 0, 0, 0),
            (a, b) ->
                new WayCount(
                    way,
                    Strength.UNKNOWN,
                    a.byGame().plus(b.byGame()),
                    a.penalties() + b.penalties(),
                    a.others() + b.others(),
                    a.attempts() + b.attempts()));
  }
}
