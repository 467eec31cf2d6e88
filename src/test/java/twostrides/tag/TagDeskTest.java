package twostrides.tag;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import twostrides.game.SeasonReader;
import twostrides.game.SheetsRead;
import twostrides.game.Usual;
import twostrides.sheet.SheetException;

/** Rows, their journal and their sheet: nothing that was saved is lost, and nothing doubtful is. */
class TagDeskTest {

  private static final Usual PERIOD = Usual.DEFAULT;

  /** Two pages that are open at once. */
  private static final String ME = "a";

  private static final String OTHER = "b";

  @TempDir Path dir;

  private Path sheet;
  private Path journal;

  @BeforeEach
  void names() {
    sheet = dir.resolve("tags.csv");
    journal = dir.resolve("tags.csv.journal");
  }

  private TagDesk open() throws SheetException, IOException {
    return TagDesk.open(sheet, PERIOD, Map.of());
  }

  private static Map<String, String> exit(String clock, String way) {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("period", "2");
    fields.put("clock", clock);
    fields.put("home", "Herons");
    fields.put("away", "Wolves");
    fields.put("team", "Herons");
    fields.put("way_out", way);
    return fields;
  }

  private static List<String> clocks(TagDesk desk) {
    return desk.rows().stream().map(r -> r.cells().get("clock")).toList();
  }

  /** The version that a page shows which has just read the rows. */
  private static int version(TagDesk desk, int id) {
    return desk.rows().stream().filter(r -> r.id() == id).findFirst().orElseThrow().version();
  }

  private static FieldProblem stale(Executable step) {
    TagRefusedException refused = assertThrows(TagRefusedException.class, step);
    assertTrue(refused.stale(), refused.getMessage());
    return refused.problems().get(0);
  }

  private static Map<String, String> problems(TagDesk desk, Map<String, String> fields) {
    Map<String, String> found = new TreeMap<>();
    assertThrows(TagRefusedException.class, () -> desk.add(fields, ME))
        .problems()
        .forEach(p -> found.put(p.field(), p.expected()));
    return found;
  }

  @Test
  void whatIsSavedStandsInTheSheetAsTheReviewReadsIt() throws Exception {
    try (TagDesk desk = open()) {
      Map<String, String> full = exit("13:07.5", "pass");
      full.putAll(
          Map.of(
              "at_center",
              "released short",
              "strength",
              "shorthanded",
              "net_empty",
              "none",
              "x_m",
              "-9.5",
              "y_m",
              "11.2",
              "ended",
              "own",
              "end_x_m",
              "14.0"));
      full.put("end_y_m", "-3.1");
      full.put("pressure", "heavy");
      full.put("video_s", "1834.5");
      full.put("player", "8 Sole \"Sunny\" Brandt, C");
      full.put("note", "two lines\nbecome one");
      desk.add(full, ME);
      desk.add(exit("12:00", "kept in"), ME);
      assertEquals("2 exits tagged, 2 in " + sheet, desk.closing());
    }
    SheetsRead season = SeasonReader.read(List.of(sheet), Optional.empty(), false, n -> {});
    assertEquals(2, season.rowsRead());
    assertEquals(2, season.rowsUsed());
    var first = season.tagged().get(0).exits().get(0);
    assertEquals(1200 - 787.5, first.elapsed());
    assertEquals(Optional.of("Wolves"), first.opponent());
    assertEquals(Optional.of("8 Sole \"Sunny\" Brandt, C"), first.player());
    assertEquals(14.0, first.end().orElseThrow().x());
    assertEquals(-3.1, first.end().orElseThrow().y());
    assertTrue(Files.readString(sheet).contains("two lines become one"));
  }

  @Test
  void aDoubtfulExitIsRefusedFieldByField() throws Exception {
    try (TagDesk desk = open()) {
      Map<String, String> wrong = exit("25:00", "chipp");
      wrong.putAll(Map.of("x_m", "-40", "y_m", "0", "pressure", "some", "team", ""));
      Map<String, String> found = problems(desk, wrong);
      assertEquals("[clock, pressure, team, way_out, x_m]", found.keySet().toString());
      assertEquals("a clock from 0:00 to 20:00", found.get("clock"));
      assertTrue(found.get("x_m").contains("30.5 m (100 ft) from center"), found.toString());
      Map<String, String> mark = exit("10:00", "chip");
      mark.put("at_center", "gained");
      assertEquals(
          Map.of("at_center", "nothing: only a carry or a pass has a mark at center"),
          problems(desk, mark));
      Map<String, String> half = exit("10:00", "chip");
      half.put("end_x_m", "3");
      assertEquals(Map.of("end_y_m", "a place needs both its numbers"), problems(desk, half));
      Map<String, String> longest = exit("10:00", "chip");
      longest.put("note", "x".repeat(301));
      assertEquals(Map.of("note", "at most 300 characters"), problems(desk, longest));
      assertEquals(1, problems(desk, Map.of("colour", "red")).size());
      assertEquals(0, desk.tagged());
    }
    assertFalse(Files.readString(journal).contains("add"));
    assertFalse(Files.exists(dir.resolve("tags.csv.writing")));
  }

  @Test
  void aSpreadsheetRunsNothing() throws Exception {
    try (TagDesk desk = open()) {
      Map<String, String> fields = exit("10:00", "chip");
      fields.put("player", "=HYPERLINK(1)");
      fields.put("note", "-2+3");
      fields.put("x_m", "-9");
      fields.put("y_m", "-1");
      desk.add(fields, ME);
      String text = Files.readString(sheet);
      assertTrue(text.contains(",'=HYPERLINK(1),"), text);
      assertTrue(text.contains(",'-2+3"), text);
      assertTrue(text.contains(",-9,-1,"), text);
    }
  }

  @Test
  void undoGoesBackStepByStepAlsoAfterANewStart() throws Exception {
    try (TagDesk desk = open()) {
      desk.add(exit("15:00", "chip"), ME);
      desk.add(exit("14:00", "carry"), ME);
      Map<String, String> changed = exit("13:59", "pass");
      desk.edit(2, version(desk, 2), changed, ME);
      desk.delete(1, version(desk, 1), ME);
      assertEquals(List.of("13:59"), clocks(desk));
    }
    try (TagDesk desk = open()) {
      desk.undo(ME);
      assertEquals(List.of("15:00", "13:59"), clocks(desk));
      desk.undo(ME);
      assertEquals(List.of("15:00", "14:00"), clocks(desk));
      desk.undo(ME);
      desk.undo(ME);
      assertEquals(List.of(), clocks(desk));
      assertThrows(TagRefusedException.class, () -> desk.undo(ME));
      assertThrows(TagRefusedException.class, () -> desk.delete(1, 1, ME));
    }
  }

  /** A page that shows an exit as it was before another page's change cannot write over that. */
  @Test
  void aStalePageOverwritesNothing() throws Exception {
    try (TagDesk desk = open()) {
      desk.add(exit("15:00", "chip"), ME);
      int shown = version(desk, 1);
      desk.edit(1, shown, exit("14:59", "pass"), OTHER);
      FieldProblem edit = stale(() -> desk.edit(1, shown, exit("15:00", "carry"), ME));
      assertEquals("P2 14:59, Herons, pass", edit.found());
      assertEquals("the exit as this page showed it", edit.expected());
      assertEquals(
          "Another page changed this exit: it is now P2 14:59, Herons, pass. Nothing was saved."
              + " Press Esc, then Edit, to go on from that.",
          edit.toDo());
      stale(() -> desk.delete(1, shown, ME));
      assertEquals(List.of("14:59"), clocks(desk));
      // Whoever has seen the change may go on from it.
      desk.edit(1, version(desk, 1), exit("14:58", "pass"), ME);
      assertEquals(List.of("14:58"), clocks(desk));
      int seen = version(desk, 1);
      desk.delete(1, seen, OTHER);
      assertEquals(
          "an exit that was taken out",
          stale(() -> desk.edit(1, seen, exit("14:57", "pass"), ME)).found());
      // Brought back it is the exit that this page still shows.
      desk.undo(OTHER);
      desk.edit(1, seen, exit("14:57", "pass"), ME);
      assertEquals(List.of("14:57"), clocks(desk));
    }
  }

  /** Undo takes back the steps of the page that asks, whatever other pages did since. */
  @Test
  void undoIsOnesOwn() throws Exception {
    try (TagDesk desk = open()) {
      desk.add(exit("15:00", "chip"), ME);
      desk.add(exit("14:00", "chip"), OTHER);
      desk.add(exit("13:00", "chip"), ME);
      desk.add(exit("12:00", "chip"), OTHER);
      desk.delete(2, version(desk, 2), OTHER);
      assertEquals("Undone: the exit at 13:00 is out again.", desk.undo(ME));
      assertEquals(List.of("15:00", "12:00"), clocks(desk));
      assertEquals("Undone: the exit at 14:00 is back.", desk.undo(OTHER));
      assertEquals(List.of("15:00", "14:00", "12:00"), clocks(desk));
      desk.undo(ME);
      assertFalse(desk.canUndo(ME));
      assertTrue(desk.canUndo(OTHER));
      TagRefusedException none = assertThrows(TagRefusedException.class, () -> desk.undo(ME));
      assertEquals("a step that was taken on this page", none.problems().get(0).expected());
      desk.undo(OTHER);
      desk.undo(OTHER);
      assertEquals(List.of(), clocks(desk));
    }
    // The journal makes the same rows again.
    try (TagDesk desk = open()) {
      assertEquals(List.of(), clocks(desk));
    }
  }

  /** One's own step on an exit that another page has changed since is not taken back. */
  @Test
  void undoNeverTakesAnotherPagesChangeAlong() throws Exception {
    try (TagDesk desk = open()) {
      desk.add(exit("15:00", "chip"), ME);
      desk.edit(1, version(desk, 1), exit("14:30", "pass"), OTHER);
      FieldProblem refused = stale(() -> desk.undo(ME));
      assertEquals("P2 14:30, Herons, pass", refused.found());
      assertEquals("P2 15:00, Herons, chip, as this page left it", refused.expected());
      assertEquals(List.of("14:30"), clocks(desk));
      assertEquals("Undone: the exit at 14:30 stands as it did before.", desk.undo(OTHER));
      desk.undo(ME);
      assertEquals(List.of(), clocks(desk));
    }
  }

  /** Journals of older versions say undo without a number: the last step. */
  @Test
  void anOlderJournalIsReadAsItWasMeant() throws Exception {
    String row = "\"period\",\"1\",\"clock\",\"%s\",\"team\",\"A\",\"way_out\",\"chip\"]\n";
    Files.writeString(
        journal,
        "[\"begin\"]\n[\"begun\",\"none\"]\n[\"add\",\"1\","
            + row.formatted("15:00")
            + "[\"edit\",\"1\","
            + row.formatted("14:00")
            + "[\"delete\",\"1\"]\n[\"undo\"]\n[\"undo\"]\n[\"add\",\"2\","
            + row.formatted("13:00"));
    try (TagDesk desk = open()) {
      assertEquals(List.of("15:00", "13:00"), clocks(desk));
      desk.undo(ME);
      desk.undo(OTHER);
      assertEquals(List.of(), clocks(desk));
    }
    Files.writeString(journal, "[\"begin\"]\n[\"begun\",\"none\"]\n[\"undo\"]\n");
    Files.deleteIfExists(sheet);
    assertThrows(SheetException.class, this::open);
  }

  /** Cut anywhere, the journal gives every step whose line is whole, and no part of another. */
  @Test
  void theJournalMayBeCutAnywhere() throws Exception {
    Random random = new Random(16);
    TreeMap<Integer, List<TagRow>> states = new TreeMap<>();
    try (TagDesk desk = open()) {
      states.put((int) Files.size(journal), desk.rows());
      for (int i = 0; i < 40; i++) {
        int id = 1 + random.nextInt(20);
        boolean there = desk.rows().stream().anyMatch(r -> r.id() == id);
        Map<String, String> fields = exit("1" + random.nextInt(10) + ":00", "chip");
        fields.put("player", "J\u00f8 \ud83c\udfd2 " + i);
        switch (there ? random.nextInt(4) : 3) {
          case 0 -> desk.edit(id, version(desk, id), fields, ME);
          case 1 -> desk.delete(id, version(desk, id), ME);
          case 2 -> desk.undo(ME);
          default -> desk.add(fields, ME);
        }
        // The step's own line ends before the line that says that the sheet was written.
        String whole = Files.readString(journal);
        int step = whole.lastIndexOf('\n', whole.length() - 2) + 1;
        states.put(whole.substring(0, step).getBytes(StandardCharsets.UTF_8).length, desk.rows());
      }
    }
    byte[] bytes = Files.readAllBytes(journal);
    Path cut = Files.createDirectory(dir.resolve("cut"));
    for (int n = states.firstKey(); n <= bytes.length; n += 1 + random.nextInt(40)) {
      Files.write(cut.resolve("tags.csv.journal"), Arrays.copyOf(bytes, n));
      Files.deleteIfExists(cut.resolve("tags.csv"));
      try (TagDesk desk = TagDesk.open(cut.resolve("tags.csv"), PERIOD, Map.of())) {
        assertEquals(states.floorEntry(n).getValue(), desk.rows(), "cut at " + n);
        assertEquals(
            desk.rows().size(), TagSheet.read(cut.resolve("tags.csv"), PERIOD).rows().size());
      }
    }
  }

  @Test
  void aTornLineIsToldOf() throws Exception {
    try (TagDesk desk = open()) {
      desk.add(exit("15:00", "chip"), ME);
    }
    Files.writeString(journal, Files.readString(journal) + "[\"add\",\"2\",\"per");
    try (TagDesk desk = open()) {
      assertEquals(1, desk.tagged());
      assertTrue(desk.opening().contains("was being saved when the program was stopped"));
      desk.add(exit("14:00", "chip"), ME);
    }
    try (TagDesk desk = open()) {
      assertEquals("2 exits brought back.", desk.opening());
    }
  }

  @Test
  void aJournalOfSomebodyElseIsRefusedWithItsLine() throws Exception {
    Files.writeString(journal, "[\"begin\"]\n[\"begun\",\"none\"]\nhello\n");
    SheetException e = assertThrows(SheetException.class, this::open);
    assertTrue(
        e.getMessage().contains("tags.csv.journal, line 3: found \"hello\""), e.getMessage());
    Files.writeString(journal, "[\"begin\"]\n[\"begun\",\"none\"]\n[\"sing\",\"1\"]\n");
    assertThrows(SheetException.class, this::open);
  }

  /** Notes without a last line end, or behind lines that only look like ours, stay as they are. */
  @Test
  void aJournalOfSomebodyElseIsNotCut() throws Exception {
    String ours = "[\"begin\"]\n[\"begun\",\"none\"]\n";
    for (String foreign :
        List.of("hello", "[\"sing\"", "[\"sing\",\"1\"]\n[\"add\",\"2\"", ours + "milk, eggs")) {
      Files.writeString(journal, foreign);
      SheetException e = assertThrows(SheetException.class, this::open, foreign);
      assertTrue(e.getMessage().contains("a step that this program wrote"), e.getMessage());
      assertEquals(foreign, Files.readString(journal));
    }
    for (String torn : List.of("", "[", "[\"ad", "[\"add\",\"2", "[\"wri\0\0\0", "\0\0")) {
      Files.writeString(journal, ours + torn);
      open().close();
    }
  }

  @Test
  void aSheetThatWasThereIsGoneOnWith() throws Exception {
    Files.writeString(
        sheet,
        "Period;Clock;Team;rating;way_out;X_m;y_m\n1;19:00;Herons;A;chip;-5;6\n1;18:00;Herons;;carry;;\n");
    try (TagDesk desk = open()) {
      assertEquals(Map.of("period", "1"), desk.setup());
      assertEquals("2 exits read from the sheet.", desk.opening());
      desk.edit(1, 0, exit("18:55", "pass"), ME);
      desk.add(exit("17:00", "chip"), ME);
      desk.undo(ME);
      assertThrows(TagRefusedException.class, () -> desk.edit(9, 0, exit("18:55", "pass"), ME));
    }
    TagSheet.Read read = TagSheet.read(sheet, PERIOD);
    assertEquals(2, read.rows().size());
    assertEquals("A", read.rows().get(0).cells().get("rating"));
    assertEquals("18:55", read.rows().get(0).cells().get("clock"));
    assertEquals("carry", read.rows().get(1).cells().get("way_out"));
    Files.delete(sheet);
    try (TagDesk desk = open()) {
      assertTrue(desk.opening().contains("The sheet was gone: 2 exits brought back"));
    }
    assertEquals("A", TagSheet.read(sheet, PERIOD).rows().get(0).cells().get("rating"));
  }

  @Test
  void aSheetWithADoubtfulRowIsLeftAlone() throws Exception {
    String text = "period,clock,team,way_out\n1,19:00,Herons,chip\n1,19:00,Herons,dribble\n";
    Files.writeString(sheet, text);
    SheetException e = assertThrows(SheetException.class, this::open);
    assertTrue(e.getMessage().contains("line 3"), e.getMessage());
    assertEquals(text, Files.readString(sheet));
    assertFalse(Files.exists(journal));
  }

  @Test
  void aSheetThatWasCorrectedByHandIsBelieved() throws Exception {
    try (TagDesk desk = open()) {
      desk.add(exit("15:00", "chip"), ME);
      desk.add(exit("14:00", "chip"), ME);
    }
    String corrected = Files.readString(sheet).replace("14:00", "13:30");
    Files.writeString(sheet, corrected);
    try (TagDesk desk = open()) {
      assertEquals(List.of("15:00", "13:30"), clocks(desk));
      desk.add(exit("12:00", "chip"), ME);
    }
    try (TagDesk desk = open()) {
      assertEquals(List.of("15:00", "13:30", "12:00"), clocks(desk));
    }
  }

  @Test
  void aSheetThatWasChangedMeanwhileIsNeitherOverwrittenNorIsTheExitLost() throws Exception {
    String theirs = "period,clock,team,way_out\n3,09:00,Herons,chip\n";
    try (TagDesk desk = open()) {
      desk.add(exit("15:00", "chip"), ME);
      Files.writeString(sheet, theirs);
      desk.add(exit("14:00", "chip"), ME);
      assertTrue(desk.warning().contains("Another program changed the sheet"), desk.warning());
      assertEquals(2, desk.tagged());
      assertEquals("2 exits tagged, 1 in " + sheet, desk.closing());
    }
    assertEquals(theirs, Files.readString(sheet));
    SheetException e = assertThrows(SheetException.class, this::open);
    assertTrue(e.getMessage().contains("2 exits of the journal"), e.getMessage());
    Files.move(sheet, dir.resolve("theirs.csv"));
    try (TagDesk desk = open()) {
      assertEquals(List.of("15:00", "14:00"), clocks(desk));
    }
  }

  @Test
  void twoProgramsDoNotShareASheet() throws Exception {
    try (TagDesk desk = open()) {
      SheetException e = assertThrows(SheetException.class, this::open);
      assertTrue(e.getMessage().contains("one program at a time"), e.getMessage());
      desk.add(exit("15:00", "chip"), ME);
    }
    try (TagDesk desk = open()) {
      assertEquals(1, desk.tagged());
    }
  }

  @Test
  void whatThePageIsSetToIsKept() throws Exception {
    try (TagDesk desk = TagDesk.open(sheet, PERIOD, Map.of("home", "Herons"))) {
      desk.setUp(Map.of("clock", "13:07", "clock_video_s", "12.5", "date", "2031-10-04"));
      desk.setUp(Map.of("date", ""));
      assertThrows(TagRefusedException.class, () -> desk.setUp(Map.of("colour", "red")));
    }
    try (TagDesk desk = open()) {
      assertEquals(
          new TreeMap<>(Map.of("clock", "13:07", "clock_video_s", "12.5", "home", "Herons")),
          new TreeMap<>(desk.setup()));
    }
  }

  /** The same steps write the same bytes. */
  @Test
  void theSheetDependsOnTheStepsAlone() throws Exception {
    List<String> texts = new ArrayList<>();
    for (String name : List.of("a.csv", "b.csv")) {
      try (TagDesk desk = TagDesk.open(dir.resolve(name), PERIOD, Map.of())) {
        desk.add(exit("15:00", "chip"), ME);
        desk.add(exit("14:00", "carry"), ME);
      }
      texts.add(Files.readString(dir.resolve(name)));
      texts.add(Files.readString(dir.resolve(name + ".journal")));
    }
    assertEquals(texts.subList(0, 2), texts.subList(2, 4));
  }
}
