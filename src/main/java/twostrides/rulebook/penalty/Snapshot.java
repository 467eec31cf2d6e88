package twostrides.rulebook.penalty;

import java.util.List;

/**
 * What holds for every instant after {@code at}, until the next snapshot.
 *
 * @param at from when
 * @param ice who is on the ice
 * @param home penalties of the home team
 * @param away penalties of the visiting team
 */
record Snapshot(GameInstant at, OnIce ice, List<Term> home, List<Term> away) {

  private static final List<String> NUMBERS = List.of("no", "one", "two", "three", "four");

  List<Term> terms(Side side) {
    return side == Side.HOME ? home : away;
  }

  /**
   * One plain sentence on the strength of a team.
   *
   * @param side whose
   * @param rules the book
   * @param clock the game's
   * @param period the period of whoever asks
   */
  String why(Side side, PenaltyRules rules, Clock clock, int period) {
    OnIce.Team us = ice.team(side);
    OnIce.Team them = ice.team(side.other());
    List<String> listed = terms(side).stream().map(t -> t.text(clock, period)).toList();
    String text =
        headline(us, them, rules, clock.overtime(period))
            + (listed.isEmpty() ? "" : ": " + String.join(", ", listed));
    return text + remarks(us, them);
  }

  private static String headline(
      OnIce.Team us, OnIce.Team them, PenaltyRules rules, boolean overtime) {
    boolean fewer = overtime && rules.overtimeSkaters().isPresent();
    if (fewer) {
      return us.skaters() + " on " + them.skaters() + " in overtime";
    }
    int missing = PenaltyRules.FULL_SKATERS - us.skaters();
    if (missing <= 0) {
      return "at full strength";
    }
    String count = missing < NUMBERS.size() ? NUMBERS.get(missing) : Integer.toString(missing);
    return count + (missing == 1 ? " skater" : " skaters") + " short";
  }

  private static String remarks(OnIce.Team us, OnIce.Team them) {
    StringBuilder said = new StringBuilder();
    if (!us.shorthanded() && us.served() > 0 && us.skaters() == them.skaters()) {
      said.append("; as many as the other team, so not shorthanded");
    } else if (!us.shorthanded() && us.skaters() < them.skaters()) {
      said.append("; not shorthanded, since no penalty being served makes the difference");
    }
    if (us.signalled()) {
      said.append("; a penalty is signalled and does not count yet");
    }
    if (us.netEmpty()) {
      said.append("; goalkeeper off for an extra attacker");
    }
    return said.toString();
  }
}
