package twostrides.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import twostrides.book.Format;
import twostrides.output.OutputException;
import twostrides.output.WholeFile;
import twostrides.rulebook.BookException;
import twostrides.rulebook.BookSeason;
import twostrides.rulebook.Bookshelf;
import twostrides.rulebook.FaceOff;
import twostrides.rulebook.FactKey;
import twostrides.rulebook.Facts;
import twostrides.rulebook.IcingBook;
import twostrides.rulebook.Judge;
import twostrides.rulebook.Ruling;
import twostrides.rulebook.RulingWords;
import twostrides.sheet.Cell;
import twostrides.sheet.ColumnSpec;
import twostrides.sheet.CsvOut;
import twostrides.sheet.DoubtfulCellException;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;
import twostrides.sheet.SheetSchema;

/**
 * A file of situations, one a row, answered row by row. Columns of the file itself are kept as they
 * are; the answers stand behind them.
 */
final class CaseFile {

  private static final String RULEBOOK = "rulebook";
  private static final String SEASON = "season";

  /** Expected answers that a file may carry, so that it can be checked against the program. */
  private static final List<String> EXPECTED =
      List.of("ruling", "rule", "place", "spot", "change", "time_out");

  private static final List<String> ANSWERS =
      List.of(
          "answer",
          "answer_rule",
          "answer_place",
          "answer_spot",
          "answer_change",
          "answer_time_out",
          "answer_clause",
          "answer_sentence",
          "answer_assumed",
          "as_expected");

  private final Books books;
  private final Path file;
  private final Path out;

  CaseFile(Books books, Path file, Optional<Path> out) {
    this.books = books;
    this.file = file;
    this.out =
        out.orElseGet(
            () -> {
              String name = String.valueOf(file.getFileName());
              int dot = name.lastIndexOf('.');
              String stem = dot < 0 ? name : name.substring(0, dot);
              return file.resolveSibling(stem + "-answers.csv");
            });
  }

  /** The columns of such a file. */
  static SheetSchema schema() {
    List<ColumnSpec> columns = new ArrayList<>();
    columns.add(new ColumnSpec("id", false, "text"));
    columns.add(new ColumnSpec(RULEBOOK, false, "a rulebook's name"));
    columns.add(new ColumnSpec(SEASON, false, BookSeason.FORM));
    columns.add(new ColumnSpec("situation", false, "text"));
    for (FactKey k : FactKey.values()) {
      columns.add(new ColumnSpec(k.column(), false, String.join(", ", k.words())));
    }
    EXPECTED.forEach(e -> columns.add(new ColumnSpec(e, false, "what the answer should be")));
    columns.add(new ColumnSpec("source", false, "text"));
    columns.add(new ColumnSpec("grade", false, "text"));
    return new SheetSchema("cases", columns, List.of());
  }

  /** Answers every row, writes the answers and says how it went. */
  int answer(PrintWriter console)
      throws SheetException, BookException, OutputException, IOException {
    if (out.toAbsolutePath().normalize().equals(file.toAbsolutePath().normalize())) {
      throw new OutputException(
          out + ": the answers would overwrite the situations. Choose another file with --out.");
    }
    IcingBook usual = books.book();
    Sheet sheet = SheetReader.read(file, SheetMap.plain(schema()));
    List<Problem> problems = new ArrayList<>();
    // By line, so that rows set aside stand in their places among the answers.
    SortedMap<Long, List<String>> rows = new TreeMap<>();
    for (DoubtfulRow d : sheet.setAside()) {
      problems.addAll(d.problems());
      rows.put(d.row().line(), setAside(sheet, d.row().cells(), d.problems()));
    }
    int setAside = sheet.setAside().size();
    int unlike = 0;
    int checked = 0;
    List<String> unlikeSaid = new ArrayList<>();
    for (SheetRow row : sheet.rows()) {
      List<Problem> wrong = new ArrayList<>();
      Optional<IcingBook> book = book(row, usual, wrong);
      Facts facts = facts(row, wrong);
      if (book.isEmpty() || !wrong.isEmpty()) {
        problems.addAll(wrong);
        rows.put(row.line(), setAside(sheet, row.cells(), wrong));
        setAside++;
        continue;
      }
      Ruling ruling = Judge.judge(book.get(), facts);
      Map<String, String> answers = answers(ruling);
      Optional<String> difference = difference(row, answers);
      boolean expects = EXPECTED.stream().anyMatch(e -> row.cell(e).isPresent());
      checked += expects ? 1 : 0;
      if (difference.isPresent()) {
        unlike++;
        unlikeSaid.add(
            file
                + ", line "
                + row.line()
                + ": "
                + difference.get()
                + ". "
                + RulingWords.sentence(ruling));
      }
      List<String> cells = cells(sheet, row.cells());
      EXPECTED.forEach(e -> cells.add(answers.get(e)));
      cells.add(ruling.reason().cite());
      cells.add(String.join(" ", RulingWords.lines(ruling).stream().map(String::strip).toList()));
      cells.add(
          String.join(
              "; ",
              Judge.assumptions(book.get(), facts).entrySet().stream()
                  .map(a -> a.getKey().key().word() + " = " + a.getKey().value())
                  .toList()));
      cells.add(expects ? (difference.isEmpty() ? "yes" : "no") : "");
      rows.put(row.line(), cells);
    }
    write(sheet, List.copyOf(rows.values()));
    unlikeSaid.forEach(console::println);
    problems.forEach(p -> console.println("Set aside: " + p.message()));
    if (checked > 0) {
      console.println(
          (checked - unlike) + " of " + Format.count(checked, "row") + " answered as expected.");
    }
    console.println(Sheets.rows(sheet.rowsRead(), setAside));
    console.println("Answers: " + out);
    return Main.DONE;
  }

  private static List<String> cells(Sheet sheet, List<String> row) {
    List<String> cells = new ArrayList<>(row);
    while (cells.size() < sheet.headers().size()) {
      cells.add("");
    }
    return cells;
  }

  /** A row that cannot be answered, with what is wrong with it in place of the answer. */
  private static List<String> setAside(Sheet sheet, List<String> row, List<Problem> wrong) {
    List<String> cells = cells(sheet, row);
    cells.add("set aside");
    while (cells.size() < sheet.headers().size() + ANSWERS.indexOf("answer_sentence")) {
      cells.add("");
    }
    cells.add(String.join(" ", wrong.stream().map(p -> p.in(sheet.name()).message()).toList()));
    return cells;
  }

  private Optional<IcingBook> book(SheetRow row, IcingBook usual, List<Problem> wrong) {
    Optional<Cell> name = row.cell(RULEBOOK);
    Optional<Cell> season = row.cell(SEASON);
    Optional<BookSeason> asked = season.map(Cell::text).flatMap(BookSeason::of);
    if (season.isPresent() && asked.isEmpty()) {
      wrong.add(season.get().problem(BookSeason.FORM, "correct the season"));
      return Optional.empty();
    }
    if (name.isEmpty() && season.isEmpty()) {
      return Optional.of(usual);
    }
    try {
      return Optional.of(Bookshelf.find(name.map(Cell::text).orElse(books.name), asked));
    } catch (BookException e) {
      Cell blame = name.or(() -> season).orElseThrow();
      wrong.add(
          blame.problem(
              "a rulebook and a season that it covers",
              "correct it; the command rulebooks lists the books and their seasons"));
      return Optional.empty();
    }
  }

  private static Facts facts(SheetRow row, List<Problem> wrong) {
    Facts facts = Facts.NONE;
    for (FactKey k : FactKey.values()) {
      Optional<Cell> cell = row.cell(k.column());
      if (cell.isEmpty()) {
        continue;
      }
      Map<String, String> words = new TreeMap<>();
      k.words().forEach(w -> words.put(w, w));
      try {
        facts = facts.with(k, cell.get().oneOf(words));
      } catch (DoubtfulCellException e) {
        wrong.add(e.problem());
      }
    }
    return facts;
  }

  private static Map<String, String> answers(Ruling ruling) {
    Optional<FaceOff> faceOff = ruling.faceOff();
    Map<String, String> answers = new TreeMap<>();
    answers.put("ruling", ruling.word());
    answers.put("rule", ruling.reason().rule());
    answers.put("place", faceOff.map(d -> word(d.place())).orElse("none"));
    answers.put("spot", faceOff.map(d -> word(d.spot())).orElse("none"));
    answers.put("change", faceOff.map(d -> word(d.change())).orElse("none"));
    answers.put("time_out", faceOff.map(d -> word(d.timeOut())).orElse("none"));
    return answers;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static Optional<String> difference(SheetRow row, Map<String, String> answers) {
    for (String e : EXPECTED) {
      Optional<Cell> expected = row.cell(e);
      if (expected.isPresent() && !expected.get().text().equals(answers.get(e))) {
        return Optional.of(
            e + " expected \"" + expected.get().text() + "\", answered \"" + answers.get(e) + "\"");
      }
    }
    return Optional.empty();
  }

  private void write(Sheet sheet, List<List<String>> rows) throws IOException {
    StringBuilder text = new StringBuilder();
    try (CsvOut csv = new CsvOut(text)) {
      List<String> header = new ArrayList<>(sheet.headers());
      header.addAll(ANSWERS);
      csv.row(header);
      for (List<String> row : rows) {
        csv.row(row);
      }
    }
    WholeFile.write(
        out.toAbsolutePath(),
        text.toString().getBytes(StandardCharsets.UTF_8),
        StandardCopyOption.REPLACE_EXISTING);
  }
}
