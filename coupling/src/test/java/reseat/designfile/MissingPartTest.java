package reseat.designfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import reseat.design.CouplingDesign;
import reseat.design.Half;

/** What a program that builds a design leaves out is named, for every record of the examples. */
class MissingPartTest {

  private static final Path EXAMPLES = Path.of("../docs/examples");

  /** One of each kind of record in a value, at any depth. */
  private static void gather(Object value, Map<Class<?>, Record> found)
      throws ReflectiveOperationException {
    if (value instanceof Optional<?> o && o.isPresent()) {
      gather(o.get(), found);
    } else if (value instanceof Collection<?> all) {
      for (Object o : all) {
        gather(o, found);
      }
    } else if (value instanceof Record r && !found.containsKey(r.getClass())) {
      found.put(r.getClass(), r);
      for (RecordComponent c : r.getClass().getRecordComponents()) {
        gather(c.getAccessor().invoke(r), found);
      }
    }
  }

  private static Map<Class<?>, Record> recordsOfTheExamples()
      throws IOException, ReflectiveOperationException {
    Map<Class<?>, Record> found = new HashMap<>();
    for (String name :
        new String[] {"tool-post.toml", "pallet.toml", "cone-vee-flat.toml", "sensor-mount.toml"}) {
      CouplingDesign d = DesignFile.read(EXAMPLES.resolve(name)).design().orElseThrow();
      for (Object part :
          new Object[] {
            d.supports(),
            d.preloads(),
            d.holder(),
            d.cases(),
            d.axes(),
            d.friction(),
            d.targets(),
            d.turning(),
            d.remount(),
            d.tolerances(),
            d.shop()
          }) {
        gather(part, found);
      }
    }
    gather(BallMountFile.read(EXAMPLES.resolve("ball-mount.toml")).design().orElseThrow(), found);
    return found;
  }

  private static String words(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  @Test
  void aMissingPartIsNamed() throws IOException, ReflectiveOperationException {
    int tried = 0;
    for (Record r : recordsOfTheExamples().values()) {
      RecordComponent[] parts = r.getClass().getRecordComponents();
      Constructor<?> constructor =
          r.getClass()
              .getConstructor(
                  Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
      for (int k = 0; k < parts.length; k++) {
        if (!parts[k].getType().isPrimitive() && !r.getClass().getName().contains(".space.")) {
          Object[] values = new Object[parts.length];
          for (int i = 0; i < parts.length; i++) {
            values[i] = parts[i].getAccessor().invoke(r);
          }
          values[k] = null;
          assertThat(refusal(constructor, values))
              .as("%s without %s", r.getClass(), parts[k].getName())
              .isInstanceOf(NullPointerException.class)
              .hasMessageStartingWith(words(parts[k].getName()) + " of ")
              .hasMessageEndingWith(" must be given, found null");
          tried++;
        }
      }
    }
    assertThat(tried).isGreaterThan(60);
  }

  private static Throwable refusal(Constructor<?> constructor, Object... values)
      throws ReflectiveOperationException {
    try {
      return new AssertionError("taken: " + constructor.newInstance(values));
    } catch (InvocationTargetException e) {
      return e.getCause();
    }
  }

  @Test
  void aBuilderNamesItToo() {
    assertThat(catchThrowable(() -> CouplingDesign.builder().ballsOn((Half) null)))
        .isInstanceOf(NullPointerException.class)
        .hasMessage("half that carries the balls must be given, found null");
  }
}
