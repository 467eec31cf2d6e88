package twostrides.tag;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rows as the steps of a journal make them, and the way back. A step is a list of words, its
 * kind first; the same steps always make the same rows.
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
  private static final String UNDO = "undo";

  private final Deque<List<TagRow>> before = new ArrayDeque<>();
  private List<TagRow> rows = List.of();
  private Map<String, String> setup = Map.of();
  private int next = 1;
  private String digest = "";
  private boolean ahead;
  private boolean begun;

  List<TagRow> rows() {
    return rows;
  }

  /** What the page was set to: game, teams, clock; words of the page. */
  Map<String, String> setup() {
    return setup;
  }

  /** The number that the next row gets. */
  int next() {
    return next;
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

  boolean canUndo() {
    return !before.isEmpty();
  }

  /** The row of a number, or null. */
  TagRow row(int id) {
    return rows.stream().filter(r -> r.id() == id).findFirst().orElse(null);
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

  static List<String> undone() {
    return List.of(UNDO);
  }

  static List<String> setUp(Map<String, String> setup) {
    List<String> step = new ArrayList<>(List.of(SETUP));
    setup.forEach((k, v) -> Collections.addAll(step, k, v));
    return step;
  }

  static List<String> written(String digest) {
    return List.of(WRITTEN, digest);
  }

  /** The rows after a step, without taking it. */
  List<TagRow> after(List<String> step) {
    List<TagRow> changed = new ArrayList<>(rows);
    switch (step.get(0)) {
      case ADD -> changed.add(row(step));
      case EDIT -> {
        TagRow row = row(step);
        changed.replaceAll(r -> r.id() == row.id() ? row : r);
      }
      case DELETE -> changed.removeIf(r -> r.id() == Integer.parseInt(step.get(1)));
      case UNDO -> {
        return before.getLast();
      }
      default -> throw new IllegalArgumentException("no step that changes rows: " + step);
    }
    return changed;
  }

  /**
   * Takes a step.
   *
   * @param step a step of the journal
   * @throws RuntimeException when it is none
   */
  void take(List<String> step) {
    switch (step.get(0)) {
      case BEGIN -> {
        rows = List.of();
        before.clear();
      }
      case ROW -> put(List.copyOf(with(row(step))));
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
        put(before.removeLast());
        ahead = true;
      }
      default -> {
        List<TagRow> changed = List.copyOf(after(step));
        before.addLast(rows);
        put(changed);
        ahead = true;
      }
    }
  }

  private List<TagRow> with(TagRow row) {
    List<TagRow> more = new ArrayList<>(rows);
    more.add(row);
    return more;
  }

  private void put(List<TagRow> changed) {
    rows = changed;
    next = Math.max(next, rows.stream().mapToInt(TagRow::id).max().orElse(0) + 1);
  }

  private static List<String> step(String kind, TagRow row) {
    List<String> step = new ArrayList<>(List.of(kind, Integer.toString(row.id())));
    row.cells().forEach((k, v) -> Collections.addAll(step, k, v));
    return step;
  }

  private static TagRow row(List<String> step) {
    return new TagRow(Integer.parseInt(step.get(1)), pairs(step, 2));
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
