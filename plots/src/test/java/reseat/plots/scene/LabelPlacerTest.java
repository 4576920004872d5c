package reseat.plots.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import reseat.numerics.RandomStream;

class LabelPlacerTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void labelsOfThingsAtRandomPlacesNeverLieOnEachOther(long seed) {
    RandomStream random = RandomStream.of(seed, 0);
    Box frame = new Box(0, 0, 400, 300);
    LabelPlacer placer = new LabelPlacer(frame);
    List<Box> symbols = new ArrayList<>();
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      Point p = new Point(random.uniform(20, 380), random.uniform(20, 280));
      points.add(p);
      symbols.add(Box.about(p, 4));
      placer.keepClear(symbols.get(i));
    }
    List<Box> placed = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      Optional<LabelPlacer.Placed> label =
          placer.place(List.of("thing " + i), TextStyle.LABEL, points.get(i), 6, 0.7 * i);
      label.ifPresent(l -> placed.add(l.box()));
    }
    assertThat(placed).as("seed " + seed).hasSizeGreaterThan(15);
    for (Box box : placed) {
      assertThat(frame.contains(box)).isTrue();
      assertThat(symbols).noneMatch(s -> s.overlaps(box));
      assertThat(placed.stream().filter(o -> !o.equals(box))).noneMatch(o -> o.overlaps(box));
    }
  }
}
