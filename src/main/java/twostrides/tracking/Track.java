package twostrides.tracking;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import twostrides.game.VideoFrame;
import twostrides.rink.Place;
import twostrides.sheet.Sheet;

/**
 * One skater as long as the tracking did not lose it: rows of rising time, in the home team's frame
 * (+x its attack). Held in arrays, 26 bytes a row. Two teams under one id are two tracks.
 */
public final class Track {
  /** Stands for a number that was not read. */
  static final short UNREAD = -1;

  private final String id;
  private final String file;
  private final boolean home;
  private final Optional<Integer> period;
  private final Optional<String> segment;
  private int rows;
  private double[] seconds = new double[32];
  private float[] x = new float[32];
  private float[] y = new float[32];
  private short[] number = new short[32];
  private int[] line = new int[32];
  private int[] frame = new int[32];

  /**
   * A track without rows.
   *
   * @param id the sheet's id
   * @param file the sheet
   * @param home whether the skater is the home team's
   * @param period period, from 1, where the sheet says so
   * @param segment the piece of the video that counts its own frames, where the sheet says so
   */
  Track(String id, String file, boolean home, Optional<Integer> period, Optional<String> segment) {
    this.id = id;
    this.file = file;
    this.home = home;
    this.period = period;
    this.segment = segment;
  }

  /**
   * Adds a row, later than the last; metres, seconds; frame {@link #UNREAD} where there is none.
   */
  void add(double second, Place place, short numberWorn, long lineOfFile, int frameOfFile) {
    if (rows > 0 && second <= seconds[rows - 1]) {
      throw new IllegalArgumentException("time runs backward in track " + id);
    }
    if (rows == seconds.length) {
      int more = rows + rows / 2;
      seconds = Arrays.copyOf(seconds, more);
      x = Arrays.copyOf(x, more);
      y = Arrays.copyOf(y, more);
      number = Arrays.copyOf(number, more);
      line = Arrays.copyOf(line, more);
      frame = Arrays.copyOf(frame, more);
    }
    seconds[rows] = second;
    x[rows] = (float) place.x();
    y[rows] = (float) place.y();
    number[rows] = numberWorn;
    line[rows] = (int) lineOfFile;
    frame[rows] = frameOfFile;
    rows++;
  }

  /** The sheet's id of it; another track may have the same. */
  public String id() {
    return id;
  }

  /** The sheet, as the user named it. */
  public String file() {
    return file;
  }

  /** Whether the skater is the home team's. */
  public boolean home() {
    return home;
  }

  /** Period, from 1; empty when the sheet does not say. */
  public Optional<Integer> period() {
    return period;
  }

  /** How many rows it has, at least one once it was read. */
  public int rows() {
    return rows;
  }

  /** Second of the video of a row, from 0. */
  public double second(int row) {
    return seconds[row];
  }

  /** Metres along the rink of a row, home team's frame; kept to a hundredth of a millimetre. */
  public double x(int row) {
    return x[row];
  }

  /** Metres across the rink of a row, home team's frame. */
  public double y(int row) {
    return y[row];
  }

  /** Number on the jersey in a row; empty when it was not read. */
  public OptionalInt number(int row) {
    return number[row] == UNREAD ? OptionalInt.empty() : OptionalInt.of(number[row]);
  }

  /** Line of the sheet of a row, from 1. */
  public long line(int row) {
    return line[row];
  }

  /** Where in the sheet's frames a row stands; empty when it counts none. */
  Optional<VideoFrame> frame(int row) {
    return frame[row] == UNREAD
        ? Optional.empty()
        : Optional.of(new VideoFrame(Sheet.fileName(Path.of(file)), segment, frame[row]));
  }

  /** The last row at or before an instant, -1 when the track begins later. */
  int rowAt(double second) {
    int found = Arrays.binarySearch(seconds, 0, rows, second);
    return found >= 0 ? found : -found - 2;
  }
}
