package twostrides.exits;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import tech.tablesaw.api.Table;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;
import twostrides.rulebook.RulingWords;

/**
 * What the book says of each release, and what other books would say: the ruling columns of the
 * releases and restarts tables, and the rulings table with one row a release and other book.
 */
final class RulingsStage {

  private final Play play;
  private final StopFinder stops;
  private final SheetFacts facts;

  RulingsStage(Play play) {
    this.play = play;
    this.stops = new StopFinder(play);
    this.facts = new SheetFacts(play);
  }

  /** The columns of a ruling, in order. */
  static Shape declare(Shape shape) {
    return shape.text(Columns.RULING, Columns.RULING_REASON, Columns.CLAUSE, Columns.AUDIT);
  }

  /** The rulings table's columns, in the order in which they are written out. */
  static Shape shape() {
    return new Shape("rulings")
        .text(Columns.GAME)
        .count(Columns.RELEASE, Columns.PERIOD)
        .number(Columns.RELEASE_ELAPSED_S)
        .text(Columns.TEAM, Columns.PLAYER, Columns.STRENGTH)
        .number(Columns.RELEASE_X_M)
        .text(
            Columns.BOOK,
            Columns.RULING,
            Columns.RULING_REASON,
            Columns.CLAUSE,
            Columns.PLAYED_RULING)
        .flag(Columns.DIFFERS)
        .number(Columns.VIDEO_S)
        .text(Columns.SHEET)
        .count(Columns.LINE);
  }

  /**
   * Fills the ruling columns of the row under way.
   *
   * @param out the row
   * @param release the release
   */
  void fill(Shape.Filler out, Move release) {
    Optional<StopFinder.Finding> finding = finding(release);
    Facts known = known(release, finding);
    boolean written = finding.map(f -> f.cause() == RestartCause.ICING_WRITTEN).orElse(false);
    fill(out, play.settings().book(), known, written);
  }

  /**
   * Fills the ruling columns of the row under way.
   *
   * @param out the row
   * @param book the book
   * @param known what the sheet says
   * @param written whether the sheet says icing
   */
  static void fill(Shape.Filler out, IcingBook book, Facts known, boolean written) {
    Ruling ruling = Judge.judge(book, known);
    out.text(Columns.RULING, ruling.word())
        .text(Columns.RULING_REASON, RulingWords.sentence(ruling))
        .text(Columns.CLAUSE, ruling.reason().cite());
    // An open fact is no contradiction: the officials saw what the sheet does not say.
    boolean contradicts =
        !(ruling instanceof Ruling.Icing) && !(ruling instanceof Ruling.NotYetDecided);
    if (written && contradicts) {
      out.text(
          Columns.AUDIT,
          "the sheet says icing, this book would not call it: " + ruling.reason().text());
    }
  }

  /**
   * Whether the book could call a release icing, had it gone the icing way.
   *
   * @param release the release
   */
  boolean mayBeIcing(Move release) {
    return mayBeIcing(play.settings().book(), facts.iced(release));
  }

  /**
   * Whether the book could call a release icing.
   *
   * @param book the book
   * @param wentTheIcingWay its facts, had it gone the icing way
   */
  static boolean mayBeIcing(IcingBook book, Facts wentTheIcingWay) {
    return !(Judge.judge(book, wentTheIcingWay) instanceof Ruling.NoIcing);
  }

  /** Says in the row under way that nothing was sent the length. */
  static void fillWithoutRelease(Shape.Filler out) {
    out.text(Columns.RULING, "no icing")
        .text(Columns.RULING_REASON, "The last touch was no release: nothing was sent the length.");
  }

  /** Whether one is icing and the other is not, or one is open and the other is not. */
  private static boolean differs(Ruling a, Ruling b) {
    return a instanceof Ruling.Icing != b instanceof Ruling.Icing
        || a instanceof Ruling.NotYetDecided != b instanceof Ruling.NotYetDecided;
  }

  private Facts known(Move release, Optional<StopFinder.Finding> finding) {
    boolean iced = finding.map(StopFinder.Finding::icing).orElse(false);
    return iced ? facts.iced(release) : facts.notIced(release);
  }

  /** Why the draw after a release is where it is, when the release was the last touch before it. */
  private Optional<StopFinder.Finding> finding(Move release) {
    String team = release.team().orElseThrow();
    return play.drawWithoutControl(release, m -> false)
        .filter(draw -> play.surelyInOwnZone(draw, team))
        .map(draw -> stops.cause(team, draw));
  }

  /**
   * What other books would say of every release short of center.
   *
   * @param releases the releases table, to name each release
   * @param play the moves
   */
  static Table run(Table releases, Play play) {
    RulingsStage stage = new RulingsStage(play);
    Shape.Filler out = shape().filler();
    List<IcingBook> others = play.settings().others();
    if (others.isEmpty()) {
      return out.table();
    }
    int row = -1;
    for (Move m : play.moves()) {
      if (play.shortOfCenter(m).isEmpty()) {
        continue;
      }
      row++;
      Facts known = stage.known(m, stage.finding(m));
      Ruling played = Judge.judge(play.settings().book(), known);
      for (IcingBook other : others) {
        Ruling ruling = Judge.judge(other, known);
        out.row()
            .text(Columns.GAME, m.game())
            .count(Columns.RELEASE, OptionalInt.of(releases.intColumn(Columns.RELEASE).getInt(row)))
            .count(Columns.PERIOD, m.period())
            .number(Columns.RELEASE_ELAPSED_S, m.elapsed())
            .text(Columns.TEAM, m.team())
            .text(Columns.PLAYER, m.player())
            .text(Columns.STRENGTH, m.strength())
            .number(Columns.RELEASE_X_M, m.x())
            .text(Columns.BOOK, other.id())
            .text(Columns.RULING, ruling.word())
            .text(Columns.RULING_REASON, RulingWords.sentence(ruling))
            .text(Columns.CLAUSE, ruling.reason().cite())
            .text(Columns.PLAYED_RULING, played.word())
            .flag(Columns.DIFFERS, differs(ruling, played))
            .number(Columns.VIDEO_S, m.video())
            .text(Columns.SHEET, m.sheet())
            .count(Columns.LINE, m.line());
      }
    }
    return out.table();
  }
}
