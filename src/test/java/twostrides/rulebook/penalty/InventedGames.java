package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import twostrides.rulebook.penalty.PenaltyRules.AtExpiry;
import twostrides.rulebook.penalty.PenaltyRules.CoincidentalMinors;

/** Made-up games with far more penalties than real ones, and many ties of the clock. */
final class InventedGames {

  /** A game: its rules and its events in order. Three periods of 400 s, one overtime of 300 s. */
  record Invented(PenaltyRules rules, List<BoxEvent> events) {}

  static final int PERIOD_TICKS = 800;
  static final int OVERTIME_TICKS = 600;

  private static final List<PenaltyKind> KINDS = List.of(PenaltyKind.values());

  private static final int[] USUAL_GAPS = {120, 240, 300, 600};

  private final Random random;
  private final List<BoxEvent> events = new ArrayList<>();

  private InventedGames(long seed) {
    this.random = new Random(seed);
  }

  static Invented game(long seed) {
    InventedGames g = new InventedGames(seed);
    PenaltyRules rules = g.rules();
    for (int period = 1; period <= 4; period++) {
      g.period(period);
    }
    return new Invented(rules, List.copyOf(g.events));
  }

  private PenaltyRules rules() {
    RulesDraft draft = new RulesDraft();
    draft.coincidentalMinors =
        random.nextBoolean() ? CoincidentalMinors.FOUR_ON_FOUR : CoincidentalMinors.CANCEL;
    draft.overtimeSkaters = random.nextBoolean() ? OptionalInt.of(3) : OptionalInt.empty();
    draft.matchSeconds = random.nextBoolean() ? OptionalDouble.of(300) : OptionalDouble.empty();
    draft.shorthandedGoalFreesOwnMinor = random.nextBoolean();
    draft.expiredMajorEmptyBoxExempt = random.nextBoolean();
    draft.atExpiry = random.nextInt(3) == 0 ? AtExpiry.STILL_SERVED : AtExpiry.OVER;
    return draft.rules();
  }

  private void period(int period) {
    int length = period > 3 ? OVERTIME_TICKS : PERIOD_TICKS;
    int tick = random.nextInt(60);
    while (tick <= length) {
      stoppage(period, tick);
      int gap = random.nextInt(10) < 4 ? random.nextInt(160) : USUAL_GAPS[random.nextInt(4)];
      tick += gap / (random.nextInt(3) == 0 ? 2 : 1);
    }
  }

  private GameInstant at(int period, int tick) {
    return new GameInstant(period, tick / 2.0, events.size() + 1);
  }

  private String ref() {
    return "row " + (events.size() + 1);
  }

  private Side side() {
    return random.nextBoolean() ? Side.HOME : Side.AWAY;
  }

  private void stoppage(int period, int tick) {
    int luck = random.nextInt(20);
    if (luck == 0) {
      events.add(new BoxEvent.NetEmpty(at(period, tick), side(), random.nextBoolean()));
      return;
    }
    if (luck < 5) {
      events.add(new BoxEvent.Signalled(at(period, tick), side(), ref()));
      if (random.nextBoolean()) {
        return;
      }
    }
    if (random.nextInt(3) > 0) {
      events.add(new BoxEvent.Stopped(at(period, tick)));
    }
    if (random.nextInt(4) == 0) {
      events.add(new BoxEvent.Goal(at(period, tick), side(), random.nextInt(8) == 0, ref()));
    }
    int calls = Math.max(0, random.nextInt(8) - 3);
    for (int i = 0; i < calls; i++) {
      call(period, tick);
    }
    if (random.nextInt(3) > 0) {
      events.add(new BoxEvent.Started(at(period, tick)));
      if (random.nextInt(8) == 0) {
        call(period, tick);
      }
    }
  }

  private void call(int period, int tick) {
    PenaltyKind kind = PenaltyKind.MINOR;
    if (random.nextBoolean()) {
      kind = KINDS.get(random.nextInt(KINDS.size()));
    }
    Optional<String> player =
        random.nextInt(8) == 0
            ? Optional.empty()
            : Optional.of(Integer.toString(2 + random.nextInt(6)));
    Optional<String> servedBy = Optional.empty();
    int luck = random.nextInt(8);
    if (luck == 0) {
      servedBy = Optional.of(BoxEvent.Called.NOBODY);
    } else if (luck == 1) {
      servedBy = Optional.of(Integer.toString(2 + random.nextInt(6)));
    }
    OptionalDouble length =
        random.nextInt(10) == 0 ? OptionalDouble.of(60) : OptionalDouble.empty();
    events.add(
        new BoxEvent.Called(at(period, tick), side(), kind, length, player, servedBy, ref()));
  }
}
