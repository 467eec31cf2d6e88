package twostrides.rulebook.penalty;

import java.util.Locale;

/**
 * One count of play through the whole game, in milliseconds, over the periods that the clock shows.
 *
 * @param periodMillis length of a period of regulation, ms
 * @param overtimeMillis length of a period of overtime, ms
 * @param regulationPeriods periods of regulation
 */
record Clock(long periodMillis, long overtimeMillis, int regulationPeriods) {

  private static final double MILLIS = 1000;

  /** Rejects a game without play. */
  Clock {
    if (periodMillis <= 0 || overtimeMillis <= 0 || regulationPeriods < 1) {
      throw new IllegalArgumentException(
          "a game has one period or more, each longer than 0 s: "
              + regulationPeriods
              + " of "
              + periodMillis
              + " ms, then "
              + overtimeMillis
              + " ms");
    }
  }

  boolean overtime(int period) {
    return period > regulationPeriods;
  }

  private long length(int period) {
    return overtime(period) ? overtimeMillis : periodMillis;
  }

  /** Play before a period begins, ms. */
  long offset(int period) {
    long regulation = Math.min(period - 1L, regulationPeriods);
    return regulation * periodMillis + (period - 1L - regulation) * overtimeMillis;
  }

  /** Whether a reading lies past the end of its period. */
  boolean pastEnd(GameInstant t) {
    return t.millis() > length(t.period());
  }

  /** The instant itself, or the end of its period where it lies past that. */
  GameInstant within(GameInstant t) {
    return pastEnd(t) ? new GameInstant(t.period(), length(t.period()) / MILLIS, t.order()) : t;
  }

  /** The event itself, or at the end of its period where it lies past that. */
  BoxEvent within(BoxEvent e) {
    if (!pastEnd(e.at())) {
      return e;
    }
    GameInstant at = within(e.at());
    if (e instanceof BoxEvent.Called c) {
      return new BoxEvent.Called(
          at, c.side(), c.kind(), c.lengthSeconds(), c.player(), c.servedBy(), c.ref());
    } else if (e instanceof BoxEvent.Signalled s) {
      return new BoxEvent.Signalled(at, s.side(), s.ref());
    } else if (e instanceof BoxEvent.Goal g) {
      return new BoxEvent.Goal(at, g.scoring(), g.penaltyShot(), g.ref());
    } else if (e instanceof BoxEvent.NetEmpty n) {
      return new BoxEvent.NetEmpty(at, n.side(), n.empty());
    }
    return e instanceof BoxEvent.Stopped ? new BoxEvent.Stopped(at) : new BoxEvent.Started(at);
  }

  /** Play since the game began, ms. */
  long millis(GameInstant t) {
    return offset(t.period()) + t.millis();
  }

  /**
   * The instant of a count of play; the end of a period belongs to that period.
   *
   * @param millis play since the game began, more than 0
   * @param order order of the instant
   */
  GameInstant instant(long millis, long order) {
    long regulation = regulationPeriods * periodMillis;
    long before =
        millis <= regulation
            ? (millis - 1) / periodMillis
            : regulationPeriods + (millis - regulation - 1) / overtimeMillis;
    int period = (int) before + 1;
    return new GameInstant(period, (millis - offset(period)) / MILLIS, order);
  }

  /**
   * A count of play as a clock shows it, with the period where that is another one: {@code 14:35},
   * {@code 0:35 of period 3}.
   *
   * @param millis play since the game began, more than 0
   * @param seenFrom the period of whoever reads it
   */
  String text(long millis, int seenFrom) {
    GameInstant t = instant(millis, 0);
    long tenths = t.millis() / 100;
    String clock =
        String.format(Locale.ROOT, "%d:%02d", tenths / 600, tenths / 10 % 60)
            + (tenths % 10 == 0 ? "" : "." + tenths % 10);
    return t.period() == seenFrom ? clock : clock + " of period " + t.period();
  }
}
