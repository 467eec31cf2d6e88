package twostrides.race;

/**
 * What a way out brings over the same simulations as every other.
 *
 * @param way what is done
 * @param meant chance of what it is meant to bring
 * @param restart chance of an own-zone restart
 * @param lost chance that the opponent takes the puck short of his own blue line
 * @param goal chance of a goal at an empty net
 * @param price attempts against within 20 s, beyond those that follow a puck sent deep
 * @param saves the price of releasing now less this price, simulation by simulation
 */
public record WayOutcome(
    Way way,
    Estimate meant,
    Estimate restart,
    Estimate lost,
    Estimate goal,
    Estimate price,
    Estimate saves) {}
