package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import twostrides.rulebook.penalty.BoxEvent.Called;

/**
 * A penalty as it stands at an instant, for messages.
 *
 * @param call the penalty
 * @param endsAt when it runs out if nothing ends it sooner, ms of play since the game began; empty
 *     while its clock waits, and when it has run out
 * @param ranOut whether it has run out and the team still is a skater down, nobody being in the box
 */
record Term(Called call, OptionalLong endsAt, boolean ranOut) {

  /** Every penalty of a bench: the one running of each seat first, then what waits behind it. */
  static List<Term> of(Bench bench, List<Called> ranOut) {
    List<Term> running = new ArrayList<>();
    List<Term> waiting = new ArrayList<>();
    for (Seat s : bench.seats()) {
      Called current = s.current().call();
      List<ServedPenalty> penalties = s.penalties();
      List<Called> behind = new ArrayList<>();
      long own = 0;
      for (ServedPenalty b : penalties.subList(1, penalties.size())) {
        if (b.call().equals(current)) {
          own += b.millis();
        } else if (!behind.contains(b.call())) {
          behind.add(b.call());
        }
      }
      if (s.running()) {
        running.add(new Term(current, OptionalLong.of(s.endsAt() + own), false));
      } else {
        waiting.add(new Term(current, OptionalLong.empty(), false));
      }
      behind.forEach(c -> waiting.add(new Term(c, OptionalLong.empty(), false)));
    }
    running.addAll(waiting);
    ranOut.forEach(c -> running.add(new Term(c, OptionalLong.empty(), true)));
    return List.copyOf(running);
  }

  /** The penalty in words: {@code minor to 12 served by 7}. */
  static String name(Called call) {
    String to = call.player().map(p -> " to " + p).orElse("");
    String by =
        call.emptyBox()
            ? ""
            : call.servedBy()
                .filter(s -> !call.player().equals(Optional.of(s)))
                .map(s -> " served by " + s)
                .orElse("");
    return call.kind().text() + to + by;
  }

  /**
   * The penalty with its end: {@code minor to 12 until 14:35 (sheet line 40)}.
   *
   * @param clock the game's
   * @param period the period of whoever asks
   */
  String text(Clock clock, int period) {
    String state;
    if (ranOut) {
      state = " ran out with nobody in the box";
    } else {
      state = endsAt.isPresent() ? " until " + clock.text(endsAt.getAsLong(), period) : " waits";
    }
    return name(call) + state + " (" + call.ref() + ")";
  }
}
