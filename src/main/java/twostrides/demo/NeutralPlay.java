package twostrides.demo;

import java.util.EnumMap;
import java.util.Optional;
import twostrides.demo.ExitTruth.CenterMark;
import twostrides.demo.Keeping.Kept;
import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.Words.Action;

/**
 * A player with the puck between the own blue line and center. What he does hangs on how close his
 * checkers are; whether he brings it to center is decided by whether one gets to him. All shares
 * are assumed.
 */
final class NeutralPlay extends Play {
  private enum Intent {
    ON,
    AHEAD,
    SEND,
    BACK,
    EMPTY_NET
  }

  /** A player out here acts on a checker who is still this part of the seconds away, assumed. */
  private static final double FORESIGHT = 0.72;

  NeutralPlay(Hands hands) {
    super(hands);
  }

  /**
   * Decides.
   *
   * @param written whether a row already shows this player here; a carry over the blue line that
   *     goes on at once has none
   */
  Next decide(Carrier c, boolean written) {
    return switch (match.dice.choose(weights(c))) {
      case ON -> on(c, written);
      case AHEAD -> ahead(written);
      case SEND -> send();
      case BACK -> back(c, written);
      case EMPTY_NET -> atEmptyNet(c, 0.4, 0.7, this::markReleased);
    };
  }

  private EnumMap<Intent, Double> weights(Carrier c) {
    double hurry = c.skater().habits().hurry();
    EnumMap<Intent, Double> w =
        switch (Pressure.of(c.contact() * FORESIGHT)) {
          case NONE -> weights(Intent.class, 84, 17, 5 * hurry, 3);
          case LIGHT -> weights(Intent.class, 60, 24, 14 * hurry, 4);
          case HEAVY -> weights(Intent.class, 14, 46, 26 * (0.3 + 0.7 * hurry), 4);
        };
    if (match.box.manpower(c.side()) == Manpower.SHORTHANDED) {
      w.computeIfPresent(Intent.SEND, (key, weight) -> weight * 3);
    }
    if (match.netEmpty(c.side().other()) && match.lead(c.side()) > 0) {
      w.put(Intent.EMPTY_NET, 35.0);
    }
    return w;
  }

  /** Keeps it and goes for center. */
  private Next on(Carrier c, boolean written) {
    double before = match.truth.watches() ? match.chanceOfCenter() : 0;
    SheetRow here = match.row(Action.TOUCH, c);
    Kept kept = keeping.carry(match.dice.between(0.5, 5.5), Futures.LONGEST_S);
    Carrier now = kept.carrier();
    boolean gained = !match.shortOfCenter(now.at());
    match.truth.kept(match.spots.shortOfCenter(c.at()), before, gained);
    if (gained) {
      match.truth.center(CenterMark.GAINED);
      return hands.keeps(
          now.movedTo(hands.clearOfCenter(Math.max(0.5, now.at().x()), now.at().y())));
    }
    Carrier there = keeping.within(now, 0.2 - line, -0.5);
    if (!kept.lost()) {
      return hands.keeps(there);
    }
    if (!written) {
      match.log(here);
    }
    match.truth.center(CenterMark.LOST_SHORT);
    return hands.stripped(there, match.spots.inside(there.at().x(), there.at().y()));
  }

  /** To a teammate past center. */
  private Next ahead(boolean written) {
    Carrier c = held(1.2);
    Optional<Target> found = Target.within(match, c, 0.6, 7.3);
    if (found.isEmpty()) {
      return c.pressure() == Pressure.HEAVY ? send() : on(c, written);
    }
    Target to = found.get();
    if (match.dice.chance(to.completes(c, 3.2))) {
      match.truth.center(CenterMark.GAINED);
      return hands.received(c, to);
    }
    double iced = releases.iced(c, 0.08);
    markReleased(releases.missed(c, to, iced));
    if (match.dice.chance(iced)) {
      return releases.icing(c);
    }
    if (match.dice.chance(0.26)) {
      return releases.deep(c);
    }
    return looseInNeutral(c.side(), -5, 1, 3);
  }

  /** A look before the puck goes, short of center all the while. */
  private Carrier held(double longest) {
    double from = 0.2 - line;
    return keeping.hold(match.dice.between(0, longest), from, -0.5).carrier();
  }

  /** Sends it on before center. */
  private Next send() {
    Carrier c = held(0.9);
    double iced = releases.iced(c, 0.05);
    markReleased(releases.send(c, iced));
    if (match.dice.chance(iced)) {
      return releases.icing(c);
    }
    if (match.dice.chance(0.75)) {
      return releases.deepAfterRelease(c);
    }
    return looseInNeutral(c.side(), 0.6, 1, 3);
  }

  /** Back to a defender in the own zone: a new attempt begins there. */
  private Next back(Carrier c, boolean written) {
    Optional<Target> to = Target.within(match, c, -27, -line - 0.5);
    if (to.isEmpty()) {
      return on(c, written);
    }
    match.truth.center(CenterMark.BROUGHT_BACK);
    return hands.received(c, to.get());
  }

  private void markReleased(double chance) {
    match.truth.centerReleased(match.clock, match.box.manpower(match.ice.attacking()), chance);
  }
}
