package twostrides.demo;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import twostrides.checks.Printed;

/** How often intervals held the truth, kind by kind. */
final class Held {
  /** The part of runs, %, in which a 95 % interval is to hold the truth. */
  static final double LEAST = 93;

  /** Of fewer intervals a percentage says little. */
  private static final int FEWEST = 1000;

  /** The parts of the check; what else is counted is there to compare with. */
  private static final String PARTS = "[abcd] .*";

  /** Points by which independent trials may miss what was simulated, for want of seasons. */
  private static final double NEAR = 0.8;

  private static final class Kind {
    long held;
    long tooHigh;
    long tooLow;
    double width;
    double independent;
    long told;

    long all() {
      return held + tooHigh + tooLow;
    }
  }

  private final Map<String, Kind> kinds = new TreeMap<>();

  void add(String kind, double low, double high, double truth) {
    Kind k = kinds.computeIfAbsent(kind, name -> new Kind());
    if (truth < low) {
      k.tooHigh++;
    } else if (truth > high) {
      k.tooLow++;
    } else {
      k.held++;
    }
    k.width += high - low;
  }

  /** How often it would, were the trials independent: what is left of 95 % is whole numbers. */
  void expect(String kind, double chance) {
    Kind k = kinds.get(kind);
    k.independent += chance;
    k.told++;
  }

  /** In how many of a hundred runs. */
  double percent(String kind) {
    Kind k = kinds.get(kind);
    return 100.0 * k.held / k.all();
  }

  /**
   * The kinds of the check below 93 %, but for those where independent trials would be below as
   * well: there it is whole numbers, which no interval of counts mends.
   */
  Set<String> below() {
    Set<String> found = new TreeSet<>();
    for (String kind : kinds.keySet()) {
      boolean counts = kind.matches(PARTS) && kinds.get(kind).all() >= FEWEST;
      if (counts && percent(kind) < LEAST && !wholeNumbers(kind)) {
        found.add(kind);
      }
    }
    return found;
  }

  /** Whether independent trials are held as often, and below too. */
  boolean wholeNumbers(String kind) {
    Kind k = kinds.get(kind);
    double independent = 100 * k.independent / k.told;
    return k.told > 0
        && Math.abs(percent(kind) - independent) <= NEAR
        && independent < LEAST + NEAR;
  }

  /**
   * Every kind on a line.
   *
   * @param figures where to
   */
  void print(Printed figures) {
    kinds.forEach(
        (name, k) ->
            figures.say(
                "coverage: %s: %d intervals, held %.1f %%, above the truth %.1f %%, below %.1f %%,"
                    + " mean width %.3f%s",
                name,
                k.all(),
                percent(name),
                100.0 * k.tooHigh / k.all(),
                100.0 * k.tooLow / k.all(),
                k.width / k.all(),
                k.told == 0
                    ? ""
                    : String.format(
                        Locale.ROOT,
                        ", independent trials %.1f %%",
                        100 * k.independent / k.told)));
  }
}
