package reseat.search;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignKey;
import reseat.designfile.DesignProblem;
import reseat.designfile.SizeTargets;
import reseat.study.RecutSeats;
import reseat.study.SweepAxis;

/**
 * All combinations of the values that keys of a design file may take.
 *
 * <p>Combinations are numbered from 0. Keys of preloads vary fastest, so that a block of
 * combinations that differ in them only shares everything else.
 */
public final class SizingSpace {

  /** Most combinations. */
  public static final long MOST = 1_000_000_000L;

  private final AlterableDesign file;
  private final List<Varied> varied;
  private final Optional<RecutSeats> seats;

  /**
   * Keys that take the same value.
   *
   * @param axis the first of them with its values
   * @param others further keys
   * @param continuous whether any value between the first and the last may be taken
   */
  public record Varied(SweepAxis axis, List<DesignKey> others, boolean continuous) {

    /** Copies the list. */
    public Varied {
      others = List.copyOf(others);
    }

    boolean ofPreload() {
      return axis.key().path().startsWith("preload")
          && others.stream().allMatch(k -> k.path().startsWith("preload"));
    }

    /** A value between the ends, as it would be typed. */
    String between(double part) {
      List<Double> numbers = axis.numbers();
      double first = numbers.get(0);
      double value = first + part * (numbers.get(numbers.size() - 1) - first);
      if (axis.unit().isPresent()) {
        return RecutSeats.text(value, axis.unit().get());
      }
      return new BigDecimal(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
    }
  }

  private SizingSpace(AlterableDesign file, List<Varied> varied, boolean seatsFollow) {
    this.file = file;
    this.varied = varied;
    seats = seatsFollow ? Optional.of(new RecutSeats(file)) : Optional.empty();
  }

  /**
   * Lays the combinations out.
   *
   * @param file the design file, without errors
   * @param wish what may vary
   * @return the combinations
   * @throws IllegalArgumentException if a key is unknown or a value refused by it; the message says
   *     what to write
   */
  public static SizingSpace of(AlterableDesign file, SizeTargets wish) {
    if (wish.vary().isEmpty()) {
      throw new IllegalArgumentException(
          "nothing may vary; add [size] with vary = [\"layout.ball.diameter = stock:ball-inch\"],"
              + " or give --vary");
    }
    List<Varied> outer = new ArrayList<>();
    List<Varied> inner = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (String text : wish.vary()) {
      Varied v = varied(file, text);
      List<DesignKey> keys = new ArrayList<>(v.others());
      keys.add(v.axis().key());
      for (DesignKey key : keys) {
        if (!seen.add(key.inFile())) {
          throw new IllegalArgumentException(key.path() + " is to vary twice");
        }
      }
      (v.ofPreload() ? inner : outer).add(v);
    }
    outer.addAll(inner);
    SizingSpace space = new SizingSpace(file, List.copyOf(outer), wish.seatsFollowBall());
    double count = 1;
    for (Varied v : outer) {
      count *= v.axis().values().size();
    }
    if (count > MOST) {
      throw new IllegalArgumentException(
          "at most " + MOST + " combinations are searched; these are more");
    }
    space.checkValues();
    return space;
  }

  private static Varied varied(AlterableDesign file, String text) {
    int equals = text.indexOf('=');
    String left = equals < 0 ? text : text.substring(0, equals);
    String[] keys = left.split("\\+", -1);
    SweepAxis axis =
        SweepAxis.of(file, equals < 0 ? text : keys[0].strip() + text.substring(equals));
    List<DesignKey> others = new ArrayList<>();
    for (int i = 1; i < keys.length; i++) {
      others.add(file.key(keys[i].strip()));
    }
    boolean range = text.substring(equals + 1).contains("..") && !axis.numbers().isEmpty();
    return new Varied(axis, others, range);
  }

  /** A value that its own key refuses, whatever the others are, is a slip of the user's. */
  private void checkValues() {
    for (Varied v : varied) {
      for (String value : v.axis().values()) {
        DesignFile read = file.with(List.of(new Alteration(v.axis().key(), value)));
        for (DesignProblem p : read.problems()) {
          if (p.severity() == DesignProblem.Severity.ERROR
              && p.key().equals(v.axis().key().inFile())) {
            throw new IllegalArgumentException(v.axis().key().path() + ": " + p.message());
          }
        }
      }
    }
  }

  /**
   * Returns what varies.
   *
   * @return keys with their values, the last varying fastest
   */
  public List<Varied> varied() {
    return varied;
  }

  /**
   * Returns the file.
   *
   * @return the design file
   */
  public AlterableDesign file() {
    return file;
  }

  /**
   * Returns the number of combinations.
   *
   * @return their number
   */
  public long count() {
    long count = 1;
    for (Varied v : varied) {
      count *= v.axis().values().size();
    }
    return count;
  }

  /** How many successive combinations differ in preloads only. */
  long blockSize() {
    long size = 1;
    for (Varied v : varied) {
      size *= v.ofPreload() ? v.axis().values().size() : 1;
    }
    return size;
  }

  /** Whether a material varies that a preload's device may be made of. */
  boolean altersMaterials() {
    return varied.stream()
        .flatMap(v -> Stream.concat(Stream.of(v.axis().key()), v.others().stream()))
        .anyMatch(k -> k.path().startsWith("material"));
  }

  /** Index of the value of each key in a combination. */
  private int[] indices(long number) {
    int[] at = new int[varied.size()];
    long rest = number;
    for (int i = at.length - 1; i >= 0; i--) {
      int n = varied.get(i).axis().values().size();
      at[i] = (int) (rest % n);
      rest /= n;
    }
    return at;
  }

  /**
   * Returns a number that combinations share if they differ in continuous keys only.
   *
   * @param number number of a combination
   * @return number of the first combination of its kind
   */
  public long kind(long number) {
    int[] at = indices(number);
    long kind = 0;
    for (int i = 0; i < at.length; i++) {
      kind = kind * varied.get(i).axis().values().size() + (varied.get(i).continuous() ? 0 : at[i]);
    }
    return kind;
  }

  /**
   * Returns the values of a combination.
   *
   * @param number number of the combination
   * @return one for each of {@link #varied()}, as typed
   */
  public List<String> values(long number) {
    int[] at = indices(number);
    List<String> values = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      values.add(varied.get(i).axis().values().get(at[i]));
    }
    return List.copyOf(values);
  }

  /** Places of the continuous keys of a combination in their ranges, each from 0 to 1. */
  double[] place(long number) {
    int[] at = indices(number);
    List<Double> place = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      if (varied.get(i).continuous()) {
        List<Double> n = varied.get(i).axis().numbers();
        place.add((n.get(at[i]) - n.get(0)) / (n.get(n.size() - 1) - n.get(0)));
      }
    }
    return place.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Values of a combination with the continuous keys anywhere in their ranges. */
  List<String> values(long number, double[] place) {
    List<String> values = new ArrayList<>(values(number));
    int next = 0;
    for (int i = 0; i < values.size(); i++) {
      if (varied.get(i).continuous()) {
        values.set(i, varied.get(i).between(place[next++]));
      }
    }
    return values;
  }

  /**
   * Returns the alterations of the file that give a combination of values.
   *
   * @param values one for each of {@link #varied()}, as typed
   * @return alterations, with those of seats that follow; a value that the file has is left alone
   */
  public List<Alteration> alterations(List<String> values) {
    List<Alteration> changes = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      Varied v = varied.get(i);
      add(changes, v.axis().key(), values.get(i));
      for (DesignKey key : v.others()) {
        add(changes, key, values.get(i));
      }
    }
    return seats.isPresent() ? seats.get().with(changes) : List.copyOf(changes);
  }

  private void add(List<Alteration> changes, DesignKey key, String value) {
    if (file.typed(key).filter(value::equals).isEmpty()) {
      changes.add(new Alteration(key, value));
    }
  }

  /** A combination that no design can be made of. */
  static Judgement cannotBeMade() {
    return Judgement.fails("cannot be made", Double.POSITIVE_INFINITY);
  }
}
