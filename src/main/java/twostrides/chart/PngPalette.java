package twostrides.chart;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * At most 256 colours that come near to a drawing: its commonest as they are, then shades along
 * edges that lie well apart; every other shade goes to the nearest of these. A drawing of 256
 * colours or fewer keeps them all.
 */
final class PngPalette {

  private static final int MOST = 256;
  private static final int RGB = 0xFFFFFF;

  /** So many of the commonest are kept however near they are to each other: paper, ice, fills. */
  private static final int FLAT = 32;

  /** Further ones stand at least so far apart, in steps of 256 a colour, to reach every shade. */
  private static final int SPREAD = 8;

  private static final int SLOT_BITS = 12;
  private static final int SLOTS = 1 << SLOT_BITS;

  private final int[] colors;
  private final Map<Integer, Byte> places;

  /** The colour last looked up in each slot, and its place; no pixel has the colour -1. */
  private final int[] recent = new int[SLOTS];

  private final byte[] recentPlaces = new byte[SLOTS];

  private PngPalette(int[] colors, Map<Integer, Byte> places) {
    this.colors = colors;
    this.places = places;
    Arrays.fill(recent, -1);
  }

  /**
   * The palette of a drawing.
   *
   * @param pixels 0xRRGGBB each
   */
  static PngPalette of(int[] pixels) {
    Map<Integer, Integer> counts = counts(pixels);
    List<Integer> byCount =
        counts.entrySet().stream()
            .sorted(
                Comparator.comparingInt((Map.Entry<Integer, Integer> e) -> -e.getValue())
                    .thenComparing(Map.Entry::getKey))
            .map(Map.Entry::getKey)
            .toList();
    int[] kept = kept(byCount);
    Map<Integer, Byte> places = new HashMap<>();
    byCount.forEach(c -> places.put(c, (byte) nearest(kept, kept.length, c)));
    return new PngPalette(kept, places);
  }

  private static int[] kept(List<Integer> byCount) {
    if (byCount.size() <= MOST) {
      return byCount.stream().mapToInt(c -> c).toArray();
    }
    int[] kept = new int[MOST];
    int n = 0;
    for (int color : byCount) {
      if (n < FLAT || (n < MOST && far(kept[nearest(kept, n, color)], color) > SPREAD * SPREAD)) {
        kept[n++] = color;
      }
    }
    return Arrays.copyOf(kept, n);
  }

  /**
   * How many pixels have each colour; a small table before the map takes nearly all of the work.
   */
  private static Map<Integer, Integer> counts(int[] pixels) {
    Map<Integer, Integer> counts = new HashMap<>();
    int[] color = new int[SLOTS];
    int[] seen = new int[SLOTS];
    for (int i = 0, end; i < pixels.length; i = end) {
      end = endOfRun(pixels, i);
      int rgb = pixels[i] & RGB;
      int slot = slot(rgb);
      if (color[slot] != rgb) {
        flush(counts, color[slot], seen[slot]);
        color[slot] = rgb;
        seen[slot] = 0;
      }
      seen[slot] += end - i;
    }
    for (int slot = 0; slot < SLOTS; slot++) {
      flush(counts, color[slot], seen[slot]);
    }
    return counts;
  }

  private static void flush(Map<Integer, Integer> counts, int rgb, int seen) {
    if (seen > 0) {
      counts.merge(rgb, seen, Integer::sum);
    }
  }

  private static int slot(int rgb) {
    return (rgb * 0x9E3779B1) >>> (32 - SLOT_BITS);
  }

  /** Where the pixels stop being like the one at {@code start}: drawings are long runs of paper. */
  private static int endOfRun(int[] pixels, int start) {
    int end = start + 1;
    while (end < pixels.length && pixels[end] == pixels[start]) {
      end++;
    }
    return end;
  }

  private static int nearest(int[] kept, int n, int rgb) {
    int best = 0;
    for (int i = 1; i < n; i++) {
      if (far(kept[i], rgb) < far(kept[best], rgb)) {
        best = i;
      }
    }
    return best;
  }

  /** Square of the straight distance between two colours. */
  private static int far(int one, int two) {
    int red = (one >> 16) - (two >> 16);
    int green = ((one >> 8) & 0xFF) - ((two >> 8) & 0xFF);
    int blue = (one & 0xFF) - (two & 0xFF);
    return red * red + green * green + blue * blue;
  }

  /**
   * Puts a colour's place in the palette for each pixel of a row.
   *
   * @param pixels pixels of the drawing
   * @param from first pixel of the row
   * @param width pixels of the row
   * @param out where the places go
   * @param at where the first of them goes
   */
  void row(int[] pixels, int from, int width, byte[] out, int at) {
    for (int i = 0, end; i < width; i = end) {
      end = Math.min(width, endOfRun(pixels, from + i) - from);
      Arrays.fill(out, at + i, at + end, place(pixels[from + i] & RGB));
    }
  }

  private byte place(int rgb) {
    int slot = slot(rgb);
    if (recent[slot] != rgb) {
      recent[slot] = rgb;
      recentPlaces[slot] = places.get(rgb);
    }
    return recentPlaces[slot];
  }

  /** Red, green and blue of each colour in turn. */
  byte[] bytes() {
    byte[] out = new byte[3 * colors.length];
    for (int i = 0; i < colors.length; i++) {
      out[3 * i] = (byte) (colors[i] >> 16);
      out[3 * i + 1] = (byte) (colors[i] >> 8);
      out[3 * i + 2] = (byte) colors[i];
    }
    return out;
  }
}
