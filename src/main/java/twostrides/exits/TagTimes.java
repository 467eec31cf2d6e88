package twostrides.exits;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import twostrides.game.Strength;
import twostrides.game.TagEnd;
import twostrides.game.TaggedExit;
import twostrides.game.TaggedGame;
import twostrides.stats.CensoredTime;

/**
 * What the order of rows in a tag sheet says, where somebody tagged more than the exits: the
 * face-off that followed, seconds until the opponent was in the zone again, and kills. Of each it
 * says nothing in a game that has no row of its kind: rows of exits alone are too far apart.
 */
final class TagTimes {

  private static final Set<TagEnd> STOPS =
      EnumSet.of(TagEnd.ICING, TagEnd.OWN_ZONE_RESTART, TagEnd.GOAL_AGAINST, TagEnd.STOPPED);

  /** A stretch of rows in which a team is shorthanded; {@code end} is the first row after it. */
  private record Stretch(int number, String team, int first, int end) {}

  private final TaggedGame game;
  private final List<TaggedExit> rows;
  private final boolean entriesTagged;
  private final List<Stretch> stretches = new ArrayList<>();

  TagTimes(TaggedGame game) {
    this.game = game;
    this.rows = game.exits();
    this.entriesTagged = rows.stream().anyMatch(TagTimes::entry);
    if (rows.stream().anyMatch(TaggedExit::strengthAlone)) {
      Set<String> teams = new TreeSet<>();
      for (TaggedExit r : rows) {
        teams.add(r.team());
        r.opponent().ifPresent(teams::add);
      }
      Set<String> homeFirst =
          new LinkedHashSet<>(game.home().filter(teams::contains).stream().toList());
      homeFirst.addAll(teams);
      homeFirst.forEach(this::stretches);
    }
  }

  /** The opponent has the puck in the team's zone, with no exit in the row. */
  private static boolean entry(TaggedExit r) {
    return r.wayOut().isEmpty() && r.ended().equals(Optional.of(TagEnd.OPPONENT));
  }

  private static boolean faceOff(TaggedExit r) {
    return r.wayOut().isEmpty() && r.faceOffWon().isPresent() && r.ended().isEmpty();
  }

  /** The rows of its period after a row. */
  private List<TaggedExit> after(TaggedExit row) {
    return rows.subList(rows.indexOf(row) + 1, rows.size()).stream()
        .filter(r -> r.period() == row.period())
        .toList();
  }

  /** The row of the face-off that followed an own-zone restart, with no play in between. */
  Optional<TaggedExit> faceOffAfter(TaggedExit row) {
    return row.ended().filter(STOPS::contains).isEmpty()
        ? Optional.empty()
        : after(row).stream().filter(r -> !r.strengthAlone()).findFirst().filter(TagTimes::faceOff);
  }

  /** Whether the team of a row won the face-off that followed. */
  Optional<Boolean> won(TaggedExit row) {
    return row.faceOffWon()
        .or(() -> faceOffAfter(row).map(r -> r.faceOffWon().get() == r.team().equals(row.team())));
  }

  /** Seconds until the opponent was in the team's zone again; a stop cuts them short. */
  Optional<CensoredTime> reentry(TaggedExit row) {
    boolean left = row.wayOut().isPresent() && !row.wayOut().get().equals(WayOut.KEPT_IN.label());
    if (!entriesTagged || !left) {
      return Optional.empty();
    }
    for (TaggedExit r : after(row)) {
      boolean stopped = faceOff(r) || r.ended().filter(STOPS::contains).isPresent();
      boolean entered = entry(r) && r.team().equals(row.team());
      if (entered || stopped) {
        return Optional.of(new CensoredTime(r.elapsed() - row.elapsed(), entered));
      }
    }
    return Optional.of(new CensoredTime(game.periodLength() - row.elapsed(), false));
  }

  private static Optional<Boolean> shorthanded(TaggedExit r, String team) {
    Strength s = r.team().equals(team) ? r.strength() : r.strength().ofOpponent();
    return s == Strength.UNKNOWN ? Optional.empty() : Optional.of(s == Strength.SHORTHANDED);
  }

  /** As in play sheets: from the first row that shows it to the first that does not. */
  private void stretches(String team) {
    int first = -1;
    for (int i = 0; i < rows.size(); i++) {
      Optional<Boolean> now = shorthanded(rows.get(i), team);
      if (first < 0 && now.orElse(false)) {
        first = i;
      } else if (first >= 0 && !now.orElse(true)) {
        stretches.add(new Stretch(stretches.size() + 1, team, first, i));
        first = -1;
      }
    }
    if (first >= 0) {
      stretches.add(new Stretch(stretches.size() + 1, team, first, rows.size()));
    }
  }

  /** The number of the kill that a row lies in. */
  OptionalInt killOf(TaggedExit row) {
    int i = rows.indexOf(row);
    return stretches.stream()
        .filter(s -> s.team().equals(row.team()) && s.first() <= i && i < s.end())
        .mapToInt(Stretch::number)
        .findFirst();
  }

  /** Seconds since the row's team was last shown shorthanded in the period; 0 while it is. */
  OptionalDouble sinceShorthanded(TaggedExit row) {
    int i = rows.indexOf(row);
    return stretches.stream()
        .filter(s -> s.team().equals(row.team()) && s.first() <= i)
        .map(s -> rows.get(Math.min(s.end() - 1, i)))
        .filter(r -> r.period() == row.period())
        .mapToDouble(r -> row.elapsed() - r.elapsed())
        .min();
  }

  /**
   * The kills.
   *
   * @param exits the game's exits
   */
  List<Kill> kills(List<Exit> exits) {
    return stretches.stream().map(s -> kill(s, exits)).toList();
  }

  private double seconds(TaggedExit from, TaggedExit to) {
    return (to.period() - from.period()) * game.periodLength() + to.elapsed() - from.elapsed();
  }

  private Kill kill(Stretch s, List<Exit> exits) {
    TaggedExit first = rows.get(s.first());
    TaggedExit end = rows.get(Math.min(s.end(), rows.size() - 1));
    List<Kill.Event> events = new ArrayList<>();
    for (TaggedExit r : rows.subList(s.first(), s.end())) {
      boolean goal =
          r.ended().equals(Optional.of(TagEnd.GOAL_AGAINST)) && r.team().equals(s.team());
      if (goal || faceOff(r)) {
        events.add(
            new Kill.Event(
                goal ? Kill.What.GOAL_AGAINST : Kill.What.FACE_OFF, seconds(first, r), r.video()));
      }
    }
    String opponent =
        first.team().equals(s.team()) ? first.opponent().orElse("opponent") : first.team();
    return new Kill(
        s.number(),
        s.team(),
        opponent,
        new When(
            game.fixture(),
            first.period(),
            first.elapsed(),
            first.video(),
            first.sheet(),
            Math.toIntExact(first.line())),
        new Kill.End(end.period(), end.elapsed(), seconds(first, end)),
        exits.stream().filter(x -> x.at().state().kill().orElse(0) == s.number()).toList(),
        events,
        false);
  }
}
