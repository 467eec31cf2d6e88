package twostrides.sanity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import twostrides.game.Action;
import twostrides.game.Frame;
import twostrides.game.Game;
import twostrides.game.Outcome;
import twostrides.game.PlayRow;
import twostrides.game.StopReason;
import twostrides.rink.Zone;

/**
 * A mirrored rink. In a true sheet a team's shots and entries lie in the far half, and the face-off
 * after its own icing in the near half, in every period: in fifteen open games at least 97 of 100 a
 * game. Each team in each period is looked at by itself, since a wrong view or a wrong list of
 * periods mirrors some of them only.
 */
final class Directions {

  /** Shots, entries and icings that it takes to tell. Assumed. */
  private static final int LEAST = 8;

  /** Share at the wrong end that makes a team's period mirrored. Assumed. */
  private static final double MIRRORED = 0.8;

  /** Share at the right end of a whole game that is too low to be a direction. Assumed. */
  private static final double NO_DIRECTION = 0.75;

  /** Shots and entries of a game that it takes to say so. Assumed. */
  private static final int LEAST_OF_GAME = 24;

  /** Share of shots from the own half that is too much: in open games under 2 in 100. Assumed. */
  private static final double STRAY = 0.1;

  private static final int MOST_NAMED = 4;

  private static final String EXPECTED =
      "shots and entries in the half that a team attacks, and the face-off after its icing in its own";

  /** A team in a period. */
  private record Side(String game, String team, boolean home, int period) {}

  /** What lies at the wrong end, by kind. */
  private static final class Tally {
    private final Map<String, Share> kinds = new LinkedHashMap<>();
    private final Share sum = new Share();

    void add(String kind, boolean wrongEnd) {
      kinds.computeIfAbsent(kind, k -> new Share()).add(wrongEnd);
      sum.add(wrongEnd);
    }

    boolean mirrored() {
      return sum.all() >= LEAST && sum.yes() >= MIRRORED * sum.all();
    }

    String words() {
      return kinds.entrySet().stream()
          .filter(k -> k.getValue().yes() > 0)
          .map(k -> k.getValue() + " " + k.getKey())
          .collect(Collectors.joining(", "));
    }
  }

  /** The teams' periods of one game. */
  static final class OfGame {
    private final Map<Side, Tally> sides = new LinkedHashMap<>();

    OfGame(Game game) {
      Optional<String> iced = Optional.empty();
      for (PlayRow r : game.rows()) {
        Optional<Boolean> near = near(r);
        boolean placed = near.isPresent() && r.team().isPresent();
        if (placed && r.action() == Action.SHOT) {
          boolean goal = r.outcome().equals(Optional.of(Outcome.GOAL));
          add(game, r, r.team().get(), goal ? "goals" : "shots", near.get());
        } else if (placed && r.action() == Action.ENTRY) {
          add(game, r, r.team().get(), "entries", near.get());
        } else if (placed && r.action() == Action.FACEOFF && iced.isPresent()) {
          boolean won = r.team().equals(iced);
          add(game, r, iced.get(), "icings", near.get() != won);
        }
        if (r.action() == Action.STOPPAGE) {
          iced = r.stop().equals(Optional.of(StopReason.ICING)) ? r.team() : Optional.empty();
        } else if (r.action() == Action.FACEOFF) {
          iced = Optional.empty();
        }
      }
    }

    /** Whether a row lies in its team's own half; empty in the neutral zone and without a place. */
    private static Optional<Boolean> near(PlayRow r) {
      return r.place()
          .map(p -> p.x() < 0)
          .or(() -> r.zone().filter(z -> z != Zone.NEUTRAL).map(z -> z == Zone.OWN));
    }

    private void add(Game game, PlayRow r, String team, String kind, boolean wrongEnd) {
      Side side = new Side(game.id(), team, team.equals(game.home()), r.period());
      sides.computeIfAbsent(side, s -> new Tally()).add(kind, wrongEnd);
    }

    private Share wrong() {
      Share wrong = new Share();
      sides.values().forEach(t -> wrong.add(t.sum));
      return wrong;
    }
  }

  private final Map<Side, Tally> sides = new LinkedHashMap<>();
  private final List<GameSigns> games;
  private final Frame frame;

  private Directions(List<GameSigns> games, Frame frame) {
    this.games = games;
    this.frame = frame;
    games.forEach(g -> sides.putAll(g.directions().sides));
  }

  static List<Doubt> of(List<GameSigns> games, Frame frame) {
    Directions d = new Directions(games, frame);
    List<Side> mirrored = d.mirrored();
    if (!mirrored.isEmpty()) {
      return List.of(d.mirroredDoubt(mirrored));
    }
    List<Doubt> none =
        games.stream().map(Directions::noDirection).flatMap(Optional::stream).limit(1).toList();
    return none.isEmpty() ? d.strayShots().stream().toList() : none;
  }

  /** The teams' periods that are mirrored; once there is one, those with few rows count as well. */
  private List<Side> mirrored() {
    boolean any =
        sides.values().stream().anyMatch(Tally::mirrored)
            || games.stream().anyMatch(g -> g.directions().wrong().above(MIRRORED, LEAST));
    return sides.keySet().stream().filter(s -> any && wrongEnd(s)).toList();
  }

  private boolean wrongEnd(Side side) {
    Share sum = sides.get(side).sum;
    return 2 * sum.yes() > sum.all();
  }

  private String sheetOf(Side side) {
    return games.stream().filter(g -> g.id().equals(side.game())).findFirst().orElseThrow().sheet();
  }

  private Doubt mirroredDoubt(List<Side> mirrored) {
    String named =
        mirrored.stream()
            .limit(MOST_NAMED)
            .map(
                s ->
                    s.team()
                        + " in period "
                        + s.period()
                        + " of game "
                        + s.game()
                        + " ("
                        + sides.get(s).words()
                        + " at the wrong end)")
            .collect(Collectors.joining("; "));
    long games = mirrored.stream().map(Side::game).distinct().count();
    String found =
        "the rink mirrored for "
            + named
            + (mirrored.size() > MOST_NAMED
                ? "; so in "
                    + mirrored.size()
                    + " of "
                    + sides.size()
                    + " teams' periods, "
                    + games
                    + (games == 1 ? " game" : " games")
                : "");
    return Doubt.stop(sheetOf(mirrored.get(0)), found, EXPECTED, remedy());
  }

  /**
   * Whether the written place of a team's period has to be turned to be its own attack toward +x.
   */
  private boolean turnedInTruth(Side s) {
    boolean now =
        switch (frame.view()) {
          case ACTING_TEAM -> false;
          case HOME_TEAM -> !s.home();
          case RINK_FIXED -> s.home() != frame.homePlusX().contains(s.period());
        };
    return now != wrongEnd(s);
  }

  private String remedy() {
    if (frame.view() == Frame.View.RINK_FIXED && !frame.endsGiven()) {
      return "Teams do not change ends as the map takes it. Write under [place] in the sheet map"
          + " home_attacks_plus_x_in with the periods in which the home team attacks +x, or another"
          + " view.";
    }
    if (sides.keySet().stream().noneMatch(this::turnedInTruth)) {
      return line("view = \"acting_team\"");
    }
    if (sides.keySet().stream().allMatch(s -> turnedInTruth(s) != s.home())) {
      return line("view = \"home_team\"");
    }
    if (sides.keySet().stream().allMatch(this::turnedInTruth)) {
      return "No view makes it right: either the column of team names the other team, or x grows"
          + " toward the acting team's own net. Correct team under [columns], or write x with the"
          + " other sign.";
    }
    return sides.keySet().stream().anyMatch(this::bothAlike)
        ? "No one view makes all of it right. Correct the signs of these places in the sheet, or give"
            + " games that differ maps of their own."
        : fixedToTheRink();
  }

  /** Whether both teams of a period attack one end as the sheet writes it. */
  private boolean bothAlike(Side s) {
    return sides.keySet().stream()
        .anyMatch(
            o ->
                o.game().equals(s.game())
                    && o.period() == s.period()
                    && o.home() != s.home()
                    && turnedInTruth(o) == turnedInTruth(s));
  }

  private String fixedToTheRink() {
    Map<String, Set<Integer>> plusX = new LinkedHashMap<>();
    Set<Integer> all = new TreeSet<>();
    boolean oneForAll = true;
    Map<Integer, Boolean> known = new LinkedHashMap<>();
    for (Side s : sides.keySet()) {
      boolean homePlus = turnedInTruth(s) != s.home();
      plusX.computeIfAbsent(s.game(), g -> new TreeSet<>());
      Boolean before = known.putIfAbsent(s.period(), homePlus);
      oneForAll &= before == null || before == homePlus;
      if (homePlus) {
        plusX.get(s.game()).add(s.period());
        all.add(s.period());
      }
    }
    if (oneForAll) {
      return line("view = \"rink_fixed\"", "home_attacks_plus_x_in = " + all);
    }
    List<String> byGame = new ArrayList<>();
    plusX.forEach((game, periods) -> byGame.add(game + " " + periods));
    return line("view = \"rink_fixed\"")
        + " Leave home_attacks_plus_x_in out, and the shots of each game show it (home_attacks_plus_x_in"
        + " would be, game by game: "
        + String.join("; ", byGame)
        + ").";
  }

  private static String line(String... lines) {
    return "Write in the sheet map, under [place]: " + String.join(" and ", lines) + ".";
  }

  /** More shots from the own half than true sheets have: other rows are read as shots. */
  private Optional<Doubt> strayShots() {
    Share wrong = new Share();
    sides.values().forEach(t -> Optional.ofNullable(t.kinds.get("shots")).ifPresent(wrong::add));
    return wrong.above(STRAY, LEAST_OF_GAME)
        ? Optional.of(
            Doubt.warn(
                games.get(0).sheet(),
                wrong + " shots from the own half",
                "one in fifty",
                "Check the words of action in the sheet map: other rows may be read as shots."))
        : Optional.empty();
  }

  private static Optional<Doubt> noDirection(GameSigns game) {
    Share wrong = game.directions().wrong();
    return wrong.above(1 - NO_DIRECTION, LEAST_OF_GAME)
        ? Optional.of(
            Doubt.stop(
                game.sheet(),
                "shots and entries at both ends alike in game "
                    + game.id()
                    + ": "
                    + wrong
                    + " at the wrong one",
                EXPECTED,
                "Check under [columns] of the sheet map that x_m and y_m are the right columns and that"
                    + " action calls a shot what is one; under [place] view, unit and center_x."))
        : Optional.empty();
  }
}
