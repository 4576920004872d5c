package reseat.remedy;

import java.util.ArrayList;
import java.util.List;
import reseat.designfile.Alteration;
import reseat.units.QuantityKind;

/** Ladders of studs, threads, lock nuts and bonds. */
final class MountLadders {

  private static final double INCH = 25.4e-3;

  private MountLadders() {}

  static List<Ladder> of(FileKeys file) {
    List<Ladder> found = new ArrayList<>();
    List<String> mounts = FileKeys.below(file.supports(), "mounting");
    List<String> studs = FileKeys.below(mounts, "stud");
    List<String> bonds = FileKeys.below(mounts, "bond");
    found.addAll(
        Steps.lengths(
            file, Lever.NECK, FileKeys.below(studs, "neck_diameter"), 0.6, 3, 0.1e-3, INCH / 64));
    found.addAll(
        Steps.lengths(
            file, Lever.STICK_OUT, FileKeys.below(studs, "stick_out"), 0.25, 1, 0.5e-3, INCH / 64));
    found.addAll(
        Steps.lengths(
            file,
            Lever.ENGAGEMENT,
            FileKeys.below(FileKeys.below(mounts, "thread"), "engagement"),
            1,
            8,
            0.5e-3,
            INCH / 32));
    found.addAll(
        Steps.preferred(
            file,
            Lever.LOCK_TORQUE,
            FileKeys.below(FileKeys.below(mounts, "lock_nut"), "torque"),
            QuantityKind.TORQUE,
            0.1,
            3));
    found.addAll(adhesives(file, FileKeys.below(bonds, "adhesive")));
    List<String> areas = FileKeys.below(bonds, "area");
    found.addAll(Steps.preferred(file, Lever.BOND_AREA, areas, QuantityKind.AREA, 1, 4));
    found.addAll(
        Steps.preferred(
            file, Lever.BOND_GAP, FileKeys.below(bonds, "gap"), QuantityKind.LENGTH, 0.2, 1.5));
    return found;
  }

  private static List<Ladder> adhesives(FileKeys file, List<String> paths) {
    List<Ladder> found = new ArrayList<>();
    List<Rung> rungs = new ArrayList<>();
    String from = "";
    for (String adhesive : List.of("epoxy", "anaerobic")) {
      List<Alteration> all = new ArrayList<>();
      for (String path : paths) {
        if (file.typed(path).isPresent() && file.typed(path).filter(adhesive::equals).isEmpty()) {
          all.add(FileKeys.word(path, adhesive));
          from = file.typed(path).orElseThrow();
        }
      }
      if (!all.isEmpty()) {
        rungs.add(new Rung(adhesive, SeatLadders.OTHER, 0, all));
      }
    }
    if (!rungs.isEmpty()) {
      found.add(new Ladder(Lever.ADHESIVE, from, rungs));
    }
    return found;
  }
}
