package twostrides.game;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import twostrides.rink.Place;
import twostrides.rink.Zone;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetRow;

/** Reads one row of a tag sheet. */
final class TagRows {

  /** The words of docs/sheets.md; the pipeline knows them by the same words. */
  private static final Map<String, String> WAYS =
      words(
          "carry",
          "pass",
          "chip",
          "long clearance",
          "missed pass",
          "moved, means unknown",
          "kept in");

  private static final Map<String, String> CENTER =
      words("gained", "released short", "lost short", "brought back", "stopped");

  private static final Map<String, Boolean> FACE_OFFS = Map.of("won", true, "lost", false);

  private final Frame frame;
  private final TeamWords teamWords;
  private final String sheetName;
  private final String fallbackGame;
  private final List<DoubtfulRow> doubtful;
  private final Collection<Mend> mends;

  TagRows(
      Frame frame,
      TeamWords teamWords,
      String sheetName,
      String fallbackGame,
      List<DoubtfulRow> doubtful,
      Collection<Mend> mends) {
    this.frame = frame;
    this.teamWords = teamWords;
    this.sheetName = sheetName;
    this.fallbackGame = fallbackGame;
    this.doubtful = doubtful;
    this.mends = mends;
  }

  private static Map<String, String> words(String... words) {
    Map<String, String> map = new LinkedHashMap<>();
    for (String w : words) {
      map.put(w, w);
    }
    return map;
  }

  private static Map<String, Strength> strengths() {
    Map<String, Strength> map = new LinkedHashMap<>();
    for (Strength s : List.of(Strength.EVEN, Strength.SHORTHANDED, Strength.POWER_PLAY)) {
      map.put(s.label(), s);
    }
    return map;
  }

  /** The row, or empty when it was set aside. */
  Optional<ReadRow<TaggedExit>> read(SheetRow source) {
    RowReader in = RowReader.mending(source, frame);
    Optional<Integer> period = in.period();
    Optional<Double> elapsed = in.elapsed();
    Optional<String> team = teamWords.team(in, true);
    boolean endsSaid = in.readHomeAttacks();
    Optional<LocalDate> date = in.date();
    Optional<String> home = teamWords.name(in, SheetForms.HOME);
    Optional<String> away = teamWords.name(in, SheetForms.AWAY);
    in.differ(home, away, SheetForms.AWAY);
    Optional<String> other = teamWords.name(in, SheetForms.OPPONENT);
    in.differ(team, other, SheetForms.OPPONENT);
    Optional<String> way = in.word(SheetForms.WAY_OUT, WAYS);
    Optional<Boolean> faceOffWon = in.word(SheetForms.FACE_OFF, FACE_OFFS);
    Optional<String> center = in.word(SheetForms.AT_CENTER, CENTER);
    Optional<Strength> strength = in.word(SheetForms.STRENGTH, strengths());
    Optional<NetEmpty> net = in.word(SheetForms.NET_EMPTY, NetEmpty.words());
    Optional<TagEnd> ended = in.word(SheetForms.ENDED, TagEnd.words());
    Optional<Pressure> pressure = in.word(SheetForms.PRESSURE, Pressure.words());
    in.needHome(home, SheetForms.X, SheetForms.ZONE, SheetForms.END_X);
    boolean atHome = team.equals(home);
    int p = period.orElse(1);
    Optional<Place> place = in.place(SheetForms.X, SheetForms.Y, atHome, p);
    Optional<Zone> zone = in.zone(SheetForms.ZONE, atHome, p);
    Optional<Place> end = in.place(SheetForms.END_X, SheetForms.END_Y, atHome, p);
    var video = in.video();
    boolean happened =
        Stream.of(SheetForms.ENDED, SheetForms.FACE_OFF, SheetForms.STRENGTH)
            .anyMatch(c -> source.cell(c).isPresent());
    if (source.cell(SheetForms.WAY_OUT).isEmpty() && !happened) {
      in.requiredText(
          SheetForms.WAY_OUT,
          "a way out, or, where no exit was tried, one of ended, faceoff and strength");
    }
    boolean marked = way.isPresent() && (way.get().equals("carry") || way.get().equals("pass"));
    if (center.isPresent() && !marked) {
      in.problems()
          .add(
              source
                  .cell(SheetForms.AT_CENTER)
                  .orElseThrow()
                  .problem(
                      "nothing: only a carry or a pass has a mark at center",
                      "empty the cell, or correct way_out"));
    }
    if (!in.problems().isEmpty()) {
      doubtful.add(new DoubtfulRow(source, in.problems()));
      return Optional.empty();
    }
    Optional<String> opponent =
        other.or(() -> team.equals(home) ? away : team.equals(away) ? home : Optional.empty());
    TaggedExit exit =
        new TaggedExit(
            period.orElseThrow(),
            elapsed.orElseThrow(),
            team.orElseThrow(),
            opponent,
            in.id(SheetForms.PLAYER),
            way,
            center,
            strength.orElse(Strength.UNKNOWN),
            net,
            place,
            zone,
            ended,
            end,
            faceOffWon,
            pressure,
            video,
            sheetName,
            source.line());
    mends.addAll(in.mends());
    ReadRow.AboutGame about =
        new ReadRow.AboutGame(date, home, away, in.clockDecimals(), in.placeDecimals(), endsSaid);
    return Optional.of(
        new ReadRow<>(source, in.text(SheetForms.GAME).orElse(fallbackGame), about, exit));
  }
}
