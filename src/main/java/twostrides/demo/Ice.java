package twostrides.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import twostrides.demo.Skater.Role;
import twostrides.rink.Place;
import twostrides.rink.Rink;

/**
 * The skaters of a game as bodies, and the puck: who has it, or where it will be. Places are in the
 * home team's frame, m; all numbers are assumed and set so that distances and speeds come out like
 * those of tracked games (docs/demo.md).
 */
final class Ice {
  /** The world moves on by so many seconds at a time. */
  static final double STEP = 0.1;

  /** Bench doors and the penalty box, m from center. */
  private static final double DOOR_X = 4;

  /** The middle of a skater comes no nearer to the boards, m. */
  private static final double OFF_BOARDS = 0.5;

  private final Rink rink;
  private final Dice dice;
  private final List<Body> home = new ArrayList<>();
  private final List<Body> away = new ArrayList<>();
  private Optional<Body> holder = Optional.empty();
  private Side attacking = Side.HOME;
  private Place puck = new Place(0, 0);

  /** Whether the puck is nobody's and skaters go for it. */
  private boolean loose;

  private double sinceAim;

  private final double maxX;
  private final double maxY;
  private final double radius;

  Ice(Rink rink, Dice dice) {
    this.rink = rink;
    this.dice = dice;
    maxX = rink.length() / 2 - OFF_BOARDS;
    maxY = rink.width() / 2 - OFF_BOARDS;
    radius = rink.cornerRadius() - OFF_BOARDS;
  }

  Rink rink() {
    return rink;
  }

  List<Body> bodies(Side side) {
    return side == Side.HOME ? home : away;
  }

  private void each(Consumer<Body> todo) {
    home.forEach(todo);
    away.forEach(todo);
  }

  Optional<Body> holder() {
    return holder;
  }

  Side attacking() {
    return attacking;
  }

  boolean loose() {
    return loose;
  }

  /** Where the puck is or will be. */
  Place puck() {
    return puck;
  }

  /** 1 where the side attacks toward +x of the home team's frame, else -1. */
  static int direction(Side side) {
    return side == Side.HOME ? 1 : -1;
  }

  Optional<Body> body(Side side, Skater skater) {
    return bodies(side).stream().filter(b -> b.skater.equals(skater)).findFirst();
  }

  /** Where a body is in its own team's frame. */
  static Place place(Body body) {
    int dir = direction(body.side);
    return new Place(dir * body.x, dir * body.y);
  }

  /** Nobody is on the ice. */
  void clear() {
    home.clear();
    away.clear();
    holder = Optional.empty();
  }

  /** Everybody about a spot for a face-off. */
  void faceOff(Side side, List<Skater> skaters, Place homeSpot, double legs) {
    int dir = direction(side);
    List<Body> bodies = bodies(side);
    bodies.clear();
    int forwards = 0;
    int defenders = 0;
    for (Skater s : skaters) {
      boolean back = s.role() == Role.DEFENDER;
      int n = back ? defenders++ : forwards++;
      double behind = back ? 5.5 : n == 0 ? 0.7 : 1.2 + n / 3 * 4;
      double across = back ? (n == 0 ? 3.5 : -3.5) : n == 0 ? 0 : n % 2 == 0 ? 5.5 : -5.5;
      Body b = new Body(s, side, homeSpot.x() - dir * behind, homeSpot.y() + across);
      b.legs = legs;
      keepInside(b);
      bodies.add(b);
    }
    puck = homeSpot;
    attacking = side;
  }

  /** Skaters who leave vanish at the boards, those who come step in there; one may stay. */
  void change(Side side, List<Skater> wanted, Optional<Body> stays) {
    bodies(side).removeIf(b -> !wanted.contains(b.skater) && !stays.equals(Optional.of(b)));
    comesOn(side, wanted, wanted.size());
  }

  /** Those of the wanted who are not there yet step in at the bench, up to so many skaters. */
  void comesOn(Side side, List<Skater> wanted, int skaters) {
    List<Body> bodies = bodies(side);
    for (Skater s : wanted) {
      if (bodies.size() < skaters && body(side, s).isEmpty()) {
        bodies.add(new Body(s, side, -direction(side) * DOOR_X, 1 - rink.width() / 2));
      }
    }
    Steering.shape(this, side);
  }

  /** A player has the puck at a place of the home team's frame; he is there. */
  void held(Side side, Skater skater, Place at) {
    Body b = body(side, skater).orElseGet(() -> new Body(skater, side, at.x(), at.y()));
    b.x = at.x();
    b.y = at.y();
    boolean turned = side != attacking || loose;
    attacking = side;
    holder = Optional.of(b);
    loose = false;
    puck = at;
    b.goThrough(at.x() + b.vx * 0.5, at.y() + b.vy * 0.5, 4);
    rethink(turned);
  }

  /** The puck is under way to a place, from the side that attacks. */
  void sent(Place at, boolean free) {
    holder = Optional.empty();
    loose = free;
    puck = at;
    rethink(true);
  }

  /** A face-off is won back to a place: the winner's shape is that of a team with the puck. */
  void won(Side side, Place at) {
    attacking = side;
    sent(at, false);
  }

  /** Everybody looks again: shape, who presses, how hard; with a delay when play has turned. */
  private void rethink(boolean turned) {
    each(
        b -> {
          b.bound = false;
          b.late = turned ? b.skater.legs().reaction() * dice.between(0.7, 1.4) : b.late;
        });
    Steering.shape(this, Side.HOME);
    Steering.shape(this, Side.AWAY);
    freshMinds();
  }

  /** How hard everybody skates and who presses, drawn anew. */
  void freshMinds() {
    each(b -> b.effort = dice.between(0.88, 1));
    Steering.pressers(this, dice);
    Steering.aim(this);
    sinceAim = 0;
  }

  /** The world moves on. */
  void step(double dt) {
    sinceAim += dt;
    if (sinceAim >= 2 * STEP - 1e-9) {
      Steering.aim(this);
      sinceAim = 0;
    }
    each(
        b -> {
          b.step(dt);
          keepInside(b);
        });
    holder.ifPresent(b -> puck = new Place(b.x, b.y));
  }

  /** Nobody skates through the boards. */
  private void keepInside(Body b) {
    if (Math.abs(b.x) > maxX) {
      b.x = Math.copySign(maxX, b.x);
      b.vx = 0;
    }
    if (Math.abs(b.y) > maxY) {
      b.y = Math.copySign(maxY, b.y);
      b.vy = 0;
    }
    double dx = Math.abs(b.x) - (maxX - radius);
    double dy = Math.abs(b.y) - (maxY - radius);
    if (dx > 0 && dy > 0 && dx * dx + dy * dy > radius * radius) {
      double shrink = radius / Math.sqrt(dx * dx + dy * dy);
      b.x = Math.copySign(maxX - radius + dx * shrink, b.x);
      b.y = Math.copySign(maxY - radius + dy * shrink, b.y);
      b.vx *= 0.5;
      b.vy *= 0.5;
    }
  }

  /** Who of a side would be first at a place of the home team's frame. */
  Body soonest(Side side, Place at) {
    return bodies(side).stream()
        .min(Comparator.comparingDouble(b -> b.secondsTo(at)))
        .orElseThrow();
  }

  /** How a carry ended. */
  enum CarryEnd {
    THERE,
    REACHED,
    STILL_AT_IT
  }

  /**
   * The holder carries the puck up ice until he is there, a checker gets to him, or time is up.
   *
   * @param there in the frame of his team, m
   * @param speed of the carry, m/s
   * @param longest s
   * @param clock lets time go on: the game's, or this world's alone
   */
  CarryEnd carry(double there, double speed, double longest, DoubleConsumer clock) {
    Body carrier = holder.orElseThrow();
    int dir = direction(carrier.side);
    for (int i = 0; i * STEP < longest; i++) {
      if (dir * carrier.x >= there) {
        return CarryEnd.THERE;
      }
      if (Contact.reached(this, carrier).isPresent()) {
        return CarryEnd.REACHED;
      }
      if (i % 2 == 0) {
        Steering.head(this, carrier, speed);
      }
      clock.accept(STEP);
    }
    return CarryEnd.STILL_AT_IT;
  }

  /** Starts over as another world is now, with the puck's holder and the opponents alone. */
  void likeAround(Ice other) {
    Body carrier = other.holder.orElseThrow();
    clear();
    Body copy = new Body(carrier);
    bodies(carrier.side).add(copy);
    for (Body b : other.bodies(carrier.side.other())) {
      bodies(b.side).add(new Body(b));
    }
    holder = Optional.of(copy);
    attacking = carrier.side;
    loose = false;
    sinceAim = 0;
    puck = new Place(copy.x, copy.y);
  }
}
