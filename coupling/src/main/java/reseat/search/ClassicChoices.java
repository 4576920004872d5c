package reseat.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import reseat.check.Argument;
import reseat.check.Depth;
import reseat.check.Said;
import reseat.check.Statement;
import reseat.design.CouplingDesign;
import reseat.design.MachineAxes;
import reseat.designfile.AlterableDesign;
import reseat.designfile.Alteration;
import reseat.designfile.DesignFile;
import reseat.designfile.DesignKey;
import reseat.elementary.Elementary;
import reseat.equilibrium.CouplingModel;
import reseat.equilibrium.LiftOff;
import reseat.equilibrium.NoEquilibriumException;
import reseat.space.Vec3;
import reseat.study.CheckResult;
import reseat.study.CheckStudy;
import reseat.study.RecutSeats;
import reseat.study.SeatedCheck;
import reseat.study.SeatedScatter;
import reseat.study.StatedDesign;

/**
 * The choices that every such coupling begins with, each tried on the user's own case with all else
 * left as it is: groove angle, which way the triangle points, kind of layout, ball material, what
 * makes the preload.
 *
 * @param rows the file as it stands, then one row for each choice that fits it
 */
public record ClassicChoices(List<Row> rows) {

  private static final List<String> MATERIALS =
      List.of("52100", "440C", "tungsten carbide", "silicon nitride");

  /**
   * Scatter of usual ways to make a preload, common practice, no source: a screw by torque wrench,
   * a spring stack set by deflection, magnets at a fixed gap.
   */
  private static final List<String[]> PRELOADS =
      List.of(
          new String[] {"screw by torque, ±30 %", "30 %"},
          new String[] {"spring by deflection, ±5 %", "5 %"},
          new String[] {"magnets at a gap, ±3 %", "3 %"});

  /** Copies the list. */
  public ClassicChoices {
    rows = List.copyOf(rows);
  }

  /**
   * One choice.
   *
   * @param group what is chosen
   * @param name what is tried
   * @param standing its figures; empty if it does not stand or cannot be made
   * @param reason why it has none; nothing if it has
   */
  public record Row(String group, String name, Optional<Figures> standing, Statement reason) {}

  /**
   * How a choice does.
   *
   * @param check everything about it
   * @param scatter standard deviation of the tool point over simulated tool changes, along the
   *     machine axes, m; empty if fewer than half of them seat
   * @param lifting least force at the tool point that opens a contact, along and against each
   *     machine axis in turn, N; infinite where none does
   */
  public record Figures(SeatedCheck check, Optional<Vec3> scatter, List<Double> lifting) {

    /** Copies the list. */
    public Figures {
      lifting = List.copyOf(lifting);
    }
  }

  /**
   * Tries the choices.
   *
   * @param file the design file, without errors
   * @return the rows
   */
  public static ClassicChoices of(AlterableDesign file) {
    List<Row> rows = new ArrayList<>();
    CouplingDesign design = file.unaltered().design().orElseThrow();
    rows.add(row(file, "as in the file", "", List.of()));
    List<String> angles = paths(file, design, "groove", "flank_angle");
    if (!angles.isEmpty()) {
      for (int included : new int[] {60, 90, 120}) {
        rows.add(
            row(
                file,
                "groove, included angle",
                included + " deg",
                set(angles, (180 - included) / 2 + " deg")));
      }
    }
    if (has(file, "layout.circle_diameter")) {
      Vec3 tool = design.toolPoint();
      if (Elementary.hypot(tool.x(), tool.y()) > 1e-3 * design.couplingRadius()) {
        long azimuth = Elementary.round(Elementary.toDegrees(Elementary.atan2(tool.y(), tool.x())));
        List<String> first = List.of("layout.first_ball_at");
        rows.add(row(file, "toward the tool", "a ball", set(first, azimuth + " deg")));
        rows.add(
            row(
                file,
                "toward the tool",
                "an edge",
                set(first, (azimuth > 0 ? azimuth - 180 : azimuth + 180) + " deg")));
      }
      rows.add(layout(file, "three vees", "three-vee"));
      rows.add(layout(file, "trihedral, vee, flat", "trihedral-vee-flat"));
      rows.add(layout(file, "cone, vee, flat", "cone-vee-flat"));
    }
    List<String> balls = paths(file, design, "ball", "material");
    for (String material : MATERIALS) {
      rows.add(row(file, "balls", material, set(balls, material)));
    }
    List<String> scatter = new ArrayList<>();
    for (int i = 1; i <= design.preloads().size(); i++) {
      scatter.add("preload[" + i + "].scatter");
    }
    for (String[] p : PRELOADS) {
      if (!scatter.isEmpty()) {
        rows.add(row(file, "preload", p[0], set(scatter, p[1])));
      }
    }
    return new ClassicChoices(rows);
  }

  /** Paths of a key of every ball or seat that the file has it for. */
  private static List<String> paths(
      AlterableDesign file, CouplingDesign design, String layoutTable, String name) {
    List<String> paths = new ArrayList<>();
    if (has(file, "layout." + layoutTable + "." + name)) {
      paths.add("layout." + layoutTable + "." + name);
    }
    String table = layoutTable.equals("groove") ? "seat" : layoutTable;
    for (int i = 1; i <= design.supports().size(); i++) {
      String path = "support[" + i + "]." + table + "." + name;
      if (has(file, path)) {
        paths.add(path);
      }
    }
    return paths;
  }

  private static DesignKey key(String path) {
    return new DesignKey(path, path, Optional.empty());
  }

  private static boolean has(AlterableDesign file, String path) {
    try {
      return file.typed(key(path)).isPresent();
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static List<Alteration> set(List<String> paths, String value) {
    List<Alteration> changes = new ArrayList<>();
    for (String path : paths) {
      changes.add(new Alteration(key(path), value));
    }
    return changes;
  }

  private static Row layout(AlterableDesign file, String name, String kind) {
    Row row = row(file, "layout", name, set(List.of("layout.kind"), kind));
    return refusesLayout(row.reason())
        ? new Row(row.group(), name, Optional.empty(), Statement.of(Said.LAYOUT_NOT_MADE))
        : row;
  }

  /** Says whether the reader of the file refused a key of the layout. */
  private static boolean refusesLayout(Statement reason) {
    return reason.key() == Said.REFUSED
        && reason.arguments().get(0) instanceof Argument.Name message
        && message.text().startsWith("layout.");
  }

  private static Row row(
      AlterableDesign file, String group, String name, List<Alteration> changes) {
    DesignFile read = file.with(new RecutSeats(file).with(changes));
    if (read.design().isEmpty()) {
      String reason =
          read.problems().isEmpty()
              ? "cannot be made"
              : read.problems().get(0).key() + ": " + read.problems().get(0).message();
      return new Row(group, name, Optional.empty(), Statement.of(Said.REFUSED, reason));
    }
    CouplingDesign design = read.design().get();
    try {
      CheckResult result = CheckStudy.run(StatedDesign.of(read), Depth.SIMULATED);
      if (result instanceof SeatedCheck check) {
        Figures figures =
            new Figures(
                check,
                SeatedScatter.of(CouplingModel.of(design), SizingStudy.MOUNTS),
                lifting(check));
        return new Row(group, name, Optional.of(figures), Statement.NOTHING);
      }
      return new Row(group, name, Optional.empty(), result.findings().get(0).said());
    } catch (NoEquilibriumException | IllegalArgumentException e) {
      return new Row(group, name, Optional.empty(), Statement.of(Said.REFUSED, e.getMessage()));
    }
  }

  private static List<Double> lifting(SeatedCheck check) {
    LiftOff lift = new LiftOff(check.standing().lines(), check.standing().load());
    MachineAxes axes = check.design().axes();
    List<Double> forces = new ArrayList<>();
    for (int k = 0; k < 3; k++) {
      Vec3 along = axes.axis(k).direction();
      forces.add(lift.forceAlong(check.design().toolPoint(), along).factor());
      forces.add(lift.forceAlong(check.design().toolPoint(), along.negated()).factor());
    }
    return forces;
  }
}
