package reseat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import reseat.verification.CheckValue;
import reseat.verification.CheckValues;
import reseat.verification.Topic;

/**
 * The table that the reference scripts compare with holds the values of the program and no other.
 * With {@code -Dreference.write=true} it is renewed instead.
 */
class ReferenceValuesTest {

  static final Path TABLE = ProjectFolder.docs().resolve("reference/values.tsv");

  private static final boolean WRITE = Boolean.getBoolean("reference.write");

  private static List<String> table() {
    List<String> lines = new ArrayList<>();
    lines.add("topic\tid\tname\tvalue\tunit\ttolerance\tkind");
    for (Topic topic : CheckValues.topics()) {
      for (CheckValue v : topic.values()) {
        lines.add(
            String.join(
                "\t",
                topic.title(),
                v.id(),
                v.quantity(),
                Double.toString(v.printed()),
                v.unit(),
                Double.toString(v.tolerance()),
                v.standing().name()));
      }
    }
    return lines;
  }

  @Test
  void theTableOfTheScriptsIsThatOfTheProgram() throws IOException {
    if (WRITE) {
      Files.write(TABLE, table());
    }
    assertThat(Files.readAllLines(TABLE))
        .as("docs/reference/values.tsv is stale: renew it with -Dreference.write=true")
        .isEqualTo(table());
  }
}
