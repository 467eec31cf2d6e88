package twostrides.book;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * A table as a reader sees it.
 *
 * @param page file of the page
 * @param heading the heading above it
 * @param caption its caption
 * @param heads headings of the columns
 * @param numeric which columns are set as numbers
 * @param rows the cells, those that reach over several rows repeated
 */
record PageTable(
    String page,
    String heading,
    String caption,
    List<String> heads,
    List<Boolean> numeric,
    List<List<String>> rows) {

  /** The tables of a page in order, but for those that its own script fills. */
  static List<PageTable> of(String page, Document html) {
    List<PageTable> tables = new ArrayList<>();
    String heading = "";
    for (Element e : html.select("h1, h2, table:not([data-own])")) {
      if (!e.tagName().equals("table")) {
        heading = e.text();
      } else {
        List<Element> heads = e.select("thead th");
        tables.add(
            new PageTable(
                page,
                heading,
                e.select("caption").text(),
                heads.stream().map(Element::text).toList(),
                heads.stream().map(h -> h.hasClass("n")).toList(),
                rows(e)));
      }
    }
    return tables;
  }

  /** A row that only says that there is none is no row. */
  private static List<List<String>> rows(Element table) {
    List<List<String>> rows = new ArrayList<>();
    for (Element tr : table.select("tbody tr:not(.zero)")) {
      rows.add(tr.select("> th, > td").stream().map(Element::text).toList());
    }
    return rows;
  }

  /** Which kind of page it is: the folder of teams and players, else the file. */
  static String kind(String page) {
    return page.contains("/") ? page.substring(0, page.indexOf('/')) : page;
  }
}
