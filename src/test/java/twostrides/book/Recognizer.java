package twostrides.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/**
 * Tells sentences with numbers that somebody has worked out anew from those that nobody knows. What
 * only names something is taken out first: players, rulebooks and their editions.
 */
final class Recognizer {

  private static final Path RULEBOOKS = Path.of("src/main/resources/twostrides/rulebook");

  private final List<Want> wants;
  private final List<String> names;
  private final Set<Want> unsaid;
  private final List<String> unknown = new ArrayList<>();
  private int recognized;

  /**
   * For one page.
   *
   * @param wants what the page has to say
   * @param names what may hold numbers and measures nothing
   */
  Recognizer(List<Want> wants, List<String> names) {
    this.wants = wants;
    // A name may hold another.
    this.names = names.stream().sorted(Comparator.comparingInt(String::length).reversed()).toList();
    this.unsaid = new HashSet<>(wants);
  }

  /** Names and editions of the rulebooks, as their files write them. */
  static List<String> rulebooks() {
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.list(RULEBOOKS)) {
      for (Path f : files.filter(p -> p.toString().endsWith(".toml")).toList()) {
        TomlParseResult book = Toml.parse(f);
        for (String key : List.of("name", "edition")) {
          if (book.contains(key)) {
            names.add(book.getString(key));
          }
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return names;
  }

  /** Takes a sentence of the page. */
  void read(String sentence) {
    List<Want> fit = wants.stream().filter(w -> w.fits(sentence)).toList();
    fit.forEach(unsaid::remove);
    if (!fit.isEmpty()) {
      recognized++;
      return;
    }
    // A season, and a format whose name has a digit.
    String rest = sentence.replaceAll(", season \\d{4}-\\d{2}\\b|\\bM3U\\b", "");
    for (String name : names) {
      rest = rest.replace(name, "");
    }
    if (rest.chars().anyMatch(Character::isDigit)) {
      unknown.add(sentence);
    }
  }

  /** Sentences read that somebody knows. */
  int recognized() {
    return recognized;
  }

  /** What is wrong with the page: sentences that nobody knows, and those that it does not say. */
  List<String> wrong() {
    List<String> wrong = new ArrayList<>();
    unknown.forEach(s -> wrong.add("nobody knows the sentence: " + s));
    unsaid.forEach(w -> wrong.add("does not say: " + w));
    return wrong;
  }
}
