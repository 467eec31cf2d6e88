package twostrides.book.chart;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Every penalty kill as a strip, time from left to right: where the puck was, when it got out and
 * for how long, what failed, what it cost. A season of kills is one picture.
 *
 * @param title what is shown; any text
 * @param games in the order shown
 */
public record KillStrips(String title, List<Game> games) {

  private static final int COLUMNS = 3;
  private static final double GAP = 22;

  /** Pixels above the first strip for the scale of time, and below a game. */
  private static final double TIME = 20;

  private static final double AFTER_GAME = 8;

  /** Seconds between two lines of the scale. */
  private static final int TICK = 30;

  /** Seconds of the shortest scale: a minor penalty. */
  private static final double MINOR = 120;

  /** Copies the games. */
  public KillStrips {
    games = List.copyOf(games);
  }

  /**
   * The kills of a game.
   *
   * @param heading day and opponent; any text
   * @param kills in the order shown
   */
  public record Game(String heading, List<Kill> kills) {
    /** Copies the kills. */
    public Game {
      kills = List.copyOf(kills);
    }
  }

  /**
   * One kill.
   *
   * @param label period and clock as the scoreboard shows it
   * @param seconds from its beginning to its end, above 0
   * @param events what happened in it, in any order
   * @param link of the strip: its row or its clip
   */
  public record Kill(String label, double seconds, List<Event> events, Link link) {
    /**
     * Copies the events.
     *
     * @throws IllegalArgumentException for a kill of no length
     */
    public Kill {
      events = List.copyOf(events);
      if (!(seconds > 0)) {
        throw new IllegalArgumentException("a kill has a length in seconds, not " + seconds);
      }
    }
  }

  /**
   * Something that happened in a kill.
   *
   * @param mark what
   * @param from seconds from the beginning of the kill
   * @param to for a clear the end of the time bought, in seconds from the beginning of the kill;
   *     for everything else, and for a clear that bought none, {@code from}
   * @param link its row or its clip
   */
  public record Event(KillMark mark, double from, double to, Link link) {

    /**
     * Something of a moment.
     *
     * @param mark what
     * @param second from the beginning of the kill
     * @param link its row or its clip
     */
    public static Event at(KillMark mark, double second, Link link) {
      return new Event(mark, second, second, link);
    }

    /**
     * A clear and the time it bought.
     *
     * @param from seconds from the beginning of the kill
     * @param to when the puck was back, seconds from the beginning of the kill
     * @param link its row or its clip
     */
    public static Event clear(double from, double to, Link link) {
      return new Event(KillMark.CLEAR, from, to, link);
    }
  }

  /**
   * Draws it.
   *
   * @param id beginning of its ids, unique on its page: a-z, 0-9 and hyphens
   */
  public Picture picture(String id) {
    return Picture.of(new Caption(id, title, description()), this::draw);
  }

  private List<Kill> kills() {
    return games.stream().map(Game::kills).flatMap(Collection::stream).toList();
  }

  private String description() {
    List<String> counts = new ArrayList<>();
    for (KillMark mark : KillMark.values()) {
      long n = kills().stream().flatMap(k -> k.events.stream()).filter(e -> e.mark == mark).count();
      counts.add(mark.words() + ": " + Words.whole(n));
    }
    return Words.whole(kills().size())
        + (kills().size() == 1 ? " kill. " : " kills. ")
        + String.join("; ", counts)
        + ".";
  }

  private double draw(Sketch s) {
    int columns = s.narrow() ? 1 : COLUMNS;
    double width = (s.width() - (columns - 1) * GAP) / columns;
    double bottom = 0;
    for (int c = 0; c < columns; c++) {
      double left = c * (width + GAP);
      bottom = Math.max(bottom, column(s, games(c, columns), left, left + width));
    }
    Set<KillMark> seen = EnumSet.noneOf(KillMark.class);
    kills().forEach(k -> k.events.forEach(e -> seen.add(e.mark)));
    return KillMark.legend(s, seen, bottom + 12);
  }

  /** Games of one column: in their order, none divided, columns of about one height. */
  private List<Game> games(int column, int columns) {
    double all = kills().size() + 2.0 * games.size();
    List<Game> here = new ArrayList<>();
    double before = 0;
    for (Game game : games) {
      double lines = game.kills.size() + 2;
      if ((int) ((before + lines / 2) / all * columns) == column) {
        here.add(game);
      }
      before += lines;
    }
    return here;
  }

  /** Pixels from one strip to the next. */
  private static double row(Sketch s) {
    return s.either(19, 24);
  }

  private double column(Sketch s, List<Game> shown, double left, double right) {
    double names = Type.NOTE.widest(kills().stream().map(k -> Lettering.clean(k.label)).toList());
    double from = left + Math.min(names, (right - left) / 3) + 8;
    double longest = kills().stream().mapToDouble(Kill::seconds).max().orElse(0);
    Scale time = new Scale(0, Math.max(MINOR, longest), from, right - 4);
    List<Runnable> strips = new ArrayList<>();
    double y = TIME;
    for (Game game : shown) {
      List<String> heading = Lettering.lines(game.heading, Type.STRONG, right - left, 2);
      double top = y;
      strips.add(() -> s.lines(Type.STRONG, heading, left, top + 11));
      y += heading.size() * Type.STRONG.leading();
      for (Kill kill : game.kills) {
        double at = y;
        strips.add(() -> strip(s, kill, time, left, at));
        y += row(s);
      }
      y += AFTER_GAME;
    }
    for (int t = 0; t <= time.to() && !shown.isEmpty(); t += TICK) {
      s.line("grid", time.at(t), TIME - 2, time.at(t), y - AFTER_GAME);
      if (t % 60 == 0) {
        s.inside(Type.NOTE, t / 60 + ":00", time.at(t), TIME - 6, left, right);
      }
    }
    strips.forEach(Runnable::run);
    return y - AFTER_GAME;
  }

  private static void strip(Sketch s, Kill kill, Scale time, double left, double top) {
    double row = row(s);
    KillMark.Strip strip = new KillMark.Strip(top + 6, row - 8, row);
    double room = time.left() - left - 6;
    s.linked(
        kill.link,
        () -> {
          String label = Lettering.lines(kill.label, Type.NOTE, room, 1).get(0);
          s.text(Type.NOTE, label, left, strip.middle() + 4);
          double length = time.at(kill.seconds) - time.left();
          s.rect("ground", time.left(), strip.top(), length, strip.height());
        });
    for (KillMark mark : KillMark.values()) {
      for (Event e : kill.events) {
        if (e.mark == mark) {
          s.linked(e.link, () -> mark.draw(s, strip, time.at(e.from), time.at(e.to)));
        }
      }
    }
  }
}
