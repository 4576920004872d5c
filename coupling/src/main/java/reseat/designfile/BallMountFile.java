package reseat.designfile;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import reseat.ballmount.BondJoint;
import reseat.ballmount.ScrewThread;
import reseat.design.Acceptance;
import reseat.design.AdjustmentTask;
import reseat.design.AssumedValue;
import reseat.design.BallMountDesign;
import reseat.design.InputDoubt;
import reseat.design.PivotDuty;
import reseat.design.StudMount;
import reseat.material.Material;
import reseat.space.Vec3;
import reseat.toml.TomlDocument;
import reseat.toml.TomlReader;
import reseat.toml.TomlValue;
import reseat.units.QuantityKind;

/**
 * A file on one ball mount that has been read: the mount, or what stands in its way.
 *
 * @param design the ball mount; empty if the file has errors
 * @param problems errors and warnings in the order of the file; each doubt that the file does not
 *     confirm is a warning
 * @param doubts values that look like slips, in the order of the file, those that it confirms among
 *     them; none if the file has errors
 * @param accepted what the file accepts, in its order
 * @param document what was read from the text
 * @param inInches whether more of its lengths are in inches, or parts of one, than in metric units
 */
public record BallMountFile(
    Optional<BallMountDesign> design,
    List<DesignProblem> problems,
    List<InputDoubt> doubts,
    List<Acceptance> accepted,
    TomlDocument document,
    boolean inInches) {

  private static final String KIND = "ball-mount";

  /** Copies the lists. */
  public BallMountFile {
    problems = List.copyOf(problems);
    doubts = List.copyOf(doubts);
    accepted = List.copyOf(accepted);
  }

  /** A file that cannot be used. */
  BallMountFile(List<DesignProblem> problems) {
    this(Optional.empty(), problems, List.of(), List.of(), TomlReader.read(""), false);
  }

  /**
   * Lists the defaults that results rest on, made up only when it is asked for.
   *
   * @return what the file does not state; none if it has errors
   */
  public List<AssumedValue> assumed() {
    return design.isPresent() ? MountAssumptions.of(design.get(), document.root()) : List.of();
  }

  /**
   * Returns the doubts that the file does not confirm.
   *
   * @return in the order of the file
   */
  public List<InputDoubt> openDoubts() {
    return DesignFile.open(doubts, accepted);
  }

  /**
   * Reads a ball mount from a file.
   *
   * @param file the file, UTF-8 text
   * @return the mount, or every error that was found
   * @throws IOException if the file cannot be read
   */
  public static BallMountFile read(Path file) throws IOException {
    Problems problems = new Problems();
    String text = SourceText.of(file, problems);
    return problems.hasErrors() ? new BallMountFile(problems.sorted()) : read(text);
  }

  /**
   * Reads a ball mount from the text of a file.
   *
   * @param text the whole text
   * @return the mount, or every error that was found
   */
  public static BallMountFile read(String text) {
    Problems problems = new Problems();
    TomlDocument document = TomlReader.read(text);
    for (TomlDocument.SyntaxError e : document.errors()) {
      problems.error(e.line(), e.column(), "", e.message());
    }
    Section root = new Section(document.root(), "", problems);
    if (root.has("layout") || root.has("support")) {
      root.error(
          root.has("layout") ? "layout" : "support",
          "belongs to a whole coupling; 'reseat check' reads such a file, 'reseat mount' one that"
              + " 'reseat starter ball-mount' writes");
      return new BallMountFile(problems.sorted());
    }
    List<Acceptance> accepted = AcceptanceReader.read(root);
    Optional<BallMountDesign> design = read(root);
    if (design.isEmpty() || problems.hasErrors()) {
      return new BallMountFile(problems.sorted());
    }
    AcceptedPlaces.of(design.get()).check(accepted, problems.written().keySet(), problems);
    if (problems.hasErrors()) {
      return new BallMountFile(problems.sorted());
    }
    List<InputDoubt> doubts = Plausibility.of(design.get(), problems.written());
    DesignFile.warn(doubts, accepted, problems);
    return new BallMountFile(
        design,
        problems.sorted(),
        doubts,
        accepted,
        document,
        PrevailingUnits.inch(problems.written()));
  }

  /**
   * Says whether a file is on one ball mount rather than a whole coupling.
   *
   * @param file the file
   * @return true if it says so by its kind
   * @throws IOException if the file cannot be read
   */
  public static boolean isOne(Path file) throws IOException {
    TomlDocument document = TomlReader.read(SourceText.of(file, new Problems()));
    TomlValue.Entry kind = document.root().entries().get("kind");
    return kind != null && kind.value() instanceof TomlValue.Text t && t.text().equals(KIND);
  }

  private static Optional<BallMountDesign> read(Section root) {
    String title = root.text("title", "");
    if (root.has("kind") && !root.text("kind", KIND).equals(KIND)) {
      root.error("kind", "a file for this command has kind = \"" + KIND + "\"");
    }
    MaterialReader materials = new MaterialReader();
    materials.read(root.children("material"));
    Optional<Section> ball = root.requiredChild("ball", "[ball] with diameter and material");
    double radius =
        ball.map(b -> b.positive("diameter", QuantityKind.LENGTH, 12.7e-3) / 2).orElse(6.35e-3);
    Optional<Material> ballMaterial = ball.map(b -> materials.named(b, "material"));
    ball.ifPresent(Section::close);
    Optional<ScrewThread> other = otherThread(root);
    Optional<StudMount> mount = new MountingReader(materials, Vec3.Z).stud(root);
    Optional<Section> load = root.requiredChild("load", "[load] with press and side");
    BondJoint.Load sustained = load.map(l -> load(l, "")).orElse(new BondJoint.Load(-1, 0));
    BondJoint.Load peak =
        load.map(
                l ->
                    l.has("peak_press") || l.has("peak_pull") || l.has("peak_side")
                        ? load(l, "peak_")
                        : sustained)
            .orElse(sustained);
    load.ifPresent(Section::close);
    Optional<PivotDuty.Film> film = root.child("film_pad").flatMap(PivotReader::film);
    if (root.has("film_pad") && !root.has("seat")) {
      root.error("film_pad", "needs the seat that the pad turns on; add [seat]");
    }
    Optional<PivotDuty> pivot =
        root.child("seat")
            .flatMap(
                s ->
                    new PivotReader(materials)
                        .read(s, radius, ballMaterial.orElse(MaterialReader.STAND_IN), film));
    Optional<ScrewThread> ofStud = mount.flatMap(StudMount::thread).map(t -> t.limits().thread());
    Optional<AdjustmentTask> adjustment =
        root.child("adjusting").flatMap(s -> AdjustmentReader.read(s, ofStud));
    BallMountDesign.Targets targets = targets(root);
    root.close();
    if (root.problems().hasErrors() || mount.isEmpty() || ballMaterial.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          new BallMountDesign(
              title,
              radius,
              ballMaterial.get(),
              mount.get(),
              sustained,
              peak,
              other,
              pivot,
              adjustment,
              targets));
    } catch (IllegalArgumentException e) {
      return root.refused(e);
    }
  }

  private static Optional<ScrewThread> otherThread(Section root) {
    return root.has("compare_thread")
        ? ThreadReader.designation(root, "compare_thread")
        : Optional.empty();
  }

  private static BondJoint.Load load(Section s, String peak) {
    String press = peak + "press";
    String pull = peak + "pull";
    if (s.has(press) && s.has(pull)) {
      s.error(pull, press + " and " + pull + " are both given; leave one out");
    } else if (!s.has(press) && !s.has(pull)) {
      s.error(
          press,
          "is missing; write the force that presses the ball onto its stud, or "
              + pull
              + " for one that draws it off");
    }
    double along =
        s.has(press) ? 0.0 - notNegative(s, press) : s.has(pull) ? notNegative(s, pull) : -1;
    return new BondJoint.Load(along, notNegative(s, peak + "side"));
  }

  private static double notNegative(Section s, String key) {
    double force = s.quantity(key, QuantityKind.FORCE, 0);
    if (force < 0) {
      s.error(key, "must not be negative; press and pull say which way the force acts");
      return 0;
    }
    return force;
  }

  private static BallMountDesign.Targets targets(Section root) {
    double none = Double.POSITIVE_INFINITY;
    return root.child("targets")
        .map(
            s -> {
              BallMountDesign.Targets t =
                  new BallMountDesign.Targets(
                      s.positiveOr("height", QuantityKind.LENGTH, none),
                      s.positiveOr("tilt", QuantityKind.ANGLE, none));
              s.close();
              return t;
            })
        .orElse(new BallMountDesign.Targets(none, none));
  }
}
