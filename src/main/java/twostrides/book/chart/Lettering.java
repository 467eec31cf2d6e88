package twostrides.book.chart;

import java.awt.Font;
import java.awt.GraphicsEnvironment;
import java.text.BreakIterator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** Text from sheets made clean, and lines that fit. */
final class Lettering {

  /** No line needs more; a longer text is cut before it is measured. Characters, assumed. */
  private static final int LONGEST_TEXT = 400;

  private static final String NO_FONT =
      "No font was found on this machine: install fontconfig and fonts-dejavu-core";

  private static final String PREFERRED = "DejaVu Sans";
  private static final String ELLIPSIS = "\u2026";

  private Lettering() {}

  /** The family of this machine, asked once, when a picture is first drawn: listing is slow. */
  private static final class Present {
    static final String FAMILY =
        family(
            () ->
                GraphicsEnvironment.getLocalGraphicsEnvironment()
                    .getAvailableFontFamilyNames(Locale.ROOT));
  }

  static String family() {
    return Present.FAMILY;
  }

  /**
   * The family to measure with.
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

  /**
   * The font for a text from a sheet: the logical font, which borrows letters from all fonts of the
   * machine, where the preferred one lacks a letter.
   */
  static Font able(Font font, String text) {
    return font.canDisplayUpTo(text) < 0
        ? font
        : new Font(Font.SANS_SERIF, font.getStyle(), font.getSize());
  }

  /**
   * Text from a sheet as one clean line: control characters, half surrogates and marks that turn
   * the direction of what follows are taken out, white space becomes single spaces.
   */
  static String clean(String text) {
    StringBuilder kept = new StringBuilder();
    text.codePoints()
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

  private static boolean shows(int c) {
    boolean turnsDirection =
        c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    boolean noCharacter =
        (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF) || Character.isISOControl(c);
    return !turnsDirection && !noCharacter && Character.getType(c) != Character.SURROGATE;
  }

  /** Clean text that can stand between tags and in a quoted attribute. */
  static String escaped(String text) {
    return clean(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("'", "&#39;");
  }

  /**
   * Breaks a text into lines at spaces; what does not fit on the last ends in an ellipsis.
   *
   * @param text any text
   * @param type its size and weight
   * @param width pixels that a line may take
   * @param most lines, 1 or more
   */
  static List<String> lines(String text, Type type, double width, int most) {
    List<String> lines = new ArrayList<>();
    String whole = clean(text);
    String rest = whole.substring(0, Math.min(whole.length(), LONGEST_TEXT));
    while (type.width(rest) > width && lines.size() < most - 1) {
      int end = fitting(rest, type, width);
      int space = rest.lastIndexOf(' ', end);
      int cut = space > 0 ? space : end;
      lines.add(rest.substring(0, cut).strip());
      rest = rest.substring(cut).strip();
    }
    boolean fits = type.width(rest) <= width;
    double room = width - type.width(ELLIPSIS);
    lines.add(fits ? rest : rest.substring(0, fitting(rest, type, room)).strip() + ELLIPSIS);
    return List.copyOf(lines);
  }

  /** How much of a text fits, in whole letters with their accents; at least one letter. */
  private static int fitting(String text, Type type, double width) {
    BreakIterator letters = BreakIterator.getCharacterInstance(Locale.ROOT);
    letters.setText(text);
    int end = letters.next();
    for (int next = letters.next(); next != BreakIterator.DONE; next = letters.next()) {
      if (type.width(text.substring(0, next)) > width) {
        break;
      }
      end = next;
    }
    return end;
  }
}
