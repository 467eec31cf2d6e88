package twostrides.exits;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import twostrides.game.StopReason;
import twostrides.race.TravelBound;
import twostrides.rink.Rink;
import twostrides.rink.Zone;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;

/**
 * Why a face-off is where it is. A written reason wins; without one, icing is inferred only when
 * release, manpower, spot and time all fit, and whatever does not fit is named in the reason.
 */
final class StoppageCause {

  /**
   * How far a face-off's place may be written from the spot: a player's stick and the sheet's step,
   * metres. Assumed.
   */
  static final double SPOT_SLACK = 1.5;

  /** Written reasons that win over others; the rest are alike. */
  private static final List<StopReason> RANK = List.of(StopReason.ICING, StopReason.PENALTY);

  private final PuckTimeline timeline;
  private final SheetFacts facts;

  StoppageCause(PuckTimeline timeline) {
    this.timeline = timeline;
    this.facts = new SheetFacts(timeline);
  }

  /**
   * A cause with its reason.
   *
   * @param cause the cause
   * @param reason why, in words
   */
  record Finding(RestartCause cause, String reason) {}

  /**
   * The reason written between the last touch and a face-off, or between a touch and the period's
   * end. Of several the first counts, but icing before a penalty, and a penalty before any other.
   */
  Optional<PuckEvent> writtenStop(PuckEvent faceoffOrEnd) {
    List<PuckEvent> before = timeline.before(faceoffOrEnd);
    int from = before.size();
    while (from > 0 && before.get(from - 1).kind() == PuckEvent.Kind.STOP) {
      from--;
    }
    return before.subList(from, before.size()).stream()
        .min(Comparator.comparingInt(StoppageCause::rank));
  }

  private static int rank(PuckEvent stop) {
    int at = RANK.indexOf(stop.stop().orElseThrow());
    return at < 0 ? RANK.size() : at;
  }

  /**
   * The cause of a face-off in a team's own zone.
   *
   * @param team whose zone it is
   * @param faceoff the face-off
   */
  Finding cause(String team, PuckEvent faceoff) {
    Optional<PuckEvent> stop = writtenStop(faceoff);
    if (stop.isPresent()) {
      return written(team, stop.get());
    }
    Optional<PuckEvent> control = timeline.lastControlBefore(faceoff);
    if (control.isEmpty()) {
      return unknown("no touch is written since the face-off before");
    }
    PuckEvent last = control.get();
    if (!last.by(team)) {
      return unknown(
          "the opponent had the puck last, and the sheet does not say what stopped play");
    }
    return last.release()
        ? inferred(last, faceoff)
        : unknown("the last touch was no release, and the sheet does not say what stopped play");
  }

  private static Finding written(String team, PuckEvent stop) {
    StopReason reason = stop.stop().orElseThrow();
    if (reason == StopReason.PENALTY) {
      return new Finding(RestartCause.PENALTY, "the sheet says penalty");
    }
    if (reason != StopReason.ICING) {
      return new Finding(RestartCause.OTHER, "the sheet says " + reason.word().replace('_', ' '));
    }
    return stop.team().isEmpty() || stop.by(team)
        ? new Finding(RestartCause.ICING_WRITTEN, "the sheet says icing")
        : new Finding(RestartCause.OTHER, "the sheet says icing against the other team");
  }

  private Finding inferred(PuckEvent release, PuckEvent faceoff) {
    double[] far = timeline.toFarGoalLine(release);
    if (far.length == 0) {
      return unknown(
          release.zone().equals(Optional.of(Zone.NEUTRAL))
              ? "the sheet does not say on which side of center the puck was let go"
              : "the sheet has no place for the release");
    }
    Optional<PuckEvent> whistleTouch = Optional.empty();
    for (PuckEvent m : timeline.events().subList(release.index() + 1, faceoff.index())) {
      if (m.touch()) {
        return unknown("the puck was touched after the release");
      }
      if (m.kind() == PuckEvent.Kind.WHISTLE_TOUCH && whistleTouch.isEmpty()) {
        whistleTouch = Optional.of(m);
      }
    }
    String from =
        release.x().isPresent()
            ? String.format(
                Locale.ROOT,
                "let go %.1f m short of center",
                timeline.rink().shortOfCenter(release.x().getAsDouble()))
            : "let go in the own zone";
    // A face-off after the puck went the length says that nothing was waved off.
    Ruling ruling = Judge.judge(timeline.settings().book(), facts.iced(release));
    if (ruling instanceof Ruling.NotYetDecided open) {
      return unknown(
          "released short of center; it would be icing, " + open.open().get(0).settles());
    }
    if (!(ruling instanceof Ruling.Icing)) {
      return unknown("no icing: " + ruling.reason().text());
    }
    if (!onEndSpot(faceoff)) {
      return unknown("the face-off is not at an end-zone spot");
    }
    PuckEvent until = whistleTouch.orElse(faceoff);
    String way =
        Arrays.stream(far)
                .mapToObj(m -> String.format(Locale.ROOT, "%.0f", m))
                .collect(Collectors.joining(" to "))
            + " m to the goal line in "
            + seconds(until.elapsed() - release.elapsed())
            + " s";
    TravelBound.Fit fit = timeline.timeToGoTheLength(release, until);
    if (fit == TravelBound.Fit.TOO_SLOW) {
      return unknown("too slow for an iced puck, " + way + ": rows are missing");
    }
    if (whistleTouch.isPresent()) {
      return timeline.mayHaveGoneTheLength(release, until)
          ? inferred(from + ", not exempt, and the opponent got to it in his end as play stopped")
          : unknown("too quick for any puck, " + way + ": a clock is wrong");
    }
    return fit == TravelBound.Fit.TOO_QUICK
        ? unknown("too quick for a puck that went the length, " + way + ": likely out of play")
        : inferred(from + ", not exempt, and " + way + " fit");
  }

  private static Finding inferred(String reason) {
    return new Finding(RestartCause.ICING_INFERRED, reason);
  }

  /** Seconds as a sheet would write them: no more decimals than are needed, at most one. */
  private static String seconds(double s) {
    return BigDecimal.valueOf(s)
        .setScale(1, RoundingMode.HALF_EVEN)
        .stripTrailingZeros()
        .toPlainString();
  }

  /** Whether a draw is at an end-zone spot; of a zone alone, every spot of an end zone is one. */
  private boolean onEndSpot(PuckEvent faceoff) {
    if (faceoff.place().isEmpty()) {
      return faceoff.zone().filter(z -> z != Zone.NEUTRAL).isPresent();
    }
    Rink rink = timeline.rink();
    double slack = SPOT_SLACK + timeline.game().placeStep();
    return faceoff
        .place()
        .filter(p -> Math.abs(Math.abs(p.x()) - rink.endSpotX()) <= slack)
        .filter(p -> Math.abs(Math.abs(p.y()) - rink.endSpotY()) <= slack)
        .isPresent();
  }

  private static Finding unknown(String reason) {
    return new Finding(RestartCause.UNKNOWN, reason);
  }
}
