package reseat.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import reseat.designfile.Starter;

/**
 * No two sentences of a check contradict each other: the verdict, the band of preload, the caps in
 * it and the remedies.
 */
class OneScreenAgreesTest extends TypedCommand {

  private static final Pattern BAND =
      Pattern.compile(
          "\"preload_band\": \\{\\s*\"nominal_N\": (\\S+),\\s*\"least_N\": (\\S+),\\s*"
              + "\"aim_N\": (\\S+),\\s*\"most_N\": (\\S+),");
  private static final Pattern FAILS =
      Pattern.compile("\"fails_below_N\": (\\S+),.*?\"fails_above_N\": (\\S+),", Pattern.DOTALL);
  private static final Pattern REMEDY =
      Pattern.compile("\\{\\s*\"changes\": \\[(.*?)],\\s*\"costs\"", Pattern.DOTALL);
  private static final Pattern FORCE =
      Pattern.compile("\"key\": \"preload[^\"]*\\.force\",\\s*\"value\": \"([0-9.]+) N\"");

  @TempDir private Path folder;

  /** The band of a JSON check, N; empty without one. */
  private record Band(double nominal, double least, double aim, double most) {

    static Optional<Band> in(String json) {
      Matcher m = BAND.matcher(json);
      return m.find()
          ? Optional.of(
              new Band(size(m.group(1)), size(m.group(2)), size(m.group(3)), size(m.group(4))))
          : Optional.empty();
    }

    boolean inside() {
      return least <= nominal && nominal <= most;
    }
  }

  private static double size(String number) {
    return number.equals("null") ? Double.POSITIVE_INFINITY : Double.parseDouble(number);
  }

  private void agrees(String name, String text) throws IOException {
    Path file = Files.writeString(folder.resolve("design.toml"), text);
    int code = type(List.of("check", file), "--json");
    String json = out.toString();
    type(List.of("check", file));
    String screen = out.toString().replaceAll("\\s+", " ");
    Optional<Band> band = Band.in(json);
    boolean holds = code == ExitCode.HOLDS;
    assertThat(json.contains("\"verdict\": \"holds\"")).as(name).isEqualTo(holds);
    assertThat(screen.contains("; it is outside"))
        .as("%s: the band's words are its figures", name)
        .isEqualTo(band.isPresent() && !band.get().inside());
    if (holds) {
      assertThat(band.isEmpty() || band.get().inside())
          .as("%s holds in its band: %s", name, band)
          .isTrue();
      assertThat(REMEDY.matcher(json).find()).as("%s holds without remedies", name).isFalse();
      assertThat(screen).as(name).doesNotContain("outside");
    }
    band.ifPresent(
        b -> {
          assertThat(b.aim())
              .as("%s: %s", name, b)
              .isBetween(b.least(), Math.max(b.most(), b.aim()));
          Matcher caps = FAILS.matcher(json);
          assertThat(caps.find()).as(name).isTrue();
          assertThat(size(caps.group(1)))
              .as("%s: fails below", name)
              .isLessThanOrEqualTo(b.least());
          assertThat(size(caps.group(2)))
              .as("%s: fails above", name)
              .isGreaterThanOrEqualTo(b.most());
        });
    remediesKeepTheBand(name, json, band);
  }

  /** A remedy that moves the preloads alone moves them into the band. */
  private static void remediesKeepTheBand(String name, String json, Optional<Band> band) {
    Matcher remedies = REMEDY.matcher(json);
    while (remedies.find()) {
      String changes = remedies.group(1);
      Matcher force = FORCE.matcher(changes);
      double sum = 0;
      int forces = 0;
      while (force.find()) {
        sum += Double.parseDouble(force.group(1));
        forces++;
      }
      if (forces > 0 && changes.split("\"key\"", -1).length - 1 == forces) {
        assertThat(band).as("%s: a preload that helps lies in a band", name).isPresent();
        assertThat(sum)
            .as("%s: %s in %s", name, changes, band.get())
            .isBetween(band.get().least(), band.get().most());
      }
    }
  }

  @Test
  void shippedCouplings() throws IOException {
    for (Starter starter : DrawnFiles.COUPLINGS) {
      agrees(starter.word(), starter.text());
    }
  }

  @Test
  void couplingsWithTooLittleAndTooMuchPreload() throws IOException {
    String post = Starter.TOOL_POST.text();
    for (String force : new String[] {"100 N", "140 N", "1300 N", "2600 N"}) {
      agrees("post at " + force, post.replace("\"600 N\"", '"' + force + '"'));
    }
    String pallet = Starter.PALLET.text();
    agrees("pallet at 30 N", pallet.replace("\"400 N\"", "\"30 N\""));
    agrees("pallet at 500 N", pallet.replace("\"400 N\"", "\"500 N\""));
    String cone = Starter.CONE_VEE_FLAT.text();
    agrees("cone at 12 N", cone.replace("\"40 N\"", "\"12 N\""));
    agrees("post with a fine target", post.replace("X = \"0.5 um\"", "X = \"0.1 um\""));
    agrees("post, dry", DrawnFiles.dry(post));
  }
}
