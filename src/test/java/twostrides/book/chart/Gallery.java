package twostrides.book.chart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import twostrides.rink.Lane;
import twostrides.rink.Place;
import twostrides.rink.Rink;
import twostrides.stats.AdjustedRate;
import twostrides.stats.Clustered;
import twostrides.stats.Count;
import twostrides.stats.Interval;

/** Every picture with invented data; {@code main} writes them into a folder to be looked at. */
final class Gallery {

  private static final List<String> OPPONENTS =
      List.of(
          "Tarn Wolves",
          "Copperfen Kites",
          "Old Saltry Otters",
          "Merrowdale Pikes",
          "Ashlock Lanterns",
          "Brackenholm Storks");

  private Gallery() {}

  /** All pictures by their ids, with names as they mostly are. */
  static Map<String, Picture> pictures() {
    return pictures("");
  }

  /** All pictures by their ids, every name from a sheet lengthened. */
  static Map<String, Picture> pictures(String more) {
    Map<String, Picture> all = new LinkedHashMap<>();
    put(all, "numbers", numbers(more).picture("numbers"));
    put(all, "kills", kills(more, 12).picture("kills"));
    put(all, "one-kill", kills(more, 1).picture("one-kill"));
    put(all, "who", who(more).picture("who"));
    put(all, "iced", iced(more).picture("iced"));
    put(all, "ways", ways(more).picture("ways"));
    put(all, "situations", situations(more).picture("situations"));
    put(all, "pairs", pairs(more).picture("pairs"));
    put(all, "zones", zones(more, Rink.NORTH_AMERICAN).picture("zones"));
    put(all, "zones-wide-ice", zones(more, Rink.INTERNATIONAL).picture("zones-wide-ice"));
    put(all, "cost", cost(more).picture("cost"));
    put(all, "trend", trend(more).picture("trend"));
    put(all, "stack", stack(more).picture("stack"));
    put(all, "release", release(Rink.NORTH_AMERICAN).picture("release"));
    put(all, "map", map(more, 60).picture("map"));
    put(all, "map-many", map(more, 400).picture("map-many"));
    return all;
  }

  private static void put(Map<String, Picture> all, String id, Picture picture) {
    all.put(id, picture);
  }

  static Link to(String words) {
    return Link.to("clip.html#" + Math.abs(words.hashCode() % 1000), words);
  }

  static BigNumbers numbers(String more) {
    return new BigNumbers(
        "Penalty kill" + more,
        List.of(
            BigNumbers.Value.share(
                "kills without a goal against" + more,
                new Clustered(new Count(49, 53)),
                new Span(70, 100),
                Optional.of(new Reference("all teams" + more, 90, "123 of 4,567")),
                to("kills")),
            BigNumbers.Value.share(
                "tries to clear that got out",
                new Clustered(new Count(142, 234)),
                new Span(40, 80),
                Optional.of(new Reference("all teams", 61, "123 of 4,567")),
                to("clears")),
            new BigNumbers.Value(
                "time bought by a clear (half bought more)",
                "s",
                20,
                Optional.of(new Span(17, 23)),
                new Span(5, 40),
                Optional.of(new Reference("all teams", 19, "123 of 4,567")),
                to("time bought"))));
  }

  static KillStrips kills(String more, int games) {
    Random random = new Random(5);
    List<KillStrips.Game> all = new ArrayList<>();
    for (int g = 0; g < games; g++) {
      List<KillStrips.Kill> kills = new ArrayList<>();
      for (int k = 0; k < 2 + random.nextInt(6); k++) {
        double seconds = random.nextInt(4) == 0 ? 30 + random.nextInt(80) : 120;
        kills.add(kill(random, k, seconds, random.nextInt(13) == 0));
      }
      String day = "10-" + (10 + g) + " ";
      all.add(new KillStrips.Game(day + OPPONENTS.get(g % OPPONENTS.size()) + more, kills));
    }
    return new KillStrips("Every kill" + more, all);
  }

  private static KillStrips.Kill kill(Random random, int k, double seconds, boolean goal) {
    List<KillStrips.Event> events = new ArrayList<>();
    events.add(KillStrips.Event.at(KillMark.FACE_OFF, 0, to("face-off")));
    double t = 3 + random.nextInt(12);
    while (t < seconds - 3) {
      switch (random.nextInt(5)) {
        case 0, 1 -> {
          double end = Math.min(seconds, t + 5 + random.nextInt(30));
          events.add(KillStrips.Event.clear(t, end, to("clear, " + (int) (end - t) + " s")));
          if (random.nextInt(4) == 0) {
            events.add(KillStrips.Event.at(KillMark.ICING_EXEMPTION, t + 3, to("exemption")));
          }
          t = end;
        }
        case 2 -> events.add(KillStrips.Event.at(KillMark.ATTEMPT, t, to("shot attempt")));
        case 3 -> events.add(KillStrips.Event.at(KillMark.FAILED_CLEAR, t, to("failed clear")));
        default -> events.add(KillStrips.Event.at(KillMark.FACE_OFF, t, to("face-off")));
      }
      t += 4 + random.nextInt(14);
    }
    if (goal) {
      events.add(KillStrips.Event.at(KillMark.GOAL, seconds, to("goal against")));
    }
    String clock = "P" + (1 + k % 3) + " " + (1 + random.nextInt(19)) + ":" + (10 + k * 7);
    return new KillStrips.Kill(clock, seconds, events, to("kill " + clock));
  }

  private static DotLines.Row row(String label, Dot... dots) {
    return new DotLines.Row(label, List.of(dots), "", to(label));
  }

  private static DotLines lines(
      String title, Optional<Reference> reference, boolean volumes, DotLines.Row... rows) {
    DotLines.Group group = new DotLines.Group("", List.of(rows));
    return new DotLines(title, List.of(group), reference, List.of(), volumes);
  }

  private static Dot dot(int k, int n, Tone tone) {
    return Dot.of(new Count(k, n), tone);
  }

  static DotLines who(String more) {
    return lines(
        "Who gets it out when shorthanded" + more,
        Optional.of(new Reference("team", 0.61, "123 of 4,567")),
        false,
        row("11 Alba Lommalock" + more, dot(9, 10, Tone.GOOD)),
        row("6 Hedda Quillavik", dot(13, 18, Tone.GOOD)),
        row("2 Silke Skarrinost", dot(15, 21, Tone.GOOD)),
        row("23 Yara Tarvoholt", dot(19, 30, Tone.GOOD)),
        row("4 Merle Ostraquist" + more, dot(20, 32, Tone.GOOD)),
        row("10 Ilse Orrinsund", dot(11, 20, Tone.GOOD)),
        row("18 Ilse Tarvodahn", dot(6, 12, Tone.GOOD)),
        row("28 Petra Wiskuholt", dot(12, 25, Tone.GOOD)),
        row("17 Noor Halvik", dot(3, 7, Tone.GOOD)),
        row("19 Asta Pellamund", dot(0, 0, Tone.GOOD)));
  }

  private static Dot adjusted(int k, int n, double share) {
    Count c = new Count(k, n);
    AdjustedRate rate =
        new AdjustedRate(c, share, new Interval(share * 0.45, Math.min(1, share * 1.7)));
    return Dot.of(rate, c.wilson(), Tone.TROUBLE);
  }

  static DotLines iced(String more) {
    return lines(
        "Who is iced" + more,
        Optional.of(new Reference("team" + more, 0.07, "123 of 4,567")),
        false,
        row("10 Ilse Orrinsund" + more, adjusted(6, 28, 0.114)),
        row("12 Odile Vellarey", adjusted(4, 27, 0.093)),
        row("14 Asta Pellamund", adjusted(4, 28, 0.092)),
        row("36 Juna Lommavik", adjusted(3, 30, 0.08)),
        row("8 Silke Gravamund", adjusted(2, 20, 0.078)),
        row("11 Alba Lommalock", adjusted(1, 8, 0.07)));
  }

  static DotLines ways(String more) {
    return lines(
        "Which way out" + more,
        Optional.empty(),
        true,
        row("carry over center", dot(0, 262, Tone.PLAIN)),
        row("pass over center", dot(0, 257, Tone.PLAIN)),
        row("carried or passed, sent before the line" + more, dot(9, 98, Tone.TROUBLE)),
        row("chip", dot(1, 92, Tone.PLAIN)),
        row("long clearance", dot(10, 62, Tone.TROUBLE)),
        row("missed pass", dot(22, 1137, Tone.TROUBLE)));
  }

  static DotLines situations(String more) {
    DotLines.Group score =
        new DotLines.Group(
            "Score" + more,
            List.of(
                row("trailing", dot(12, 160, Tone.TROUBLE)),
                row("tied", dot(8, 140, Tone.TROUBLE)),
                row("leading by two or more" + more, dot(14, 90, Tone.TROUBLE))));
    DotLines.Group period =
        new DotLines.Group(
            "Period",
            List.of(
                row("first", dot(9, 120, Tone.TROUBLE)),
                row("second, long change", dot(16, 150, Tone.TROUBLE)),
                row("overtime", dot(1, 4, Tone.TROUBLE))));
    return new DotLines(
        "When and where it happens" + more,
        List.of(score, period),
        Optional.of(new Reference("all", 0.082, "123 of 4,567")),
        List.of(),
        false);
  }

  static DotLines pairs(String more) {
    DotLines.Row clear =
        new DotLines.Row(
            "cleared of tries" + more,
            List.of(dot(142, 234, Tone.GOOD), dot(88, 190, Tone.GOOD)),
            "14 points more (5 to 23)",
            to("clears"));
    DotLines.Row icing =
        new DotLines.Row(
            "iced of pucks sent before the red line",
            List.of(dot(47, 620, Tone.TROUBLE), dot(30, 410, Tone.TROUBLE)),
            "no clear difference",
            to("icings"));
    DotLines.Row won =
        new DotLines.Row(
            "defensive-zone face-offs won after an icing",
            List.of(dot(5, 11, Tone.PLAIN), dot(3, 6, Tone.PLAIN)),
            "few",
            to("face-offs"));
    return new DotLines(
        "How two differ" + more,
        List.of(new DotLines.Group("", List.of(clear, icing, won))),
        Optional.empty(),
        List.of("Glasswater Herons" + more, "Tarn Wolves" + more),
        false);
  }

  static HalfRink zones(String more, Rink rink) {
    Random random = new Random(11);
    List<HalfRink.Zone> zones = new ArrayList<>();
    for (ZoneCell.Depth depth : ZoneCell.Depth.values()) {
      for (Lane lane : Lane.values()) {
        ZoneCell cell = new ZoneCell(depth, lane);
        int n = 6 + random.nextInt(150);
        Count iced = new Count(random.nextInt(1 + n / 7), n);
        zones.add(new HalfRink.Zone(cell, iced, Optional.of("clip.html#zone")));
      }
    }
    List<HalfRink.Mark> icings = new ArrayList<>();
    for (int i = 0; i < 47; i++) {
      Place from =
          new Place(
              -1 - random.nextDouble() * (rink.length() / 2 - 4),
              (random.nextDouble() - 0.5) * (rink.width() - 3));
      MarkKind kind = i < 4 ? MarkKind.FLAGGED : i < 9 ? MarkKind.LOOK_FIRST : MarkKind.ICED;
      icings.add(new HalfRink.Mark(from, kind, to("icing " + i)));
    }
    return new HalfRink(
        "Where icings start" + more,
        rink,
        "Of the pucks sent from a zone before the red line: how many were iced." + more,
        zones,
        icings);
  }

  static ValueBars cost(String more) {
    return new ValueBars(
        "What an icing costs: shot attempts against in 20 s" + more,
        List.of(
            new ValueBars.Bar(
                "after an icing" + more,
                0.47,
                Optional.of(new Span(0.31, 0.68)),
                "31 in 66",
                Tone.TROUBLE,
                to("icing")),
            new ValueBars.Bar(
                "after an exit like it that was not iced",
                0.20,
                Optional.of(new Span(0.14, 0.28)),
                "27 in 132",
                Tone.GOOD,
                to("exit")),
            new ValueBars.Bar(
                "after an icing late in a shift",
                0.5,
                Optional.empty(),
                "2 in 4",
                Tone.TROUBLE,
                to("late"))));
  }

  static Trend trend(String more) {
    return new Trend(
        "4 Merle Ostraquist: sent before the red line" + more,
        List.of(
            new Trend.Stretch("games 1 to 4" + more, dot(3, 7, Tone.PLAIN), to("1 to 4")),
            new Trend.Stretch("games 5 to 8", dot(9, 31, Tone.PLAIN), to("5 to 8")),
            new Trend.Stretch("games 9 to 12", dot(5, 36, Tone.PLAIN), to("9 to 12"))),
        "No clear change in 12 games; 40 more would tell.");
  }

  private static WayStack.Way way(String label, int even, int up, int down) {
    return new WayStack.Way(
        label,
        List.of(
            new WayStack.Part("even", even),
            new WayStack.Part("power play", up),
            new WayStack.Part("shorthanded", down)),
        to(label));
  }

  static WayStack stack(String more) {
    return new WayStack(
        "4 Merle Ostraquist: attempts by way out" + more,
        List.of(
            way("carry over center", 41, 12, 2),
            way("pass over center", 37, 9, 1),
            way("carried or passed, sent before the line" + more, 14, 0, 3),
            way("chip", 11, 1, 4),
            way("long clearance", 6, 0, 19),
            way("missed pass", 16, 2, 1)));
  }

  static ReleaseDiagram release(Rink rink) {
    return new ReleaseDiagram(
        rink,
        new Place(-5.6, 6),
        List.of(
            new ReleaseDiagram.Skater(true, new Place(-7, 6.4), 6, 0.4),
            new ReleaseDiagram.Skater(true, new Place(-12, -4), 3, 2),
            new ReleaseDiagram.Skater(false, new Place(-1, 2.5), -4, 1.2),
            new ReleaseDiagram.Skater(false, new Place(9, -3), 0.1, 0)),
        List.of(
            new ReleaseDiagram.Across(-5.6, 6, 6, 6),
            new ReleaseDiagram.Across(8, 3, 5.6, 8),
            new ReleaseDiagram.Across(25, -1.5, 5, 10.6)),
        Optional.of(new Span(11, 28)),
        "Let go 5.6 m (18 ft) before the red line, 0.9 s away",
        "If skated to red: 0.03 attempts against. Chance of icing from here: 12 of 98 such pucks"
            + " (12 %).");
  }

  static HalfRink map(String more, int n) {
    Random random = new Random(3);
    List<MarkKind> others =
        List.of(
            MarkKind.STOPPED,
            MarkKind.OWN_NEXT,
            MarkKind.OPPONENT_NEXT,
            MarkKind.OTHER_FACE_OFF,
            MarkKind.SCORED);
    List<HalfRink.Mark> releases = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Place from = new Place(-1 - 26 * random.nextDouble(), (random.nextDouble() - 0.5) * 24);
      MarkKind outcome = i % 9 == 0 ? MarkKind.ICED : others.get(random.nextInt(5));
      releases.add(new HalfRink.Mark(from, outcome, to("release " + i)));
    }
    return new HalfRink(
        "4 Merle Ostraquist" + more,
        Rink.NORTH_AMERICAN,
        n + 3 + " sent before the red line, 3 without a place in the sheets.",
        List.of(),
        releases);
  }

  /**
   * Writes every picture as SVG and PNG, and pages with all of them in both themes.
   *
   * @param args the folder, and letters to lengthen every name with
   * @throws IOException when the folder cannot be written
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args.length > 0 ? args[0] : "target/gallery");
    Files.createDirectories(folder);
    StringBuilder body = new StringBuilder();
    for (Map.Entry<String, Picture> e : pictures(args.length > 1 ? args[1] : "").entrySet()) {
      Files.writeString(folder.resolve(e.getKey() + ".svg"), e.getValue().svg());
      Files.write(folder.resolve(e.getKey() + ".png"), e.getValue().png().get());
      body.append("<h2>").append(e.getKey()).append("</h2>").append(e.getValue().html());
    }
    body.append("<div class=\"thumb\" style=\"width:240px\">")
        .append(release(Rink.NORTH_AMERICAN).thumbnail("thumb"))
        .append("</div>");
    for (String theme : List.of("light", "dark")) {
      Files.writeString(
          folder.resolve(theme + ".html"),
          "<!doctype html><html lang=\"en\" data-theme=\"%s\"><meta charset=\"utf-8\"><title>g</title><style>%s %s</style><main class=\"sheet\">%s</main></html>"
              .formatted(
                  theme,
                  Files.readString(Path.of("src/main/resources/twostrides/book/book.css")),
                  Picture.styles(),
                  body));
    }
  }
}
