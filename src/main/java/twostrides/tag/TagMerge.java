package twostrides.tag;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import twostrides.game.Usual;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.SheetException;

/**
 * What several people tagged, in one sheet: every row of every sheet and of the journals beside
 * them. A row that two sheets have word for word is written once; two that look like one are both
 * kept, and named.
 *
 * @param file the sheet that was written
 * @param read rows read
 * @param written rows written
 * @param doubles pairs of rows that look like one, a sentence each
 */
public record TagMerge(Path file, int read, int written, List<String> doubles) {

  /** Two rows of one team and kind nearer than this are likely one, s of the clock. Assumed. */
  private static final double NEAR = 3;

  /** A row of a sheet, by the sheet's name. */
  private record Tagged(Path sheet, TagRow row) {

    String cell(String column) {
      return row.cells().getOrDefault(column, "");
    }

    /** Seconds left. */
    double clock() {
      String[] parts = cell(TagSheet.CLOCK).split(":", -1);
      double seconds = Double.parseDouble(parts[parts.length - 1]);
      return parts.length == 2 ? 60 * Double.parseDouble(parts[0]) + seconds : seconds;
    }

    int period() {
      return Integer.parseInt(cell(TagSheet.PERIOD));
    }

    private String kind() {
      return Stream.of("ended", "faceoff", "strength")
          .filter(c -> !cell(c).isEmpty())
          .findFirst()
          .map(c -> c + cell(c))
          .orElse("");
    }

    boolean looksLike(Tagged other) {
      boolean exits = !cell(TagSheet.WAY_OUT).isEmpty() && !other.cell(TagSheet.WAY_OUT).isEmpty();
      boolean neither = cell(TagSheet.WAY_OUT).isEmpty() && other.cell(TagSheet.WAY_OUT).isEmpty();
      return !sheet.equals(other.sheet())
          && cell("game").equals(other.cell("game"))
          && period() == other.period()
          && cell(TagSheet.TEAM).equals(other.cell(TagSheet.TEAM))
          && Math.abs(clock() - other.clock()) <= NEAR
          && (exits || (neither && kind().equals(other.kind())));
    }

    String words() {
      return sheet.getFileName() + ": " + Asked.words(row);
    }
  }

  /** Copies the list. */
  public TagMerge {
    doubles = List.copyOf(doubles);
  }

  /**
   * Merges sheets.
   *
   * @param sheets the sheets, each with its journal where there is one
   * @param out the sheet to write, which does not exist yet
   * @param usual rink and length of a regular period
   * @throws SheetException when one cannot be gone on with, or {@code out} exists
   * @throws IOException when the disk refuses
   */
  public static TagMerge of(List<Path> sheets, Path out, Usual usual)
      throws SheetException, IOException {
    SheetPlace place = new SheetPlace(out.toAbsolutePath().normalize());
    if (Files.exists(place.file()) || Files.exists(place.journal())) {
      throw SheetException.ofFile(
          out.toString(),
          "a sheet, or a journal of it, that is there already",
          "a new file",
          "Name another file with --out.");
    }
    List<Tagged> all = new ArrayList<>();
    for (Path sheet : sheets) {
      Path file = sheet.toAbsolutePath().normalize();
      if (!Files.exists(file) && !Files.exists(new SheetPlace(file).journal())) {
        throw SheetException.ofFile(
            sheet.toString(), "no such file", "a tag sheet", "Check the name.");
      }
      try (TagDesk desk = TagDesk.open(file, usual, Map.of())) {
        desk.rows().forEach(r -> all.add(new Tagged(file, r)));
      }
    }
    List<Tagged> kept = new ArrayList<>();
    List<String> doubles = new ArrayList<>();
    for (Tagged t : all) {
      List<Tagged> others = kept.stream().filter(t::looksLike).toList();
      if (others.stream().noneMatch(o -> o.row().cells().equals(t.row().cells()))) {
        others.forEach(o -> doubles.add(o.words() + " and " + t.words()));
        kept.add(t);
      }
    }
    kept.sort(
        Comparator.comparing((Tagged t) -> t.cell("game"))
            .thenComparingInt(Tagged::period)
            .thenComparing(Comparator.comparingDouble(Tagged::clock).reversed()));
    List<TagRow> rows = kept.stream().map(Tagged::row).toList();
    Files.createDirectories(place.file().getParent());
    place.write(TagSheet.NEW.with(rows).text(rows));
    Optional<DoubtfulRow> doubtful = TagSheet.doubtful(place.writing(), usual);
    if (doubtful.isPresent()) {
      place.abandon();
      throw SheetException.ofFile(
          out.toString(),
          doubtful.get().problems().get(0).message(),
          "rows that the review uses",
          "Correct that row in its own sheet first.");
    }
    place.move();
    return new TagMerge(place.file(), all.size(), rows.size(), doubles);
  }
}
