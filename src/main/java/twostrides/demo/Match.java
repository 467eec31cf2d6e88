package twostrides.demo;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.demo.Words.Stoppage;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * One game under way: clock, score, penalties, benches, the rows written so far and the truth. What
 * is done with the puck is decided by the plays; this class only keeps it all consistent.
 */
final class Match {
  /** A trailing team plays without goalkeeper when it is behind by no more than this. */
  private static final int WITHIN_REACH = 2;

  /** Seconds of play after which a line is changed on the fly, assumed. */
  private static final double SHIFT_S = 42;

  final Rink rink;
  final Spots spots;
  final Dice dice;
  final GameClock clock;
  final PenaltyBox box = new PenaltyBox();
  final TruthBook truth = new TruthBook();
  private final Bench home;
  private final Bench away;
  private final double pullsAt;
  private final List<SheetRow> rows = new ArrayList<>();
  private int homeGoals;
  private int awayGoals;
  private double homeShift;
  private double awayShift;
  private boolean homeNetEmpty;
  private boolean awayNetEmpty;

  Match(Rink rink, Team homeTeam, Team awayTeam, Dice dice) {
    this.rink = rink;
    this.dice = dice;
    spots = new Spots(rink);
    clock = new GameClock(dice.between(40, 200));
    home = new Bench(homeTeam, dice);
    away = new Bench(awayTeam, dice);
    pullsAt = 3 * GameClock.PERIOD_S - dice.between(75, 165);
  }

  List<SheetRow> rows() {
    return List.copyOf(rows);
  }

  Bench bench(Side side) {
    return side == Side.HOME ? home : away;
  }

  int lead(Side side) {
    return side == Side.HOME ? homeGoals - awayGoals : awayGoals - homeGoals;
  }

  boolean netEmpty(Side side) {
    return side == Side.HOME ? homeNetEmpty : awayNetEmpty;
  }

  void scored(Side side) {
    if (side == Side.HOME) {
      homeGoals++;
    } else {
      awayGoals++;
    }
    box.goalAgainst(side.other());
  }

  /** Lets play run and lets out who has served. */
  void run(double seconds) {
    clock.run(seconds);
    box.release(clock.gameSeconds());
  }

  /** At a face-off both teams decide whether the goalkeeper stays. */
  void netsAtFaceOff() {
    homeNetEmpty = pulls(Side.HOME);
    awayNetEmpty = pulls(Side.AWAY);
  }

  /** In play a goalkeeper leaves when the team has the puck; nobody comes back before a whistle. */
  void netsWithPuck(Side side) {
    if (side == Side.HOME) {
      homeNetEmpty |= pulls(side);
    } else {
      awayNetEmpty |= pulls(side);
    }
  }

  private boolean pulls(Side side) {
    return clock.gameSeconds() >= pullsAt && lead(side) < 0 && lead(side) >= -WITHIN_REACH;
  }

  /**
   * New players for both teams at a stoppage.
   *
   * @param iced a team that may not change because it iced the puck
   */
  void freshLines(Optional<Side> iced) {
    for (Side side : Side.values()) {
      bench(side).forget();
      if (!iced.equals(Optional.of(side))) {
        bench(side).change(dice);
        startShift(side);
      }
    }
  }

  private void startShift(Side side) {
    if (side == Side.HOME) {
      homeShift = clock.gameSeconds();
    } else {
      awayShift = clock.gameSeconds();
    }
  }

  /** A side with the puck past center changes on the fly when its shift is long. */
  void changeOnTheFly(Side side) {
    double since = side == Side.HOME ? homeShift : awayShift;
    if (clock.gameSeconds() - since > SHIFT_S) {
      bench(side).change(dice);
      startShift(side);
    }
  }

  /** A skater of a side who can be at a place of that side's frame in so many seconds. */
  Skater whoGetsTo(Side side, Place at, double in, Role wanted, Optional<Skater> notThis) {
    Set<Skater> barred = new HashSet<>(box.inside(side));
    notThis.ifPresent(barred::add);
    return bench(side)
        .whoGetsTo(
            side.homeFrame(at),
            clock.gameSeconds() + in,
            wanted,
            onIce(side),
            Set.copyOf(barred),
            dice);
  }

  List<Skater> onIce(Side side) {
    return bench(side).onIce(skatersWithExtra(side), box.inside(side));
  }

  int skatersWithExtra(Side side) {
    return box.skaters(side) + (netEmpty(side) ? 1 : 0);
  }

  /** A row of somebody who acts now; finish it and hand it to {@link #log}. */
  SheetRow row(Action action, Carrier who) {
    return SheetRow.of(clock, action, who, ice(who.side(), Optional.of(who.skater())));
  }

  /** Writes a row; who stands where is remembered. */
  void log(SheetRow row) {
    rows.add(row);
    boolean there =
        row.action() != Action.PENALTY
            && !row.outcome().equals(Optional.of(Outcome.DUMPED))
            && row.side().isPresent();
    if (there && row.skater().isPresent() && row.at().isPresent()) {
      Side side = row.side().get();
      bench(side).saw(row.skater().get(), side.homeFrame(row.at().get()), clock.gameSeconds());
    }
  }

  void logStoppage(Stoppage word, Optional<Side> calledOn) {
    rows.add(SheetRow.stoppage(clock, word, calledOn, calledOn.map(s -> ice(s, Optional.empty()))));
  }

  /** Who is on the ice, the one who acts among them: he may just have come over the boards. */
  private List<Skater> listed(Side side, Optional<Skater> acts) {
    List<Skater> out = new ArrayList<>(onIce(side));
    if (acts.isPresent() && !out.contains(acts.get()) && acts.get().role() != Role.GOALKEEPER) {
      Role role = acts.get().role();
      int off = out.size() - 1;
      for (int i = out.size() - 1; i >= 0; i--) {
        if (out.get(i).role() == role) {
          off = i;
          break;
        }
      }
      out.set(off, acts.get());
    }
    return out;
  }

  private SheetRow.OnIce ice(Side side, Optional<Skater> acts) {
    return new SheetRow.OnIce(
        numbers(listed(side, acts)),
        numbers(onIce(side.other())),
        skatersWithExtra(side),
        skatersWithExtra(side.other()),
        netEmpty(side),
        netEmpty(side.other()));
  }

  private static String numbers(List<Skater> skaters) {
    return skaters.stream()
        .mapToInt(Skater::number)
        .sorted()
        .mapToObj(Integer::toString)
        .collect(Collectors.joining("; "));
  }

  boolean inOwnZone(Place at) {
    return rink.inOwnZone(at.x());
  }

  /** Whether a place is short of center: the puck there does not touch the red line. */
  boolean shortOfCenter(Place at) {
    return rink.shortOfCenter(at.x()) > 0;
  }

  /** Chance that a carrier who keeps the puck brings it to the red line, 0 to 1. */
  double chanceOfCenter(Carrier carrier) {
    return carrier.pressure().keepsFor(rink.shortOfCenter(carrier.at().x()));
  }
}
