package twostrides.exits;

import java.util.List;
import java.util.Optional;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;

/** Puts what the sheet says of the releases of one game to the book, and to other books. */
final class Rulings {

  private final PuckTimeline timeline;
  private final StoppageCause stops;
  private final SheetFacts facts;

  Rulings(PuckTimeline timeline) {
    this.timeline = timeline;
    this.stops = new StoppageCause(timeline);
    this.facts = new SheetFacts(timeline);
  }

  BookRuling of(PuckEvent release) {
    boolean written =
        finding(release).map(f -> f.cause() == RestartCause.ICING_WRITTEN).orElse(false);
    return BookRuling.of(timeline.settings().book(), known(release), written);
  }

  List<OtherRuling> byOtherBooks(PuckEvent release) {
    List<IcingBook> others = timeline.settings().others();
    if (others.isEmpty()) {
      return List.of();
    }
    Facts known = known(release);
    Ruling played = Judge.judge(timeline.settings().book(), known);
    return others.stream()
        .map(b -> new OtherRuling(b.id(), Judge.judge(b, known), played))
        .toList();
  }

  /** Whether the book could call the release icing: not of a team that it exempts. */
  boolean mayBeIcing(PuckEvent release) {
    return mayBeIcing(timeline.settings().book(), facts.iced(release));
  }

  /**
   * Whether a book could call icing.
   *
   * @param wentTheIcingWay the facts, had the puck gone the icing way
   */
  static boolean mayBeIcing(IcingBook book, Facts wentTheIcingWay) {
    return !(Judge.judge(book, wentTheIcingWay) instanceof Ruling.NoIcing);
  }

  private Facts known(PuckEvent release) {
    boolean iced = finding(release).map(f -> f.cause().icing()).orElse(false);
    return iced ? facts.iced(release) : facts.notIced(release);
  }

  private Optional<StoppageCause.Finding> finding(PuckEvent release) {
    String team = release.team().orElseThrow();
    return timeline
        .faceOffWithoutControl(release, e -> false)
        .filter(f -> timeline.surelyInOwnZone(f, team))
        .map(f -> stops.cause(team, f));
  }
}
