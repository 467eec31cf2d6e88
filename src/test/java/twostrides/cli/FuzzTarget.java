package twostrides.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import twostrides.game.SeasonReader;
import twostrides.game.SheetForms;
import twostrides.game.SheetsRead;
import twostrides.race.SkaterSet;
import twostrides.rulebook.BookException;
import twostrides.rulebook.Bookshelf;
import twostrides.sheet.DoubtfulRow;
import twostrides.sheet.Sheet;
import twostrides.sheet.SheetException;
import twostrides.sheet.SheetMap;
import twostrides.sheet.SheetReader;
import twostrides.sheet.SheetRow;
import twostrides.sheet.SheetStream;
import twostrides.tag.TagTargets;
import twostrides.tracking.GameOutline;
import twostrides.tracking.Outlines;
import twostrides.tracking.PlacesSheets;
import twostrides.tracking.Sync;
import twostrides.tracking.SyncSheets;
import twostrides.tracking.TrackForm;
import twostrides.tracking.TrackedGame;
import twostrides.tracking.Tracks;

/**
 * What must hold whatever bytes the program is given: it reads them and accounts for every row, or
 * refuses them with a message of its own. Anything else is a fault, and comes out as an exception.
 */
enum FuzzTarget {
  /** A map, a line {@code ====}, a sheet. */
  SHEET_AND_MAP {
    @Override
    void attempt(Path dir, byte[] map, byte[] sheet) throws Exception {
      Path file = Files.write(dir.resolve("sheet.csv"), sheet);
      Optional<SheetMap> read = Optional.empty();
      if (map.length > 0) {
        read = Optional.of(SheetMap.read(Files.write(dir.resolve("m.toml"), map), SheetForms.ALL));
      }
      SheetsRead season = SeasonReader.read(List.of(file), read, false, n -> {});
      assertEquals(season.rowsRead(), season.rowsUsed() + season.setAside().size());
    }
  },
  /** Read row by row and read whole, a sheet has the same rows. */
  STREAM {
    @Override
    void attempt(Path dir, byte[] map, byte[] sheet) throws Exception {
      Path file = Files.write(dir.resolve("sheet.csv"), sheet);
      SheetMap plain = SheetMap.plain(SheetForms.PLAY);
      Counting counted = new Counting();
      Optional<SheetException> streamed = Optional.empty();
      try {
        SheetStream.read(file, plain, counted);
      } catch (SheetException e) {
        streamed = Optional.of(e);
      }
      try {
        Sheet whole = SheetReader.read(file, plain);
        assertEquals(Optional.empty(), streamed.map(Throwable::getMessage));
        assertEquals(whole.rows().size(), counted.rows);
        assertEquals(whole.setAside().size(), counted.doubtful);
      } catch (SheetException e) {
        assertTrue(streamed.isPresent(), e.getMessage());
      }
    }
  },
  RULEBOOK {
    @Override
    void attempt(Path dir, byte[] first, byte[] book) throws Exception {
      Bookshelf.find(Files.write(dir.resolve("own.toml"), book).toString(), Optional.empty());
    }
  },
  LEVEL {
    @Override
    void attempt(Path dir, byte[] first, byte[] level) throws Exception {
      try {
        SkaterSet.find(Files.write(dir.resolve("team.toml"), level).toString());
      } catch (IllegalArgumentException e) {
        assertTrue(e.getMessage().contains("team.toml"), e.toString());
      }
    }
  },
  TRACKING {
    @Override
    void attempt(Path dir, byte[] map, byte[] tracking) throws Exception {
      Path file = Files.write(dir.resolve("tracking.csv"), tracking);
      Tracks.read(
          List.of(file),
          Optional.empty(),
          TrackedGame.of(GameOutline.of(season(dir).games().get(0))),
          Sync.NONE);
    }
  },
  SYNC {
    @Override
    void attempt(Path dir, byte[] map, byte[] sync) throws Exception {
      Path file = Files.write(dir.resolve("sync.csv"), sync);
      SyncSheets.read(List.of(file), List.of(), Outlines.of(season(dir)), false);
    }
  },
  PLACES {
    @Override
    void attempt(Path dir, byte[] map, byte[] places) throws Exception {
      Path file = Files.write(dir.resolve("places.csv"), places);
      PlacesSheets read =
          PlacesSheets.read(List.of(file), Optional.empty(), Outlines.of(season(dir)));
      assertTrue(read.rowsRead() >= read.setAside().size());
    }
  },
  TRACKING_MAP {
    @Override
    void attempt(Path dir, byte[] first, byte[] map) throws Exception {
      SheetMap.read(Files.write(dir.resolve("m.toml"), map), TrackForm.ALL);
    }
  },
  JOURNAL {
    @Override
    void attempt(Path dir, byte[] first, byte[] journal) throws Exception {
      TagTargets.journal(dir, journal);
    }
  },
  REQUESTS {
    @Override
    void attempt(Path dir, byte[] first, byte[] requests) throws Exception {
      TagTargets.requests(dir, requests);
    }
  };

  private static final byte[] BREAK = "\n====\n".getBytes(StandardCharsets.US_ASCII);

  private static final class Counting implements SheetStream.Taker {
    private int rows;
    private int doubtful;

    @Override
    public void header(Set<String> columnsPresent) {}

    @Override
    public void row(SheetRow row) {
      rows++;
    }

    @Override
    public void setAside(DoubtfulRow row) {
      doubtful++;
    }
  }

  /** Reads the second part, through or beside the first. */
  abstract void attempt(Path dir, byte[] first, byte[] second) throws Exception;

  /** Two parts as one input. */
  static byte[] joined(byte[] first, byte[] second) {
    byte[] all = Arrays.copyOf(first, first.length + BREAK.length + second.length);
    System.arraycopy(BREAK, 0, all, first.length, BREAK.length);
    System.arraycopy(second, 0, all, first.length + BREAK.length, second.length);
    return all;
  }

  /**
   * Gives the program bytes.
   *
   * @param data the bytes
   * @throws Exception when what must hold does not
   */
  void give(byte[] data) throws Exception {
    int at = 0;
    while (at + BREAK.length <= data.length
        && !Arrays.equals(data, at, at + BREAK.length, BREAK, 0, BREAK.length)) {
      at++;
    }
    boolean two = at + BREAK.length <= data.length;
    byte[] first = two ? Arrays.copyOf(data, at) : new byte[0];
    byte[] second = two ? Arrays.copyOfRange(data, at + BREAK.length, data.length) : data;
    Path dir = Files.createTempDirectory("two-strides-fuzz");
    try {
      attempt(dir, first, second);
    } catch (SheetException | BookException e) {
      // Refused, with a message of its own.
    } finally {
      remove(dir);
    }
  }

  private static SheetsRead season(Path dir) throws IOException, SheetException {
    Path sheet = Files.write(dir.resolve("game.csv"), TortureCase.bytes("{H}{R}"));
    return SeasonReader.at(sheet.toString());
  }

  private static void remove(Path dir) {
    try (Stream<Path> all = Files.walk(dir)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
