package twostrides.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import twostrides.book.Format;
import twostrides.exits.Around;
import twostrides.exits.Release;
import twostrides.exits.When;
import twostrides.game.OnIce;
import twostrides.race.Sighting;
import twostrides.rink.Place;
import twostrides.season.SkatersAtRelease;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetFiles;
import twostrides.sheet.SheetMap;
import twostrides.tracking.GameOutline;
import twostrides.tracking.PlacesSheets;
import twostrides.tracking.TrackForm;

/** The places sheets of a review, and the skaters that they put at releases. */
final class ClickedSkaters implements SkatersAtRelease {

  /** Metres in half a second that are hardly a click's error. Assumed. */
  private static final double CLEARLY = 1.5;

  /** Carriers that it takes, and metres by which they come nearer to the puck. Assumed. */
  private static final int LEAST = 3;

  private static final double NEARER = 0.5;

  @Option(
      names = "--places",
      paramLabel = "SHEET",
      description =
          "Places sheets: skaters at a release, clicked on the video (docs/sheets.md); files,"
              + " folders, or a pattern in quotes; may be given several times.")
  List<String> names = new ArrayList<>();

  @Option(
      names = "--places-map",
      paramLabel = "MAP.toml",
      description = "Map of the places sheets.")
  Path map;

  @Option(
      names = "--places-error",
      paramLabel = "M",
      defaultValue = "1",
      description =
          "How far off a clicked place is, standard error in metres, where its row does not say it"
              + " (${DEFAULT-VALUE}, assumed).")
  double error;

  private Optional<PlacesSheets> places = Optional.empty();

  /** What stands in an option that cannot do anything, as a sentence; empty when all can. */
  Optional<String> wrong() {
    if (!(error > 0 && error <= PlacesSheets.MOST_ERROR)) {
      return Optional.of(
          "--places-error: found "
              + error
              + ", expected metres above 0 and up to "
              + Math.round(PlacesSheets.MOST_ERROR)
              + ".");
    }
    return map != null && names.isEmpty()
        ? Optional.of("--places-map: found no --places, expected the sheets that the map is for.")
        : Optional.empty();
  }

  /** Everything that is read. */
  List<Path> inputs() throws SheetException {
    List<Path> inputs = new ArrayList<>(files());
    if (map != null) {
      inputs.add(map);
    }
    return inputs;
  }

  private List<Path> files() throws SheetException {
    return names.isEmpty() ? List.of() : SheetFiles.find(names);
  }

  /**
   * Reads the sheets, if there are any.
   *
   * @param games the games of the play sheets and tag sheets, by id
   * @throws SheetException when one cannot be read at all, or nobody knows whose it is
   */
  void read(Map<String, GameOutline> games) throws SheetException {
    if (!names.isEmpty()) {
      Optional<SheetMap> own =
          map == null
              ? Optional.empty()
              : Optional.of(SheetMap.read(map, List.of(TrackForm.PLACES)));
      places = Optional.of(PlacesSheets.read(files(), own, games));
    }
  }

  /** The same settings with another sheet, in our own columns, and nothing else. */
  ClickedSkaters of(Path sheet, Map<String, GameOutline> games) throws SheetException {
    ClickedSkaters other = new ClickedSkaters();
    other.names = List.of(sheet.toString());
    other.error = error;
    other.read(games);
    return other;
  }

  @Override
  public List<Around> at(Release release) {
    When when = release.at().when();
    return places.flatMap(p -> p.at(when.game().id(), when.sheet(), when.line())).stream()
        .map(this::around)
        .toList();
  }

  private Around around(PlacesSheets.Clicked clicked) {
    List<Sighting> others = clicked.others().stream().map(this::sighting).toList();
    Sighting carrier = sighting(clicked.carrier());
    DoubleSummaryStatistics off =
        Stream.concat(Stream.of(carrier), others.stream())
            .mapToDouble(Sighting::clickError)
            .summaryStatistics();
    String least = String.format(Locale.ROOT, "%.1f", off.getMin());
    String most = String.format(Locale.ROOT, "%.1f", off.getMax());
    return new Around(
        carrier,
        others,
        "each place off by " + (least.equals(most) ? "" : least + " to ") + most + " m",
        Optional.empty());
  }

  private Sighting sighting(PlacesSheets.Placed s) {
    return Around.sighting(s.skater(), s.skater().place(), s.error().orElse(error));
  }

  /** Rows that were not used, and why. */
  List<DoubtfulRow> setAside() {
    return places.map(PlacesSheets::setAside).orElse(List.of());
  }

  /** What two exchanged places of the carriers show; empty where they are not exchanged. */
  private static Optional<String> laterFirst(PlacesSheets p) {
    DoubleSummaryStatistics nearer = new DoubleSummaryStatistics();
    for (PlacesSheets.Carrier c : p.carriers()) {
      OnIce s = c.skater();
      Place then =
          new Place(
              s.place().x() + s.vx() * PlacesSheets.LATER_S,
              s.place().y() + s.vy() * PlacesSheets.LATER_S);
      if (then.distanceTo(s.place()) >= CLEARLY) {
        nearer.accept(s.place().distanceTo(c.puck()) - then.distanceTo(c.puck()));
      }
    }
    return nearer.getCount() < LEAST || nearer.getAverage() <= NEARER
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%d carriers come nearer to where the play sheet lets the puck go, by %.1f m on average."
                    + " What to do: Check in the places map whether x_m, y_m and later_x_m, later_y_m are"
                    + " exchanged, or the signs of the speeds.",
                nearer.getCount(),
                nearer.getAverage()));
  }

  /** A sentence for the foot of the pages, with a space before it; empty without places sheets. */
  String foot() {
    return places.map(p -> " Clicked places: " + sum(p)).orElse("");
  }

  private static String sum(PlacesSheets p) {
    return Sheets.rows(p.rowsRead(), p.setAside().size());
  }

  /**
   * Prints what is doubtful, the sum, and at how many releases the skaters are known.
   *
   * @param out where to print
   * @param most most problems to print
   * @param kept folder with the rows set aside
   */
  void report(PrintWriter out, int most, Path kept) {
    if (places.isEmpty()) {
      return;
    }
    List<Problem> all = new ArrayList<>();
    setAside().forEach(d -> all.addAll(d.problems()));
    all.stream().limit(most).forEach(p -> out.println("Set aside: " + p.message()));
    if (all.size() > most) {
      out.println("... and " + (all.size() - most) + " more in places sheets, in " + kept);
    }
    PlacesSheets p = places.get();
    SamePlaces same =
        new SamePlaces("a click marks who lets the puck go", "place.center_x and place.center_y");
    p.carriers().forEach(c -> same.add(c.puck(), c.skater().place()));
    same.doubt().or(() -> laterFirst(p)).ifPresent(d -> out.println("Look at this: " + d));
    out.println(
        "Clicked places: "
            + sum(p)
            + " Skaters at "
            + Format.count(p.releases(), "puck")
            + " sent before the red line.");
  }
}
