package twostrides.tracking;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import twostrides.game.Frame;
import twostrides.game.OnIce;
import twostrides.game.RowReader;
import twostrides.game.Usual;
import twostrides.rink.Place;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;

/**
 * All places sheets of a run: skaters at releases, clicked on the video, and what became of every
 * row. Rows read = rows used + rows set aside. The rows of one release count together: a skater who
 * cannot be read might be the one who was there first, so then none of them counts.
 */
public final class PlacesSheets {

  /** Farthest that the carrier may be from where the sheet lets the puck go, m. Assumed. */
  static final double SAME_PLACE = 5;

  /** Largest error of a click that still says where somebody was, m. Assumed. */
  public static final double MOST_ERROR = 5;

  /** Seconds between a skater's place and the later one. */
  public static final double LATER_S = 0.5;

  /** Most skaters of a team at a release. */
  private static final int MOST = 6;

  private record Key(String game, String sheet, long line) {}

  /** The rows of one release. */
  private static final class Group {
    private final GameOutline.LetGo release;
    private final List<SheetRow> rows = new ArrayList<>();
    private final List<ClickedRow.Skater> skaters = new ArrayList<>();

    Group(GameOutline.LetGo release) {
      this.release = release;
    }
  }

  /**
   * A skater as he was clicked.
   *
   * @param skater the skater
   * @param error standard error of his places each way, metres, where his row says it
   */
  public record Placed(OnIce skater, Optional<Double> error) {}

  /**
   * Skaters at a release, everybody moved along so that the carrier stands where the play sheet
   * lets the puck go.
   *
   * @param carrier who let it go
   * @param others the others
   */
  public record Clicked(Placed carrier, List<Placed> others) {
    /** Copies the skaters. */
    public Clicked {
      others = List.copyOf(others);
    }
  }

  /**
   * Who lets a puck go, as clicked, whether his rows count or not.
   *
   * @param puck where the play sheet or tag sheet lets it go
   * @param skater where he was clicked, and his speed
   */
  public record Carrier(Place puck, OnIce skater) {}

  private final Map<String, GameOutline> games;
  private final Map<Key, Group> groups = new LinkedHashMap<>();
  private final Map<Key, Clicked> clicked = new HashMap<>();
  private final List<Carrier> carriers = new ArrayList<>();
  private final List<DoubtfulRow> setAside = new ArrayList<>();
  private int rowsRead;

  private PlacesSheets(Map<String, GameOutline> games) {
    this.games = games;
  }

  /**
   * Reads places sheets.
   *
   * @param files the sheets
   * @param map their map; none when they are in our own columns
   * @param games the games of the play sheets and tag sheets that were read, by id
   * @throws SheetException when a sheet cannot be read at all, or nobody knows whose it is
   */
  public static PlacesSheets read(
      List<Path> files, Optional<SheetMap> map, Map<String, GameOutline> games)
      throws SheetException {
    PlacesSheets places = new PlacesSheets(games);
    SheetMap used = map.orElseGet(() -> SheetMap.plain(TrackForm.PLACES));
    for (Path file : files) {
      places.sheet(SheetReader.read(file, used), used);
    }
    places.groups.forEach(places::take);
    return places;
  }

  private void sheet(Sheet sheet, SheetMap map) throws SheetException {
    rowsRead += sheet.rows().size() + sheet.setAside().size();
    setAside.addAll(sheet.setAside());
    new GameOfRow(sheet, games.keySet())
        .each((row, id) -> row(row, map, games.get(id)), this::setAside);
  }

  private void row(SheetRow row, SheetMap map, GameOutline game) {
    Frame frame =
        Frame.of(map, Frame.View.ACTING_TEAM, new Usual(game.rink(), game.periodLength()));
    RowReader in = new RowReader(row, frame);
    ClickedRow clickedRow = new ClickedRow(row, in, frame, game);
    Optional<GameOutline.LetGo> release = clickedRow.release();
    if (release.isPresent()) {
      GameOutline.LetGo r = release.get();
      Group group =
          groups.computeIfAbsent(new Key(game.id(), r.sheet(), r.line()), k -> new Group(r));
      group.rows.add(row);
      clickedRow.skater(r).ifPresent(group.skaters::add);
    }
    if (!in.problems().isEmpty()) {
      setAside(row, in.problems());
    }
  }

  private void setAside(SheetRow row, List<Problem> problems) {
    setAside.add(new DoubtfulRow(row, problems));
  }

  private void take(Key key, Group group) {
    group.skaters.stream()
        .filter(s -> s.carrier() && s.skater().own())
        .forEach(s -> carriers.add(new Carrier(group.release.place(), s.skater())));
    Optional<String> doubt = doubt(group);
    if (doubt.isEmpty()) {
      clicked.put(key, clicked(group));
      return;
    }
    for (ClickedRow.Skater s : group.skaters) {
      Problem together =
          new Problem(
              s.row().file(),
              s.row().line(),
              "",
              s.row().raw(),
              doubt.get(),
              "Correct the rows of this release; they count together.");
      setAside(s.row(), List.of(together));
    }
  }

  /** What must hold of the rows of a release and does not. */
  private static Optional<String> doubt(Group group) {
    List<SheetRow> read = group.skaters.stream().map(ClickedRow.Skater::row).toList();
    Optional<SheetRow> unread = group.rows.stream().filter(r -> !read.contains(r)).findFirst();
    if (unread.isPresent()) {
      return Optional.of(
          "rows of one release that can all be used; line " + unread.get().line() + " cannot");
    }
    List<ClickedRow.Skater> carriers =
        group.skaters.stream().filter(ClickedRow.Skater::carrier).toList();
    if (carriers.size() != 1 || !carriers.get(0).skater().own()) {
      return Optional.of(
          "one row of the release with carrier yes, of the team that lets the puck go, not "
              + (carriers.size() == 1 ? "of the other" : carriers.size() + " of them"));
    }
    for (boolean own : new boolean[] {true, false}) {
      long of = group.skaters.stream().filter(s -> s.skater().own() == own).count();
      if (of > MOST) {
        return Optional.of("at most " + MOST + " skaters of a team at a release, not " + of);
      }
    }
    double apart = carriers.get(0).skater().place().distanceTo(group.release.place());
    return apart <= SAME_PLACE
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "a carrier within %.0f m of where the sheet lets the puck go, line %d, not"
                    + " %.1f m off: another release, or places seen by another team",
                SAME_PLACE,
                group.release.line(),
                apart));
  }

  private static Clicked clicked(Group group) {
    Place puck = group.release.place();
    ClickedRow.Skater carrier =
        group.skaters.stream().filter(ClickedRow.Skater::carrier).findFirst().orElseThrow();
    double dx = puck.x() - carrier.skater().place().x();
    double dy = puck.y() - carrier.skater().place().y();
    return new Clicked(
        moved(carrier, dx, dy),
        group.skaters.stream().filter(s -> !s.carrier()).map(s -> moved(s, dx, dy)).toList());
  }

  private static Placed moved(ClickedRow.Skater clicked, double dx, double dy) {
    OnIce s = clicked.skater();
    Place at = new Place(s.place().x() + dx, s.place().y() + dy);
    return new Placed(new OnIce(s.own(), at, s.speedKnown(), s.vx(), s.vy()), clicked.error());
  }

  /**
   * The skaters at a release; empty where nobody clicked.
   *
   * @param game game id
   * @param sheet file name of its play sheet or tag sheet
   * @param line line of the sheet
   */
  public Optional<Clicked> at(String game, String sheet, long line) {
    return Optional.ofNullable(clicked.get(new Key(game, sheet, line)));
  }

  /** Releases whose skaters are known from these sheets. */
  public int releases() {
    return clicked.size();
  }

  /** Who let the pucks go, in the order of the sheets. */
  public List<Carrier> carriers() {
    return List.copyOf(carriers);
  }

  /** Rows of the sheets. */
  public int rowsRead() {
    return rowsRead;
  }

  /** Rows that were not used, and why. */
  public List<DoubtfulRow> setAside() {
    return List.copyOf(setAside);
  }
}
