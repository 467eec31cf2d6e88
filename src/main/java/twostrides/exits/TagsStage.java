package twostrides.exits;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import tech.tablesaw.api.Table;
import twostrides.game.NetEmpty;
import twostrides.game.Pressure;
import twostrides.game.TagEnd;
import twostrides.game.TaggedExit;
import twostrides.game.TaggedGame;
import twostrides.rink.Place;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;

/**
 * Tag sheets: rows that already are exits become rows of the same three tables. What a tag sheet
 * does not say stays missing.
 */
final class TagsStage {

  private TagsStage() {}

  /** Rows of tag sheets as exits, releases and restarts. */
  record Tables(Table exits, Table releases, Table restarts) {}

  /**
   * Builds the rows.
   *
   * @param games tagged games
   * @param book the book they were played by
   */
  static Tables run(List<TaggedGame> games, IcingBook book) {
    Shape.Filler exits = ExitsStage.shape().filler();
    Shape.Filler releases = ReleasesStage.shape().filler();
    Shape.Filler restarts = RestartsStage.shape().filler();
    for (TaggedGame g : games) {
      int exit = 0;
      int release = 0;
      for (TaggedExit t : g.exits()) {
        exit++;
        Tag f = new Tag(g, t, book);
        f.exit(exits.row().count(Columns.EXIT, exit));
        boolean letGoShort = f.shortOfCenter().isPresent();
        if (letGoShort) {
          release++;
          f.release(releases.row().count(Columns.RELEASE, release).count(Columns.EXIT, exit));
        }
        if (f.restart().orElse(false)) {
          Shape.Filler row = restarts.row().count(Columns.EXIT, exit);
          f.restartRow(letGoShort ? row.count(Columns.RELEASE, release) : row);
        }
      }
    }
    return new Tables(exits.table(), releases.table(), restarts.table());
  }

  /** One tagged exit and what follows from its words. */
  private record Tag(TaggedGame game, TaggedExit tag, IcingBook book) {

    WayOut way() {
      return find(WayOut.values(), WayOut::label, tag.wayOut()).orElseThrow();
    }

    Optional<AtCenter> atCenter() {
      return tag.atCenter().flatMap(w -> find(AtCenter.values(), AtCenter::label, w));
    }

    /**
     * Metres short, where the puck was let go with nobody receiving it and the tag gives a place.
     */
    OptionalDouble shortOfCenter() {
      if (!tag.letGo() || tag.place().isEmpty()) {
        return OptionalDouble.empty();
      }
      double s = game.rink().shortOfCenter(tag.place().get().x());
      return s > 0 ? OptionalDouble.of(s) : OptionalDouble.empty();
    }

    Optional<Boolean> restart() {
      return tag.ended()
          .filter(e -> e != TagEnd.STOPPED)
          .map(e -> e == TagEnd.ICING || e == TagEnd.OWN_ZONE_RESTART);
    }

    RestartCause cause() {
      return switch (tag.ended().orElse(TagEnd.STOPPED)) {
        case ICING -> RestartCause.ICING_WRITTEN;
        case OWN_ZONE_RESTART, STOPPED -> RestartCause.UNKNOWN;
        case OPPONENT, OWN, GOAL_AGAINST -> RestartCause.NONE;
      };
    }

    Optional<String> nextTouch() {
      return tag.ended()
          .map(
              e ->
                  switch (e) {
                    case OWN -> "own";
                    case OPPONENT, GOAL_AGAINST -> "opponent";
                    case ICING, OWN_ZONE_RESTART, STOPPED -> "none";
                  });
    }

    /** Where it ended, when that is where somebody had it next. */
    OptionalDouble nextTouchX() {
      boolean touched =
          tag.ended().filter(e -> e == TagEnd.OWN || e == TagEnd.OPPONENT).isPresent();
      return touched && tag.end().isPresent()
          ? OptionalDouble.of(tag.end().get().x())
          : OptionalDouble.empty();
    }

    void exit(Shape.Filler out) {
      common(out);
      out.number(Columns.ELAPSED_S, tag.elapsed())
          .number(Columns.RELEASE_ELAPSED_S, tag.elapsed())
          .text(Columns.RELEASE_PLAYER, tag.player())
          .text(Columns.WAY_OUT, way().label())
          .text(Columns.AT_CENTER, atCenter().map(AtCenter::label))
          .text(Columns.NET_EMPTY, tag.netEmpty().map(NetEmpty::word))
          .text(Columns.NEXT_TOUCH, nextTouch())
          .number(Columns.NEXT_TOUCH_X_M, nextTouchX())
          .flag(Columns.OWN_ZONE_RESTART, restart())
          .text(Columns.RESTART_CAUSE, cause().label());
    }

    void release(Shape.Filler out) {
      common(out);
      out.number(Columns.RELEASE_ELAPSED_S, tag.elapsed())
          .text(Columns.KIND, way() == WayOut.MISSED_PASS ? ReleasesStage.MISSED_PASS : "sent")
          .flag(Columns.MAY_BE_ICING, RulingsStage.mayBeIcing(book, facts(true)))
          .text(Columns.NET_EMPTY, tag.netEmpty().map(NetEmpty::word))
          .text(Columns.NEXT_TOUCH, nextTouch())
          .number(Columns.NEXT_TOUCH_X_M, nextTouchX())
          .flag(Columns.OWN_ZONE_RESTART, restart())
          .text(Columns.RESTART_CAUSE, cause().label());
      ruling(out);
    }

    private void ruling(Shape.Filler out) {
      boolean iced = cause() == RestartCause.ICING_WRITTEN;
      RulingsStage.fill(out, book, facts(iced), iced);
    }

    private Facts facts(boolean iced) {
      return SheetFacts.tagged(
          game.rink(), coordinate(Place::x), tag.strength().label(), iced, book);
    }

    void restartRow(Shape.Filler out) {
      common(out);
      out.flag(Columns.OWN_LAST, true)
          .number(Columns.RELEASE_ELAPSED_S, tag.elapsed())
          .text(Columns.RESTART_CAUSE, cause().label())
          .text(
              Columns.REASON,
              cause() == RestartCause.ICING_WRITTEN
                  ? "tagged as icing"
                  : "tagged as an own-zone restart");
      if (shortOfCenter().isPresent() || cause() == RestartCause.ICING_WRITTEN) {
        ruling(out);
      } else {
        RulingsStage.fillWithoutRelease(out);
      }
    }

    private void common(Shape.Filler out) {
      out.text(Columns.GAME, game.id())
          .text(Columns.DATE, game.date().map(LocalDate::toString))
          .count(Columns.PERIOD, tag.period())
          .text(Columns.TEAM, tag.team())
          .text(Columns.OPPONENT, tag.opponent())
          .text(Columns.PLAYER, tag.player())
          .text(Columns.STRENGTH, tag.strength().label())
          .number(Columns.RELEASE_X_M, coordinate(Place::x))
          .number(Columns.RELEASE_Y_M, coordinate(Place::y))
          .number(Columns.SHORT_OF_CENTER_M, shortOfCenter())
          .text(Columns.VENUE, game.venueOf(tag.team()))
          .text(Columns.PRESSURE, tag.pressure().map(Pressure::word))
          .text(Columns.SIDE, Circumstances.side(coordinate(Place::y), game.rink()))
          .number(Columns.VIDEO_S, tag.video())
          .text(Columns.SHEET, tag.sheet())
          .count(Columns.LINE, Math.toIntExact(tag.line()));
    }

    private OptionalDouble coordinate(Function<Place, Double> axis) {
      return tag.place().isPresent()
          ? OptionalDouble.of(axis.apply(tag.place().get()))
          : OptionalDouble.empty();
    }

    private static <T> Optional<T> find(T[] values, Function<T, String> label, String word) {
      return Arrays.stream(values).filter(v -> label.apply(v).equals(word)).findFirst();
    }
  }
}
