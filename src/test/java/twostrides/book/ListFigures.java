package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Lists of single restarts, releases, flags and rulings, row for row from the tables. */
final class ListFigures {

  static final String ICED = "iced";

  /** What can come of a release, in the order of the map's key. */
  static final List<String> OUTCOMES =
      List.of(
          ICED,
          "other defensive-zone face-off",
          "opponent had it next",
          "own team had it next",
          "play stopped, or not in the sheet");

  private static final double FOOT = 0.3048;

  /** Steps of the tables: metres and seconds in hundredths, chances in ten-thousandths. */
  private static final double STEP = 0.01;

  private static final double CHANCE_STEP = 0.0001;

  /** Simulations of a drawing at most. */
  private static final int DRAWN = 400;

  private ListFigures() {}

  static String outcome(BookData.Row release) {
    if (release.icing()) {
      return ICED;
    }
    if (release.is("own_zone_restart", "true")) {
      return OUTCOMES.get(1);
    }
    return release.is("next_touch", "opponent")
        ? OUTCOMES.get(2)
        : release.is("next_touch", "own") ? OUTCOMES.get(3) : OUTCOMES.get(4);
  }

  static String cause(BookData.Row r) {
    return switch (r.get("restart_cause")) {
      case "icing_written" -> "icing, written";
      case "icing_inferred" -> "icing, inferred";
      default -> r.get("restart_cause");
    };
  }

  static Want clock(BookData d, BookData.Row r, String column) {
    int left = (int) Math.floor(d.period() - r.number(column));
    return Want.text("P" + r.get("period") + " " + minutes(left));
  }

  static String minutes(int seconds) {
    return seconds / 60 + ":" + (seconds % 60 < 10 ? "0" : "") + seconds % 60;
  }

  /** At the draw; a tag sheet knows the release only. */
  private static Want drawClock(BookData d, BookData.Row r) {
    return clock(d, r, r.has("restart_elapsed_s") ? "restart_elapsed_s" : "release_elapsed_s");
  }

  static Want video(BookData.Row r) {
    if (!r.has("video_s")) {
      return Want.text(Want.NONE);
    }
    int s = (int) Math.floor(r.number("video_s"));
    int minute = s / 60 % 60;
    return Want.text(
        s / 3600 + ":" + (minute < 10 ? "0" : "") + minute + (s % 60 < 10 ? ":0" : ":") + s % 60);
  }

  static Want sheet(BookData.Row r) {
    return Want.text(r.get("sheet") + ", line " + r.get("line"));
  }

  private static Want word(BookData.Row r, String column) {
    return r.has(column) ? Want.name(r.get(column)) : Want.name(Want.NONE);
  }

  private static Want.Num metres(double m) {
    return Want.num(Math.abs(m), 1, STEP);
  }

  private static Want.Num feet(double m) {
    return Want.num(Math.abs(m) / FOOT, 0, STEP / FOOT);
  }

  private static Want place(BookData.Row r) {
    if (!r.has("release_x_m") || !r.has("release_y_m")) {
      return Want.text(Want.NONE);
    }
    double x = r.number("release_x_m");
    double y = r.number("release_y_m");
    String along = "# m (# ft) " + (x < 0 ? "before" : "past") + " center, ";
    return Math.abs(y) / FOOT < 0.5
        ? Want.like(along + "middle", metres(x), feet(x))
        : Want.like(
            along + "# m (# ft) " + (y > 0 ? "left" : "right"),
            metres(x),
            feet(x),
            metres(y),
            feet(y));
  }

  static Want gap(BookData.Row r, String after) {
    if (!r.has("short_of_center_m")) {
      return Want.text(Want.NONE);
    }
    double m = r.number("short_of_center_m");
    return Want.like("# m (# ft)" + after, metres(m), feet(m));
  }

  /** A chance of the tables in whole per cent. */
  static Want chance(BookData.Row r, String column) {
    return whole(r, column).then(Want.name(" %"));
  }

  private static Want whole(BookData.Row r, String column) {
    return r.number(column) < 0.005
        ? Want.text("under 1")
        : r.number(column) > 0.995
            ? Want.text("over 99")
            : Want.like("#", Want.num(100 * r.number(column), 0, 100 * CHANCE_STEP));
  }

  static Wanted restarts(BookData d, Optional<String> team) {
    List<String> heads =
        new ArrayList<>(
            List.of(
                "Game",
                "Clock",
                "Team",
                "Had it last",
                "Strength",
                "Let go from",
                "Before the red line",
                "Cause",
                "Why",
                "By the book",
                "Clause",
                "Face-off won by",
                "Against",
                "Video",
                "Sheet"));
    team.ifPresent(t -> heads.remove("Team"));
    Wanted t = new Wanted(heads.toArray(String[]::new));
    for (BookData.Row r : BookData.rows(d.restarts, BookData.team(team))) {
      List<Want> row = new ArrayList<>();
      row.add(Want.name(r.get("game")));
      row.add(drawClock(d, r));
      if (team.isEmpty()) {
        row.add(Want.name(r.get("team")));
      }
      row.add(word(r, "player"));
      row.add(word(r, "strength"));
      row.add(place(r));
      row.add(gap(r, ""));
      row.add(Want.name(cause(r)));
      row.add(Want.name(r.get("reason")));
      row.add(Want.name(r.get("ruling")));
      row.add(Want.name(r.get("clause")));
      row.add(word(r, "won_by"));
      row.add(against(r));
      row.add(video(r));
      row.add(sheet(r));
      t.row(row);
    }
    return t;
  }

  private static Want against(BookData.Row r) {
    if (!r.has("attempts_against_20s")) {
      return Want.text(Want.NONE);
    }
    int goals = r.count("goals_against_20s");
    return Want.text(
        r.get("attempts_against_20s")
            + (goals == 0 ? "" : ", " + SentenceFigures.count(goals, "goal")));
  }

  static Wanted releases(BookData d, BookData.Player p) {
    Wanted t =
        new Wanted(
            "Game",
            "Clock",
            "Kind",
            "Strength",
            "Let go from",
            "Before the red line",
            "What came of it",
            "Video",
            "Sheet");
    for (BookData.Row r : BookData.rows(d.releases, BookData.of(p))) {
      t.row(
          Want.name(r.get("game")),
          clock(d, r, "release_elapsed_s"),
          Want.name(r.get("kind").replace('_', ' ')),
          Want.name(r.get("strength")),
          place(r),
          gap(r, r.has("line_note") ? ", " + r.get("line_note") : ""),
          Want.name(r.icing() ? cause(r) : outcome(r)),
          video(r),
          sheet(r));
    }
    return t;
  }

  static Wanted notFlagged(BookData d) {
    Wanted t =
        new Wanted(
            "Game",
            "Clock",
            "Team",
            "Let go by",
            "Before the red line",
            "Why not",
            "Video",
            "Sheet");
    for (BookData.Row r : BookData.rows(d.flags, f -> !f.is("flagged", "true") && !look(f))) {
      t.row(
          Want.name(r.get("game")),
          clock(d, r, "release_elapsed_s"),
          Want.name(r.get("team")),
          word(r, "player"),
          gap(r, ""),
          Want.name(r.get("sentence")),
          video(r),
          sheet(r));
    }
    return t;
  }

  /** Weighed, and no flag. */
  static boolean fellShort(BookData.Row r) {
    return r.is("reason", "gaining center was not likely enough to avoid it")
        || r.is("reason", "trying to gain center would have cost more than the icing");
  }

  /** Iced, and no verdict. */
  static boolean look(BookData.Row r) {
    return r.is("reason", "no verdict without skaters' places and speeds");
  }

  /** The likeliest first; at the end those of which nothing is known. */
  static List<BookData.Row> toLookAt(BookData d) {
    return d.flags.stream()
        .filter(ListFigures::look)
        .sorted(
            Comparator.comparingDouble(
                r -> r.has("p_gain_center") ? -r.number("p_gain_center") : 1))
        .toList();
  }

  /** Those of the opening page. */
  static List<BookData.Row> firstToLookAt(BookData d) {
    return toLookAt(d).stream()
        .filter(r -> r.has("p_gain_center"))
        .filter(r -> d.ours().isEmpty() || r.is("team", d.ours().get()))
        .limit(Math.max(2, 5 - dearest(d, true).size()))
        .toList();
  }

  static Wanted allToLookAt(BookData d) {
    Wanted t =
        new Wanted(
            "Game",
            "Clock",
            "Team",
            "Let go by",
            "Before the red line",
            "Gain center",
            "Evidence",
            "Video",
            "Sheet");
    for (BookData.Row r : toLookAt(d)) {
      boolean known = r.has("p_gain_center");
      t.row(
          Want.name(r.get("game")),
          clock(d, r, "release_elapsed_s"),
          Want.name(r.get("team")),
          word(r, "player"),
          gap(r, ""),
          known
              ? chance(r, "p_gain_center")
                  .then(Want.name(", "))
                  .then(interval(r, "p_gain_low", "p_gain_high"))
              : Want.text(Want.NONE),
          Want.name(r.get("evidence")),
          video(r),
          sheet(r));
    }
    return t;
  }

  private static Want interval(BookData.Row r, String low, String high) {
    return whole(r, low).then(Want.name(" to ")).then(chance(r, high));
  }

  private static Want withInterval(BookData.Row r, String p, String low, String high) {
    return chance(r, p).then(Want.name(", 95 % interval ")).then(interval(r, low, high));
  }

  /** The chance of gaining center on a card. */
  static Want gain(BookData.Row r) {
    boolean unknown = r.is("evidence", "unknown");
    if (!r.has("p_gain_center")) {
      return Want.text(unknown ? "unknown" : Want.NONE);
    }
    return Want.name(unknown ? "unknown; like it " : "")
        .then(withInterval(r, "p_gain_center", "p_gain_low", "p_gain_high"));
  }

  private static Want evidence(BookData.Row r) {
    return Want.name(
        switch (r.get("evidence")) {
          case "measured" -> "measured: skaters' places and speeds";
          case "clicked" -> "clicked on the video: places and speeds";
          case "places only" -> "places without speeds, a lower grade";
          case "tagged" -> "pressure tag alone, a lower grade";
          default -> "unknown: no places in this sheet";
        });
  }

  /** Iced ones of the releases of a kind, counted anew. */
  private static Want kind(BookData d, BookData.Row flag) {
    List<BookData.Row> alike =
        BookData.rows(
            d.releases,
            r ->
                r.is("kind", flag.get("kind"))
                    && zone(r).equals(flag.get("zone"))
                    && r.has("own_zone_restart")
                    && r.is("may_be_icing", "true"));
    assertEquals(alike.size(), flag.count("kind_releases"));
    assertEquals(BookData.iced(alike).k(), flag.count("kind_iced"));
    return BookData.iced(alike)
        .sentence(
            "",
            ", " + flag.get("kind").replace('_', ' ') + " from the " + flag.get("zone") + " zone");
  }

  /** The blue line's neutral edge lies 25 ft from center; a puck wholly past it is out. */
  private static String zone(BookData.Row r) {
    return r.number("release_x_m") <= -25 * FOOT + 0.0381 ? "own" : "neutral";
  }

  /** The list beside a flag's drawing: label and value in turn. */
  static List<Want> flagList(BookData d, BookData.Row r) {
    List<Want> list = new ArrayList<>(List.of(word(r, "player"), gain(r), evidence(r)));
    if (r.has("p_avoid")) {
      list.add(withInterval(r, "p_avoid", "p_avoid_low", "p_avoid_high"));
      list.add(Want.like("# attempts against", Want.num(r.number("cost_icing"), 2, CHANCE_STEP)));
      list.add(Want.like("# attempts against", Want.num(r.number("cost_trying"), 2, CHANCE_STEP)));
    }
    list.addAll(
        List.of(
            after(d, r),
            kind(d, r),
            Want.name(r.get("ruling") + ", " + r.get("clause")),
            Want.name(r.get("strength")),
            video(r),
            sheet(r)));
    return list;
  }

  /** What the opponent did after the draw, by the restarts table. */
  private static Want after(BookData d, BookData.Row flag) {
    if (!told(d, flag, "attempts_against_20s")) {
      return Want.text(Want.NONE);
    }
    int goals = followed(d, flag, "goals_against_20s");
    return Want.text(
        SentenceFigures.count(followed(d, flag, "attempts_against_20s"), "attempt")
            + (goals == 0 ? "" : ", " + SentenceFigures.count(goals, "goal"))
            + " against within "
            + d.shortly());
  }

  private static List<BookData.Row> draws(BookData d, BookData.Row flag) {
    return BookData.rows(
        d.restarts, r -> r.is("game", flag.get("game")) && r.is("release", flag.get("release")));
  }

  private static boolean told(BookData d, BookData.Row flag, String column) {
    List<BookData.Row> draws = draws(d, flag);
    return !draws.isEmpty() && draws.get(0).has(column);
  }

  private static int followed(BookData d, BookData.Row flag, String column) {
    return told(d, flag, column) ? draws(d, flag).get(0).count(column) : 0;
  }

  /** Flags by goals after the draw, attempts after it, and what trying would have saved. */
  static List<BookData.Row> dearest(BookData d, boolean opening) {
    return d.flags.stream()
        .filter(f -> f.is("flagged", "true"))
        .filter(f -> !opening || d.ours().isEmpty() || f.is("team", d.ours().get()))
        .sorted(
            Comparator.comparingInt((BookData.Row f) -> -followed(d, f, "goals_against_20s"))
                .thenComparingInt(f -> -followed(d, f, "attempts_against_20s"))
                .thenComparingDouble(f -> f.number("cost_trying") - f.number("cost_icing")))
        .limit(opening ? 5 : Integer.MAX_VALUE)
        .toList();
  }

  /** Weighed and not flagged, though the chance to avoid the icing is a half or more. */
  static List<BookData.Row> nearMisses(BookData d) {
    return d.flags.stream()
        .filter(f -> fellShort(f) && f.number("p_avoid") >= 0.5)
        .sorted(Comparator.comparingDouble((BookData.Row f) -> -f.number("p_avoid")))
        .toList();
  }

  /** The clips of the opening page: flags, and after them icings to look at. */
  static List<BookData.Row> clips(BookData d) {
    List<BookData.Row> clips = new ArrayList<>(dearest(d, true));
    clips.addAll(firstToLookAt(d));
    return clips.subList(0, Math.min(3, clips.size()));
  }

  /** The book's team first; the order stays else. */
  static List<BookData.Row> ownFirst(BookData d, List<BookData.Row> rows) {
    return rows.stream()
        .sorted(Comparator.comparing(r -> !d.ours().equals(Optional.of(r.get("team")))))
        .toList();
  }

  /** The short list beside a drawing on the opening page. */
  static List<Want> dearestList(BookData d, BookData.Row r) {
    return List.of(
        word(r, "player"),
        after(d, r),
        gap(r, ""),
        gain(r),
        evidence(r),
        Want.name(r.get("strength")),
        video(r));
  }

  /** The heading of a flag. */
  static Want flagHeading(BookData d, BookData.Row r) {
    return Want.text(
        clock(d, r, "release_elapsed_s").words()
            + ", "
            + r.get("game")
            + ": "
            + word(r, "player").words()
            + ", "
            + r.get("team"));
  }

  /**
   * A flag's sentence up to where it says on what the chance rests, which the table does not hold.
   */
  static Want flagSentence(BookData.Row r) {
    double m = r.number("short_of_center_m");
    boolean weighed = r.has("p_avoid");
    Want start =
        Want.like(
            (r.is("flagged", "true")
                    ? "Flagged"
                    : look(r)
                        ? "No verdict without skaters' places and speeds"
                        : "Not flagged, " + r.get("reason"))
                + ": let go # m (# ft) before the red line, # s away at "
                + (weighed || r.is("evidence", "places only")
                    ? "this level of play: "
                    : "the pace of these sheets: "),
            metres(m),
            feet(m),
            Want.num(r.number("seconds_to_center"), 1, STEP));
    Want gain =
        r.has("p_gain_center")
            ? Want.name(r.is("evidence", "unknown") ? "measured releases like it have " : "")
                .then(chance(r, "p_gain_center"))
                .then(Want.name(" to gain center (95 % interval "))
                .then(interval(r, "p_gain_low", "p_gain_high"))
                .then(Want.name(")"))
            : Want.name("the chance to gain center is not known");
    Want avoid =
        weighed
            ? Want.name(", ")
                .then(chance(r, "p_avoid"))
                .then(Want.name(" to avoid the icing ("))
                .then(interval(r, "p_avoid_low", "p_avoid_high"))
                .then(Want.name(")"))
            : Want.name("");
    return start.then(gain).then(avoid);
  }

  /** The words of a flag's drawing. */
  static Want flagDrawing(BookData d, BookData.Row r) {
    double m = r.number("short_of_center_m");
    return Want.like(
        "# m (# ft) before the red line, # s away. Band: 8 in 10 of # simulations go here; the sheet"
            + " does not say which way. # % of them pass their goal line.",
        metres(m),
        feet(m),
        Want.num(r.number("seconds_to_center"), 1, STEP),
        Want.num(Math.min(DRAWN, Integer.parseInt(d.run.get("simulations"))), 0),
        Want.num(100 * r.number("p_length"), 0, 100 * CHANCE_STEP));
  }

  static Wanted audits(BookData d) {
    Wanted t =
        new Wanted(
            "Game", "Clock", "Team", "Had it last", "Strength", "What differs", "Video", "Sheet");
    for (BookData.Row r : d.audits) {
      t.row(
          Want.name(r.get("game")),
          drawClock(d, r),
          Want.name(r.get("team")),
          word(r, "player"),
          word(r, "strength"),
          Want.name(r.get("audit")),
          video(r),
          sheet(r));
    }
    return t;
  }

  /** The releases that the other book asked would rule otherwise; one book is asked here. */
  static Wanted others(BookData d) {
    Wanted t =
        new Wanted(
            "Game",
            "Clock",
            "Team",
            "Let go by",
            "Strength",
            "By the book of this run",
            "By the other book",
            "Video",
            "Sheet");
    for (BookData.Row r : BookData.rows(d.rulings, o -> o.is("differs", "true"))) {
      t.row(
          Want.name(r.get("game")),
          clock(d, r, "release_elapsed_s"),
          Want.name(r.get("team")),
          word(r, "player"),
          Want.name(r.get("strength")),
          Want.name(r.get("played_ruling")),
          Want.name(r.get("ruling_reason")),
          video(r),
          sheet(r));
    }
    return t;
  }
}
