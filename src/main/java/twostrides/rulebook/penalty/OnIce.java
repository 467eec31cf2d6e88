package twostrides.rulebook.penalty;

/**
 * Who is on the ice at an instant, goalkeepers not counted.
 *
 * @param home the home team
 * @param away the visiting team
 */
public record OnIce(Team home, Team away) {

  /**
   * One team.
   *
   * @param skaters skaters by penalties alone, 3 to 5; an extra attacker is not among them
   * @param netEmpty whether the goalkeeper is off for an extra attacker
   * @param served penalties running that cost a skater; offset ones are not among them
   * @param waiting penalties whose clock waits: for a place in the box, or for the same player's
   *     earlier one
   * @param signalled whether a penalty is signalled on this team
   * @param shorthanded whether it has fewer skaters because of penalties being served
   */
  public record Team(
      int skaters,
      boolean netEmpty,
      int served,
      int waiting,
      boolean signalled,
      boolean shorthanded) {}

  /**
   * One of the two.
   *
   * @param side which
   */
  public Team team(Side side) {
    return side == Side.HOME ? home : away;
  }

  /**
   * Skaters by penalties alone.
   *
   * @param side which team
   */
  public int skaters(Side side) {
    return team(side).skaters();
  }

  /**
   * Whether a team has fewer skaters than the other because of penalties being served. A pulled
   * goalkeeper never makes a team shorthanded (NHL 84.1: S; IIHF glossary: D), nor does, by most
   * books, an expired major that nobody sat out (NHL 81.6: S).
   *
   * @param side which team
   */
  public boolean shorthanded(Side side) {
    return team(side).shorthanded();
  }
}
