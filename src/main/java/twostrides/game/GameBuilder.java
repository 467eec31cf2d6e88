package twostrides.game;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.sheet.RowWords;

/**
 * Puts the rows of one game together: its two teams, its order of play, its steps. Rows of another
 * day, of a third team, or against the clock, are set aside here.
 */
final class GameBuilder {

  /** Farther apart than any clock reading, so that periods order before clocks. */
  private static final double PERIOD_APART = 1e6;

  private final String id;
  private final Frame frame;
  private final List<DoubtfulRow> doubtful;

  private final Collection<Mend> mends;

  GameBuilder(String id, Frame frame, List<DoubtfulRow> doubtful, Collection<Mend> mends) {
    this.id = id;
    this.frame = frame;
    this.doubtful = doubtful;
    this.mends = mends;
  }

  /** The game, or empty when no two teams act in it. */
  Optional<Game> play(List<ReadRow<PlayRow>> read) {
    final int before = doubtful.size();
    List<ReadRow<PlayRow>> rows =
        inOrder(
            clockMended(new OneGame(id, doubtful).of(read)),
            r -> r.row().period() * PERIOD_APART + r.row().elapsed());
    List<String> teams = teams(rows);
    if (teams.size() < 2) {
      for (ReadRow<PlayRow> r : rows) {
        setAside(
            r,
            SheetForms.TEAM,
            r.row().team().orElse(""),
            "two teams in game " + id,
            "add the other team's rows, or name both teams in home and away");
      }
      return Optional.empty();
    }
    Set<String> two = new HashSet<>(teams);
    List<PlayRow> kept = new ArrayList<>();
    for (ReadRow<PlayRow> r : rows) {
      Optional<String> team = r.row().team();
      if (team.isEmpty() || two.contains(team.get())) {
        kept.add(r.row());
      } else {
        setAside(
            r,
            SheetForms.TEAM,
            team.get(),
            "one of the two teams of game " + id + ": " + String.join(", ", teams),
            "correct the name, or give the row its own game");
      }
    }
    // Of two events in one row neither is used without the other.
    Set<RowWords.Place> lost =
        doubtful.subList(before, doubtful.size()).stream()
            .map(d -> d.row().place())
            .collect(Collectors.toSet());
    Set<PlayRow> alone = Collections.newSetFromMap(new IdentityHashMap<>());
    rows.stream().filter(r -> lost.contains(r.source().place())).forEach(r -> alone.add(r.row()));
    kept.removeIf(alone::contains);
    boolean fixed = frame.view() == Frame.View.RINK_FIXED && !frame.endsGiven();
    if (fixed && rows.stream().anyMatch(r -> r.about().endsSaid())) {
      for (ReadRow<PlayRow> r : rows) {
        if (!r.about().endsSaid() && r.row().place().isPresent() && kept.remove(r.row())) {
          setAside(
              r,
              SheetForms.HOME_ATTACKS,
              "",
              "plus_x or minus_x, as in other rows of game " + id,
              "fill in the cell, or let the sheet map say it for every period");
        }
      }
    } else if (fixed) {
      Ends.Finding ends = Ends.of(kept);
      if (ends == Ends.Finding.UNKNOWN) {
        rows.stream().filter(r -> kept.contains(r.row())).forEach(this::endsUnknown);
        return Optional.empty();
      }
      if (ends == Ends.Finding.TURNED) {
        kept.replaceAll(PlayRow::turned);
      }
    }
    return Optional.of(
        new Game(
            id,
            date(rows),
            teams.get(0),
            teams.get(1),
            home(rows).equals(Optional.of(teams.get(0))),
            frame.rink(),
            frame.clockStep(rows.stream().mapToInt(r -> r.about().clockDecimals()).max().orElse(0)),
            frame.placeStep(rows.stream().mapToInt(r -> r.about().placeDecimals()).max().orElse(0)),
            frame.periodLength(),
            kept));
  }

  /**
   * The tagged game; tags are sorted by the clock, since nothing depends on what stands between
   * them.
   */
  TaggedGame tags(List<ReadRow<TaggedExit>> rows) {
    List<TaggedExit> exits =
        rows.stream()
            .map(ReadRow::row)
            .sorted(
                Comparator.comparingInt(TaggedExit::period)
                    .thenComparingDouble(TaggedExit::elapsed))
            .toList();
    return new TaggedGame(
        id,
        date(rows),
        home(rows),
        frame.rink(),
        frame.placeStep(rows.stream().mapToInt(r -> r.about().placeDecimals()).max().orElse(0)),
        frame.periodLength(),
        exits);
  }

  private static <T> Optional<LocalDate> date(List<ReadRow<T>> rows) {
    return rows.stream().map(r -> r.about().date()).flatMap(Optional::stream).findFirst();
  }

  private static <T> Optional<String> home(List<ReadRow<T>> rows) {
    return rows.stream().map(r -> r.about().home()).flatMap(Optional::stream).findFirst();
  }

  /** Home and away as the sheet names them, or the two teams that act most, by name. */
  private static List<String> teams(List<ReadRow<PlayRow>> rows) {
    Optional<String> home = home(rows);
    Optional<String> away =
        rows.stream().map(r -> r.about().away()).flatMap(Optional::stream).findFirst();
    if (home.isPresent() && away.isPresent() && !home.equals(away)) {
      return List.of(home.get(), away.get());
    }
    Map<String, Integer> counts = new TreeMap<>();
    for (ReadRow<PlayRow> r : rows) {
      r.row().team().ifPresent(t -> counts.merge(t, 1, Integer::sum));
    }
    List<String> most =
        counts.entrySet().stream()
            .sorted(
                Map.Entry.<String, Integer>comparingByValue(Comparator.reverseOrder())
                    .thenComparing(Map.Entry.comparingByKey()))
            .limit(2)
            .map(Map.Entry::getKey)
            .sorted()
            .toList();
    if (home.isPresent() && most.size() == 2 && most.get(1).equals(home.get())) {
      return List.of(most.get(1), most.get(0));
    }
    return most;
  }

  private List<ReadRow<PlayRow>> clockMended(List<ReadRow<PlayRow>> rows) {
    ClockSetBack clock = new ClockSetBack(rows.stream().map(ReadRow::row).toList());
    List<ReadRow<PlayRow>> kept = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      ReadRow<PlayRow> r = rows.get(i);
      if (clock.voidFrom(i) < 0) {
        PlayRow row = clock.mended(i);
        if (!row.equals(r.row())) {
          mends.add(Mend.CLOCK);
        }
        kept.add(new ReadRow<>(r.source(), r.gameId(), r.about(), row));
        continue;
      }
      setAside(
          r,
          SheetForms.CLOCK,
          r.source().cell(SheetForms.CLOCK).map(c -> c.text()).orElse(""),
          "play that counts: at the next face-off the clock was put back to line "
              + rows.get(clock.voidFrom(i)).source().line(),
          "nothing, when that is so; else correct the clock");
    }
    return kept;
  }

  private <T> List<ReadRow<T>> inOrder(
      List<ReadRow<T>> rows, ToDoubleFunction<ReadRow<T>> instant) {
    double[] times = rows.stream().mapToDouble(instant).toArray();
    boolean[] against = OrderOfPlay.against(times);
    List<ReadRow<T>> kept = new ArrayList<>();
    for (int i = 0; i < against.length; i++) {
      if (!against[i]) {
        kept.add(rows.get(i));
        continue;
      }
      ReadRow<T> r = rows.get(i);
      String neighbours =
          OrderOfPlay.keptAround(against, i).stream()
              .map(k -> String.format(Locale.ROOT, "line %d", rows.get(k).source().line()))
              .reduce((a, b) -> a + " and " + b)
              .orElse("the rows around it");
      setAside(
          r,
          SheetForms.CLOCK,
          r.source().cell(SheetForms.CLOCK).map(c -> c.text()).orElse(""),
          "a period and clock that follow on " + neighbours + ": the clock ran backward",
          "correct the period or the clock; if the whole sheet is sorted otherwise, sort it by period"
              + " and clock");
    }
    return kept;
  }

  private void endsUnknown(ReadRow<PlayRow> r) {
    setAside(
        r,
        SheetForms.X,
        r.source().cell(SheetForms.X).map(c -> c.text()).orElse(""),
        "ten shots or more in game " + id + ", to show which end each team attacks",
        "write home_attacks_plus_x_in under [place] in the sheet map");
  }

  private void setAside(ReadRow<?> r, String column, String value, String expected, String toDo) {
    doubtful.add(
        new DoubtfulRow(
            r.source(),
            List.of(
                new Problem(r.source().file(), r.source().line(), column, value, expected, toDo))));
  }
}
