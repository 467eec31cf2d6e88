package twostrides.rulebook.penalty;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import twostrides.rulebook.penalty.BoxEvent.Called;

/** The penalties of one team that cost it a skater: those running, and those whose clock waits. */
final class Bench {

  /** What a reading of the clock freed: players, and how many of them had nobody in the box. */
  record Freed(List<ServedPenalty> ended, List<Called> comeBack, List<Called> emptyBox) {}

  private final int most;
  private final List<Seat> seats = new ArrayList<>();

  /**
   * Nobody in the box.
   *
   * @param most penalties that can run at once
   */
  Bench(int most) {
    this.most = most;
  }

  /** Seats in the order in which they run or wait. */
  List<Seat> seats() {
    return List.copyOf(seats);
  }

  boolean empty() {
    return seats.isEmpty();
  }

  int running() {
    return (int) seats.stream().filter(Seat::running).count();
  }

  /** Penalties whose clock waits, behind another of the same player or for a place. */
  int waiting() {
    int calls = 0;
    for (Seat s : seats) {
      long distinct = s.penalties().stream().map(ServedPenalty::call).distinct().count();
      calls += (int) distinct - (s.running() ? 1 : 0);
    }
    return calls;
  }

  /** When the next penalty runs out, ms; {@link Long#MAX_VALUE} when none runs. */
  long nextExpiry() {
    return seats.stream()
        .filter(Seat::running)
        .mapToLong(Seat::endsAt)
        .min()
        .orElse(Long.MAX_VALUE);
  }

  /**
   * Never fewer than the floor (NHL 26.1: S): what finds no place waits, and its clock starts when
   * a place comes free.
   *
   * @return how many started
   */
  int startWaiting(long now) {
    int started = 0;
    for (Seat s : seats) {
      if (!s.running() && running() < most) {
        s.start(now);
        started++;
      }
    }
    return started;
  }

  /**
   * Sits down the penalties of one stoppage.
   *
   * @param penalties those that count
   * @param now play since the game began, ms
   * @param doubts takes what the sheet leaves open
   */
  void sit(List<ServedPenalty> penalties, long now, Consumer<String> doubts) {
    List<ServedPenalty> sorted = new ArrayList<>(penalties);
    sorted.sort(ServedPenalty.CANONICAL);
    List<Called> calls = sorted.stream().map(ServedPenalty::call).toList();
    List<Seat> fresh = new ArrayList<>();
    for (ServedPenalty b : sorted) {
      Optional<Seat> here = seats.stream().filter(s -> s.takes(b, calls)).findFirst();
      if (here.isPresent()) {
        here.get().add(b);
      } else {
        Seat seat = new Seat(b);
        seats.add(seat);
        fresh.add(seat);
      }
    }
    startWaiting(now);
    if (itMattersWhoWaits(fresh)) {
      doubts.accept(
          "penalties of different length were called at one stoppage and one of them waits; no book"
              + " read says which, taken: majors start first");
    }
  }

  /** Where some of one stoppage run and others wait, and they are not alike, it matters which. */
  private static boolean itMattersWhoWaits(List<Seat> fresh) {
    boolean runs = fresh.stream().anyMatch(Seat::running);
    boolean waits = fresh.stream().anyMatch(s -> !s.running());
    long kinds =
        fresh.stream()
            .map(s -> s.penalties().stream().map(ServedPenalty::millis).toList())
            .distinct()
            .count();
    return runs && waits && kinds > 1;
  }

  /**
   * Ends every penalty that runs out now. A player comes back only where the team is entitled to
   * more skaters (NHL 26.2: S): where another penalty waited, that one starts and the number stays.
   */
  Freed expire(long now) {
    List<ServedPenalty> ended = new ArrayList<>();
    List<Called> manned = new ArrayList<>();
    List<Called> unmanned = new ArrayList<>();
    for (Seat s : List.copyOf(seats)) {
      if (s.running() && s.endsAt() == now) {
        ServedPenalty b = s.end(now);
        ended.add(b);
        if (s.done()) {
          seats.remove(s);
          (b.call().emptyBox() && !b.minor() ? unmanned : manned).add(b.call());
        }
      }
    }
    int places = manned.size() + unmanned.size() - startWaiting(now);
    int back = Math.min(places, manned.size());
    return new Freed(
        List.copyOf(ended),
        List.copyOf(manned.subList(0, back)),
        List.copyOf(unmanned.subList(0, places - back)));
  }

  /**
   * A goal ends the minor with the least time left (NHL 16.2: S), of those being served. Of a
   * double minor it is the half being served, and the next half starts (NHL 18.2: S). Of two that
   * would run out together, the one whose player comes back.
   *
   * @param now play since the game began, ms
   * @param doubts takes what the choice leaves open
   * @return whether there was one to end
   */
  boolean endLeastLeft(long now, Consumer<String> doubts) {
    List<Seat> minors =
        seats.stream()
            .filter(s -> s.running() && s.current().minor())
            .sorted(
                Comparator.comparingLong(Seat::endsAt)
                    .thenComparingLong(Seat::behind)
                    .thenComparing(Seat::current, ServedPenalty.CANONICAL))
            .toList();
    if (minors.isEmpty()) {
      return false;
    }
    Seat least = minors.get(0);
    if (minors.stream()
        .anyMatch(s -> s.endsAt() == least.endsAt() && s.behind() != least.behind())) {
      doubts.accept(
          "two minors had the same time left when the goal came; no book read says which ends,"
              + " taken: the one whose player comes back");
    }
    least.end(now);
    if (least.done()) {
      seats.remove(least);
    }
    startWaiting(now);
    return true;
  }
}
