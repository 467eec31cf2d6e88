package twostrides.tag;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The rows as the steps of a journal make them, and the way back. A step is a list of words, its
 * kind first; the same steps always make the same rows. Steps that change a row are numbered from 1
 * since the beginning, whether or not they are taken back later.
 */
final class History {

  /** Begins anew: rows follow, then {@link #BEGUN}. Without that the beginning does not count. */
  static final String BEGIN = "begin";

  /** A row as it stood at the beginning; undo does not reach behind it. */
  private static final String ROW = "row";

  /** The beginning is whole; the second word is the digest of the sheet. */
  static final String BEGUN = "begun";

  /** The sheet was put in its place; the second word is its digest. */
  static final String WRITTEN = "written";

  private static final String SETUP = "setup";
  private static final String ADD = "add";
  private static final String EDIT = "edit";
  private static final String DELETE = "delete";

  /** Takes a step back; the second word is its number. Older journals leave it out: the last. */
  private static final String UNDO = "undo";

  private static final List<String> KINDS =
      List.of(BEGIN, ROW, BEGUN, WRITTEN, SETUP, ADD, EDIT, DELETE, UNDO);

  /**
   * Who took a step before this start of the program: the pages of that time are closed, so that
   * every page of today may take it back.
   */
  static final String ANYBODY = "";

  /**
   * What a step did to a row.
   *
   * @param was the row before it; empty where the step added it
   * @param is the row after it; empty where the step took it out
   * @param page the page that asked for it, or {@link #ANYBODY}
   */
  record Change(Optional<TagRow> was, Optional<TagRow> is, String page) {
    /** The row, as it is or was. */
    TagRow row() {
      return is.or(() -> was).orElseThrow();
    }
  }

  private final NavigableMap<Integer, TagRow> rows = new TreeMap<>();
  private final List<Change> changes = new ArrayList<>();
  private final NavigableSet<Integer> standing = new TreeSet<>();
  private Map<String, String> setup = Map.of();
  private int next = 1;
  private String digest = "";
  private boolean ahead;
  private boolean begun;

  /**
   * Whether a text can be what was written of a step when the machine stopped; a disk may have kept
   * room for the rest and left it zero.
   *
   * @param text the text, without a line end
   */
  static boolean begins(String text) {
    String written = text.replaceFirst("\0+\\z", "");
    return KINDS.stream()
        .map(k -> "[\"" + k + "\"")
        .anyMatch(k -> k.startsWith(written) || written.startsWith(k));
  }

  /** The rows in the order in which they were tagged. */
  List<TagRow> rows() {
    return List.copyOf(rows.values());
  }

  /** What the page was set to: game, teams, clock; words of the page. */
  Map<String, String> setup() {
    return setup;
  }

  /** The number that the next row gets. */
  int next() {
    return next;
  }

  /** The number of the next step, which is the version of the row that it makes. */
  int version() {
    return changes.size() + 1;
  }

  /** Digest of the sheet when it was last put in its place, or at the beginning. */
  String digest() {
    return digest;
  }

  /** Whether a step came after the sheet was last put in its place. */
  boolean ahead() {
    return ahead;
  }

  /** Whether any beginning is whole. */
  boolean begun() {
    return begun;
  }

  /** The last step of a page that stands, by its number; steps of anybody are every page's. */
  OptionalInt lastOf(String page) {
    return standing.descendingSet().stream()
        .filter(n -> List.of(page, ANYBODY).contains(change(n).page()))
        .mapToInt(n -> n)
        .findFirst();
  }

  /** What a step did. */
  Change change(int number) {
    return changes.get(number - 1);
  }

  /** Whether the row is still as a step left it: only then the step can be taken back. */
  boolean untouchedSince(int number) {
    return change(number).is().equals(row(change(number).row().id()));
  }

  /** The row of a number. */
  Optional<TagRow> row(int id) {
    return Optional.ofNullable(rows.get(id));
  }

  static List<List<String>> beginning(List<TagRow> rows, String digest) {
    List<List<String>> steps = new ArrayList<>();
    steps.add(List.of(BEGIN));
    rows.forEach(r -> steps.add(step(ROW, r)));
    steps.add(List.of(BEGUN, digest));
    return steps;
  }

  static List<String> added(TagRow row) {
    return step(ADD, row);
  }

  static List<String> edited(TagRow row) {
    return step(EDIT, row);
  }

  static List<String> deleted(int id) {
    return List.of(DELETE, Integer.toString(id));
  }

  static List<String> undone(int number) {
    return List.of(UNDO, Integer.toString(number));
  }

  static List<String> setUp(Map<String, String> setup) {
    List<String> step = new ArrayList<>(List.of(SETUP));
    setup.forEach((k, v) -> Collections.addAll(step, k, v));
    return step;
  }

  static List<String> written(String digest) {
    return List.of(WRITTEN, digest);
  }

  /** The rows after a step that changes one, without taking it. */
  List<TagRow> after(List<String> step) {
    NavigableMap<Integer, TagRow> after = new TreeMap<>(rows);
    Change done = step.get(0).equals(UNDO) ? back(number(step)) : change(step, ANYBODY);
    put(after, done);
    return List.copyOf(after.values());
  }

  /**
   * Takes a step of an earlier start.
   *
   * @param step a step of the journal
   * @throws RuntimeException when it is none
   */
  void take(List<String> step) {
    take(step, ANYBODY);
  }

  /**
   * Takes a step.
   *
   * @param step a step of the journal
   * @param page the page that asked for it
   * @throws RuntimeException when it is none
   */
  void take(List<String> step, String page) {
    switch (step.get(0)) {
      case BEGIN -> {
        rows.clear();
        changes.clear();
        standing.clear();
      }
      case ROW -> put(row(step, 0));
      case BEGUN -> {
        digest = step.get(1);
        ahead = false;
        begun = true;
      }
      case WRITTEN -> {
        digest = step.get(1);
        ahead = false;
      }
      case SETUP -> setup = Collections.unmodifiableMap(pairs(step, 1));
      case UNDO -> {
        int number = number(step);
        put(rows, back(number));
        standing.remove(number);
        ahead = true;
      }
      default -> {
        Change change = change(step, page);
        put(rows, change);
        next = Math.max(next, change.row().id() + 1);
        changes.add(change);
        standing.add(changes.size());
        ahead = true;
      }
    }
  }

  private Change change(List<String> step, String page) {
    return switch (step.get(0)) {
      case ADD -> new Change(Optional.empty(), Optional.of(row(step, version())), page);
      case EDIT -> {
        TagRow is = row(step, version());
        yield new Change(Optional.of(row(is.id()).orElseThrow()), Optional.of(is), page);
      }
      case DELETE -> {
        TagRow was = row(Integer.parseInt(step.get(1))).orElseThrow();
        yield new Change(Optional.of(was), Optional.empty(), page);
      }
      default -> throw new IllegalArgumentException("no step that changes rows: " + step);
    };
  }

  /** The way back from a step. */
  private Change back(int number) {
    Change done = change(number);
    return new Change(done.is(), done.was(), ANYBODY);
  }

  private int number(List<String> undo) {
    int number = undo.size() > 1 ? Integer.parseInt(undo.get(1)) : standing.last();
    if (!standing.contains(number)) {
      throw new IllegalArgumentException("no step that can be taken back: " + undo);
    }
    return number;
  }

  private void put(TagRow row) {
    rows.put(row.id(), row);
    next = Math.max(next, row.id() + 1);
  }

  private static void put(NavigableMap<Integer, TagRow> into, Change change) {
    int id = change.row().id();
    change.is().ifPresentOrElse(r -> into.put(id, r), () -> into.remove(id));
  }

  private static List<String> step(String kind, TagRow row) {
    List<String> step = new ArrayList<>(List.of(kind, Integer.toString(row.id())));
    row.cells().forEach((k, v) -> Collections.addAll(step, k, v));
    return step;
  }

  private static TagRow row(List<String> step, int version) {
    return new TagRow(Integer.parseInt(step.get(1)), version, pairs(step, 2));
  }

  private static Map<String, String> pairs(List<String> step, int from) {
    if ((step.size() - from) % 2 != 0) {
      throw new IllegalArgumentException("a key without its words: " + step);
    }
    Map<String, String> pairs = new LinkedHashMap<>();
    for (int i = from; i < step.size(); i += 2) {
      pairs.put(step.get(i), step.get(i + 1));
    }
    return pairs;
  }
}
