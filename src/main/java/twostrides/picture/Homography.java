package twostrides.picture;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * How a camera without a bent lens sees a plane: u = (h0 x + h1 y + h2)/w, v = (h3 x + h4 y +
 * h5)/w, w = h6 x + h7 y + 1, in coordinates of {@link Scale}; w is above 0 in front of the camera.
 *
 * <p>The eight numbers start from the direct linear transformation (Hartley and Zisserman, Multiple
 * View Geometry, 2004, 4.1) and are then those of least squares in the picture, where the error of
 * a click is, by Levenberg and Marquardt's method. Their covariance is that of the clicks carried
 * through, (J'J)^-1 for clicks with a variance of 1.
 */
final class Homography {

  private static final int PARAMETERS = 8;
  private static final int MOST_STEPS = 200;

  /**
   * Least share of the second smallest singular value in the largest; below it nothing is fixed.
   */
  private static final double SINGULAR = 1e-9;

  private final Scale ice;
  private final Scale picture;
  private final double[] h;
  private final RealMatrix unitCovariance;
  private final RealMatrix inverse;
  private final double squares;

  private Homography(Scale ice, Scale picture, Optimum best) {
    this.ice = ice;
    this.picture = picture;
    this.h = best.getPoint().toArray();
    this.unitCovariance = best.getCovariances(SINGULAR * SINGULAR);
    this.squares = Math.pow(best.getCost() * picture.unit(), 2);
    this.inverse =
        new LUDecomposition(
                new Array2DRowRealMatrix(
                    new double[][] {{h[0], h[1], h[2]}, {h[3], h[4], h[5]}, {h[6], h[7], 1}}))
            .getSolver()
            .getInverse();
  }

  /**
   * Fits a plane to its picture.
   *
   * @param places points of the plane, four or more
   * @param points the same in the picture
   * @throws MathRuntimeException where they fix no picture of a plane
   */
  static Homography of(List<double[]> places, List<double[]> points) {
    Scale ice = Scale.of(places);
    Scale picture = Scale.of(points);
    List<double[]> from = places.stream().map(p -> ice.to(p[0], p[1])).toList();
    List<double[]> to = points.stream().map(p -> picture.to(p[0], p[1])).toList();
    double[] target = to.stream().flatMapToDouble(Arrays::stream).toArray();
    Optimum best =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(linear(from, to))
                    .target(target)
                    .model(model(from))
                    .maxEvaluations(MOST_STEPS)
                    .maxIterations(MOST_STEPS)
                    .build());
    return new Homography(ice, picture, best);
  }

  private static double[] linear(List<double[]> from, List<double[]> to) {
    // A ninth row of zeros, where there are eight, so that the ninth direction is found.
    double[][] a = new double[Math.max(9, 2 * from.size())][9];
    for (int i = 0; i < from.size(); i++) {
      double x = from.get(i)[0];
      double y = from.get(i)[1];
      double u = to.get(i)[0];
      double v = to.get(i)[1];
      a[2 * i] = new double[] {x, y, 1, 0, 0, 0, -u * x, -u * y, -u};
      a[2 * i + 1] = new double[] {0, 0, 0, x, y, 1, -v * x, -v * y, -v};
    }
    SingularValueDecomposition svd =
        new SingularValueDecomposition(new Array2DRowRealMatrix(a, false));
    double[] size = svd.getSingularValues();
    double[] v = svd.getV().getColumn(8);
    if (!(size[7] > SINGULAR * size[0]) || Math.abs(v[8]) < SINGULAR) {
      throw new MathRuntimeException(LocalizedCoreFormats.SINGULAR_MATRIX);
    }
    double[] h = new double[PARAMETERS];
    for (int i = 0; i < PARAMETERS; i++) {
      h[i] = v[i] / v[8];
    }
    return h;
  }

  private static MultivariateJacobianFunction model(List<double[]> from) {
    return point -> {
      double[] p = point.toArray();
      double[] value = new double[2 * from.size()];
      double[][] slope = new double[2 * from.size()][];
      for (int i = 0; i < from.size(); i++) {
        double[] at = seen(p, from.get(i));
        value[2 * i] = at[0];
        value[2 * i + 1] = at[1];
        double[][] of = byParameters(p, from.get(i));
        slope[2 * i] = of[0];
        slope[2 * i + 1] = of[1];
      }
      return new Pair<>(new ArrayRealVector(value, false), new Array2DRowRealMatrix(slope, false));
    };
  }

  /** u, v and w of a point of the plane. */
  private static double[] seen(double[] h, double[] p) {
    double w = h[6] * p[0] + h[7] * p[1] + 1;
    return new double[] {
      (h[0] * p[0] + h[1] * p[1] + h[2]) / w, (h[3] * p[0] + h[4] * p[1] + h[5]) / w, w
    };
  }

  private static double[][] byParameters(double[] h, double[] p) {
    double[] at = seen(h, p);
    double x = p[0] / at[2];
    double y = p[1] / at[2];
    double one = 1 / at[2];
    return new double[][] {
      {x, y, one, 0, 0, 0, -at[0] * x, -at[0] * y}, {0, 0, 0, x, y, one, -at[1] * x, -at[1] * y}
    };
  }

  /** How far in front of the camera a place lies, 1 in the middle of the marks; 0 the horizon. */
  double depth(double x, double y) {
    return seen(h, ice.to(x, y))[2];
  }

  /** Where the picture shows a place: u, v. */
  double[] point(double x, double y) {
    double[] at = seen(h, ice.to(x, y));
    return picture.from(at[0], at[1]);
  }

  /** The place of a point of the picture, and its depth's inverse: above 0 below the horizon. */
  double[] place(double u, double v) {
    double[] p = picture.to(u, v);
    double[] at = inverse.operate(new double[] {p[0], p[1], 1});
    double[] place = ice.from(at[0] / at[2], at[1] / at[2]);
    return new double[] {place[0], place[1], at[2]};
  }

  /** Sum of the squares by which clicks and fit differ, picture elements squared. */
  double squares() {
    return squares;
  }

  /** Whether the picture shows the plane as from below, which is mirrored. */
  boolean mirrored() {
    RealMatrix m = bySteps(new double[] {0, 0});
    // Across grows to the left, down grows downward: seen from above they turn opposite ways.
    return m.getEntry(0, 0) * m.getEntry(1, 1) - m.getEntry(0, 1) * m.getEntry(1, 0) > 0;
  }

  private RealMatrix bySteps(double[] p) {
    double[] at = seen(h, p);
    return new Array2DRowRealMatrix(
        new double[][] {
          {(h[0] - at[0] * h[6]) / at[2], (h[1] - at[0] * h[7]) / at[2]},
          {(h[3] - at[1] * h[6]) / at[2], (h[4] - at[1] * h[7]) / at[2]}
        });
  }

  /**
   * Covariance of the place of a click, of its own error and of those of the marks: M^-1 (I + B C
   * B') M^-T, M the picture's change by the place, B by the eight numbers, C their covariance.
   *
   * @param x place, metres
   * @param y place, metres
   * @param error standard error of every click each way, picture elements
   * @return square metres
   */
  RealMatrix covariance(double x, double y, double error) {
    double[] p = ice.to(x, y);
    RealMatrix marks = new Array2DRowRealMatrix(byParameters(h, p), false);
    RealMatrix both =
        marks
            .multiply(unitCovariance)
            .multiplyTransposed(marks)
            .add(MatrixUtils.createRealIdentityMatrix(2));
    RealMatrix back = new LUDecomposition(bySteps(p)).getSolver().getInverse();
    double size = error / picture.unit() * ice.unit();
    return back.multiply(both).multiplyTransposed(back).scalarMultiply(size * size);
  }
}
