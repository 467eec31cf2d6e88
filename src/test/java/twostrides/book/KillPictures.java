package twostrides.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** What the pictures of the penalty kill say, made anew from the tables. */
final class KillPictures {

  private KillPictures() {}

  private static List<BookData.Row> kills(BookData d) {
    return BookData.rows(d.kills, BookData.team(d.ours()));
  }

  /** Kills without a goal, clears, and the time a clear bought. */
  static Want numbers(BookData d) {
    Optional<List<BookData.Row>> all = d.ours().map(t -> KillFigures.shorthanded(d.exits));
    return Drawings.joined(
        List.of(
            Drawings.number(
                "kills without a goal against",
                KillFigures.withoutGoal(kills(d)),
                d.ours().map(t -> KillFigures.withoutGoal(d.kills))),
            Drawings.number(
                "tries to clear that got out",
                BookData.byGame(KillFigures.shown(d), KillFigures::cleared),
                all.map(rows -> BookData.byGame(rows, KillFigures::cleared))),
            bought(KillFigures.bought(KillFigures.shown(d)), all.map(KillFigures::bought))));
  }

  private static Want bought(List<Formulas.Wait> waits, Optional<List<Formulas.Wait>> everybody) {
    Formulas.Median m = Formulas.middle(waits);
    String words =
        " time bought by a clear, median of " + SentenceFigures.count(waits.size(), "clear") + ", ";
    boolean few = waits.size() < 10 || m.low().isEmpty() || m.high().isEmpty();
    Want own =
        few
            ? Want.text((m.middle().isEmpty() ? "–" : "few") + words + "too few to say more")
            : Want.like(
                "# s" + words + "could be # to # s",
                seconds(m.middle().orElseThrow()),
                seconds(m.low().get()),
                seconds(m.high().get()));
    return everybody
        .flatMap(
            all ->
                Formulas.middle(all)
                    .middle()
                    .map(
                        s ->
                            Want.like(", all teams # s", seconds(s))
                                .then(
                                    Want.text(", " + SentenceFigures.count(all.size(), "clear")))))
        .map(own::then)
        .orElse(own);
  }

  private static Want.Num seconds(double s) {
    return Want.num(s, 0, 0.01);
  }

  private static List<BookData.Row> exits(BookData d, BookData.Row kill) {
    return BookData.rows(
        d.exits, r -> r.is("game", kill.get("game")) && r.is("kill", kill.get("kill")));
  }

  /** Sent the length from before the red line, and no icing only because the team was short. */
  private static boolean exempt(BookData d, BookData.Row exit) {
    return exit.is("way_out", "long clearance")
        && d.releases.stream()
            .anyMatch(
                r ->
                    r.is("game", exit.get("game"))
                        && r.is("exit", exit.get("exit"))
                        && r.is("may_be_icing", "false"));
  }

  /** Every kill as a strip: how many marks of each kind. */
  static Want strips(BookData d) {
    List<BookData.Row> kills = kills(d);
    List<BookData.Row> exits = new ArrayList<>();
    kills.forEach(k -> exits.addAll(exits(d, k)));
    int goals = BookData.sum(kills, "goals_against");
    int faceOffs = kills.stream().mapToInt(k -> faceOffs(d, k)).sum();
    return Want.text(
        Drawings.whole(kills.size())
            + (kills.size() == 1 ? " kill. " : " kills. ")
            + "clear, and the time it bought: "
            + Drawings.whole(BookData.rows(exits, r -> !KillFigures.keptIn(r)).size())
            + "; face-off: "
            + Drawings.whole(faceOffs)
            + "; shot attempt: "
            + Drawings.whole(BookData.sum(kills, "attempts_against") - goals)
            + "; icing exemption used: "
            + Drawings.whole(BookData.rows(exits, r -> exempt(d, r)).size())
            + "; failed clear: "
            + Drawings.whole(BookData.rows(exits, KillFigures::keptIn).size())
            + "; goal against: "
            + Drawings.whole(goals)
            + ".");
  }

  /** Those all over the ice are in no table of the book: they are counted in the sheet itself. */
  private static int faceOffs(BookData d, BookData.Row kill) {
    Path sheet = Path.of("sample-data", kill.get("sheet"));
    CSVFormat form = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser rows = CSVParser.parse(sheet, StandardCharsets.UTF_8, form)) {
      double from = played(d, kill.count("period"), kill.number("elapsed_s"));
      double to = played(d, kill.count("end_period"), kill.number("end_elapsed_s"));
      return (int)
          rows.stream()
              .filter(r -> r.get("action").equals("faceoff"))
              .mapToDouble(
                  r -> {
                    String[] left = r.get("clock").split(":", -1);
                    double seconds = 60 * Double.parseDouble(left[0]) + Double.parseDouble(left[1]);
                    return played(d, Integer.parseInt(r.get("period")), d.period() - seconds);
                  })
              .filter(at -> at >= from && at < to)
              .count();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Seconds from the beginning of the game; a period of overtime is taken as long as the others.
   */
  private static double played(BookData d, int period, double elapsed) {
    return (period - 1) * d.period() + elapsed;
  }

  /** Day and opponent above the strips of a game. */
  static List<String> headings(BookData d) {
    return kills(d).stream()
        .map(k -> (k.has("date") ? k.get("date").substring(5) + " " : "") + k.get("opponent"))
        .distinct()
        .toList();
  }

  /** What strips and their marks say, in the order drawn. */
  static List<Want> marks(BookData d) {
    List<Want> marks = new ArrayList<>();
    for (BookData.Row k : inOrder(d)) {
      List<BookData.Row> exits = exits(d, k);
      int kept = BookData.rows(exits, KillFigures::keptIn).size();
      marks.add(
          ListFigures.clock(d, k, "elapsed_s")
              .then(
                  Want.text(
                      ": "
                          + SentenceFigures.count((int) Math.round(k.number("seconds")), "second")
                          + ", "
                          + SentenceFigures.count(exits.size() - kept, "clear")
                          + ", "
                          + SentenceFigures.count(kept, "failed clear")
                          + ", "
                          + SentenceFigures.count(k.count("goals_against"), "goal")
                          + " against")));
      exits.stream().filter(r -> !KillFigures.keptIn(r)).forEach(r -> marks.add(clear(d, r, "")));
      exits.stream()
          .filter(r -> !KillFigures.keptIn(r) && exempt(d, r))
          .forEach(r -> marks.add(clear(d, r, ", no icing: shorthanded")));
      exits.stream()
          .filter(KillFigures::keptIn)
          .forEach(r -> marks.add(who(d, r).then(Want.text(": failed clear"))));
    }
    return marks;
  }

  /** Kills of a team in a game stand together. */
  private static List<BookData.Row> inOrder(BookData d) {
    List<BookData.Row> order = new ArrayList<>();
    for (BookData.Row k : kills(d)) {
      if (!order.contains(k)) {
        order.addAll(
            BookData.rows(
                kills(d), o -> o.is("game", k.get("game")) && o.is("team", k.get("team"))));
      }
    }
    return order;
  }

  private static Want who(BookData d, BookData.Row r) {
    String player = r.has("player") ? r.get("player") : "";
    return ListFigures.clock(d, r, "release_elapsed_s")
        .then(
            Want.text(
                player.isEmpty() ? "" : (player.matches("\\d.*") ? ", No. " : ", ") + player));
  }

  private static Want clear(BookData d, BookData.Row r, String after) {
    double bought = r.has("seconds_until_reentry") ? r.number("seconds_until_reentry") : 0;
    return who(d, r)
        .then(Want.like(": " + TeamFigures.way(r) + ", # s bought" + after, seconds(bought)));
  }
}
