package twostrides.book;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The moments of a player's sheet by the rules of docs/numbers.md, made anew from the tables. */
final class SheetMoments {

  private static final double LONG = 40;

  private final BookData data;
  private final List<BookData.Row> flags;

  SheetMoments(BookData data) {
    this.data = data;
    flags = ListFigures.dearest(data, false);
  }

  /**
   * What an item says: the game, the clock and the sentence, the video, the sheet.
   *
   * @param row where it stands
   * @param words in the order of the page
   */
  record Item(BookData.Row row, List<Want> words) {}

  List<Item> worked(BookData.Player p) {
    List<BookData.Row> rows =
        new ArrayList<>(
            BookData.rows(
                data.exits,
                BookData.of(p)
                    .and(r -> r.is("at_center", "gained"))
                    .and(r -> !r.is("own_zone_restart", "true"))
                    .and(r -> !r.has("shift_s") || r.number("shift_s") < 90)
                    .and(r -> !r.is("restart_within_20s", "true"))
                    .and(r -> BookData.sum(List.of(r), "attempts_against_20s") == 0)
                    .and(r -> BookData.sum(List.of(r), "goals_against_20s") == 0)));
    Collections.reverse(rows);
    rows.sort(
        Comparator.comparingInt((BookData.Row r) -> -(shorthanded(r) + heavy(r) + tired(r)))
            .thenComparingInt(r -> -shorthanded(r))
            .thenComparingInt(r -> -heavy(r)));
    return rows.stream().limit(1).map(r -> item(r, gained(r))).toList();
  }

  /** How many there are, and where it is not as many as could be, that there are no more. */
  static String heading(List<Item> items, String what, int most) {
    return List.of("None ", "One ", "Two ").get(items.size())
        + what
        + (items.size() == most
            ? ""
            : List.of(" in these sheets", ", no more in these sheets").get(items.size()));
  }

  private static int shorthanded(BookData.Row r) {
    return r.is("strength", "shorthanded") ? 1 : 0;
  }

  private static int heavy(BookData.Row r) {
    return r.is("pressure", "heavy") ? 1 : 0;
  }

  private static int tired(BookData.Row r) {
    return r.has("shift_s") && r.number("shift_s") >= LONG ? 1 : 0;
  }

  private Want gained(BookData.Row r) {
    boolean restart = r.has("own_zone_restart");
    boolean attempts = r.has("attempts_against_20s");
    String after =
        restart && attempts
            ? "nothing against within " + data.shortly()
            : attempts
                ? "no attempt against within " + data.shortly()
                : restart ? "no face-off in our end" : "what followed is not in the sheet";
    return begin(r, Optional.of(r)).then(Want.text(": gained center, " + after + "."));
  }

  List<Item> talk(BookData.Player p) {
    List<BookData.Row> rows =
        new ArrayList<>(BookData.rows(data.releases, BookData.of(p).and(r -> kind(r) < NOTHING)));
    Collections.reverse(rows);
    rows.sort(
        Comparator.comparingInt(this::kind)
            .thenComparingInt(r -> kind(r) == 0 ? flag(r) : 0)
            .thenComparingDouble(r -> kind(r) == 1 ? r.number("short_of_center_m") : 0)
            .thenComparingInt(
                r ->
                    kind(r) < 3
                        ? 0
                        : r.has("attempts_against_20s") ? -r.count("attempts_against_20s") : 1));
    return rows.stream().limit(2).map(r -> item(r, letGo(r))).toList();
  }

  private static final int NOTHING = 4;

  /** Flagged, iced, other restart, given away, nothing to talk about. */
  private int kind(BookData.Row r) {
    if (flag(r) >= 0) {
      return 0;
    }
    if (r.icing()) {
      return 1;
    }
    if (r.is("own_zone_restart", "true")) {
      return 2;
    }
    boolean given =
        r.is("next_touch", "opponent")
            && Set.of("none", "light").contains(r.get("pressure"))
            && shorthanded(r) == 0
            && !r.is("shot", "true");
    return given ? 3 : NOTHING;
  }

  /** Place of a release among the flags, or -1. */
  private int flag(BookData.Row r) {
    for (int i = 0; i < flags.size(); i++) {
      BookData.Row f = flags.get(i);
      if (f.is("game", r.get("game")) && f.is("release", r.get("release"))) {
        return i;
      }
    }
    return -1;
  }

  private Want letGo(BookData.Row r) {
    Optional<BookData.Row> exit =
        r.has("exit")
            ? data.exits.stream()
                .filter(e -> e.is("game", r.get("game")) && e.is("exit", r.get("exit")))
                .findFirst()
            : Optional.empty();
    String note = r.has("line_note") ? " (" + r.get("line_note") + ")" : "";
    String came =
        r.is("restart_cause", "icing_written")
            ? "iced (written)"
            : r.is("restart_cause", "icing_inferred")
                ? "iced (inferred)"
                : r.is("own_zone_restart", "true")
                    ? "defensive-zone face-off, cause " + r.get("restart_cause")
                    : "the opponent had it next";
    int attempts = BookData.sum(List.of(r), "attempts_against_20s");
    int goals = BookData.sum(List.of(r), "goals_against_20s");
    String against =
        attempts == 0
            ? ""
            : ", "
                + SentenceFigures.count(attempts, "attempt")
                + " against within "
                + data.shortly()
                + (goals == 0 ? "" : ", " + SentenceFigures.count(goals, "goal"));
    Want said =
        begin(r, exit)
            .then(Want.text(": let go "))
            .then(ListFigures.gap(r, " before the red line" + note + ", " + came + against + "."));
    if (flag(r) < 0) {
      return said;
    }
    BookData.Row f = flags.get(flag(r));
    return said.then(Want.text(" Flagged: to gain center "))
        .then(ListFigures.gain(f))
        .then(Want.text(" (" + f.get("evidence") + ")."));
  }

  /** The way out and what made it hard. */
  private static Want begin(BookData.Row r, Optional<BookData.Row> exit) {
    String way =
        exit.map(e -> e.get("way_out").replace("kept in", "failed clear"))
            .orElse("play from outside the zone");
    String strength =
        switch (r.get("strength")) {
          case "even" -> "";
          case "shorthanded" -> ", shorthanded";
          case "power play" -> ", on the power play";
          default -> ", strength unknown";
        };
    String pressure =
        r.has("pressure") ? ", under " + r.get("pressure").replace("none", "no") + " pressure" : "";
    Want said =
        Want.text(
            way.substring(0, 1).toUpperCase(Locale.ROOT) + way.substring(1) + strength + pressure);
    return exit.isPresent() && tired(exit.get()) > 0
        ? said.then(
            Want.like(", after # s on the ice", Want.num(exit.get().number("shift_s"), 0, 0.01)))
        : said;
  }

  private Item item(BookData.Row r, Want sentence) {
    return new Item(
        r,
        List.of(
            Want.name(r.get("game")),
            Want.text(", ")
                .then(ListFigures.clock(data, r, "release_elapsed_s"))
                .then(Want.text(". "))
                .then(sentence),
            ListFigures.video(r),
            ListFigures.sheet(r)));
  }
}
