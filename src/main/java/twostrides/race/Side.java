package twostrides.race;

/**
 * One team in a race to the puck: who is still on his way, and when the first is there. Begun anew
 * for every draw; for one thread. Times are seconds since the release.
 */
final class Side {

  private final int[] team;
  private final double scale;
  private final double behind;
  private double topSpeed;

  // Who is on his way, and the chance from which his arrival error is drawn.
  private final int[] waiting;
  private final double[] chance;
  private int waits;

  // Who is there, error left out, and his chance; the first so many are counted in.
  private final double[] arrivals;
  private final double[] drawn;
  private int arrived;
  private int counted;

  private double soonest;
  private double first;

  /**
   * A team.
   *
   * @param team numbers in the crowd
   * @param scale scale of the arrival error, s
   * @param behind seconds by which the other side has a head start
   */
  Side(int[] team, double scale, double behind) {
    this.behind = behind;
    this.team = team;
    this.scale = scale;
    waiting = new int[team.length];
    chance = new double[team.length];
    arrivals = new double[team.length];
    drawn = new double[team.length];
  }

  /** Everybody, by his number in the crowd. */
  int[] team() {
    return team;
  }

  /** The team's legs in this draw, m/s. */
  double topSpeed() {
    return topSpeed;
  }

  /**
   * Gives the team its legs for a draw.
   *
   * @param speed top speed, m/s
   */
  void runs(double speed) {
    topSpeed = speed;
  }

  /**
   * How many of the team can have their sticks on the puck at a look, on their way or not.
   *
   * @param looks the looks of this draw, which then say who
   * @param k the look
   */
  int there(Looks looks, int k) {
    return looks.there(team, team.length, topSpeed, k);
  }

  /**
   * Sets everybody on his way.
   *
   * @param start where the numbers of the draw start, {@link Draws#start}
   */
  void begin(long start) {
    waits = team.length;
    arrived = 0;
    counted = 0;
    soonest = Double.POSITIVE_INFINITY;
    first = Double.POSITIVE_INFINITY;
    for (int w = 0; w < waits; w++) {
      waiting[w] = team[w];
      chance[w] = Crowd.chance(start, team[w]);
    }
  }

  /**
   * Takes in those who can have their sticks on the puck at a look.
   *
   * @param looks the looks of this draw
   * @param k the look
   * @return the soonest arrival of all so far, error left out; infinite when there is none
   */
  double arriveAt(Looks looks, int k) {
    // The last first, so that whoever takes a place in the list that became free has been seen.
    for (int there = looks.there(waiting, waits, topSpeed, k) - 1; there >= 0; there--) {
      int w = looks.found(there);
      arrive(w, looks.arrival(waiting[w], topSpeed, k));
    }
    return soonest;
  }

  /**
   * Takes in everybody else, after the last look.
   *
   * @param looks the looks of this draw
   * @return the soonest arrival of all, error left out; infinite for a team of none
   */
  double arriveAfterAll(Looks looks) {
    while (waits > 0) {
      arrive(waits - 1, looks.afterAll(waiting[waits - 1], topSpeed));
    }
    return soonest;
  }

  private void arrive(int w, double time) {
    soonest = Math.min(soonest, time);
    arrivals[arrived] = time;
    drawn[arrived++] = chance[w];
    waits--;
    waiting[w] = waiting[waits];
    chance[w] = chance[waits];
  }

  /**
   * Gives everybody newly there his error.
   *
   * @param latest arrivals after it, error left out, are left out
   */
  void count(double latest) {
    for (; counted < arrived; counted++) {
      double t = arrivals[counted];
      if (t <= latest) {
        first = Math.min(first, behind + t + scale * Arrival.logisticDraw(drawn[counted]));
      }
    }
  }

  /** When the first who is counted in is there, error and all; infinite when nobody is. */
  double first() {
    return first;
  }

  /**
   * Whether this side's first is ahead by a lead whoever else arrives.
   *
   * @param other the other side
   * @param now nobody who is still on his way arrives sooner, error left out
   * @param lead seconds
   */
  boolean surelyAheadOf(Side other, double now, double lead) {
    return other.first - first >= lead && now + other.leastError() - first >= lead;
  }

  /** The least error of those on their way, s; infinite when there are none. */
  private double leastError() {
    double least = 1;
    for (int w = 0; w < waits; w++) {
      least = Math.min(least, chance[w]);
    }
    // The error grows with the chance, so one logarithm is enough.
    return least < 1 ? behind + scale * Arrival.logisticDraw(least) : Double.POSITIVE_INFINITY;
  }
}
