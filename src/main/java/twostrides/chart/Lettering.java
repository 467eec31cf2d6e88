package twostrides.chart;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.awt.font.FontRenderContext;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * Fonts, widths of text and lines that fit. Widths are pixels at scale 1, measured without hinting,
 * so that they hold at every scale.
 */
final class Lettering {

  /** The font list of the SVG: DejaVu Sans and Verdana share their widths; Arial is narrower. */
  static final String FAMILIES = "'DejaVu Sans', Verdana, Arial, sans-serif";

  /** No name needs more; a longer text is cut before it is measured. Characters, assumed. */
  private static final int LONGEST_TEXT = 400;

  private static final String NO_FONT =
      "No font was found on this machine: install fontconfig and fonts-dejavu-core";

  private static final String PREFERRED = "DejaVu Sans";
  private static final String ELLIPSIS = "\u2026";
  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  /** The same for every thread that finds it, so a race only asks twice. */
  private static volatile String present;

  private Lettering() {}

  static Font plain(int size) {
    return new Font(present(), Font.PLAIN, size);
  }

  static Font bold(int size) {
    return new Font(present(), Font.BOLD, size);
  }

  /**
   * The font for a text from a sheet: the logical font, which borrows letters from all fonts of the
   * machine, where the preferred one lacks a letter.
   */
  static Font able(Font font, String text) {
    return font.canDisplayUpTo(text) < 0
        ? font
        : new Font(Font.SANS_SERIF, font.getStyle(), font.getSize());
  }

  static double width(Font font, String text) {
    return text.isEmpty() ? 0 : font.getStringBounds(text, EXACT).getWidth();
  }

  /**
   * Text from a sheet as one clean line: control characters, half surrogates and marks that turn
   * the direction of what follows are taken out, white space becomes single spaces.
   */
  static String clean(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
        .limit(LONGEST_TEXT)
        .forEach(
            c -> {
              if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
                kept.append(' ');
              } else if (shows(c)) {
                kept.appendCodePoint(c);
              }
            });
    return kept.toString().strip().replaceAll(" +", " ");
  }

  /**
   * A clean title, or other words where nothing of it is left.
   *
   * @param title text that may come from a sheet
   * @param otherwise our own words
   */
  static String cleanOr(String title, String otherwise) {
    String clean = clean(title);
    return clean.isEmpty() ? otherwise : clean;
  }

  private static boolean shows(int c) {
    boolean turnsDirection =
        c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    boolean noCharacter =
        (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF) || Character.isISOControl(c);
    return !turnsDirection && !noCharacter && Character.getType(c) != Character.SURROGATE;
  }

  /**
   * Breaks a text into at most two lines; what does not fit on the second ends in an ellipsis.
   *
   * @param text a clean line
   * @param width pixels that a line may take
   */
  static List<String> twoLines(String text, Font font, double width) {
    if (width(font, text) <= width) {
      return List.of(text);
    }
    int end = fitting(text, font, width);
    int space = text.lastIndexOf(' ', end);
    int cut = space > 0 ? space : end;
    String rest = text.substring(cut).strip();
    List<String> lines = new ArrayList<>();
    lines.add(text.substring(0, cut).strip());
    lines.add(
        width(font, rest) <= width
            ? rest
            : rest.substring(0, fitting(rest, font, width - width(font, ELLIPSIS))).strip()
                + ELLIPSIS);
    return List.copyOf(lines);
  }

  /** How much of a text fits, in whole letters with their accents; at least one letter. */
  private static int fitting(String text, Font font, double width) {
    BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
    letters.setText(text);
    int end = letters.next();
    for (int next = letters.next(); next != BreakIterator.DONE; next = letters.next()) {
      if (width(font, text.substring(0, next)) > width) {
        break;
      }
      end = next;
    }
    return end;
  }

  /**
   * The family to draw with.
   *
   * @param families the families on the machine; on a machine without fonts Java throws here, with
   *     different errors in different versions
   * @throws IllegalStateException when there is no font
   */
  static String family(Supplier<String[]> families) {
    List<String> found;
    try {
      found = Arrays.asList(families.get());
    } catch (RuntimeException | LinkageError | InternalError e) {
      throw new IllegalStateException(NO_FONT, e);
    }
    if (found.isEmpty()) {
      throw new IllegalStateException(NO_FONT);
    }
    return found.contains(PREFERRED) ? PREFERRED : Font.SANS_SERIF;
  }

  /** The family of this machine, asked once: listing the fonts is slow. */
  private static String present() {
    String known = present;
    if (known == null) {
      known =
          family(
              () ->
                  GraphicsEnvironment.getLocalGraphicsEnvironment()
                      .getAvailableFontFamilyNames(Locale.ROOT));
      present = known;
    }
    return known;
  }
}
