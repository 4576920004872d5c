package reseat.elementary;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The functions beside those of {@code java.lang.Math}, whose contracts are the outside values. */
class ElementaryTest {

  private static final long SEED = 20260417;

  private static final List<Double> EDGES = edges();

  private static List<Double> edges() {
    List<Double> all = new ArrayList<>();
    double[] sizes = {
      0,
      Double.MIN_VALUE,
      Double.MIN_NORMAL,
      1e-300,
      1e-17,
      0.25,
      0.49999999999999994,
      0.5,
      0.75,
      1,
      1.5,
      2,
      2.5,
      3.5,
      Math.PI / 2,
      Math.PI,
      2 * Math.PI,
      100,
      1000,
      0x1p31,
      0x1p51 + 0.5,
      0x1p52 - 0.5,
      0x1p52,
      0x1p52 + 1,
      0x1p53 + 2,
      0x1p62,
      0x1p63,
      0x1p64,
      1e300,
      Double.MAX_VALUE / 2,
      Double.MAX_VALUE,
      Double.POSITIVE_INFINITY,
      Double.NaN
    };
    for (double size : sizes) {
      for (double x : new double[] {size, Math.nextUp(size), Math.nextDown(size)}) {
        all.add(x);
        all.add(-x);
      }
    }
    return all;
  }

  private static void bitByBit(DoubleUnaryOperator ours, DoubleUnaryOperator javas) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (double x : EDGES) {
      same(ours.applyAsDouble(x), javas.applyAsDouble(x), x);
    }
    for (int i = 0; i < 200_000; i++) {
      double any = Double.longBitsToDouble(random.nextLong());
      same(ours.applyAsDouble(any), javas.applyAsDouble(any), any);
      double half = random.nextInt(-2000, 2000) / 2.0;
      same(ours.applyAsDouble(half), javas.applyAsDouble(half), half);
      double middling = random.nextDouble(-1e6, 1e6);
      same(ours.applyAsDouble(middling), javas.applyAsDouble(middling), middling);
    }
  }

  private static void bitByBit(DoubleBinaryOperator ours, DoubleBinaryOperator javas) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (double x : EDGES) {
      for (double y : EDGES) {
        same(ours.applyAsDouble(x, y), javas.applyAsDouble(x, y), x);
      }
    }
    for (int i = 0; i < 200_000; i++) {
      double x = Double.longBitsToDouble(random.nextLong());
      double y = Double.longBitsToDouble(random.nextLong());
      same(ours.applyAsDouble(x, y), javas.applyAsDouble(x, y), x);
      double half = random.nextInt(-2000, 2000) / 2.0;
      double whole = random.nextInt(1, 50);
      same(ours.applyAsDouble(half, whole), javas.applyAsDouble(half, whole), half);
      double turn = random.nextDouble(-100, 100);
      same(ours.applyAsDouble(turn, 2 * Math.PI), javas.applyAsDouble(turn, 2 * Math.PI), turn);
    }
  }

  private static void same(double ours, double javas, double at) {
    if (Double.doubleToLongBits(ours) != Double.doubleToLongBits(javas)) {
      assertThat(ours).as("at %s, seed %d", at, SEED).isEqualTo(javas);
    }
  }

  /** Within 1 ulp on random places of an interval and on those edges that lie in it. */
  private static void nearby(
      DoubleUnaryOperator ours, DoubleUnaryOperator javas, double low, double high) {
    SplittableRandom random = new SplittableRandom(SEED);
    List<Double> places = new ArrayList<>(EDGES);
    places.removeIf(x -> !(x >= low && x <= high));
    for (int i = 0; i < 100_000; i++) {
      places.add(random.nextDouble(low, high));
    }
    for (double x : places) {
      near(ours.applyAsDouble(x), javas.applyAsDouble(x), x, 1);
    }
  }

  private static void near(double ours, double javas, double at, int ulps) {
    boolean same = Double.doubleToLongBits(ours) == Double.doubleToLongBits(javas);
    if (!same && !(Math.abs(ours - javas) <= ulps * Math.ulp(javas))) {
      assertThat(ours).as("at %s, seed %d", at, SEED).isEqualTo(javas);
    }
  }

  @Test
  void roundingIsThatOfJavaToTheBit() {
    bitByBit(Elementary::rint, Math::rint);
    bitByBit(Elementary::round, Math::round);
  }

  @Test
  void theRemainderIsThatOfJavaToTheBit() {
    bitByBit(Elementary::remainder, Math::IEEEremainder);
  }

  @Test
  void degreesAndBitsAreThoseOfJavaToTheBit() {
    bitByBit(Elementary::toRadians, Math::toRadians);
    bitByBit(Elementary::toDegrees, Math::toDegrees);
    bitByBit(Elementary::nextUp, Math::nextUp);
    bitByBit(Elementary::copySign, Math::copySign);
    for (int power : new int[] {-2200, -1074, -1022, -30, -1, 0, 1, 40, 1023, 2200}) {
      bitByBit(x -> Elementary.scalb(x, power), x -> Math.scalb(x, power));
    }
  }

  @Test
  void curvesAreThoseOfJavaWithinAnUlp() {
    nearby(Elementary::sin, Math::sin, -100, 100);
    nearby(Elementary::cos, Math::cos, -100, 100);
    nearby(Elementary::tan, Math::tan, -100, 100);
    nearby(Elementary::asin, Math::asin, -1, 1);
    nearby(Elementary::acos, Math::acos, -1, 1);
    nearby(Elementary::atan, Math::atan, -1e300, 1e300);
    nearby(Elementary::atan, Math::atan, -10, 10);
    nearby(Elementary::exp, Math::exp, -700, 700);
    nearby(Elementary::expm1, Math::expm1, -2, 2);
    nearby(Elementary::log, Math::log, 0, 1e300);
    nearby(Elementary::log, Math::log, 0, 10);
    nearby(Elementary::log10, Math::log10, 0, 0.9);
    nearby(Elementary::log10, Math::log10, 1.1, 1e6);
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 100_000; i++) {
      double x = i < 9 ? 1 + (i - 4) * 0x1p-52 : random.nextDouble(0.9, 1.1);
      near(Elementary.log10(x), Math.log10(x), x, 2);
    }
    nearby(Elementary::log1p, Math::log1p, -0.9, 10);
    nearby(Elementary::cbrt, Math::cbrt, -1e9, 1e9);
  }

  @Test
  void powersAndAnglesOfTwoNumbersAreThoseOfJavaWithinAnUlp() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 200_000; i++) {
      double x = random.nextDouble(-1e3, 1e3);
      double y = random.nextDouble(-1e3, 1e3);
      near(Elementary.atan2(y, x), Math.atan2(y, x), x, 1);
      near(Elementary.hypot(x, y), Math.hypot(x, y), x, 1);
      double exponent = random.nextDouble(-5, 5);
      double base = random.nextDouble(0, 1e6);
      near(Elementary.pow(base, exponent), Math.pow(base, exponent), base, 1);
    }
    for (double x : EDGES) {
      for (double y : EDGES) {
        near(Elementary.atan2(y, x), Math.atan2(y, x), x, 2);
        // Commons Math loses digits where a base next to 1 meets an exponent of billions
        if (!(Math.abs(y) > 1000 && Math.abs(y) <= Double.MAX_VALUE)) {
          near(Elementary.pow(x, y), Math.pow(x, y), x, 1);
        }
      }
    }
  }

  @Test
  void powersOfTenHaveWholeLogarithms() {
    for (int power = 0; power <= 22; power++) {
      assertThat(Elementary.log10(new BigDecimal(1).movePointRight(power).doubleValue()))
          .isEqualTo(power);
    }
  }

  @Test
  void cubeRootsGiveTheirCubesBack() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 1000; i++) {
      double x = random.nextDouble(1e-9, 1e9);
      double cube = new BigDecimal(Elementary.cbrt(x)).pow(3, MathContext.DECIMAL128).doubleValue();
      // one part in 2^52 of the root is three of the cube
      assertThat(Math.abs(cube - x)).isLessThanOrEqualTo(3.01 * 0x1p-52 * x);
    }
  }
}
