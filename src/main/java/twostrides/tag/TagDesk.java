package twostrides.tag;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import twostrides.game.Usual;
import twostrides.rink.Rink;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Problem;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;

/**
 * The rows that are being tagged, and how they reach the disk. Each step is judged by the reader
 * that {@code review} uses, goes to the journal, is flushed, and only then counts as saved; the
 * sheet is put in its place after that.
 *
 * <p>At an opening the journal is believed as long as the sheet is one that this program wrote. A
 * sheet that was changed by hand after all steps had reached it is believed instead; one that was
 * changed before they had is refused, since either choice would lose something.
 */
public final class TagDesk implements Closeable {

  /** What the page can be set to; words, checked when a row is saved. */
  static final Set<String> SETUP =
      Set.of(
          "game",
          "date",
          "home",
          "away",
          "period",
          "team",
          "clock",
          "clock_video_s",
          "clock_runs",
          "own_goal",
          "fast");

  private final SheetPlace place;
  private final TagSheet sheet;
  private final Usual usual;
  private final Journal journal;
  private final History history;
  private final String opening;
  private String warning = "";

  private TagDesk(
      SheetPlace place,
      TagSheet sheet,
      Usual usual,
      Journal journal,
      History history,
      String opening) {
    this.place = place;
    this.sheet = sheet;
    this.usual = usual;
    this.journal = journal;
    this.history = history;
    this.opening = opening;
  }

  /**
   * Opens a sheet with its journal, or begins one.
   *
   * @param file the sheet, which may not exist yet
   * @param usual rink and length of a regular period
   * @param setup what the page is set to where nothing is known of an earlier time
   * @throws SheetException when the sheet or the journal cannot be gone on with; the message says
   *     why
   * @throws IOException when the disk refuses
   */
  public static TagDesk open(Path file, Usual usual, Map<String, String> setup)
      throws SheetException, IOException {
    SheetPlace place = new SheetPlace(file.toAbsolutePath().normalize());
    Files.createDirectories(place.file().getParent());
    boolean there = Files.exists(place.file());
    TagSheet.Read read =
        there ? TagSheet.read(place.file(), usual) : new TagSheet.Read(TagSheet.NEW, List.of());
    Journal journal = Journal.open(place.journal());
    try {
      History history = Opening.replay(place, journal);
      String text = read.sheet().with(history.rows()).text(history.rows());
      String stands = place.digest();
      boolean ours =
          stands.equals(history.digest())
              || stands.equals(SheetPlace.digest(text))
              || stands.equals(SheetPlace.NONE);
      if (history.begun() && !ours && history.ahead()) {
        throw SheetException.ofFile(
            place.file().toString(),
            "a sheet that was changed by hand, and exits in "
                + place.journal().getFileName()
                + " that had not reached it",
            "one of the two",
            "Move the sheet to another folder and start again to go on with the "
                + Opening.count(history.rows())
                + " of the journal; or move the journal away to go on with the sheet.");
      }
      if (history.begun() && (history.ahead() || !there)) {
        refuseSpoilt(place, text, usual);
      }
      String said = Opening.said(history, ours, stands, read, journal.torn());
      Map<String, String> merged = new LinkedHashMap<>();
      if (!history.begun() || !ours) {
        merged.putAll(Opening.lastGame(read.rows()));
        step(journal, history, History.beginning(read.rows(), stands));
      }
      merged.putAll(history.setup());
      setup.forEach((k, v) -> merged.put(k, Cells.oneLine(v)));
      if (!merged.equals(history.setup())) {
        step(journal, history, List.of(History.setUp(merged)));
      }
      TagSheet sheet = read.sheet().with(history.rows());
      TagDesk desk = new TagDesk(place, sheet, usual, journal, history, said);
      if (history.ahead() || !there) {
        desk.rewrite();
      }
      return desk;
    } catch (SheetException | IOException | RuntimeException e) {
      journal.close();
      throw e;
    }
  }

  /** A journal that a disk spoilt could make a sheet that nobody could go on with. */
  private static void refuseSpoilt(SheetPlace place, String text, Usual usual)
      throws SheetException, IOException {
    try {
      place.write(text);
      Optional<DoubtfulRow> doubtful = TagSheet.doubtful(place.writing(), usual);
      if (doubtful.isPresent()) {
        throw SheetException.ofFile(
            place.journal().toString(),
            "an exit that the review would set aside ("
                + doubtful.get().problems().get(0).message()
                + ")",
            "exits as this program wrote them",
            "Move the journal to another folder; the sheet beside it holds what was written last.");
      }
    } finally {
      place.abandon();
    }
  }

  private static void step(Journal journal, History history, List<List<String>> steps)
      throws IOException {
    journal.append(steps);
    steps.forEach(history::take);
  }

  /** The rink to click on. */
  Rink rink() {
    return usual.rink();
  }

  /** The sheet. */
  public Path sheet() {
    return place.file();
  }

  /** What was found at the opening, a sentence; empty when there was nothing. */
  public String opening() {
    return opening;
  }

  /** How many exits are tagged. */
  public synchronized int tagged() {
    return history.rows().size();
  }

  /** How many exits the sheet on the disk holds. */
  private synchronized int inSheet() throws SheetException {
    return Files.exists(place.file()) ? TagSheet.read(place.file(), usual).rows().size() : 0;
  }

  /** The closing line: how many exits were tagged, and how many the sheet holds. */
  public String closing() {
    String inSheet;
    try {
      inSheet = Integer.toString(inSheet());
    } catch (SheetException e) {
      inSheet = "an unknown number";
    }
    return Opening.count(rows()) + " tagged, " + inSheet + " in " + place.file();
  }

  /** What the person should know about the sheet; empty when it holds every exit. */
  public synchronized String warning() {
    return warning;
  }

  synchronized List<TagRow> rows() {
    return history.rows();
  }

  synchronized Map<String, String> setup() {
    return history.setup();
  }

  /** The id of the game that is being tagged: what was typed, else the sheet's name. */
  public synchronized String game() {
    String typed = setup().getOrDefault("game", "");
    return typed.isBlank() ? Sheet.stem(place.file()) : typed;
  }

  /** Whether a page has a step that can be taken back. */
  synchronized boolean canUndo(String page) {
    return history.lastOf(page).isPresent();
  }

  /**
   * Saves a new exit.
   *
   * @param fields column to words
   * @param page the page that asks
   */
  synchronized void add(Map<String, String> fields, String page)
      throws TagRefusedException, IOException {
    TagRow row = new TagRow(history.next(), history.version(), Cells.of(fields, sheet.columns()));
    change(History.added(row), page);
  }

  /**
   * Saves another wording of an exit; columns that the page does not know stay as they are.
   *
   * @param id the exit
   * @param version the exit's version that the page shows
   * @param fields column to words
   * @param page the page that asks
   */
  synchronized void edit(int id, int version, Map<String, String> fields, String page)
      throws TagRefusedException, IOException {
    TagRow row = Asked.row(history, id, version, "Press Esc, then Edit, to go on from that.");
    Map<String, String> merged = new LinkedHashMap<>(row.cells());
    merged.keySet().removeAll(TagSheet.OURS);
    merged.putAll(fields);
    TagRow changed = new TagRow(id, history.version(), Cells.of(merged, sheet.columns()));
    change(History.edited(changed), page);
  }

  /**
   * Takes an exit out.
   *
   * @param id the exit
   * @param version the exit's version that the page shows
   * @param page the page that asks
   */
  synchronized void delete(int id, int version, String page)
      throws TagRefusedException, IOException {
    Asked.row(history, id, version, "Delete it again if it shall go.");
    change(History.deleted(id), page);
  }

  /**
   * Takes the last step of a page back, and no other page's.
   *
   * @param page the page that asks
   * @return what was taken back, a sentence
   */
  synchronized String undo(String page) throws TagRefusedException, IOException {
    int number = Asked.lastOf(history, page);
    change(History.undone(number), page);
    return Asked.undone(history.change(number));
  }

  /** Remembers what the page is set to. */
  synchronized void setUp(Map<String, String> fields) throws TagRefusedException, IOException {
    Map<String, String> merged = new LinkedHashMap<>(history.setup());
    merged.putAll(Cells.of(fields, SETUP.stream().sorted().toList()));
    fields.forEach((k, v) -> merged.computeIfPresent(k, (same, old) -> v.isBlank() ? null : old));
    if (!merged.equals(history.setup())) {
      step(journal, history, List.of(History.setUp(merged)));
    }
  }

  private String text() {
    return sheet.text(history.rows());
  }

  private void change(List<String> step, String page) throws TagRefusedException, IOException {
    try {
      place.write(sheet.text(history.after(step)));
      judge();
      journal.append(List.of(step));
      history.take(step, page);
    } catch (TagRefusedException | IOException e) {
      place.abandon();
      throw e;
    }
    put();
  }

  /** Reads what was written beside the sheet as the review would; all other rows are known good. */
  private void judge() throws TagRefusedException {
    try {
      Optional<DoubtfulRow> doubtful = TagSheet.doubtful(place.writing(), usual);
      if (doubtful.isPresent()) {
        throw new TagRefusedException(
            doubtful.get().problems().stream().map(TagDesk::problem).toList());
      }
    } catch (SheetException e) {
      throw new TagRefusedException(
          List.of(new FieldProblem("", e.found(), e.expected(), e.toDo())));
    }
  }

  /** The reader's words, but for its advice: there is no sheet map behind the page. */
  private static FieldProblem problem(Problem p) {
    return new FieldProblem(
        p.column(),
        p.value(),
        p.expected(),
        !TagSheet.REQUIRED.contains(p.column())
            ? FieldProblem.CORRECT_OR_EMPTY
            : p.value().isEmpty() ? FieldProblem.FILL_IN : FieldProblem.CORRECT);
  }

  private void rewrite() throws IOException {
    place.write(text());
    put();
  }

  /**
   * Moves what was written to its place, unless somebody else changed the sheet since; the journal
   * holds everything all the same.
   */
  private void put() {
    try {
      String stands = place.digest();
      if (!stands.equals(history.digest())
          && !stands.equals(SheetPlace.NONE)
          && !stands.equals(SheetPlace.digest(text()))) {
        place.abandon();
        warning =
            "Another program changed the sheet "
                + place.file().getFileName()
                + ": it is left as it is. Every exit is saved in the journal "
                + place.journal().getFileName()
                + ". End here, move that sheet to another folder, and start again.";
        return;
      }
      place.move();
      List<List<String>> steps = new ArrayList<>();
      steps.add(History.written(SheetPlace.digest(text())));
      step(journal, history, steps);
      warning = "";
    } catch (IOException e) {
      warning =
          "The sheet "
              + place.file().getFileName()
              + " could not be written ("
              + Objects.requireNonNullElse(e.getMessage(), e.getClass().getSimpleName())
              + "). Is it open in a spreadsheet? Every exit is saved in the journal; the sheet is"
              + " written with the next one, or at the end.";
    }
  }

  /** Writes the sheet if it is behind, and lets go of the journal. */
  @Override
  public synchronized void close() throws IOException {
    try {
      if (history.ahead()) {
        rewrite();
      }
    } finally {
      journal.close();
    }
  }
}
