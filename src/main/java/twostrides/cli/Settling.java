package twostrides.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import twostrides.book.Settled;
import twostrides.book.Show;
import twostrides.exits.When;
import twostrides.findings.Reviewer;
import twostrides.rink.Place;
import twostrides.season.Flag;
import twostrides.sheet.CsvOut;
import twostrides.sheet.SheetException;
import twostrides.tag.Settler;

/**
 * The icings to look at of a book. Clicks go the way that a places sheet goes: written as rows,
 * read back by the reader of {@code --places}, weighed as the season weighs.
 */
final class Settling implements Settler {

  /** The smallest error that a sheet writes, m. */
  private static final double FINEST = 0.01;

  private final ReviewCommand.Made made;
  private final ClickedSkaters clicked;
  private final List<Flag> flags;

  Settling(ReviewCommand.Made made, ClickedSkaters clicked) {
    this.made = made;
    this.clicked = clicked;
    this.flags = Reviewer.review(made.all(), made.whose(), false).toLookAt();
  }

  @Override
  public List<Icing> icings() {
    return flags.stream()
        .map(
            f -> {
              When when = f.release().at().when();
              return new Icing(
                  when.game().id(),
                  Show.clock(when),
                  Show.heading(f),
                  f.release().at().where().place().orElseThrow(),
                  when.video(),
                  f.sentence());
            })
        .toList();
  }

  @Override
  public Verdict weigh(int icing, List<Clicked> skaters) throws IOException {
    Path sheet = Files.createTempFile("two-strides-clicks", ".csv");
    try {
      List<Map<String, String>> rows = rows(icing, skaters);
      try (CsvOut csv = new CsvOut(sheet)) {
        List<String> columns = rows.stream().flatMap(r -> r.keySet().stream()).distinct().toList();
        csv.row(columns);
        for (Map<String, String> r : rows) {
          csv.row(columns.stream().map(c -> r.getOrDefault(c, "")).toList());
        }
      }
      ClickedSkaters known = clicked.of(sheet, made.games());
      if (!known.setAside().isEmpty()) {
        return new Verdict(false, "", wrong(known), "");
      }
      Flag flag = made.all().settled(flags.get(icing), made.tracked().and(known));
      return new Verdict(
          !flag.toLookAt(),
          Show.gain(flag),
          flag.sentence(),
          Settled.picture(flag, flag.release().at().when().game().rink()));
    } catch (SheetException e) {
      return new Verdict(false, "", e.getMessage(), "");
    } finally {
      Files.deleteIfExists(sheet);
    }
  }

  /** What is wrong with the clicks, without the file that nobody knows. */
  private static String wrong(ClickedSkaters known) {
    return known.setAside().stream()
        .flatMap(d -> d.problems().stream())
        .map(p -> "Expected " + p.expected() + ".")
        .distinct()
        .collect(Collectors.joining(" "));
  }

  @Override
  public List<Map<String, String>> rows(int icing, List<Clicked> skaters) {
    When when = flags.get(icing).release().at().when();
    List<Map<String, String>> rows = new ArrayList<>();
    for (Clicked s : skaters) {
      Map<String, String> row = new LinkedHashMap<>();
      row.put("game", when.game().id());
      row.put("period", String.valueOf(when.period()));
      row.put("clock", clock(when.clockLeft()));
      row.put("line", String.valueOf(when.line()));
      row.put("team", s.own() ? "own" : "opponent");
      row.put("carrier", s.carrier() ? "yes" : "no");
      put(row, "x_m", "y_m", s.at().place());
      s.later().ifPresent(c -> put(row, "later_x_m", "later_y_m", c.place()));
      error(s).ifPresent(e -> row.put("error_m", e));
      rows.add(row);
    }
    return rows;
  }

  /** The larger error of a man's clicks; empty where all were on the rink: the run says theirs. */
  private Optional<String> error(Clicked s) {
    List<Optional<Double>> errors =
        Stream.concat(Stream.of(s.at()), s.later().stream()).map(Click::error).toList();
    double most = errors.stream().mapToDouble(e -> e.orElse(clicked.error)).max().orElseThrow();
    return errors.stream().allMatch(Optional::isEmpty)
        ? Optional.empty()
        : Optional.of(String.format(Locale.ROOT, "%.2f", Math.max(FINEST, most)));
  }

  private static void put(Map<String, String> row, String x, String y, Place at) {
    row.put(x, String.format(Locale.ROOT, "%.1f", at.x()));
    row.put(y, String.format(Locale.ROOT, "%.1f", at.y()));
  }

  /** A clock to the tenth, as places sheets write it. */
  private static String clock(double left) {
    long tenths = Math.round(left * 10);
    String whole = String.format(Locale.ROOT, "%d:%02d", tenths / 600, tenths / 10 % 60);
    return tenths % 10 == 0 ? whole : whole + "." + tenths % 10;
  }
}
