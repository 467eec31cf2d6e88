package twostrides.exits;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import twostrides.game.Strength;
import twostrides.game.TagEnd;
import twostrides.game.TaggedExit;
import twostrides.game.TaggedGame;
import twostrides.rink.Place;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;

/**
 * Rows of a tag sheet, which already are exits or say what happened without one, become the records
 * of their game.
 */
public final class TagReader {

  private final TaggedGame game;
  private final IcingBook book;
  private final RaceSettings race;
  private final List<Exit> exits = new ArrayList<>();
  private final List<Release> releases = new ArrayList<>();
  private final List<Restart> restarts = new ArrayList<>();
  private final TagTimes times;

  private TagReader(TaggedGame game, IcingBook book, RaceSettings race) {
    this.game = game;
    this.book = book;
    this.race = race;
    this.times = new TagTimes(game);
  }

  /**
   * Reads a tagged game.
   *
   * @param game the game
   * @param run books of each season
   */
  public static GameRecords read(TaggedGame game, Settings run) {
    TaggedGame held = game.withExits(held(game.exits()));
    TagReader reader = new TagReader(held, run.on(game.date()).book(), run.race());
    held.exits().forEach(reader::row);
    return new GameRecords(
        game.fixture(),
        reader.exits,
        reader.releases,
        reader.restarts,
        reader.times.kills(reader.exits),
        List.of(),
        0,
        new Carries(List.of()));
  }

  /** From a row that says a strength alone, that strength holds until a row shows another. */
  private static List<TaggedExit> held(List<TaggedExit> rows) {
    List<TaggedExit> all = new ArrayList<>();
    Optional<TaggedExit> said = Optional.empty();
    for (TaggedExit row : rows) {
      boolean known = row.strength() != Strength.UNKNOWN;
      if (known && (said.isPresent() || row.strengthAlone())) {
        said = Optional.of(row);
      }
      if (known || said.isEmpty()) {
        all.add(row);
      } else {
        Strength held = said.get().strength();
        all.add(row.withStrength(said.get().team().equals(row.team()) ? held : held.ofOpponent()));
      }
    }
    return all;
  }

  private void row(TaggedExit tag) {
    Optional<WayOut> way = tag.wayOut().flatMap(w -> find(WayOut.values(), WayOut::label, w));
    if (way.isEmpty() && tag.ended().isEmpty()) {
      return;
    }
    Situation at = situation(tag);
    ExitOutcome outcome = outcome(tag);
    Optional<Exit> exit =
        way.map(
            w ->
                new Exit(
                    exits.size() + 1,
                    tag.elapsed(),
                    at,
                    tag.player(),
                    w,
                    tag.atCenter().flatMap(c -> find(AtCenter.values(), AtCenter::label, c)),
                    outcome,
                    OptionalDouble.empty()));
    exit.ifPresent(exits::add);
    boolean iced = outcome.cause() == RestartCause.ICING_WRITTEN;
    BookRuling ruling = BookRuling.of(book, facts(tag, iced), iced);
    Optional<Release> release = Optional.empty();
    if (at.where().shortOfCenter().isPresent()) {
      LetGo.Kind kind =
          way.equals(Optional.of(WayOut.MISSED_PASS)) ? LetGo.Kind.MISSED_PASS : LetGo.Kind.SENT;
      int number = releases.size() + 1;
      LetGo how = new LetGo(kind, Optional.empty(), OptionalDouble.empty());
      release =
          Optional.of(
              new Release(
                  number,
                  exit,
                  at,
                  how,
                  outcome,
                  new Release.Rulings(
                      ruling, Rulings.mayBeIcing(book, facts(tag, true)), List.of()),
                  Optional.empty(),
                  Release.puck(at, number, how, outcome, race)));
      release.ifPresent(releases::add);
    }
    if (outcome.restarted().orElse(false)) {
      Optional<TaggedExit> draw = times.faceOffAfter(tag);
      restarts.add(
          new Restart(
              new Restart.FaceOff(
                  draw.map(this::when).orElse(at.when()),
                  outcome.restartElapsed(),
                  outcome.cause(),
                  iced ? "tagged as icing" : "tagged as an own-zone restart",
                  times.won(tag),
                  Optional.empty(),
                  Optional.empty(),
                  Restart.ShiftTimes.UNKNOWN),
              at,
              Optional.of(true),
              Optional.of(
                  new Restart.Behind(
                      release,
                      exit,
                      release.isPresent() || iced ? ruling : BookRuling.NO_RELEASE,
                      draw.isPresent()
                          ? OptionalDouble.of(draw.get().elapsed() - tag.elapsed())
                          : OptionalDouble.empty()))));
    }
  }

  private Situation situation(TaggedExit tag) {
    return new Situation(
        when(tag),
        tag.team(),
        tag.opponent(),
        tag.player(),
        new Where(tag.place(), shortOfCenter(tag), Optional.empty()),
        new Onward(Optional.empty(), OptionalDouble.empty(), tag.end()),
        new GameState(
            tag.strength(),
            tag.netEmpty(),
            tag.pressure(),
            OptionalInt.empty(),
            List.of(),
            times.sinceShorthanded(tag),
            times.killOf(tag)));
  }

  private When when(TaggedExit tag) {
    return new When(
        game.fixture(),
        tag.period(),
        tag.elapsed(),
        tag.video(),
        tag.sheet(),
        Math.toIntExact(tag.line()));
  }

  private OptionalDouble shortOfCenter(TaggedExit tag) {
    if (!tag.letGo() || tag.place().isEmpty()) {
      return OptionalDouble.empty();
    }
    double s = game.rink().shortOfCenter(tag.place().get().x());
    return s > 0 ? OptionalDouble.of(s) : OptionalDouble.empty();
  }

  private ExitOutcome outcome(TaggedExit tag) {
    Optional<TaggedExit> draw = times.faceOffAfter(tag);
    return new ExitOutcome(
        tag.ended().map(e -> nextTouch(e, tag.end())),
        tag.ended()
            .filter(e -> e != TagEnd.STOPPED)
            .map(e -> e == TagEnd.ICING || e == TagEnd.OWN_ZONE_RESTART),
        switch (tag.ended().orElse(TagEnd.STOPPED)) {
          case ICING -> RestartCause.ICING_WRITTEN;
          case OWN_ZONE_RESTART, STOPPED -> RestartCause.UNKNOWN;
          case OPPONENT, OWN, GOAL_AGAINST -> RestartCause.NONE;
        },
        draw.isPresent() ? OptionalDouble.of(draw.get().elapsed()) : OptionalDouble.empty(),
        Optional.empty(),
        times.reentry(tag),
        Optional.empty());
  }

  private static NextTouch nextTouch(TagEnd end, Optional<Place> where) {
    OptionalDouble x =
        where.isPresent() ? OptionalDouble.of(where.get().x()) : OptionalDouble.empty();
    return switch (end) {
      case OWN -> new NextTouch(NextTouch.By.OWN, x, OptionalDouble.empty());
      case OPPONENT -> new NextTouch(NextTouch.By.OPPONENT, x, OptionalDouble.empty());
      case GOAL_AGAINST ->
          new NextTouch(NextTouch.By.OPPONENT, OptionalDouble.empty(), OptionalDouble.empty());
      case ICING, OWN_ZONE_RESTART, STOPPED -> NextTouch.NONE;
    };
  }

  private Facts facts(TaggedExit tag, boolean iced) {
    return SheetFacts.tagged(game.rink(), tag, iced, book);
  }

  private static <T> Optional<T> find(T[] values, Function<T, String> label, String word) {
    return Arrays.stream(values).filter(v -> label.apply(v).equals(word)).findFirst();
  }
}
