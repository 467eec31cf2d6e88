package twostrides.demo;

import java.util.EnumMap;
import twostrides.demo.ExitTruth.CenterMark;
import twostrides.demo.PenaltyBox.Manpower;
import twostrides.demo.Skater.Role;
import twostrides.demo.Words.Action;
import twostrides.demo.Words.Outcome;
import twostrides.rink.Place;

/**
 * A player with the puck between the own blue line and center. All shares are assumed; the chance
 * of bringing it to center is {@link Match#chanceOfCenter}, the same that the truth writes down for
 * those who sent it on.
 */
final class NeutralPlay {
  private enum Intent {
    ON,
    AHEAD,
    SEND,
    BACK,
    EMPTY_NET
  }

  private final Match match;
  private final Hands hands;
  private final Releases releases;
  private final Whistle whistle;

  NeutralPlay(Match match, Hands hands, Releases releases, Whistle whistle) {
    this.match = match;
    this.hands = hands;
    this.releases = releases;
    this.whistle = whistle;
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
      case AHEAD -> ahead(c);
      case SEND -> send(c);
      case BACK -> back(c);
      case EMPTY_NET -> atEmptyNet(c);
    };
  }

  private EnumMap<Intent, Double> weights(Carrier c) {
    double hurry = c.skater().habits().hurry();
    EnumMap<Intent, Double> w = new EnumMap<>(Intent.class);
    switch (c.pressure()) {
      case NONE -> fill(w, 72, 17, 5 * hurry, 3);
      case LIGHT -> fill(w, 56, 20, 17 * hurry, 2);
      case HEAVY -> fill(w, 30, 26, 38 * (0.7 + 0.3 * hurry), 2);
    }
    if (match.box.manpower(c.side()) == Manpower.SHORTHANDED) {
      w.computeIfPresent(Intent.SEND, (key, weight) -> weight * 3);
    }
    if (match.netEmpty(c.side().other()) && match.lead(c.side()) > 0) {
      w.put(Intent.EMPTY_NET, 35.0);
    }
    return w;
  }

  private static void fill(
      EnumMap<Intent, Double> w, double on, double ahead, double send, double back) {
    w.put(Intent.ON, on);
    w.put(Intent.AHEAD, ahead);
    w.put(Intent.SEND, send);
    w.put(Intent.BACK, back);
  }

  /** Keeps it and goes for center. */
  private Next on(Carrier c, boolean written) {
    double speed = match.dice.between(4.2, 6.6);
    Place to = match.spots.inside(match.dice.between(0.5, 5.5), c.at().y() * 0.95);
    if (match.dice.chance(match.chanceOfCenter(c))) {
      match.run(c.at().distanceTo(to) / speed);
      match.truth.center(CenterMark.GAINED);
      return hands.control(Action.TOUCH, c.movedTo(to));
    }
    if (!written) {
      match.log(match.row(Action.TOUCH, c));
    }
    double x = c.at().x() + match.dice.between(0.1, 0.9) * (-0.5 - c.at().x());
    Place lost = hands.clearOfCenter(Math.min(x, -0.5), c.at().y());
    match.run(c.at().distanceTo(lost) / speed);
    match.truth.center(CenterMark.LOST_SHORT);
    return hands.gets(Action.TAKEAWAY, c.side().other(), lost.seenByOpponent(), Role.DEFENDER);
  }

  /** To a teammate past center. */
  private Next ahead(Carrier c) {
    match.run(match.dice.between(0, 1.6));
    Place to = hands.clearOfCenter(match.dice.between(0.6, 7.4), match.dice.between(-12, 12));
    Skater receiver = hands.receiver(c, to, Role.FORWARD);
    double complete =
        switch (c.pressure()) {
          case NONE -> 0.88;
          case LIGHT -> 0.80;
          case HEAVY -> 0.62;
        };
    if (match.dice.chance(complete + c.skater().habits().passing())) {
      match.truth.center(CenterMark.GAINED);
      return hands.received(c, receiver, to);
    }
    releases.missed(c, receiver, to);
    markReleased(c);
    if (match.dice.chance(0.35)) {
      return releases.deep(c, releases.decide(c, 0.33, 0.12));
    }
    match.run(match.dice.between(1, 3.4));
    Place loose = hands.clearOfCenter(match.dice.between(-5, 7.3), match.dice.between(-12, 12));
    return match.dice.chance(0.2)
        ? hands.gets(Action.RECOVERY, c.side(), loose, Role.FORWARD)
        : hands.gets(Action.RECOVERY, c.side().other(), loose.seenByOpponent(), Role.DEFENDER);
  }

  /** Sends it on before center. */
  private Next send(Carrier start) {
    double step = Math.min(match.dice.between(0, 2), Math.max(0, -0.5 - start.at().x()));
    match.run(step / 4 + match.dice.between(0, 0.4));
    Carrier c =
        start.movedTo(match.spots.inside(Math.min(start.at().x() + step, -0.5), start.at().y()));
    boolean deep = match.dice.chance(0.78);
    if (deep) {
      Releases.Deep end = releases.decide(c, 0.09, 0.28);
      releases.send(c, end == Releases.Deep.REGAINED);
      markReleased(c);
      return releases.deepAfterRelease(c, end);
    }
    boolean regained = match.dice.chance(0.25);
    releases.send(c, regained);
    markReleased(c);
    match.run(match.dice.between(1.1, 3.2));
    Place loose = hands.clearOfCenter(match.dice.between(0.6, 7.3), match.dice.between(-12, 12));
    return regained
        ? hands.gets(Action.RECOVERY, c.side(), loose, Role.FORWARD)
        : hands.gets(Action.RECOVERY, c.side().other(), loose.seenByOpponent(), Role.DEFENDER);
  }

  /** Back to a defender in the own zone: a new attempt begins there. */
  private Next back(Carrier c) {
    double line = match.rink.blueLineNeutralEdge();
    Place to =
        match.spots.inside(-match.dice.between(line + 0.5, line + 9), match.dice.between(-9, 9));
    Skater receiver = hands.receiver(c, to, Role.DEFENDER);
    match.truth.center(CenterMark.BROUGHT_BACK);
    return hands.received(c, receiver, to);
  }

  private Next atEmptyNet(Carrier c) {
    boolean in = match.dice.chance(0.4);
    releases.shotFromAfar(c, in ? Outcome.GOAL : Outcome.MISSED);
    markReleased(c);
    if (in) {
      match.run((match.rink.goalLine() - c.at().x()) / match.dice.between(14, 20));
      return whistle.goal(c.side());
    }
    return releases.deep(c, releases.decide(c, 0.7, 0.1));
  }

  private void markReleased(Carrier c) {
    match.truth.centerReleased(match.clock, match.box.manpower(c.side()), match.chanceOfCenter(c));
  }
}
