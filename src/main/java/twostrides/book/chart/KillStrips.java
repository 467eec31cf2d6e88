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
        + (kills().size() == 1 ? " kill in " : " kills in ")
        + (games.size() == 1 ? "one game. " : Words.whole(games.size()) + " games. ")
        + String.join("; ", counts)
        + ".";
  }

  private double draw(Sketch s) {
    int columns = s.narrow() ? 1 : COLUMNS;
    double width = (s.width() - (columns - 1) * GAP) / columns;
    List<List<Block>> blocks = new KillColumns(columns, TIME).share(blocks(s, width));
    double bottom = 0;
    for (int c = 0; c < blocks.size(); c++) {
      if (!blocks.get(c).isEmpty()) {
        double left = c * (width + GAP);
        bottom = Math.max(bottom, column(s, blocks.get(c), left, left + width));
      }
    }
    Set<KillMark> seen = EnumSet.noneOf(KillMark.class);
    kills().forEach(k -> k.events.forEach(e -> seen.add(e.mark)));
    return KillMark.legend(s, seen, bottom + 12);
  }

  private List<Block> blocks(Sketch s, double width) {
    return games.stream()
        .map(g -> new Block(g, Lettering.lines(g.heading, Type.STRONG, width, 2), row(s)))
        .toList();
  }

  /** Pixels from one strip to the next. */
  private static double row(Sketch s) {
    return s.either(19, 24);
  }

  /** A game with its heading in lines that fit. */
  record Block(Game game, List<String> heading, double row) {

    double height() {
      return heading.size() * Type.STRONG.leading() + game.kills.size() * row + AFTER_GAME;
    }
  }

  private double column(Sketch s, List<Block> blocks, double left, double right) {
    double names = Type.NOTE.widest(kills().stream().map(k -> Lettering.clean(k.label)).toList());
    double from = left + Math.min(names, (right - left) / 3) + 8;
    double longest = kills().stream().mapToDouble(Kill::seconds).max().orElse(0);
    Scale time = new Scale(0, Math.max(MINOR, longest), from, right - 4);
    double bottom = TIME + blocks.stream().mapToDouble(Block::height).sum() - AFTER_GAME;
    for (int t = 0; t <= time.to(); t += TICK) {
      s.line("grid", time.at(t), TIME - 2, time.at(t), bottom);
      if (t % 60 == 0) {
        boolean last = time.at(t) > right - 14;
        Sketch.Anchor anchor = last ? Sketch.Anchor.END : Sketch.Anchor.MIDDLE;
        double x = last ? right : time.at(t);
        s.text(Type.NOTE, anchor, t / 60 + ":00", x, TIME - 6);
      }
    }
    double y = TIME;
    for (Block block : blocks) {
      y = s.lines(Type.STRONG, block.heading, left, y + 11) - 11;
      for (Kill kill : block.game.kills) {
        strip(s, kill, time, left, y);
        y += block.row;
      }
      y += AFTER_GAME;
    }
    return bottom;
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
          s.rect(
              "ground",
              time.left(),
              strip.top(),
              time.at(kill.seconds) - time.left(),
              strip.height());
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
