package reseat.study;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.units.NearestWord;

/**
 * Sizes that suppliers keep, in rising order.
 *
 * @param name word for the list, for instance {@code ball-inch}
 * @param source where the sizes come from
 * @param sizes each as it is typed into a design file, for instance {@code 5/16 in} or {@code M8x1}
 */
public record StockSizes(String name, String source, List<String> sizes) {

  private static final String RESOURCE = "stock.tsv";

  /** Copies the list. */
  public StockSizes {
    sizes = List.copyOf(sizes);
  }

  /**
   * Returns every list.
   *
   * @return balls, pins and threads, as they stand in the file that ships with the program
   */
  public static List<StockSizes> all() {
    List<StockSizes> all = new ArrayList<>();
    try (InputStream in = StockSizes.class.getResourceAsStream(RESOURCE)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      for (String line : text.split("\n", -1)) {
        if (!line.isBlank() && !line.startsWith("#")) {
          String[] cells = line.split("\t", -1);
          all.add(new StockSizes(cells[0], cells[1], List.of(cells[2].split(";", -1))));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return List.copyOf(all);
  }

  /**
   * Finds a list.
   *
   * @param name its word
   * @return the list
   * @throws IllegalArgumentException if there is none; the message names those there are
   */
  public static StockSizes named(String name) {
    List<String> names = new ArrayList<>();
    for (StockSizes stock : all()) {
      if (stock.name.equals(name)) {
        return stock;
      }
      names.add(stock.name);
    }
    Optional<String> nearest = NearestWord.to(name, names);
    throw new IllegalArgumentException(
        "there is no stock list \""
            + name
            + "\"; "
            + nearest.map(n -> "did you mean " + n + "? ").orElse("")
            + "lists: "
            + String.join(", ", names));
  }
}
