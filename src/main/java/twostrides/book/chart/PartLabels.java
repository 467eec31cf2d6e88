package twostrides.book.chart;

import java.text.NumberFormat;
import java.util.Locale;
import org.jfree.chart.labels.StandardCategoryItemLabelGenerator;
import org.jfree.data.category.CategoryDataset;

/** The number in a part of a bar, where it has room. */
final class PartLabels extends StandardCategoryItemLabelGenerator {

  private static final long serialVersionUID = 1L;

  private final int least;

  PartLabels(int least) {
    super("{2}", NumberFormat.getIntegerInstance(Locale.ROOT));
    this.least = least;
  }

  @Override
  public String generateLabel(CategoryDataset data, int row, int column) {
    return data.getValue(row, column).intValue() < least
        ? null
        : super.generateLabel(data, row, column);
  }

  @Override
  public boolean equals(Object other) {
    return super.equals(other) && other instanceof PartLabels p && p.least == least;
  }

  @Override
  public int hashCode() {
    return 31 * super.hashCode() + least;
  }
}
