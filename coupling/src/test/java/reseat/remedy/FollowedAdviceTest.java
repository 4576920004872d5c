package reseat.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import reseat.check.AllowedPreload;
import reseat.check.Argument;
import reseat.check.Depth;
import reseat.check.Finding;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.check.Verdict;
import reseat.design.CheckKind;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Starter;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.SeatedCheck;
import reseat.study.StatedDesign;

/**
 * Advice that made things worse when it was followed, one design each, made of the shipped ones:
 * what is told now holds when it is followed, and lies where the cause lies.
 */
class FollowedAdviceTest {

  private static final String POST = Starter.TOOL_POST.text();
  private static final String PALLET = Starter.PALLET.text();

  private static AlterableDesign file(String text, String... changes) {
    String changed = text;
    for (int i = 0; i < changes.length; i += 2) {
      assertThat(changed).contains(changes[i]);
      changed = changed.replace(changes[i], changes[i + 1]);
    }
    AlterableDesign file = AlterableDesign.of(changed);
    assertThat(file.unaltered().design()).as("%s", file.unaltered().problems()).isPresent();
    return file;
  }

  private static CheckResult checked(AlterableDesign file) {
    return CheckStudy.run(StatedDesign.of(file.unaltered()), Depth.SIMULATED);
  }

  /** The remedies, each followed. */
  private static Remedies followed(AlterableDesign file, boolean pairs) {
    CheckResult before = checked(file);
    assertThat(before.verdict()).isNotEqualTo(Verdict.HOLDS);
    Remedies remedies = RemedySearch.of(file, before, pairs);
    for (Remedy r : remedies.remedies()) {
      assertThat(checked(AlterableDesign.of(r.writtenInto(file))).verdict())
          .as("%s", r.moves())
          .isEqualTo(Verdict.HOLDS);
    }
    return remedies;
  }

  private static Set<Lever> levers(Remedies remedies) {
    Set<Lever> levers = EnumSet.noneOf(Lever.class);
    for (Remedy r : remedies.remedies()) {
      r.moves().forEach(m -> levers.add(m.lever()));
    }
    return levers;
  }

  @Test
  void aPreloadThatPullsAContactOpenIsMendedByWhereItsLinePasses() {
    AlterableDesign file =
        file(
            POST,
            "at = [\"0 mm\", \"0 mm\", \"0 mm\"]",
            "at = [\"-22 mm\", \"0 mm\", \"0 mm\"]",
            "direction = \"-z\"",
            "direction = [0.6, 0, -1]");
    Remedies remedies = followed(file, true);
    assertThat(levers(remedies)).isNotEmpty().doesNotContain(Lever.PRELOAD);
    assertThat(EnumSet.of(Lever.LINE_OF_PULL, Lever.DIRECTION_OF_PULL))
        .containsAll(levers(remedies));
  }

  @Test
  void studsThatGiveAlmostAllAreNotMendedByBalls() {
    AlterableDesign file =
        file(
            POST,
            "stick_out = \"0.45 in\"",
            "stick_out = \"0.8 in\"",
            "neck_diameter = \"0.312 in\"",
            "neck_diameter = \"0.2 in\"");
    Remedies remedies = followed(file, true);
    assertThat(levers(remedies)).isNotEmpty();
    assertThat(EnumSet.of(Lever.NECK, Lever.STICK_OUT)).containsAll(levers(remedies));
  }

  @Test
  void aBondTooWarmIsMendedByAnotherAdhesiveNotByMoreOfIt() {
    Remedies remedies = followed(file(POST, "hottest = \"30 °C\"", "hottest = \"70 °C\""), true);
    assertThat(levers(remedies)).contains(Lever.ADHESIVE).doesNotContain(Lever.BOND_AREA);
  }

  @Test
  void pinsTooFarApartAreMendedByTheirSpacing() {
    Remedies remedies = followed(file(PALLET, "21.213 mm", "28 mm"), false);
    assertThat(remedies.remedies().get(0).moves().get(0).lever()).isEqualTo(Lever.PIN_SPACING);
  }

  @Test
  void parallelGroovesAreTurnedToTheBisectorsByName() {
    AlterableDesign file =
        file(PALLET, "30.96 deg", "0 deg", "149.04 deg", "0 deg", "\"-90 deg\"", "\"0 deg\"");
    Remedies remedies = followed(file, true);
    assertThat(remedies.remedies())
        .anySatisfy(
            r -> {
              assertThat(r.moves()).extracting(Move::lever).contains(Lever.GROOVE_DIRECTION);
              assertThat(r.changes())
                  .extracting(Change::value)
                  .contains("30.96 deg", "149.04 deg", "90 deg");
            });
  }

  @Test
  void noPreloadIsToldThatItsDeviceCannotBeSetTo() {
    AlterableDesign file =
        file(POST, "force = { height = \"-300 N\" }", "force = { height = \"300 N\" }");
    Remedies remedies = followed(file, false);
    assertThat(levers(remedies)).doesNotContain(Lever.PRELOAD);
    if (remedies.remedies().isEmpty()) {
      assertThat(remedies.conflict())
          .contains(new Conflict(CheckKind.LIFT_OFF, CheckKind.PRELOAD_DEVICE));
    }
  }

  @Test
  void thereIsOneBandOfPreloadAndTheDeviceIsSetWithinIt() {
    SeatedCheck check = (SeatedCheck) checked(file(POST));
    AllowedPreload band = check.preload().get().orElseThrow();
    Statement setting =
        check.findings().stream()
            .map(Finding::said)
            .filter(s -> s.key() == Said.DEVICE_SETTING)
            .findFirst()
            .orElseThrow();
    Statement aim = ((Argument.Inner) setting.arguments().get(3)).statement();
    assertThat(amount(aim, 0)).isCloseTo(band.least().force(), within(1e-9));
    assertThat(amount(aim, 1)).isCloseTo(band.most().force(), within(1e-9));
  }

  private static double amount(Statement s, int place) {
    return ((Argument.Amount) s.arguments().get(place)).si();
  }

  @Test
  void aThreadIsEngagedAsFarAsTheFactorAsksNotFurther() {
    AlterableDesign file = file(POST, "engagement = \"0.4 in\"", "engagement = \"0.5 mm\"");
    Remedies remedies = followed(file, false);
    Remedy first = remedies.remedies().get(0);
    assertThat(first.moves().get(0).lever()).isEqualTo(Lever.ENGAGEMENT);
    // a step shorter it is not enough, so that no more is asked for than is needed
    String to = first.moves().get(0).to();
    assertThat(to).isIn("1.5 mm", "2 mm", "2.5 mm", "3 mm");
  }

  @Test
  void noTwoSentencesContradictEachOther() {
    for (FailingDesigns.Drawn d : FailingDesigns.draw(12, 4711)) {
      if (d.result() instanceof SeatedCheck check) {
        Optional<AllowedPreload> band = check.preload().get();
        Remedies remedies = RemedySearch.of(d.file(), check);
        for (Remedy r : remedies.remedies()) {
          boolean preload =
              r.moves().stream().anyMatch(m -> m.lever() == Lever.PRELOAD) && r.moves().size() == 1;
          if (preload) {
            double force =
                AlterableDesign.of(r.writtenInto(d.file()))
                    .unaltered()
                    .design()
                    .orElseThrow()
                    .preloads()
                    .stream()
                    .mapToDouble(p -> p.force())
                    .sum();
            assertThat(band).as("%s: %s", d.changes(), r.moves()).isPresent();
            assertThat(force)
                .as("%s: %s", d.changes(), band)
                .isBetween(band.get().least().force(), band.get().most().force());
          }
        }
      }
    }
  }
}
