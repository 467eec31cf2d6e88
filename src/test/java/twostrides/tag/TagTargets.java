package twostrides.tag;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twostrides.game.Usual;
import twostrides.serve.Reply;
import twostrides.sheet.SheetException;

/** What must hold of tagging, whatever bytes it is given. */
public final class TagTargets {
  private static final List<String> ACTIONS =
      List.of("add", "edit", "delete", "undo", "setup", "state", "no-such-action");

  private TagTargets() {}

  /**
   * A journal: refused and left as it is, or read, and then it says the same once more.
   *
   * @param dir an empty folder
   * @param bytes the journal
   */
  public static void journal(Path dir, byte[] bytes) throws IOException {
    Path sheet = dir.resolve("tags.csv");
    Path journal = Files.write(dir.resolve("tags.csv.journal"), bytes);
    int rows;
    try (TagDesk desk = TagDesk.open(sheet, Usual.DEFAULT, Map.of())) {
      rows = desk.tagged();
    } catch (SheetException e) {
      assertArrayEquals(bytes, Files.readAllBytes(journal), "a foreign journal stays");
      return;
    }
    try (TagDesk desk = TagDesk.open(sheet, Usual.DEFAULT, Map.of())) {
      assertEquals(rows, desk.tagged());
    } catch (SheetException e) {
      throw new AssertionError("the program refuses what it wrote: " + e.getMessage(), e);
    }
  }

  /**
   * Requests, one a line, the first letter choosing the action: every answer has a status, and what
   * was saved is there after the next start.
   *
   * @param dir an empty folder
   * @param bytes the requests
   */
  public static void requests(Path dir, byte[] bytes) throws IOException {
    Path sheet = dir.resolve("tags.csv");
    int rows;
    try (TagDesk desk = TagDesk.open(sheet, Usual.DEFAULT, Map.of())) {
      PageServer.Page page =
          new TagServer(desk, Optional.empty(), dir, () -> new BookMaker.Made(false, ""));
      for (String line : new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1)) {
        if (line.isEmpty()) {
          continue;
        }
        String action = ACTIONS.get(line.charAt(0) % ACTIONS.size());
        byte[] asked = line.substring(1).getBytes(StandardCharsets.ISO_8859_1);
        int status =
            PageServer.post(TagServer.WORDS, page, action, "application/json", asked).status();
        assertTrue(status >= Reply.OK && status < Reply.BROKEN, line + ": " + status);
      }
      rows = desk.tagged();
    } catch (SheetException e) {
      throw new AssertionError(e);
    }
    try (TagDesk desk = TagDesk.open(sheet, Usual.DEFAULT, Map.of())) {
      assertEquals(rows, desk.tagged(), "what was saved is there after the next start");
    } catch (SheetException e) {
      throw new AssertionError("the program refuses what it wrote: " + e.getMessage(), e);
    }
  }
}
