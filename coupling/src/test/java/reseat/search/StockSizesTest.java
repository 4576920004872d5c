package reseat.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import reseat.ballmount.ScrewThread;
import reseat.study.StockSizes;
import reseat.units.QuantityKind;
import reseat.units.QuantityText;

class StockSizesTest {

  @Test
  void everySizeCanBeTypedIntoADesignFileAndTheListsRise() {
    for (StockSizes stock : StockSizes.all()) {
      ToDoubleFunction<String> size =
          stock.name().equals("thread")
              ? t -> ScrewThread.parse(t).diameter()
              : t -> QuantityText.require(t, QuantityKind.LENGTH).value();
      double last = 0;
      for (String text : stock.sizes()) {
        double value = size.applyAsDouble(text);
        assertTrue(value >= last, stock.name() + " at " + text);
        last = value;
      }
      assertTrue(stock.source().contains("from memory"), stock.name());
    }
  }

  @Test
  void inchBallsGoByThirtySecondsThenSixteenthsFromAnEighthToAnInch() {
    List<String> balls = StockSizes.named("ball-inch").sizes();
    assertEquals("1/8 in", balls.get(0));
    assertEquals("5/32 in", balls.get(1));
    assertEquals("1 in", balls.get(balls.size() - 1));
    assertTrue(balls.containsAll(List.of("1/4 in", "9/16 in", "15/16 in")));
  }

  @Test
  void anUnknownListIsToldWithTheNearest() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> StockSizes.named("ball-inches"))
            .getMessage();
    assertTrue(message.contains("did you mean ball-inch?"), message);
    assertTrue(message.endsWith("ball-inch, ball-metric, pin, pin-inch, thread"), message);
  }
}
