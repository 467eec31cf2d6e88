package twostrides.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Every picture of a page that stands under a title of its own: its words, the words of its marks
 * and what is written in it, worked out anew. A picture that nobody knows fails.
 */
final class PictureFigures {

  /** Where pictures may stand: here, and in cards and sheets, which have tests of their own. */
  private static final String KNOWN =
      ":is(section.answer, details.flag, ol.dearest, section.one, section.stage)";

  private static final Pattern NUMBER = Pattern.compile("\\d[\\d,.:]*");

  /** Lines of a picture of players; the semicolon in a line stands before "could be". */
  private static final String BETWEEN_LINES = "; (?!could be)";

  private final BookRun book;
  private final String page;
  private final Document html;

  /**
   * For one page.
   *
   * @param book the run with its data
   * @param page the page's file
   * @param html what the page shows
   */
  PictureFigures(BookRun book, String page, Document html) {
    this.book = book;
    this.page = page;
    this.html = html;
  }

  /**
   * Compares the pictures.
   *
   * @return how many words of pictures and of their marks agree
   */
  int compare() {
    int figures = 0;
    List<Element> parts = html.select("section.answer:not(section.one *)");
    Set<String> wanted = new TreeSet<>(ids());
    assertEquals(wanted, new TreeSet<>(parts.stream().map(Element::id).toList()), page);
    assertEquals(
        List.of(),
        html.select("img, svg:not(" + KNOWN + " svg)").stream().map(Element::className).toList(),
        page + ": a picture that nobody checks");
    for (Element part : parts) {
      List<Element> forms = part.select("svg");
      assertEquals(
          List.of("chart wide", "chart narrow"), forms.stream().map(Element::className).toList());
      for (Element svg : forms) {
        assertEquals(part.select("> h2").text(), svg.select("> title").text(), page);
        figures += picture(part.id(), svg);
      }
    }
    return figures;
  }

  /** The part of a picture's id that says what it shows. */
  private static String kind(String page, String id) {
    return page.contains("/") ? id.substring(id.lastIndexOf('-') + 1) : id;
  }

  private List<String> ids() {
    String own = page.replace('/', '-').replace(".html", "-");
    return switch (PageTable.kind(page)) {
      case "index.html" -> {
        List<String> ids = new ArrayList<>(List.of("team-numbers", "team-ways"));
        if (lastGame().isPresent()) {
          ids.add("last-game");
        }
        yield ids;
      }
      case "icings.html" -> List.of("icings-zones", "icings-ways", "icings-who", "icings-cost");
      case "players.html" -> List.of("players-who");
      case "opponents.html" -> List.of("opponents");
      case "kill.html" -> List.of("kill-numbers", "kill-strips", "kill-who");
      case "costs.html" -> List.of("costs");
      case "slices.html" -> List.of("situations");
      case "empty-net.html" ->
          BookData.rows(book.data.releases, SliceFigures::netEmpty).isEmpty()
              ? List.of()
              : List.of("empty-net-goals", "empty-net-map");
      case "teams" -> {
        List<String> ids = new ArrayList<>(List.of(own + "numbers", own + "ways", own + "zones"));
        if (SentenceFigures.opponent(book, page)) {
          ids.add(own + "against");
        }
        yield ids;
      }
      case "players" -> List.of(own + "trend", own + "map", own + "ways");
      default -> List.of();
    };
  }

  private int picture(String id, Element svg) {
    BookData d = book.data;
    List<BookData.Row> ours = BookData.rows(d.exits, BookData.team(d.ours()));
    List<BookData.Row> sent = BookData.rows(d.releases, BookData.team(d.ours()));
    return switch (PageTable.kind(page) + " " + kind(page, id)) {
      case "index.html team-numbers" -> words(svg, Drawings.numbers(d, d.ours()));
      case "index.html team-ways" -> words(svg, Drawings.ways(book.exits(page)));
      case "index.html last-game" -> words(svg, lastGame().orElseThrow());
      case "icings.html icings-zones" ->
          words(svg, Drawings.zones(d, sent)) + marks(svg, Drawings.icings(d, sent));
      case "icings.html icings-ways" -> words(svg, Drawings.ways(ours));
      case "icings.html icings-who", "players.html players-who" -> who(svg);
      case "icings.html icings-cost", "costs.html costs" -> cost(svg);
      case "opponents.html opponents" ->
          words(svg, Drawings.lines(Optional.empty(), SliceFigures.iced(d, "Opponent")));
      case "slices.html situations" -> words(svg, situations());
      case "empty-net.html empty-net-goals" ->
          words(svg, Drawings.lines(Optional.empty(), SliceFigures.goals(d)));
      case "empty-net.html empty-net-map" ->
          map(book, BookData.rows(d.releases, SliceFigures::netEmpty), svg);
      case "kill.html kill-numbers" -> words(svg, KillPictures.numbers(d));
      case "kill.html kill-strips" -> strips(svg);
      case "kill.html kill-who" -> killers(svg);
      case "teams numbers" -> words(svg, Drawings.numbers(d, Optional.of(book.team(page))));
      case "teams ways" -> words(svg, Drawings.ways(book.exits(page)));
      case "teams zones" ->
          words(svg, Drawings.zones(d, book.releases(page)))
              + marks(svg, Drawings.icings(d, book.releases(page)));
      case "teams against" -> {
        List<BookData.Row> against = BookData.rows(sent, r -> r.is("opponent", book.team(page)));
        yield words(svg, Drawings.zones(d, against)) + marks(svg, Drawings.icings(d, against));
      }
      case "players trend" -> trend(book, book.player(page), svg);
      case "players map" -> map(book, book.releases(page), svg);
      case "players ways" -> stack(svg);
      default -> throw new AssertionError(page + ": nobody knows the picture " + id);
    };
  }

  /** The words of a picture; what is written in it has no number that they have not. */
  private int words(Element svg, Want want) {
    return words(page, svg, want, List.of());
  }

  private static int words(String page, Element svg, Want want, List<String> also) {
    String shown = svg.select("> desc").text();
    assertTrue(want.fits(shown), page + ", " + shown + ", wanted " + want);
    written(page, svg, shown, also);
    return 1 + want.numbers().size();
  }

  /** Every number written in the picture stands in its words too; ticks of a scale do not. */
  static void written(String page, Element svg, String shown, List<String> also) {
    Set<String> known = numbers(shown + " " + String.join(" ", also));
    for (Element text : svg.select("text:not(.t-note:matchesOwn(^\\d+ %$))")) {
      for (String number : numbers(text.text())) {
        assertTrue(known.contains(number), page + ": " + text.text() + " is not in " + shown);
      }
    }
  }

  private static Set<String> numbers(String words) {
    Set<String> numbers = new HashSet<>();
    NUMBER
        .matcher(words)
        .results()
        .map(MatchResult::group)
        .forEach(n -> numbers.add(n.replaceAll("[,.:]+$", "")));
    return numbers;
  }

  /** What the marks with numbers say, in the order drawn. */
  private static int marks(Element svg, List<Want> wanted) {
    List<String> shown =
        svg.select("a > title, g > title").eachText().stream()
            .filter(t -> t.chars().anyMatch(Character::isDigit))
            .toList();
    return FiguresTest.fit(wanted, shown);
  }

  /** A player's habit. */
  private static int trend(BookRun book, BookData.Player p, Element svg) {
    return words(p.name(), svg, Drawings.trend(book.figures, p), List.of("0 25 50 75 100"));
  }

  /** A player's releases. */
  private static int map(BookRun book, List<BookData.Row> releases, Element svg) {
    return onPaper(releases, svg) + marks(svg, Drawings.marks(book.data, releases));
  }

  /** The same on his sheet, where marks say nothing: nobody can point at paper. */
  static int onPaper(List<BookData.Row> releases, Element svg) {
    return words("map", svg, Drawings.map(releases), List.of());
  }

  private int stack(Element svg) {
    List<BookData.Row> exits = book.exits(page);
    List<String> bars = Drawings.bars(exits);
    String text = String.join(" ", svg.select("text").eachText());
    for (String bar : bars) {
      assertTrue(text.contains(bar.substring(bar.lastIndexOf('('))), page + ": " + bar);
    }
    // The scale counts attempts.
    List<String> ticks = new ArrayList<>(bars);
    for (String tick :
        svg.select(
                "text[style*=soft]:matchesOwn(^[\\d,]+$), text:not([style*=fill]):matchesOwn(^[\\d,]+$)")
            .eachText()) {
      ticks.add(tick);
    }
    return words(page, svg, Drawings.stack(exits), ticks) + bars.size();
  }

  private Want situations() {
    BookData d = book.data;
    List<Want> lines = new ArrayList<>();
    Drawings.reference(
            "all tries",
            BookData.byGame(BookData.rows(d.exits, BookData.team(d.ours())), BookData::icedAfter))
        .ifPresent(lines::add);
    for (String heading :
        List.of(
            "Strength",
            "Score",
            "Period",
            "Pressure at the release",
            "Side of the rink, facing the attack",
            "Venue",
            "Opponent")) {
      SliceFigures.iced(d, heading)
          .forEach((name, s) -> lines.add(Want.text(name + ": ").then(Drawings.said(s))));
    }
    return Drawings.joined(lines);
  }

  /** Lines of players, whose order hangs on fitted rates: each once, the highest first. */
  private int lines(Element svg, Optional<Want> reference, Map<String, Want> wanted) {
    String shown = svg.select("> desc").text();
    List<String> lines =
        new ArrayList<>(List.of(shown.substring(0, shown.length() - 1).split(BETWEEN_LINES, -1)));
    lines.remove("");
    if (reference.isPresent()) {
      assertTrue(reference.get().fits(lines.get(0)), page + ", " + shown);
      lines.remove(0);
    }
    Map<String, Want> left = new LinkedHashMap<>(wanted);
    double before = 100;
    for (String line : lines) {
      List<String> of = left.keySet().stream().filter(n -> line.startsWith(n + ": ")).toList();
      assertEquals(1, of.size(), page + ": " + line);
      Want want = Want.text(of.get(0) + ": ").then(left.remove(of.get(0)));
      assertTrue(want.fits(line), page + ": " + line + ", wanted " + want);
      String share = line.substring(of.get(0).length() + 2);
      double percent =
          share.startsWith("under") ? 0.5 : Double.parseDouble(share.replaceAll("\\D.*", ""));
      assertTrue(percent <= before, page + ": the highest first, " + shown);
      before = percent;
    }
    assertEquals(Map.of(), left, page);
    written(page, svg, shown, List.of());
    return wanted.size();
  }

  /** Players by adjusted rate. */
  private int who(Element svg) {
    BookData d = book.data;
    Map<String, Want> players = new LinkedHashMap<>();
    for (BookData.Player p : book.players) {
      Formulas.Share s = BookData.iced(BookData.rows(d.releases, BookData.of(p)));
      if (d.ours().map(t -> t.equals(p.team())).orElse(true) && !s.few()) {
        if (d.icedRates().rate(s).words().equals(Want.NONE)) {
          continue;
        }
        String team = d.ours().isPresent() ? "" : ", " + p.team();
        players.put(p.name() + team, Drawings.said(d.icedRates(), s));
      }
    }
    Formulas.Share all = BookData.iced(BookData.rows(d.releases, BookData.team(d.ours())));
    return lines(svg, Drawings.reference("team", all), players);
  }

  private int killers(Element svg) {
    BookData d = book.data;
    Map<String, Want> players = new LinkedHashMap<>();
    for (List<BookData.Row> rows : KillFigures.byPlayer(d)) {
      Formulas.Share s = KillFigures.cleared(rows);
      if (!s.few()) {
        String team = d.ours().isPresent() ? "" : ", " + rows.get(0).get("team");
        players.put(rows.get(0).get("player") + team, Drawings.said(s));
      }
    }
    return lines(
        svg, Drawings.reference("team", KillFigures.cleared(KillFigures.shown(d))), players);
  }

  /** The interval resamples games, so it is not made again: the value has to lie inside it. */
  private int cost(Element svg) {
    CostFigures.Matched m = CostFigures.icings(book.data);
    List<String> ranges =
        Pattern.compile("could be (\\S+ to [\\d.]*\\d)")
            .matcher(svg.select("> desc").text())
            .results()
            .map(r -> r.group(1))
            .toList();
    return words(
        svg,
        Drawings.joined(
            List.of(
                bar(
                    "after an icing",
                    m.after(),
                    m,
                    SentenceFigures.count(m.n(), "icing"),
                    ranges,
                    0),
                bar(
                    "after a matched exit without a face-off",
                    m.without(),
                    m,
                    SentenceFigures.count(m.exits(), "exit"),
                    ranges,
                    1))));
  }

  private static Want bar(
      String label,
      double total,
      CostFigures.Matched m,
      String counted,
      List<String> ranges,
      int at) {
    if (m.few() || m.games() < 10) {
      return Want.text(label + ": few (" + counted + ")");
    }
    double mean = total / m.n();
    return Want.like(label + ": # (" + counted + ", could be ", Want.num(mean, 2))
        .then(CostFigures.holding(mean, m.games(), ranges.size() > at ? ranges.get(at) : ""))
        .then(Want.text(")"));
  }

  private int strips(Element svg) {
    List<String> labels = new ArrayList<>(List.of("0:00 1:00 2:00 3:00 4:00 5:00 6:00 7:00 8:00"));
    labels.addAll(KillPictures.headings(book.data));
    List<Want> marks = KillPictures.marks(book.data);
    labels.addAll(svg.select("a > title, g > title").eachText());
    return words(page, svg, KillPictures.strips(book.data), labels) + marks(svg, marks);
  }

  /** The last game beside the games before; empty below two games, or without a team. */
  private Optional<Want> lastGame() {
    BookData d = book.data;
    Optional<String> last = SentenceFigures.lastGame(d);
    return last.map(
        game -> {
          List<BookData.Row> ours = BookData.rows(d.exits, BookData.team(d.ours()));
          List<BookData.Row> now = BookData.rows(ours, r -> r.is("game", game));
          List<BookData.Row> before = BookData.rows(ours, r -> !r.is("game", game));
          return Drawings.joined(
              List.of(
                  both(
                      "iced, of the tries to get out",
                      BookData.icedAfter(now),
                      BookData.icedAfter(before)),
                  both(
                      "sent before the red line, of pucks carried or passed out",
                      PlayerFigures.releasedShort(now),
                      PlayerFigures.releasedShort(before)),
                  both(
                      "failed clears, of tries shorthanded",
                      BookData.share(KillFigures.shorthanded(now), KillFigures::keptIn),
                      BookData.share(KillFigures.shorthanded(before), KillFigures::keptIn))));
        });
  }

  private static Want both(String label, Formulas.Share now, Formulas.Share before) {
    return Want.text(label + ": ")
        .then(Drawings.said(now))
        .then(Want.text(" and "))
        .then(Drawings.said(before));
  }
}
